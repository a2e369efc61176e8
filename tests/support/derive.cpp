#include "support/derive.hpp"

#include <algorithm>
#include <cctype>
#include <utility>

namespace lengthwise::test {

namespace {

/// Words, signs and quoted words; comments left out.
std::vector<std::string> symbols(std::string_view ebnf) {
    std::vector<std::string> result;
    for (std::size_t i = 0; i < ebnf.size();) {
        if (ebnf.substr(i, 2) == "(*") {
            i = ebnf.find("*)", i) + 2;
            continue;
        }
        auto const begin = i++;
        if (ebnf[begin] == '"') {
            i = ebnf.find('"', i) + 1;
        } else if (std::isalpha(static_cast<unsigned char>(ebnf[begin])) != 0) {
            i = std::min(ebnf.find_first_not_of("abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ_", i),
                         ebnf.size());
        } else if (ebnf[begin] == ' ' || ebnf[begin] == '\n') {
            continue;
        }
        result.emplace_back(ebnf.substr(begin, i - begin));
    }
    return result;
}

/// Ways to write a terminal, the first ones right wherever it stands.
std::string spelled(std::string_view terminal, bench::Random& random) {
    using Spellings = std::vector<std::string_view>;
    static std::map<std::string_view, Spellings> const known{
        {"NL", {"\n", "\n", "\n\n", " # note\n", "\r\n", "\n# (\n"}},
        {"STRING", {"\"a\"", "\"\"", "\"x \\\" (\"", "\"\\\\\""}},
        {"NUM", {"1", "2", "4", "8", "10", "1", "2", "3", "0", "007", "100", "101", "9999", "10000"}},
        {"PERCENT", {"95%", "100%", "1%", "7000001%"}},
        {"CLOCK", {"1:30", "0:45.5", ":50", "1:02:03", "0:00", "0:61", "24:00:00", "24:00:01"}},
        {"TIME", {"7:00", "07:00", "23:59", "24:00"}},
        {"DATE", {"2027-06-13", "2028-02-29", "2027-02-29"}},
        {"DAY", {"Mon", "sunday", "WED"}},
        {"ORDINAL", {"1st", "2nd", "3rd", "4th", "2th"}},
        {"X", {"x", "x", "X", "\xC3\x97"}},
        {"UNIT", {"m", "yd", "lengths", "metres", "yard", "length"}},
        {"KIND", {"sprint", "olympic", "super-sprint", "Long", "max"}},
        {"GEAR", {"fins", "paddles", "pull buoy", "kickboard", "buoy", "wetsuit"}},
        {"RULE", {"taper", "rest-band", "x", "pool"}},
        {"WORD", {"crawl", "kick", "fins", "hard", "front crawl", "IM", "max"}},
        // Written here because blanks may not stand in them, or a synonym has two words.
        {"distance",
         {"50", "200m", "100 yd", "4 lengths", "33 1/3 m", "12.5m", "12.5", "66 2/3", "1 length"}},
        {"stroke", {"crawl", "front crawl", "back", "IM", "choice", "free"}},
        {"heading", {"main", "warm-up", "Warm up", "drill", "swim down", "cool-down"}},
    };
    auto const found = known.find(terminal);
    if (found == known.end()) {
        return {};
    }
    auto const& ways = found->second;
    return std::string{ways[static_cast<std::size_t>(random.below(static_cast<int>(ways.size())))]};
}

bool ends(std::string_view symbol) {
    return symbol == "|" || symbol == "]" || symbol == "}" || symbol == ")";
}

} // namespace

struct Derivation::Reader {
    std::vector<std::string> symbols;
    std::size_t at = 0;

    [[nodiscard]] std::string const& next() const { return symbols[at]; }

    Node choice() {
        Node result{Sort::choice, {}, {sequence()}};
        while (next() == "|") {
            ++at;
            result.parts.push_back(sequence());
        }
        return result;
    }

    Node sequence() {
        Node result;
        while (!ends(next()) && next() != ".") {
            result.parts.push_back(term());
        }
        return result;
    }

    Node term() {
        auto const symbol = symbols[at++];
        if (symbol == "[" || symbol == "{" || symbol == "(") {
            Node inner = choice();
            ++at;
            auto const sort = symbol == "["   ? Sort::optional
                              : symbol == "{" ? Sort::repeated
                                              : Sort::sequence;
            return {sort, {}, {std::move(inner)}};
        }
        bool const quoted = symbol.front() == '"';
        return {
            quoted ? Sort::quoted : Sort::name, quoted ? symbol.substr(1, symbol.size() - 2) : symbol, {}};
    }
};

struct Derivation::Writer {
    std::map<std::string, Node> const& rules;
    bench::Random& random;
    std::string text{};
    int depth = 0;

    /// Far in or long already: time to come to an end.
    [[nodiscard]] bool enough() const { return depth > 60 || text.size() > 500; }

    void write(Node const& node) {
        ++depth;
        switch (node.sort) {
        case Sort::quoted:
            put(node.text);
            break;
        case Sort::name:
            name(node.text);
            break;
        case Sort::sequence:
            for (auto const& part : node.parts) {
                write(part);
            }
            break;
        case Sort::choice:
            // Far in, the first alternative: those of this grammar lead out.
            write(node.parts[enough() ? 0
                                      : static_cast<std::size_t>(
                                            random.below(static_cast<int>(node.parts.size())))]);
            break;
        case Sort::optional:
        case Sort::repeated:
            for (int most = node.sort == Sort::optional ? 1 : 3; most > 0 && !enough() && random.chance(45);
                 --most) {
                write(node.parts.front());
            }
            break;
        }
        --depth;
    }

    void name(std::string const& what) {
        auto const terminal = spelled(what, random);
        if (!terminal.empty()) {
            put(terminal);
        } else if (auto const rule = rules.find(what); rule != rules.end()) {
            write(rule->second);
        }
    }

    /// Blanks are sometimes forgotten.
    void put(std::string_view symbol) {
        bool const sign = symbol == "," || symbol == ":" || symbol.front() == '\n';
        bool const blank = random.chance(97) ? !sign : random.chance(50);
        text += blank && !text.empty() ? " " : "";
        text += symbol;
        text += (symbol == "," || symbol == ":") && random.chance(97) ? " " : "";
    }
};

Derivation::Derivation(std::string_view ebnf) {
    Reader reader{symbols(ebnf.substr(0, ebnf.find("(* Terminals.")))}; // prose from there on
    while (reader.at < reader.symbols.size()) {
        auto const name = reader.symbols[reader.at];
        reader.at += 2;
        rules_[name] = reader.choice();
        ++reader.at;
    }
}

std::string Derivation::derive(std::string const& production, bench::Random& random) const {
    Writer writer{rules_, random};
    writer.name(production);
    return writer.text;
}

std::vector<std::string> Derivation::productions() const {
    std::vector<std::string> result;
    for (auto const& rule : rules_) {
        result.push_back(rule.first);
    }
    return result;
}

} // namespace lengthwise::test
