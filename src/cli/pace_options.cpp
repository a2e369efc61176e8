#include "cli/pace_options.hpp"

#include "cli/values.hpp"

#include <utility>
#include <variant>

namespace lengthwise::cli {

void add(Reader& reader, TypedPace& typed) {
    auto& pace = typed.pace;
    reader.files(typed.swims);
    reader.value("--pool", "a pool, 25m, 25yd, \"33 1/3 m\" or \"open water\"",
                 [&typed](std::string const& text) {
                     auto const found = course(text);
                     typed.course = {text, found.value_or(Pool{})};
                     return found.has_value();
                 });
    reader.value("--predict", "distances, 750m,1500m", [&typed](std::string const& text) {
        typed.predict = text;
        return !text.empty();
    });
    reader.flag("--stops", pace.stops);
    reader.value("--into", "a plan's file", [&pace](std::string const& text) {
        pace.files = {text};
        return !text.empty() && text != "-";
    });
    add_format(reader, pace.format);
    add_look(reader, pace.look);
    add_target(reader, pace.target);
}

Options read_pace(std::vector<std::string> const& arguments) {
    Reader reader{"pace"};
    TypedPace typed;
    add(reader, typed);
    if (auto instead = reader.read(arguments)) {
        return *instead;
    }
    auto swims = read_swims(typed.swims, typed.course);
    if (auto const* const unread = std::get_if<Unread>(&swims)) {
        return Misuse{unread->problem};
    }
    typed.pace.swims = std::move(std::get<std::vector<calc::Swim>>(swims));
    typed.pace.pool = typed.course.pool;
    if (typed.predict) {
        auto distances = read_distances(*typed.predict, typed.course);
        if (auto const* const unread = std::get_if<Unread>(&distances)) {
            return Misuse{unread->problem};
        }
        typed.pace.predict = std::move(std::get<std::vector<Distance>>(distances));
    }
    return std::move(typed.pace);
}

} // namespace lengthwise::cli
