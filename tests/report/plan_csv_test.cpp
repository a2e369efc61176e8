#include "report/plan_csv.hpp"

#include "calc/totals.hpp"
#include "export_samples.hpp"
#include "report/csv.hpp"
#include "support/generate.hpp"
#include "support/outside.hpp"
#include "units/spell.hpp"

#include <catch2/catch.hpp>

/// Read back by Python's csv, which shares no code with this program.
namespace lengthwise::report {
namespace {

std::string csv(std::string_view text, CsvRows rows, ExportOptions const& options = {}) {
    return csv_head(rows, !options.file.empty()) +
           test::exported(std::string{text},
                          [&](auto const& plan, auto const& sink) { plan_csv(plan, options, rows, sink); });
}

/// Prints what `expression` makes of `rows`, the cells by column's name. Strict: a quote in the wrong place
/// ends it, and so does a row that is longer or shorter than the head.
std::string python(std::string const& csv, std::string const& expression) {
    return support::python("import csv, io, sys\n"
                           "text = sys.stdin.buffer.read().decode('utf-8')\n"
                           "assert text.count('\\n') == text.count('\\r\\n') and text.endswith('\\r\\n')\n"
                           "table = list(csv.reader(io.StringIO(text, newline=''), strict=True))\n"
                           "assert all(len(row) == len(table[0]) for row in table)\n"
                           "rows = [dict(zip(table[0], row)) for row in table[1:]]\n"
                           "print(" +
                               expression + ")\n",
                           csv);
}

std::string cell(std::string_view text) {
    Csv csv;
    csv.text(text).end_row();
    return csv.take();
}

} // namespace

TEST_CASE("a text becomes one cell that no spreadsheet runs") {
    CHECK(cell("") == "\"\"\r\n");
    CHECK(cell("4 x 50") == "\"4 x 50\"\r\n");
    CHECK(cell("say \"fist\", twice") == "\"say \"\"fist\"\", twice\"\r\n");
    for (auto const* formula : {"=cmd()", "+1", "-1", "@SUM(A1)", "＝1", "＋1", "－1", "＠x"}) {
        CHECK(cell(formula) == "\"'" + std::string{formula} + "\"\r\n");
    }
    CHECK(cell("  =1") == "\"  '=1\"\r\n");
    // where a semicolon separates, or quotes are not undone, a cell begins in the middle
    CHECK(cell("a;=1") == "\"a;'=1\"\r\n");
    CHECK(cell("a, -1") == "\"a, '-1\"\r\n");
    CHECK(cell("\"=1\"") == "\"\"\"'=1\"\"\"\r\n");
    CHECK(cell("1-2 = x") == "\"1-2 = x\"\r\n");
    CHECK(cell("a\r\nb\tc") == "\"a<U+000D><U+000A>b<U+0009>c\"\r\n");
}

TEST_CASE("a row for each line, by Python's csv", "[programs]") {
    auto const text = csv(test::heron_ford, CsvRows::line);
    CHECK(python(text, "len(rows), rows[0]['plan'], rows[0]['date'], rows[0]['time'], rows[0]['session']") ==
          "11 Down to Heron Ford 2027-06-08 19:15 Two lanes\n");
    CHECK(python(text, "[(r['row'], r['kind'], r['first_lane'], r['lane'], r['if_time'], r['metres']) "
                       "for r in rows[1:9]]") ==
          "[('2', 'swim', '', '1', 'no', '200'), ('', 'note', '', '', 'no', ''), "
          "('3', 'swim', '1', '1', 'no', '300'), ('4', 'swim', '2', '2', 'no', '200'), "
          "('', 'pause', '', '', 'no', ''), ('5', 'swim', '', '1', 'no', '300'), "
          "('', 'swim', '', '', 'yes', '50'), ('6', 'swim', '', '1', 'no', '0')]\n");
    CHECK(
        python(
            text,
            "rows[1]['set'], rows[1]['section_name'], rows[0]['start_seconds'], rows[8]['timed_seconds']") ==
        "4 x 50 as 25 drill \"zip\" / 25 crawl with fins Line 0 180\n");
    CHECK(python(text, "rows[9]['session'], rows[9]['lengths'], rows[9]['metres']") == "Thirds 12 400\n");
}

TEST_CASE("a row for each session, or week", "[programs]") {
    auto const sessions = csv(test::heron_ford, CsvRows::session);
    CHECK(python(sessions, "[(r['session'], r['lane'], r['metres'], r['lengths'], r['if_time_metres'], "
                           "r['slot_seconds']) for r in rows]") ==
          "[('Two lanes', '1', '1000', '40', '50', '2700'), ('Thirds', '', '400', '12', '0', ''), "
          "('No slot', '', '300', '12', '0', '')]\n");
    CHECK(python(csv(test::heron_ford, CsvRows::session, {.lane = 2}), "[r['metres'] for r in rows]") ==
          "['900', '400', '300']\n");
    CHECK(python(csv(test::heron_ford, CsvRows::week),
                 "[(r['week'], r['from'], r['name'], r['sessions'], r['metres']) for r in rows]") ==
          "[('1', '2027-06-07', 'Ease in', '2', '1400'), ('2', '2027-06-14', '', '1', '300')]\n");
    CHECK(csv("set \"a\" = 100\n", CsvRows::week) == csv_head(CsvRows::week, false));
}

TEST_CASE("many plans in one table", "[programs]") {
    for (auto const rows : {CsvRows::line, CsvRows::session, CsvRows::week}) {
        auto text = csv_head(rows, true);
        std::string expected;
        for (std::uint64_t seed = 1; seed <= 1000; ++seed) {
            auto const read = support::read_plan(test::generate({.seed = seed}).text);
            REQUIRE(read.error() == "");
            auto const& plan = read.plan();
            ExportOptions options;
            options.file = std::to_string(seed) + ".swim";
            auto const before = text.size();
            plan_csv(plan, options, rows, [&](std::string_view piece) { text += piece; });
            if (rows == CsvRows::session && text.size() > before) {
                calc::Reckoner reckoner{plan};
                std::int64_t reps = 0;
                for (auto const& session : plan.sessions) {
                    auto const sums = reckoner.of_session(session);
                    reps += sums.swum(calc::lowest(sums.lanes())).reps;
                }
                expected += options.file + " " + std::to_string(reps) + "\n";
            }
        }
        if (rows == CsvRows::session) {
            CHECK(python(text,
                         "'\\n'.join(f + ' ' + str(sum(int(r['reps']) for r in rows if r['file'] == f)) "
                         "for f in dict.fromkeys(r['file'] for r in rows))") == expected);
        } else {
            CHECK(python(text, "len(rows) > 1000") == "True\n");
        }
    }
}

TEST_CASE("nasty names stay text", "[programs]") {
    for (auto const rows : {CsvRows::line, CsvRows::session, CsvRows::week}) {
        for (auto const& name :
             {std::string{test::nasty}, std::string{"=cmd()"}, std::string{" @x"}, std::string{"\"-1"}}) {
            auto const text = csv(test::plan_called(name), rows);
            CHECK(python(text,
                         "[c for r in rows for k, c in r.items() if c.lstrip('\\'\" ')[:1] in list('=+-@') "
                         "and '\\'' not in c[:4]]") == "[]\n");
            CHECK(text.find('\t') == std::string::npos);
            CHECK(text.find("\xE2\x80\xAE") == std::string::npos);
            // opened where a semicolon separates, no cell of it is a formula either
            CHECK(python(text, "[c for row in csv.reader(io.StringIO(text), delimiter=';') for c in row "
                               "if c.strip()[:1] in ['=', '+', '-', '@']]") == "[]\n");
        }
    }
}

} // namespace lengthwise::report
