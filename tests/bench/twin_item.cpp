#include "twin.hpp"

#include "written.hpp"

#include <fmt/format.h>

#include <utility>

namespace lengthwise::bench {

void Twin::begin_item(int lane, bool optional) {
    json_.open('{');
    if (!groups_.empty()) {
        auto& group = groups_.back();
        auto const first = std::exchange(group.empty, false);
        notation_ += group.over_lines ? "\n        " : first ? "" : " + ";
        return;
    }
    counted_ = !in_set_ && lane <= 1 && !optional;
    notation_ += in_set_ ? "" : "      ";
    if (lane > 0) {
        put(notation_, "lane {}: ", lane);
        json_.field("lane", lane);
    }
    if (optional) {
        notation_ += "if time: ";
        json_.flag("if_time");
    }
}

void Twin::end_item() {
    json_.close('}');
    if (groups_.empty()) {
        notation_ += '\n';
    }
}

void Twin::begin_amounts(int count) {
    if (count > 1) {
        put(notation_, "{} x ", count);
        json_.field("count", count);
    }
}

void Twin::add_metres(std::int64_t metres) {
    for (auto const& group : groups_) {
        metres *= group.rounds;
    }
    metres_ += counted_ ? metres : 0;
}

void Twin::reps(int count, int metres) {
    begin_amounts(count);
    put(notation_, "{}", metres);
    json_.field("distance", metres);
    add_metres(std::int64_t{count} * metres);
}

void Twin::lengths(int count, int lengths) {
    begin_amounts(count);
    put(notation_, "{} lengths", lengths);
    json_.field("lengths", lengths);
    add_metres(std::int64_t{count} * lengths * lap_);
}

void Twin::timed(int count, int minutes) {
    begin_amounts(count);
    put(notation_, "{}min", minutes);
    json_.field("seconds", minutes * 60);
}

void Twin::ladder(std::initializer_list<int> metres) {
    put(notation_, "{}", fmt::join(metres, ", "));
    json_.open("ladder", '[');
    for (auto const rung : metres) {
        json_.value(rung);
        add_metres(rung);
    }
    json_.close(']');
}

void Twin::use(std::string_view name, std::int64_t metres) {
    put(notation_, "use \"{}\"", name);
    json_.field("use", name);
    add_metres(metres);
}

void Twin::open_group(int rounds, bool over_lines) {
    begin_amounts(rounds);
    notation_ += '(';
    json_.open("items", '[');
    groups_.push_back({rounds, over_lines});
}

void Twin::close_group() {
    notation_ += groups_.back().over_lines ? "\n      )" : ")";
    json_.close(']');
    groups_.pop_back();
}

// --- what stands behind an item ----------------------------------------------------

void Twin::word(std::string_view key, std::string_view word) {
    put(notation_, " {}", word);
    json_.field(key, word);
}

void Twin::percent(int percent) {
    put(notation_, " at {}%", percent);
    json_.field("percent", percent);
}

void Twin::drill(std::string_view name) {
    put(notation_, " drill \"{}\"", name);
    json_.field("mode", "drill");
    json_.field("drill", name);
}

void Twin::gear(std::initializer_list<std::string_view> words) {
    put(notation_, " with {}", fmt::join(words, ", "));
    json_.open("gear", '[');
    for (auto const word : words) {
        json_.value(word);
    }
    json_.close(']');
}

void Twin::split(std::initializer_list<Part> parts) {
    notation_ += " as ";
    json_.open("parts", '[');
    for (auto const& part : parts) {
        notation_ += &part == parts.begin() ? "" : " / ";
        put(notation_, "{}", part.metres);
        json_.open('{');
        json_.field("distance", part.metres);
        if (part.drill.empty()) {
            word(part.key, part.word);
        } else {
            drill(part.drill);
        }
        json_.close('}');
    }
    json_.close(']');
}

void Twin::descend(int last) {
    put(notation_, " descend 1-{}", last);
    json_.field("descend", last);
}

void Twin::broken(int metres, int seconds) {
    put(notation_, " broken at {} for {}s", metres, seconds);
    json_.open("broken", '{');
    json_.field("at", metres);
    json_.field("for", seconds);
    json_.close('}');
}

void Twin::rest(int seconds) {
    put(notation_, " rest {}", written(seconds));
    json_.field("rest", seconds);
}

void Twin::rest(int low, int high) {
    put(notation_, " rest {}-{}s", low, high);
    json_.open("rest", '{');
    json_.field("low", low);
    json_.field("high", high);
    json_.close('}');
}

void Twin::send_off(std::initializer_list<int> seconds) {
    notation_ += " on ";
    json_.open("on", '[');
    for (auto const& step : seconds) {
        put(notation_, "{}{}", &step == seconds.begin() ? "" : ", ", clock(step));
        json_.value(step);
    }
    json_.close(']');
}

void Twin::choose(std::initializer_list<Choice> choices) {
    json_.open("selectors", '[');
    for (auto const& choice : choices) {
        put(notation_, ", {}", choice.which);
        json_.open('{');
        json_.field("which", choice.which);
        if (choice.number > 0) {
            put(notation_, " {}", choice.number);
            json_.field("number", choice.number);
        }
        word("effort", choice.effort);
        json_.close('}');
    }
    json_.close(']');
}

void Twin::note(std::string_view words) {
    put(notation_, " \"{}\"", words);
    json_.field("note", words);
}

} // namespace lengthwise::bench
