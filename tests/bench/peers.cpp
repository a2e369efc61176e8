#include "reader.hpp"

#include <boost/json.hpp>
#include <nlohmann/json.hpp>
#include <simdjson.h>

#include <cstddef>
#include <utility>

/// The peers read the JSON into their own trees, and no more: they know nothing of
/// units, defaults or sums.
namespace lengthwise::bench {

namespace {

std::uint64_t sessions_in(boost::json::value const& plan) {
    std::uint64_t sessions = 0;
    for (auto const& week : plan.at("weeks").as_array()) {
        sessions += week.at("sessions").as_array().size();
    }
    return sessions;
}

class BoostDefault final : public Reader {
  public:
    [[nodiscard]] std::string_view name() const override { return "boost-default"; }
    [[nodiscard]] std::string_view title() const override { return "Boost.JSON, default storage"; }
    [[nodiscard]] Spelling spelling() const override { return Spelling::json; }
    void load(std::string text) override { text_ = std::move(text); }
    void read() override { plan_ = boost::json::parse(text_); }
    [[nodiscard]] std::uint64_t sessions() const override { return sessions_in(plan_); }
    void release() override {
        plan_ = nullptr;
        text_ = {};
    }

  private:
    std::string text_;
    boost::json::value plan_;
};

class BoostMonotonic final : public Reader {
  public:
    [[nodiscard]] std::string_view name() const override { return "boost-monotonic"; }
    [[nodiscard]] std::string_view title() const override { return "Boost.JSON, monotonic"; }
    [[nodiscard]] Spelling spelling() const override { return Spelling::json; }
    void load(std::string text) override { text_ = std::move(text); }
    void read() override {
        auto storage = boost::json::make_shared_resource<boost::json::monotonic_resource>();
        plan_.emplace(boost::json::parse(text_, std::move(storage)));
    }
    [[nodiscard]] std::uint64_t sessions() const override { return sessions_in(*plan_); }
    void release() override {
        plan_.reset();
        text_ = {};
    }

  private:
    std::string text_;
    std::optional<boost::json::value>
        plan_; ///< optional, as an assigned value would be copied out of its storage
};

class Simdjson final : public Reader {
  public:
    explicit Simdjson(bool warm) : warm_(warm) {}
    [[nodiscard]] std::string_view name() const override { return warm_ ? "simdjson" : "simdjson-fresh"; }
    [[nodiscard]] std::string_view title() const override {
        return warm_ ? "simdjson DOM, buffers warm" : "simdjson DOM, fresh";
    }
    [[nodiscard]] Spelling spelling() const override { return Spelling::json; }
    void load(std::string text) override { text_ = simdjson::padded_string{std::string_view{text}}; }
    void read() override { plan_ = parser_.parse(text_); }
    [[nodiscard]] std::uint64_t sessions() const override {
        std::uint64_t sessions = 0;
        for (auto const week : plan_["weeks"].get_array()) {
            // An array's own size() stops counting at 2^24 - 1; weeks are far smaller.
            sessions += week["sessions"].get_array().value().size();
        }
        return sessions;
    }
    void release() override {
        text_ = simdjson::padded_string{};
        if (!warm_) {
            parser_ = simdjson::dom::parser{};
        }
    }

  private:
    bool warm_; ///< the parser keeps its buffers from one text to the next
    simdjson::padded_string text_;
    simdjson::dom::parser parser_;
    simdjson::dom::element plan_;
};

class Nlohmann final : public Reader {
  public:
    [[nodiscard]] std::string_view name() const override { return "nlohmann"; }
    [[nodiscard]] std::string_view title() const override { return "nlohmann"; }
    [[nodiscard]] Spelling spelling() const override { return Spelling::json; }
    void load(std::string text) override { text_ = std::move(text); }
    void read() override { plan_ = nlohmann::json::parse(text_); }
    [[nodiscard]] std::uint64_t sessions() const override {
        std::uint64_t sessions = 0;
        for (auto const& week : plan_.at("weeks")) {
            sessions += week.at("sessions").size();
        }
        return sessions;
    }
    void release() override {
        plan_ = nullptr;
        text_ = {};
    }

  private:
    std::string text_;
    nlohmann::json plan_;
};

} // namespace

Readers peer_readers() {
    Readers readers;
    readers.push_back(std::make_unique<BoostMonotonic>());
    readers.push_back(std::make_unique<BoostDefault>());
    readers.push_back(std::make_unique<Simdjson>(true));
    readers.push_back(std::make_unique<Simdjson>(false));
    readers.push_back(std::make_unique<Nlohmann>());
    return readers;
}

} // namespace lengthwise::bench
