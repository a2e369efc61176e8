#include "support/json_fault.hpp"

#include <cctype>

namespace lengthwise::support {
namespace {

constexpr int deepest = 200;

class JsonReader {
  public:
    explicit JsonReader(std::string_view text) : text_(text) {}

    [[nodiscard]] std::string fault() {
        value(0);
        blanks();
        if (fault_.empty() && at_ != text_.size()) {
            stop("something behind the document");
        }
        return fault_;
    }

  private:
    // Behind a fault nothing is read: `next` then sees the end, and no loop goes on.
    [[nodiscard]] char next() const { return fault_.empty() && at_ < text_.size() ? text_[at_] : '\0'; }

    void stop(std::string const& why) {
        if (fault_.empty()) {
            fault_ = why + " at byte " + std::to_string(at_);
        }
    }

    bool take(char c) {
        bool const there = c != '\0' && next() == c;
        at_ += there ? 1 : 0;
        return there;
    }

    void expect(std::string_view word) {
        for (char const c : word) {
            if (!take(c)) {
                return stop("no " + std::string{word});
            }
        }
    }

    void blanks() {
        while (take(' ') || take('\n') || take('\r') || take('\t')) {
        }
    }

    void value(int depth) {
        blanks();
        if (depth > deepest) {
            return stop("nested too deep");
        }
        switch (next()) {
        case '{':
            return object(depth);
        case '[':
            return array(depth);
        case '"':
            return string();
        case 't':
            return expect("true");
        case 'f':
            return expect("false");
        case 'n':
            return expect("null");
        default:
            return number();
        }
    }

    void object(int depth) {
        expect("{");
        blanks();
        if (take('}')) {
            return;
        }
        do {
            blanks();
            string();
            blanks();
            expect(":");
            value(depth + 1);
            blanks();
        } while (take(','));
        expect("}");
    }

    void array(int depth) {
        expect("[");
        blanks();
        if (take(']')) {
            return;
        }
        do {
            value(depth + 1);
            blanks();
        } while (take(','));
        expect("]");
    }

    void string() {
        expect("\"");
        while (fault_.empty() && !take('"')) {
            if (static_cast<unsigned char>(next()) < 0x20) {
                return stop("a control character in a string, or no end of it");
            }
            take('\\') ? escape() : void(++at_);
        }
    }

    void escape() {
        if (take('u')) {
            for (int i = 0; i < 4; ++i) {
                if (std::isxdigit(static_cast<unsigned char>(next())) == 0) {
                    return stop("no four hexadecimal digits");
                }
                ++at_;
            }
            return;
        }
        if (next() == '\0' || std::string_view{"\"\\/bfnrt"}.find(next()) == std::string_view::npos) {
            return stop("an escape that JSON has not");
        }
        ++at_;
    }

    void digits() {
        if (std::isdigit(static_cast<unsigned char>(next())) == 0) {
            return stop("no digit");
        }
        while (std::isdigit(static_cast<unsigned char>(next())) != 0) {
            ++at_;
        }
    }

    void number() {
        take('-');
        if (!take('0')) {
            digits();
        }
        if (take('.')) {
            digits();
        }
        if (take('e') || take('E')) {
            take('+') || take('-');
            digits();
        }
    }

    std::string_view text_;
    std::size_t at_ = 0;
    std::string fault_;
};

} // namespace

std::string json_fault(std::string_view text) {
    return JsonReader{text}.fault();
}

} // namespace lengthwise::support
