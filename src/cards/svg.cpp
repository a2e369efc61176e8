#include "cards/svg.hpp"

#include "report/markup.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <iterator>

namespace lengthwise::cards {
namespace {

constexpr double gap = 4;

/// At most two decimals, none that are zero.
std::string number(double value) {
    auto text = fmt::format("{:.2f}", value);
    text.erase(text.find_last_not_of('0') + 1);
    if (text.back() == '.') {
        text.pop_back();
    }
    return text == "-0" ? "0" : text;
}

class Writer {
  public:
    explicit Writer(std::string& out) : out_(out) {}

    void operator()(Text const& text) {
        auto const* const anchor = text.anchor == Anchor::right ? " text-anchor=\"end\"" : "";
        auto const* const weight = text.weight == Weight::semibold ? " class=\"b\"" : "";
        add("<text{}{} x=\"{}\" y=\"{}\" font-size=\"{}\" textLength=\"{}\">{}</text>\n", weight, anchor,
            number(text.at.x), number(text.at.y), number(text.em), number(text.width),
            report::markup(text.words));
    }
    void operator()(Line const& line) {
        add("<path d=\"M{} {}L{} {}\" stroke-width=\"{}\"/>\n", number(line.from.x), number(line.from.y),
            number(line.to.x), number(line.to.y), number(line.width));
    }
    void operator()(Frame const& frame) {
        add("<rect x=\"{}\" y=\"{}\" width=\"{}\" height=\"{}\" rx=\"{}\" stroke-width=\"{}\"/>\n",
            number(frame.at.x), number(frame.at.y), number(frame.size.width), number(frame.size.height),
            number(frame.radius), number(frame.line));
    }
    void operator()(Ring const& ring) {
        auto const x = number(ring.centre.x);
        auto const y = number(ring.centre.y);
        add("<circle cx=\"{}\" cy=\"{}\" r=\"{}\" stroke-width=\"0.2\"/>\n", x, y, number(ring.radius));
        add("<path d=\"M{} {}h2m-1 -1v2\" stroke-width=\"0.2\"/>\n", number(ring.centre.x - 1), y);
    }

  private:
    template <typename... Values>
    void add(fmt::format_string<Values...> form, Values&&... values) {
        fmt::format_to(std::back_inserter(out_), form, std::forward<Values>(values)...);
    }
    std::string& out_;
};

} // namespace

std::string svg(std::vector<Picture> const& pictures, std::string_view title) {
    Size all;
    for (auto const& picture : pictures) {
        all.width += picture.size.width + (all.width > 0 ? gap : 0);
        all.height = std::max(all.height, picture.size.height);
    }
    auto const width = number(all.width);
    auto const height = number(all.height);
    auto out = fmt::format("<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"{0}mm\" height=\"{1}mm\" "
                           "viewBox=\"0 0 {0} {1}\">\n<title>{2}</title>\n",
                           width, height, report::markup(title));
    out += "<style>text{font-family:Inter,'Noto Sans','DejaVu Sans',sans-serif;font-weight:500;"
           "font-feature-settings:'tnum','cv05','cv08';white-space:pre}.b{font-weight:600}"
           "path,rect,circle{fill:none;stroke:#000}</style>\n"
           "<rect width=\"100%\" height=\"100%\" style=\"fill:#fff;stroke:none\"/>\n";
    double x = 0;
    Writer writer{out};
    for (auto const& picture : pictures) {
        out += x > 0 ? fmt::format("<g transform=\"translate({})\">\n", number(x)) : "<g>\n";
        for (auto const& mark : picture.marks) {
            std::visit(writer, mark);
        }
        out += "</g>\n";
        x += picture.size.width + gap;
    }
    return out + "</svg>\n";
}

} // namespace lengthwise::cards
