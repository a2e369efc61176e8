#include "report/figures_json.hpp"

#include "units/spell.hpp"

namespace lengthwise::report {
namespace {

void put_lane(Json& json, Tally const& tally, int lane) {
    put_figures(json, tally.swum(lane), tally.has_lengths());
    if (tally.has_if_time(lane)) {
        json.key("if_time").begin_object();
        put_figures(json, tally.if_time(lane), tally.has_lengths());
        json.end_object();
    }
}

} // namespace

void put_figures(Json& json, Figures const& figures, bool has_lengths) {
    json.key("metres").number(spell::json_metres(figures.totals.distance)).key("lengths");
    has_lengths ? json.integer(figures.totals.lengths) : json.null();
    json.key("longest_rep_metres").number(spell::json_metres(figures.totals.longest));
    json.key("reps").integer(figures.totals.reps).key("seconds");
    put_band(json, figures.time());
    json.key("estimated_metres");
    auto const estimated = figures.estimated();
    estimated ? json.number(spell::json_metres(*estimated)) : json.null();
}

void put_tally(Json& json, Tally const& tally) {
    put_lane(json, tally, tally.lane());
    if (!tally.has_lane_lines()) {
        return;
    }
    json.key("lanes").begin_array();
    for (int const lane : calc::numbers(tally.lanes())) {
        json.begin_object().key("lane").integer(lane);
        put_lane(json, tally, lane);
        json.end_object();
    }
    json.end_array();
}

void put_band(Json& json, std::optional<Band<Duration>> const& band) {
    if (!band) {
        json.null();
        return;
    }
    json.begin_object().key("low").number(spell::json_seconds(band->low));
    json.key("expected").number(spell::json_seconds(band->expected));
    json.key("high").number(spell::json_seconds(band->high)).end_object();
}

void put_text(Json& json, std::string_view key, std::string_view text) {
    json.key(key);
    text.empty() ? json.null() : json.string(text);
}

void put_date(Json& json, std::string_view key, std::optional<Date> date) {
    json.key(key);
    date ? json.string(spell::iso(*date)) : json.null();
}

void put_week_head(Json& json, plan::Week const& week) {
    json.key("number");
    week.number ? json.integer(*week.number) : json.null();
    put_date(json, "from", week.from);
}

void begin_plan(Json& json, std::string_view schema, std::string_view file, std::string_view name) {
    json.begin_object().key("schema").string(schema);
    if (!file.empty()) {
        json.key("file").string(file);
    }
    json.key("plan").begin_object();
    put_text(json, "name", name);
}

void put_swimmer(Json& json, plan::Swimmer const& swimmer) {
    json.key("name").string(swimmer.name).key("lane");
    swimmer.lane ? json.integer(*swimmer.lane) : json.null();
    json.key("share_percent").integer(swimmer.share.value_or(100));
}

std::string errors_json(std::string_view schema, std::string_view file, std::uint64_t errors) {
    std::string text;
    Json json{[&](std::string_view piece) { text += piece; }};
    json.begin_object().key("schema").string(schema).key("file").string(file);
    json.key("errors").integer(static_cast<std::int64_t>(errors)).end_object().end_line();
    return text;
}

} // namespace lengthwise::report
