#pragma once

#include <cstdint>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace lengthwise::bench {

enum class Spelling : std::uint8_t { notation, json };

/// One way to read the generated plan, as the table's rows compare them. A round is
/// load, read, sessions, release; only `read` is timed.
class Reader {
  public:
    Reader() = default;
    Reader(Reader const&) = delete;
    Reader& operator=(Reader const&) = delete;
    virtual ~Reader() = default;

    [[nodiscard]] virtual std::string_view name() const = 0; ///< one word, as children are asked for it
    [[nodiscard]] virtual std::string_view title() const = 0;
    [[nodiscard]] virtual Spelling spelling() const = 0;

    virtual void load(std::string text) = 0;
    virtual void read() = 0; ///< throws when the text cannot be read
    /// How many sessions it found, walked from the result: a check that it did read them.
    [[nodiscard]] virtual std::uint64_t sessions() const = 0;
    /// What it says lane 1 swims, if it works that out.
    [[nodiscard]] virtual std::optional<std::int64_t> metres() const { return std::nullopt; }
    virtual void release() = 0;
};

using Readers = std::vector<std::unique_ptr<Reader>>;

[[nodiscard]] Readers our_readers();  ///< parse; road (parse, resolve, tally); timed (with times); check
[[nodiscard]] Readers peer_readers(); ///< of the JSON

/// Nothing when there is no reader of that name.
[[nodiscard]] std::unique_ptr<Reader> find_reader(std::string_view name);

} // namespace lengthwise::bench
