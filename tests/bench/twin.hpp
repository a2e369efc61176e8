#pragma once

#include "json_text.hpp"

#include <cstdint>
#include <initializer_list>
#include <string>
#include <string_view>
#include <vector>

namespace lengthwise::bench {

/// A part of a split: `25 drill "fist"`. `key` is the word's class ("mode"), its name in JSON.
struct Part {
    int metres;
    std::string_view key;
    std::string_view word;
    std::string_view drill{};
};

/// `first 2 easy`; `number` 0 where none is written.
struct Choice {
    std::string_view which;
    int number;
    std::string_view effort;
};

/// Writes one plan twice, side by side: as notation, and as the JSON that a program
/// would exchange: the same tree, short plain keys, nothing that is not said, no blanks.
/// Comments are in the notation alone. Calls come in the order of the text.
class Twin {
  public:
    /// Without `keep_json` that side is thrown away session by session.
    explicit Twin(bool keep_json) : keep_json_(keep_json) {}

    void begin_plan(std::string_view name, int pool_metres);
    /// `set "NAME" =`, to be followed by an item.
    void begin_set(std::string_view name);
    void end_set();
    void begin_weeks(); ///< behind the last set
    void begin_week(int number, std::string_view from);
    /// Times in minutes; `lap` is written as the session's own pool when it is not the plan's.
    void begin_session(std::string_view day, int start, int slot, std::string_view name, int lap);
    void begin_section(std::string_view kind, std::string_view name);
    void end_section() { end_children(); }
    void end_session() { end_children(); }
    void end_week() { end_children(); }
    void end_plan();

    void note_line(std::string_view text);
    void pause(int seconds);
    void comment(std::string_view text); ///< behind the line written last

    void begin_item(int lane = 0, bool optional = false);
    void reps(int count, int metres);
    void lengths(int count, int lengths); ///< the same, counted in lengths of the session's pool
    void timed(int count, int minutes);
    void ladder(std::initializer_list<int> metres);
    void use(std::string_view name, std::int64_t metres);
    void open_group(int rounds, bool over_lines = false);
    void close_group();
    void end_item();

    /// Modifiers of the item in hand; `key` is the class of `word`.
    void word(std::string_view key, std::string_view word);
    void percent(int percent); ///< `at 95%`
    void drill(std::string_view name);
    void gear(std::initializer_list<std::string_view> words);
    void split(std::initializer_list<Part> parts);
    void descend(int last);
    void broken(int metres, int seconds);
    void rest(int seconds);
    void rest(int low, int high);
    void send_off(std::initializer_list<int> seconds);
    void choose(std::initializer_list<Choice> choices);
    void note(std::string_view text);

    [[nodiscard]] std::string& notation() { return notation_; }
    [[nodiscard]] std::string& json() { return json_.text(); }
    [[nodiscard]] std::uint64_t sessions() const { return sessions_; }
    /// What lane 1 swims, `if time` left out: added up while writing, as a check on the readers.
    [[nodiscard]] std::int64_t metres() const { return metres_; }

  private:
    struct Group {
        int rounds;
        bool over_lines;
        bool empty = true;
    };

    void end_children();
    void begin_amounts(int count);
    void add_metres(std::int64_t metres);

    std::string notation_;
    JsonText json_;
    bool keep_json_;
    int plan_lap_ = 0;
    int lap_ = 0;
    std::uint64_t sessions_ = 0;
    std::int64_t metres_ = 0;
    bool counted_ = true; ///< the item in hand belongs to metres_
    bool in_set_ = false;
    std::vector<Group> groups_; ///< that are open
};

} // namespace lengthwise::bench
