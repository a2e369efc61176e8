#include "twin.hpp"

#include "written.hpp"

#include <fmt/format.h>

namespace lengthwise::bench {

namespace {

void write_pool(JsonText& json, int metres) {
    json.open("pool", '{');
    json.field("length", metres);
    json.field("unit", "m");
    json.close('}');
}

} // namespace

void Twin::end_children() {
    json_.close(']');
    json_.close('}');
}

void Twin::begin_plan(std::string_view name, int pool_metres) {
    lap_ = plan_lap_ = pool_metres;
    put(notation_, "plan \"{}\"\npool {}m\nthreshold 2:05 per 100m\nrest 20-40s\n", name, pool_metres);
    json_.open('{');
    json_.field("plan", name);
    write_pool(json_, pool_metres);
    json_.open("threshold", '{');
    json_.field("seconds", 125);
    json_.field("per", 100);
    json_.close('}');
    json_.open("rest", '{');
    json_.field("low", 20);
    json_.field("high", 40);
    json_.close('}');
    json_.open("sets", '[');
}

void Twin::begin_set(std::string_view name) {
    in_set_ = true;
    put(notation_, "set \"{}\" = ", name);
    json_.open('{');
    json_.field("name", name);
    json_.key("item");
}

void Twin::end_set() {
    in_set_ = false;
    json_.close('}');
}

void Twin::begin_weeks() {
    json_.close(']');
    json_.open("weeks", '[');
}

void Twin::begin_week(int number, std::string_view from) {
    put(notation_, "\nweek {} from {}\n", number, from);
    json_.open('{');
    json_.field("number", number);
    json_.field("from", from);
    json_.open("sessions", '[');
}

void Twin::begin_session(std::string_view day, int start, int slot, std::string_view name, int lap) {
    if (!keep_json_) {
        json_.text().clear();
    }
    ++sessions_;
    lap_ = lap;
    auto const at = fmt::format("{:02}:{:02}", start / 60, start % 60);
    put(notation_, "  session {} {} for {}min \"{}\"\n", day, at, slot, name);
    json_.open('{');
    json_.field("day", day);
    json_.field("time", std::string_view{at});
    json_.field("slot", slot * 60);
    json_.field("name", name);
    if (lap != plan_lap_) {
        put(notation_, "    pool {}m\n", lap);
        write_pool(json_, lap);
    }
    json_.open("sections", '[');
}

void Twin::begin_section(std::string_view kind, std::string_view name) {
    put(notation_, "    {}", kind);
    json_.open('{');
    json_.field("kind", kind);
    if (!name.empty()) {
        put(notation_, " \"{}\"", name);
        json_.field("name", name);
    }
    notation_ += '\n';
    json_.open("items", '[');
}

void Twin::end_plan() {
    end_children();
    json_.take_comma();
}

void Twin::note_line(std::string_view words) {
    put(notation_, "      \"{}\"\n", words);
    json_.open('{');
    json_.field("note", words);
    json_.close('}');
}

void Twin::pause(int seconds) {
    put(notation_, "      pause {}\n", written(seconds));
    json_.open('{');
    json_.field("pause", seconds);
    json_.close('}');
}

void Twin::comment(std::string_view words) {
    notation_.pop_back();
    put(notation_, "  # {}\n", words);
}

} // namespace lengthwise::bench
