#include "support/found.hpp"

#include <catch2/catch.hpp>

#include <string>

using lengthwise::support::first_hint;
using lengthwise::support::found;
using Found = std::vector<std::string>;

namespace {

Found rest_band(std::string const& lines, std::string const& head = "") {
    return found("rest-band", "pool 25m\n" + head + "session Tue\nmain\n" + lines);
}

} // namespace

TEST_CASE("rest-band: 20 to 40 s between endurance reps") {
    CHECK(rest_band("4 x 100 rest 20s\n4 x 100 rest 40s\n4 x 100 rest 20-40s\n").empty());
    CHECK(rest_band("4 x 100 rest 19s\n") ==
          Found{"4: note: 19 s of rest between reps, for endurance it is 20–40 s"});
    CHECK(rest_band("4 x 100 rest 41s\n").size() == 1);
    CHECK(rest_band("4 x 100 rest 19-40s\n").size() == 1);
    CHECK(rest_band("4 x 100 rest 20-41s\n").size() == 1);
    CHECK(rest_band("100, 200, 100 rest 45s\n").size() == 1);
}

TEST_CASE("rest-band: behind a single rep up to a minute") {
    CHECK(rest_band("400 rest 1min\n100\n").empty());
    CHECK(rest_band("400 rest 61s\n100\n").size() == 1);
    CHECK(rest_band("400 rest 10s\n100\n").size() == 1);
}

TEST_CASE("rest-band: a group's own rest, hard swims, kick, drills and send-offs are left alone") {
    CHECK(rest_band("3 x (100 rest 20s + 50 rest 20s) rest 2min\n").empty());
    CHECK(rest_band("4 x 50 hard rest 1min\n4 x 50 kick rest 10s\n4 x 50 drill rest 10s\n").empty());
    CHECK(rest_band("4 x 50 on 2:00\n4 x 50 rest as needed\n").empty());
    CHECK(rest_band("4 x 50 rest 1min, evens hard\n").empty());
    CHECK(rest_band("4 x 50 threshold rest 1min\n").size() == 1);
}

TEST_CASE("rest-band: a rest that comes down is said once") {
    CHECK(rest_band("4 x 100\n2 x 200\n3 x 50\n", "rest 50s\n").size() == 1);
    CHECK(rest_band("4 x 100\n2 x 200\n3 x 50\n", "rest 30s\n").empty());
}

TEST_CASE("rest-band: another band, here or for all") {
    CHECK(rest_band("4 x 100 rest 10s\n", "limit rest-band 10-60s\n").empty());
    CHECK(rest_band("4 x 100 rest 9s\n", "limit rest-band 10-60s\n").size() == 1);
    CHECK(rest_band("4 x 100 rest 61s\n", "limit rest-band 10-60s\n").size() == 1);
    CHECK(found("rest-band", "pool 25m\nlimit rest-band 10-60s\nsession Tue\nlimit rest-band 20-40s\n"
                             "main\n4 x 100 rest 10s\n")
              .size() == 1);
    CHECK(rest_band("4 x 100 rest 9s\n", "allow rest-band \"short rests in March\"\n").empty());
}
