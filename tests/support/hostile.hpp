#pragma once

#include <string>
#include <string_view>
#include <vector>

/// Inputs that nobody means well with, given to the built program.
namespace hostile {

enum class Fit {
    fine,    ///< it is a plan all the same: exit code 0
    finding, ///< an error of the text: exit code 1, with its place
    unread,  ///< left while it was read: exit code 2
    either   ///< the notation may go one way or the other; it must not fall
};

struct Input {
    std::string name;
    std::string bytes;
    Fit fit = Fit::finding;
    std::string says{}; ///< must stand in what is printed
};

/// A plan with one session whose main set is this line.
[[nodiscard]] std::string main_set(std::string_view line);

/// `text` n times.
[[nodiscard]] std::string times(std::size_t n, std::string_view text);

/// Gives the input to tally, check, deck, tidy and export, as the file "input.swim", and holds each to the
/// limits: the right exit code, a finding with its place, 1 s of processor time, 200 MB, nothing on
/// the terminal that could steer it.
void survive(Input const& input);

/// The same for a table; every row is tried, whatever becomes of the others.
void survive(std::vector<Input> const& inputs);

/// For what is already on the disk: the program's ways with `path`, seen from `folder`.
void survive_path(std::string const& folder, std::string const& path, std::vector<int> const& codes,
                  std::string const& says);

} // namespace hostile
