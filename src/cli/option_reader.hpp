#pragma once

#include "cli/options.hpp"

#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

/// Reads one command's options.
namespace lengthwise::cli {

/// One command's options: a name, and what to do with what stands behind it. The first
/// problem is kept. CLI11 stays behind it: to compile its headers takes as long as a dozen files of ours.
class Reader {
  public:
    explicit Reader(std::string_view command);
    Reader(Reader const&) = delete;
    Reader& operator=(Reader const&) = delete;
    ~Reader();

    void files(std::vector<std::string>& to) { to_ = &to; }
    void flag(char const* name, bool& to);

    /// `take` says whether it could do something with the text; `wants` is what it wants instead.
    void value(char const* name, std::string wants, std::function<bool(std::string const&)> take);

    /// The same for an option that may be given several times, and is taken each time.
    void each(char const* name, std::string wants, std::function<bool(std::string const&)> take);

    /// Nothing: all is read. Else what to say instead of running.
    std::optional<Options> read(std::vector<std::string> arguments);

    /// The options it knows.
    [[nodiscard]] std::vector<KnownOption> known() const;

  private:
    struct Known;

    std::optional<Options> take_files();
    [[nodiscard]] std::vector<std::string> names() const;
    [[nodiscard]] Misuse missing(std::string_view message) const;
    [[nodiscard]] Misuse unknown(std::string const& option) const;

    std::string command_;
    std::unique_ptr<Known> known_;
    bool help_ = false;
    std::vector<std::string>* to_ = nullptr;
};

/// One of a few words.
template <typename T>
std::function<bool(std::string const&)> one_of(T& to, std::vector<std::pair<std::string_view, T>> words) {
    return [&to, words = std::move(words)](std::string const& text) {
        for (auto const& [word, meaning] : words) {
            if (text == word) {
                to = meaning;
                return true;
            }
        }
        return false;
    };
}

/// What several commands take: how it is shown, and where it goes.
void add_look(Reader& reader, Look& look);
void add_target(Reader& reader, Target& target);
void add_who(Reader& reader, report::Wish& wish);  ///< lane and swimmer
void add_wish(Reader& reader, report::Wish& wish); ///< week and session too
void add_format(Reader& reader, Format& format);   ///< text or JSON
void add_today(Reader& reader, std::optional<Date>& today);

} // namespace lengthwise::cli
