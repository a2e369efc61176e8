#include "support/found.hpp"

#include <catch2/catch.hpp>

#include <string>

using lengthwise::support::first_hint;
using lengthwise::support::found;
using Found = std::vector<std::string>;

TEST_CASE("calendar: sessions in order, none twice, none after the race") {
    std::string const head = "race sprint on 2027-06-13\npool 25m\n";
    auto const sessions = [&](std::string const& days) {
        std::string text = head;
        for (std::size_t at = 0; at < days.size();) {
            auto const end = std::min(days.find(' ', at), days.size());
            text += "session " + days.substr(at, end - at) + "\nmain\n750\n";
            at = end + 1;
        }
        return found("calendar", text);
    };
    CHECK(sessions("2027-06-10 2027-06-11 2027-06-12").empty());
    CHECK(sessions("2027-06-10 2027-06-13").empty()); // on race day itself
    CHECK(sessions("2027-06-10 2027-06-14") ==
          Found{"6: error: this session is on Mon 14 June 2027, after the race on Sun 13 June 2027"});
    CHECK(sessions("2027-06-10 2027-06-10") == Found{"6: error: two sessions are on Thu 10 June 2027"});
    CHECK(sessions("2027-06-10 2027-06-09") ==
          Found{"6: error: this session is on Wed 9 June 2027, the one above it on Thu 10 June 2027"});
}

TEST_CASE("calendar: weeks start after each other") {
    auto const weeks = [](std::string const& second) {
        return found("calendar", "pool 25m\nweek 1 from 2027-04-19\nsession Tue\nmain\n100\nweek 2 from " +
                                     second + "\nsession Tue\nmain\n100\n");
    };
    CHECK(weeks("2027-04-26").empty());
    CHECK(weeks("2027-04-20").size() == 1); // later, but its Tuesday is the same day
    CHECK(weeks("2027-04-19").size() == 2); // the week and its session
    CHECK(weeks("2027-04-12").front() ==
          "6: error: week 2 starts on Mon 12 April 2027, not after week 1 on Mon 19 April 2027");
}

TEST_CASE("calendar: what has no date has no order") {
    CHECK(found("calendar", "pool 25m\nsession Wed\nmain\n100\nsession Tue\nmain\n100\n").empty());
}

TEST_CASE("calendar: two sessions a day where that is meant") {
    CHECK(found("calendar", "pool 25m\nallow calendar \"camp\"\nsession 2027-06-10\nmain\n100\n"
                            "session 2027-06-10\nmain\n100\n")
              .empty());
}
