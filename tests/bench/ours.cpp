#include "reader.hpp"

#include "calc/totals.hpp"
#include "check/register.hpp"
#include "grammar/bundle.hpp"
#include "grammar/parse.hpp"
#include "no_files.hpp"
#include "plan/resolve.hpp"
#include "report/summary.hpp"

#include <algorithm>
#include <stdexcept>
#include <utility>

namespace lengthwise::bench {

namespace {

constexpr char const* plan_name = "bench.swim";

[[noreturn]] void stop_at(Diagnostics const& findings, std::string_view stage) {
    auto const& first = findings.kept().front();
    throw std::runtime_error{std::string{stage} + " finds an error at byte " +
                             std::to_string(first.span.begin) + ": " + first.message};
}

class Parse final : public Reader {
  public:
    [[nodiscard]] std::string_view name() const override { return "parse"; }
    [[nodiscard]] std::string_view title() const override { return "lengthwise, parse"; }
    [[nodiscard]] Spelling spelling() const override { return Spelling::notation; }
    void load(std::string text) override { source_.emplace(plan_name, std::move(text)); }
    void read() override {
        result_ = grammar::parse(*source_);
        if (result_.findings.has_errors()) {
            stop_at(result_.findings, "parse");
        }
    }
    [[nodiscard]] std::uint64_t sessions() const override {
        return static_cast<std::uint64_t>(
            std::count_if(result_.tree.nodes.begin(), result_.tree.nodes.end(),
                          [](grammar::Node const& node) { return node.kind == grammar::Kind::session; }));
    }
    void release() override {
        result_ = {};
        source_.reset();
    }

  private:
    std::optional<Source> source_;
    grammar::ParseResult result_;
};

/// Every sum that `tally` can show, lane by lane: of each section, added up to its
/// session, week and plan. The plan's in its lowest lane is handed back.
Distance sum_up(plan::Plan const& plan) {
    calc::Reckoner reckoner{plan};
    calc::Sums all;
    for (auto const& week : plan.weeks) {
        calc::Sums of_week;
        for (auto i = week.sessions.first; i < week.sessions.end(); ++i) {
            calc::Sums of_session;
            auto const& session = plan.sessions[i];
            for (auto j = session.sections.first; j < session.sections.end(); ++j) {
                of_session.add(reckoner.of_section(session, plan.sections[j]));
            }
            of_week.add(of_session);
        }
        all.add(of_week);
    }
    return all.swum(calc::lowest(all.lanes())).distance;
}

/// The same sums with what all of it takes, as the screens ask for them.
Distance sum_up_and_time(plan::Plan const& plan) {
    report::Summary summary{plan};
    report::Tally all;
    for (auto week = summary.weeks().first; week < summary.weeks().end(); ++week) {
        report::Tally of_week;
        auto const run = summary.sessions(week);
        for (auto session = run.first; session < run.end(); ++session) {
            (void)summary.sections(session);
            of_week.add(summary.session(session));
        }
        all.add(of_week);
    }
    auto const figures = all.swum(all.lane());
    if (!figures.time()) {
        throw std::runtime_error{"a plan with a threshold has a time that is not known"};
    }
    return figures.totals.distance;
}

/// How far a text is taken.
enum class End : std::uint8_t { tally, times, check };

class Road final : public Reader {
  public:
    Road(End end, std::string_view name, std::string_view title) : end_(end), name_(name), title_(title) {}
    [[nodiscard]] std::string_view name() const override { return name_; }
    [[nodiscard]] std::string_view title() const override { return title_; }
    [[nodiscard]] Spelling spelling() const override { return Spelling::notation; }
    void load(std::string text) override { text_ = std::move(text); }
    void read() override {
        bundle_.emplace(grammar::bundle(plan_name, std::move(text_), std::nullopt, no_files_));
        if (bundle_->findings.has_errors()) {
            stop_at(bundle_->findings, "parse");
        }
        resolved_ = plan::resolve(*bundle_);
        if (resolved_.findings.has_errors()) {
            stop_at(resolved_.findings, "resolve");
        }
        if (end_ == End::check) {
            findings_ = check::check(resolved_.plan);
            return;
        }
        auto const& plan = resolved_.plan;
        auto const swum = end_ == End::times ? sum_up_and_time(plan) : sum_up(plan);
        metres_ = swum.units() / Distance::per_metre;
    }
    [[nodiscard]] std::uint64_t sessions() const override { return resolved_.plan.sessions.size(); }
    [[nodiscard]] std::optional<std::int64_t> metres() const override { return metres_; }
    void release() override {
        findings_ = {};
        resolved_ = {};
        bundle_.reset();
        text_ = {};
    }

  private:
    End end_;
    std::string_view name_;
    std::string_view title_;
    std::string text_;
    NoFiles no_files_;
    std::optional<grammar::Bundle> bundle_;
    plan::Resolved resolved_;
    Diagnostics findings_;
    std::optional<std::int64_t> metres_;
};

} // namespace

Readers our_readers() {
    Readers readers;
    readers.push_back(std::make_unique<Parse>());
    readers.push_back(std::make_unique<Road>(End::tally, "road", "lengthwise, parse to tally"));
    readers.push_back(std::make_unique<Road>(End::times, "timed", "lengthwise, with times"));
    readers.push_back(std::make_unique<Road>(End::check, "check", "lengthwise, parse to check"));
    return readers;
}

std::unique_ptr<Reader> find_reader(std::string_view name) {
    for (auto readers : {our_readers, peer_readers}) {
        for (auto& reader : readers()) {
            if (reader->name() == name) {
                return std::move(reader);
            }
        }
    }
    return nullptr;
}

} // namespace lengthwise::bench
