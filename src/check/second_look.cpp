#include "check/second_look.hpp"

#include "check/rules.hpp"

namespace lengthwise::check {

namespace {

void judge(Inquiry& inquiry) {
    second_look_at::places(inquiry);
    second_look_at::words(inquiry);
    second_look_at::rests(inquiry);
}

} // namespace

Rule const second_look{
    .name = "second-look",
    .severity = Severity::warning,
    .measures = "what may be written and is often not meant",
    .limit = "",
    .meaning =
        "Warnings: no pool named, an empty section, a drill heading indented like a line, a selector "
        "that changes no rep, a threshold no swimmer has. Notes: words that change nothing or only the "
        "last part of a split, a drill's name that is none, a hold over reps of different length, an "
        "effort in percent that reads like a heart rate, a group swum without any rest, a pause "
        "shorter than the rest it replaces.",
    .why = "the notation has one meaning for each of them, and a coach often has another in mind.",
    .source = practice,
    .good = "4 x 100 easy as 50 kick / 50 crawl",
    .bad = "4 x 100 as 50 kick / 50 crawl easy     only the last 50 is easy",
    .mend = "say it the other way, or where it is meant: allow second-look \"why\"",
    .judge = judge,
};

} // namespace lengthwise::check
