#pragma once

#include <cstdint>
#include <string>
#include <variant>
#include <vector>

/// A card or sheet as plain data: what stands where, in millimetres from its top left corner.
/// Everything is black. Who paints it needs to know nothing of swimming.
namespace lengthwise::cards {

struct Point {
    double x = 0;
    double y = 0;
};

struct Size {
    double width = 0;
    double height = 0;
};

enum class Weight : std::uint8_t { medium, semibold };
enum class Anchor : std::uint8_t { left, right };

/// Letters of one size on one line.
struct Text {
    Point at; ///< on the baseline, at the text's left or right end
    std::string words;
    double em = 0; ///< mm
    Weight weight = Weight::medium;
    Anchor anchor = Anchor::left;
    double width = 0; ///< mm, as measured

    [[nodiscard]] double left() const { return anchor == Anchor::left ? at.x : at.x - width; }
    [[nodiscard]] double right() const { return left() + width; }
};

struct Line {
    Point from;
    Point to;
    double width = 0;
};

/// A rectangle with round corners, its line in the middle of the edge.
struct Frame {
    Point at;
    Size size;
    double radius = 0;
    double line = 0;
};

/// Where a hole is to be punched: a circle with a cross in it.
struct Ring {
    Point centre;
    double radius = 0;
};

using Mark = std::variant<Text, Line, Frame, Ring>;

/// Texts stand in the order in which they are read.
struct Picture {
    Size size;
    std::vector<Mark> marks;
};

/// Puts a picture below what is there already, 4 mm between them.
void append(Picture& to, Picture const& more);

} // namespace lengthwise::cards
