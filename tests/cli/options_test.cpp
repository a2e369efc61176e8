#include "cli/help.hpp"
#include "cli/options.hpp"
#include "cli/values.hpp"

#include <catch2/catch.hpp>

#include <algorithm>

using namespace lengthwise;
using namespace lengthwise::cli;

namespace {

template <typename Command>
Command read(std::vector<std::string> const& arguments) {
    auto const options = read_options(arguments);
    auto const* const misuse = std::get_if<Misuse>(&options);
    INFO((misuse == nullptr ? "" : misuse->problem));
    REQUIRE(std::holds_alternative<Command>(options));
    return std::get<Command>(options);
}

std::string problem(std::vector<std::string> const& arguments) {
    return read<Misuse>(arguments).problem;
}

} // namespace

TEST_CASE("options of tally") {
    auto const tally = read<Tally>({"tally",   "a.swim",  "--week", "2",    "b.swim",   "--session=High hall",
                                    "--lane",  "3",       "--by",   "gear", "--format", "json",
                                    "--ascii", "--width", "60",     "-o",   "t.json",   "--force",
                                    "--color", "never"});
    CHECK(tally.files == std::vector<std::string>{"a.swim", "b.swim"});
    CHECK(tally.wish.week == 2U);
    CHECK(tally.wish.session == "High hall");
    CHECK(tally.wish.lane == 3);
    CHECK(tally.by == calc::By::gear);
    CHECK(tally.format == Format::json);
    CHECK(tally.look.ascii);
    CHECK(tally.look.width == 60U);
    CHECK(tally.look.colour == Colour::never);
    CHECK(tally.target.file == "t.json");
    CHECK(tally.target.force);
}

TEST_CASE("what is not said stays open") {
    auto const tally = read<Tally>({"tally"});
    CHECK(tally.files.empty());
    CHECK_FALSE(tally.wish.week.has_value());
    CHECK_FALSE(tally.wish.session.has_value());
    CHECK_FALSE(tally.wish.lane.has_value());
    CHECK_FALSE(tally.by.has_value());
    CHECK(tally.format == Format::text);
    CHECK(tally.look.colour == Colour::automatic);
    CHECK_FALSE(tally.target.file.has_value());
}

TEST_CASE("options of deck, check, tidy, explain") {
    auto const deck = read<Deck>({"deck", "a.swim", "--pool", "33 1/3 m", "--today", "2027-05-04"});
    CHECK(deck.pool == Pool::of(Distance::units(1'000'000), Unit::metre));
    CHECK(deck.today == parse_date("2027-05-04"));
    auto const queue = read<Deck>({"deck", "a.swim", "--start", "7:05", "--gap", "10s", "--swimmers", "4"});
    CHECK(queue.start == TimeOfDay{7 * 60 + 5});
    CHECK(queue.gap == Duration::seconds(10));
    CHECK(queue.swimmers == 4);
    for (auto const* const time : {"7", "24:00", "07:60", "Tue", "07:00 for 45min", ""}) {
        INFO(time);
        CHECK(problem({"deck", "a.swim", "--start", time}).starts_with("--start takes a time of day, 07:00"));
    }
    for (auto const* const gap : {"5", "0s", "61s", "5-10s", "as needed"}) {
        INFO(gap);
        CHECK(problem({"deck", "a.swim", "--gap", gap}).starts_with("--gap takes seconds, 1s to 60s"));
    }
    for (auto const* const swimmers : {"1", "21", "four"}) {
        CHECK(problem({"deck", "a.swim", "--swimmers", swimmers}).starts_with("--swimmers takes"));
    }
    CHECK(read<Check>({"check", "--strict"}).strict);
    CHECK(read<Tidy>({"tidy", "--check", "-"}).check);
    CHECK(read<Tidy>({"tidy", "--stdout", "-"}).to_out);
    CHECK(read<Explain>({"explain", "race-rep"}).word == "race-rep");
    CHECK(read<Explain>({"explain"}).word.empty());
}

TEST_CASE("options of cards") {
    auto const cards = read<Cards>({"cards",    "a.swim",     "--size", "a6",        "--sheet", "letter",
                                    "--margin", "6.5mm",      "--hole", "--back",    "pace",    "--copies",
                                    "2",        "--distance", "1.5m",   "--preview", "c.svg",   "--format",
                                    "png",      "--swimmer",  "Ada",    "--week",    "2"});
    CHECK(cards.size == "a6");
    CHECK(cards.letter);
    CHECK(cards.margin == Approx(6.5));
    CHECK(cards.hole);
    CHECK(cards.back == report::BackKind::pace);
    CHECK(cards.copies == 2U);
    CHECK(cards.distance == Approx(1500));
    CHECK(cards.preview == "c.svg");
    CHECK(cards.png);
    CHECK(cards.wish.swimmer == "Ada");
    auto const usual = read<Cards>({"cards", "a.swim"});
    CHECK(usual.size == "quarter");
    CHECK(usual.distance == Approx(700));
    CHECK(usual.margin == Approx(6));
    CHECK(problem({"cards", "a.swim", "b.swim"}) == "cards takes one file");
    CHECK(problem({"cards", "--distance", "10m"}).starts_with("--distance takes"));
}

TEST_CASE("sizes in millimetres") {
    CHECK(millimetres("1m").value() == Approx(1000));
    CHECK(millimetres("70 cm").value() == Approx(700));
    CHECK(millimetres("0.755m").value() == Approx(755));
    CHECK(millimetres("6mm").value() == Approx(6));
    CHECK(millimetres("2in").value() == Approx(50.8));
    for (auto const* text : {"", "m", "6", "6 mm mm", "1.2.3m", "-1m", "1.2345m", "1,5m", "1e3mm"}) {
        INFO(text);
        CHECK_FALSE(millimetres(text).has_value());
    }
}

TEST_CASE("an option said twice counts as said last") {
    CHECK(read<Tally>({"tally", "--week", "1", "--week", "2"}).wish.week == 2U);
}

TEST_CASE("names that look like options stand behind two hyphens") {
    CHECK(read<Tally>({"tally", "--ascii", "--", "--help", "-o"}).files ==
          std::vector<std::string>{"--help", "-o"});
    CHECK(read<Tally>({"tally", "-"}).files == std::vector<std::string>{"-"});
    CHECK(read<Tally>({"tally", "{}", "[a,b]", ""}).files == std::vector<std::string>{"{}", "[a,b]", ""});
}

TEST_CASE("what cannot be read is said in words") {
    CHECK(problem({"tally", "--week"}) == "--week takes a week's number, 1 to 999");
    CHECK(problem({"tally", "--week", "0"}) == "--week takes a week's number, 1 to 999, not \"0\"");
    CHECK(problem({"tally", "--week", "1000"}) == "--week takes a week's number, 1 to 999, not \"1000\"");
    CHECK(problem({"tally", "--week", "2x"}) == "--week takes a week's number, 1 to 999, not \"2x\"");
    CHECK(problem({"tally", "--lane", "101"}) == "--lane takes a lane's number, 1 to 100, not \"101\"");
    CHECK(problem({"tally", "--by", "colour"}) ==
          "--by takes stroke, mode, effort, gear, section or swimmer, not \"colour\"");
    CHECK(problem({"tally", "--width", "39"}) == "--width takes columns, 40 to 400, not \"39\"");
    CHECK(problem({"deck", "--today", "2027-02-29"}) ==
          "--today takes a date, 2027-05-04, not \"2027-02-29\"");
    CHECK(problem({"deck", "a.swim", "b.swim"}) == "deck takes one file");
    CHECK(problem({"tally", "--session", "\x1b[2J", "--week", "\x1b[2J"}).find('\x1b') == std::string::npos);
}

TEST_CASE("what is not known is answered with what is near") {
    CHECK(problem({"tally", "--sesion", "Tue"}) == "tally has no option --sesion; did you mean --session?");
    CHECK(problem({"tally", "--weke=3"}) == "tally has no option --weke; did you mean --week?");
    CHECK(problem({"tally", "-x"}) == "tally has no option -x; lengthwise tally --help shows all");
    CHECK(problem({"tally", "--strict"}) ==
          "tally has no option --strict; lengthwise tally --help shows all");
    CHECK(problem({"chekc"}) == "no command \"chekc\"; did you mean \"check\"?");
    CHECK(problem({"--verison"}) == "no option --verison; did you mean --version?");
    CHECK(problem({"--hepl"}) == "no option --hepl; did you mean --help?");
    CHECK(problem({"swim"}) == "no command \"swim\"; lengthwise --help shows all");
    CHECK(problem({"--tally"}) == "no command \"--tally\"; did you mean \"tally\"?");
    CHECK(problem({"plan.swim"}) == "what to do with plan.swim? try: lengthwise tally plan.swim");
    CHECK(problem({"a\x1b.swim"}).find('\x1b') == std::string::npos);
}

TEST_CASE("help and version are answers") {
    CHECK(read<Answer>({}).text == general_help());
    CHECK(read<Answer>({"--help"}).text == general_help());
    CHECK(read<Answer>({"help", "deck"}).text == help_of("deck"));
    CHECK(read<Answer>({"deck", "--help", "--nonsense"}).text == help_of("deck"));
    CHECK(read<Answer>({"--version"}).text.starts_with("lengthwise "));
    CHECK(problem({"help", "chekc"}) == "no command \"chekc\"; did you mean \"check\"?");
}

TEST_CASE("every command has a help, that help every option, and two examples") {
    for (auto const& [command, gist, takes] : commands) {
        INFO(command);
        auto const text = help_of(command);
        auto const padded =
            std::string{command} + std::string(std::max<std::size_t>(8 - command.size(), 1), ' ');
        CHECK(general_help().find("  " + padded) != std::string::npos);
        CHECK(general_help().find(gist) != std::string::npos);
        CHECK(text.starts_with("lengthwise " + std::string{command}));
        CHECK(text.substr(0, text.find('\n')).find(takes) != std::string::npos);

        for (auto const& option : option_names(command)) {
            INFO(option);
            auto const hidden = option == "-h" || option == "--help" || option == "--output";
            CHECK((hidden || text.find(option) != std::string::npos));
        }
        auto examples = 0;
        auto const example = "\n  lengthwise " + std::string{command};
        for (auto at = text.find(example); at != std::string::npos; at = text.find(example, at + 1)) {
            ++examples;
        }
        CHECK(examples >= 2);
        CHECK(std::ranges::count(text, '\n') <= 40);
    }
}

TEST_CASE("a pool is what the notation says it is") {
    CHECK(pool("25m") == Pool::of(Distance::metres(25), Unit::metre));
    CHECK(pool("25") == Pool::of(Distance::metres(25), Unit::metre));
    CHECK(pool("25yd") == Pool::of(Distance::yards(25), Unit::yard));
    for (auto const* text :
         {"", "open water", "0m", "1001m", "25m\nplan \"x\"", "25m # here", "25 m 30 m", "-25"}) {
        INFO(text);
        CHECK_FALSE(pool(text).has_value());
    }
}

TEST_CASE("a time that is left is one time with a unit") {
    CHECK(duration("20min") == Duration::minutes(20));
    CHECK(duration("20 min") == Duration::minutes(20));
    CHECK(duration("90s") == Duration::seconds(90));
    CHECK(duration("1:30") == Duration::seconds(90));
    CHECK(duration("1:02:03") == Duration::seconds(3723));
    for (auto const* text : {"", "20", "20-40s", "0s", "-1min", "as needed", "25h", "1:30\nplan \"x\""}) {
        INFO(text);
        CHECK_FALSE(duration(text).has_value());
    }
}

TEST_CASE("a row without the time that is left is asked about") {
    CHECK(problem({"deck", "plan.swim", "--after", "3"}) ==
          "how much time is left after row 3? add --left 20min");
    CHECK(problem({"deck", "plan.swim", "--left", "20min", "--after", "0"}) ==
          "--after takes a row's number, as deck shows it, not \"0\"");
}
