#include "cli/swims.hpp"

#include "cli/values.hpp"
#include "grammar/words.hpp"
#include "report/width.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <optional>

namespace lengthwise::cli {
namespace {

constexpr std::size_t most_swims = 100;
constexpr std::string_view form = "a swim is a distance and a time, 200m 3:32";

bool is_blank(char c) {
    return c == ' ' || c == '\t' || c == '\n' || c == '\r';
}

/// Cut at blanks; a comma may part swims.
std::vector<std::string> tokens_of(std::vector<std::string> const& words) {
    std::vector<std::string> tokens;
    for (auto const& word : words) {
        for (std::size_t at = 0; at < word.size();) {
            auto const begin =
                std::find_if_not(word.begin() + static_cast<std::ptrdiff_t>(at), word.end(), is_blank);
            auto const end = std::find_if(begin, word.end(), is_blank);
            std::string token{begin, end};
            if (token.size() > 1 && token.back() == ',') {
                token.pop_back();
            }
            if (!token.empty()) {
                tokens.push_back(std::move(token));
            }
            at = static_cast<std::size_t>(end - word.begin());
        }
    }
    return tokens;
}

bool is_number(std::string_view token) {
    return !token.empty() && token.find_first_not_of("0123456789.") == std::string_view::npos;
}

bool is_fraction(std::string_view token) {
    return token.find('/') != std::string_view::npos && token.find_first_of("0123456789") == 0; // 1/3, 1/3m
}

bool is_unit_of_distance(std::string_view token) {
    auto const word = find_word(token);
    return word == Word::metres || word == Word::yards || word == Word::lengths;
}

bool is_unit_of_time(std::string_view token) {
    auto const word = find_word(token);
    return word == Word::seconds || word == Word::minutes || word == Word::hours;
}

/// "3.32" and "7", where a time should stand.
std::string hint_for_number(std::string_view number) {
    auto const point = number.find('.');
    if (point == std::string_view::npos) {
        return fmt::format("{0} has no unit: {0}s, {0}min or {0}:00?", number);
    }
    return fmt::format("{} is no time; try {}:{}", number, number.substr(0, point), number.substr(point + 1));
}

class SwimReader {
  public:
    SwimReader(std::vector<std::string> tokens, Course const& course)
        : tokens_(std::move(tokens)), course_(course) {}

    std::variant<std::vector<calc::Swim>, Unread> read() {
        std::vector<calc::Swim> swims;
        while (!done()) {
            auto swim = next();
            if (!swim) {
                return Unread{std::move(problem_)};
            }
            swims.push_back(*swim);
            if (swims.size() > most_swims) {
                return Unread{fmt::format("more than {} swims; the last few are enough", most_swims)};
            }
        }
        if (swims.empty()) {
            return Unread{"which swims? try: lengthwise pace 200m 3:32 400m 7:22"};
        }
        return swims;
    }

  private:
    [[nodiscard]] bool done() const { return at_ == tokens_.size(); }
    [[nodiscard]] std::string_view peek() const { return done() ? std::string_view{} : tokens_[at_]; }

    std::string take() { return tokens_[at_++]; }

    /// A number with what belongs to it: "200m", "33 1/3 m", "31 min".
    std::string amount(bool (*is_unit)(std::string_view)) {
        auto text = take();
        auto whole = is_number(text);
        if (whole && is_fraction(peek())) {
            text += ' ' + take();
            whole = text.back() >= '0' && text.back() <= '9';
        }
        if (whole && is_unit(peek())) {
            text += ' ' + take();
        }
        return text;
    }

    std::optional<calc::Swim> next() {
        auto const distance = amount(is_unit_of_distance);
        if (find_word(peek()) == Word::in) {
            ++at_;
        }
        auto const time = done() ? std::string{} : amount(is_unit_of_time);
        auto const here = course();
        if (!here) {
            return std::nullopt;
        }
        auto const found = swim(distance, time, *here);
        if (!found) {
            problem_ = problem_of(distance, time, *here);
        }
        return found;
    }

    /// Behind a time: `in 25m`, `in open water`, else the usual one.
    std::optional<Course> course() {
        if (find_word(peek()) != Word::in) {
            return course_;
        }
        ++at_;
        if (done()) {
            problem_ = "in which pool? try: in 25m";
            return std::nullopt;
        }
        auto const open = find_word(peek()) == Word::open;
        auto text = open ? take() : amount(is_unit_of_distance);
        if (open && !done()) {
            text += ' ' + take();
        }
        auto const found = cli::course(text);
        if (!found) {
            problem_ = fmt::format("no pool is {} long; try: in 25m, in 25yd or in open water",
                                   report::visible(text));
            return std::nullopt;
        }
        return Course{std::move(text), *found};
    }

    static std::optional<calc::Swim> swim(std::string const& distance, std::string const& time,
                                          Course const& course) {
        auto const pace = cli::pace(fmt::format("{} per {}", time, distance), course.text);
        if (!pace) {
            return std::nullopt;
        }
        return calc::Swim{pace->per, pace->per_unit, pace->time, course.pool};
    }

    [[nodiscard]] std::string problem_of(std::string const& distance, std::string const& time,
                                         Course const& course) const {
        auto const shown = report::visible(distance);
        auto const some_time = std::string{"1:00"};
        if (!swim(distance, some_time, course)) {
            if (!course.pool.has_length() && swim(distance, some_time, {"25m", {}})) {
                return fmt::format("{} of which pool? try: --pool 25m", shown);
            }
            if (distance.ends_with(".swim")) {
                return fmt::format("pace takes swims; to write into the plan: --into {}", shown);
            }
            return fmt::format("{} is no distance; {}", shown, form);
        }
        if (is_number(time)) {
            return hint_for_number(time);
        }
        if (time.empty() || swim(time, some_time, course)) {
            return fmt::format("{0} took how long? try: {0} 3:32", shown);
        }
        return fmt::format("{} is no time; try 3:32, 212s or 31min", report::visible(time));
    }

    std::vector<std::string> tokens_;
    Course const& course_;
    std::size_t at_ = 0;
    std::string problem_;
};

std::string trimmed(std::string_view text) {
    auto const begin = text.find_first_not_of(" \t");
    return begin == std::string_view::npos
               ? std::string{}
               : std::string{text.substr(begin, text.find_last_not_of(" \t") + 1 - begin)};
}

} // namespace

std::variant<std::vector<calc::Swim>, Unread> read_swims(std::vector<std::string> const& words,
                                                         Course const& course) {
    return SwimReader{tokens_of(words), course}.read();
}

std::variant<std::vector<Distance>, Unread> read_distances(std::string_view list, Course const& course) {
    std::vector<Distance> distances;
    for (std::size_t at = 0; at <= list.size();) {
        auto const end = std::min(list.find(',', at), list.size());
        auto const text = trimmed(list.substr(at, end - at));
        auto const race = race_distance(text);
        auto const pace = race ? std::nullopt : cli::pace("1:00 per " + text, course.text);
        if (!race && !pace) {
            return Unread{fmt::format("--predict takes distances, 750m,1500m or sprint, not \"{}\"",
                                      report::visible(text))};
        }
        distances.push_back(race ? *race : pace->per);
        at = end + 1;
    }
    return distances;
}

} // namespace lengthwise::cli
