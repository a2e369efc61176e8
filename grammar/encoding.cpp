#include "encoding.hpp"

#include "codes.hpp"
#include "lexeme.hpp"
#include "limits.hpp"

#include <algorithm>
#include <fmt/format.h>

namespace lengthwise::grammar {

namespace {

constexpr char32_t bom = 0xFEFF;

/// Whether a character may stand anywhere, quotes and comments included. A CR may
/// where an LF follows.
bool is_text(char32_t code) {
    return code == '\t' || code == '\n' || (code >= 0x20 && code < 0x7F) || (code > 0x9F && code != bom);
}

struct Block {
    bool plain = false;   ///< all of it is printable ASCII, tabs and LFs
    bool has_end = false; ///< of a line
};

/// Written so that compilers make vector instructions of it.
Block look_at(char const* block, std::size_t size) {
    unsigned char strange = 0;
    unsigned char ends = 0;
    for (std::size_t i = 0; i < size; ++i) {
        auto const c = static_cast<signed char>(block[i]); // beyond ASCII: below 0
        auto const end = static_cast<unsigned char>(c == '\n');
        auto const below = static_cast<unsigned char>(c < 0x20);
        auto const tab = static_cast<unsigned char>(c == '\t');
        auto const del = static_cast<unsigned char>(c == 0x7F);
        ends = static_cast<unsigned char>(ends | end);
        strange = static_cast<unsigned char>(strange | del | (below ^ end ^ tab));
    }
    return {strange == 0, ends != 0};
}

/// The first place from `at` on that is no text, or the first at or behind `stop`.
char const* first_fault(char const* at, char const* stop, char const* end) {
    while (at < stop) {
        if (*at >= ' ' && *at < 0x7F) { // most characters, where others stand between them
            ++at;
            continue;
        }
        auto const [code, bytes, well_formed] = decode(at, end);
        auto const line_end = code == '\r' && at + 1 != end && at[1] == '\n';
        if (!well_formed || (!is_text(code) && !line_end)) {
            return at;
        }
        at += bytes;
    }
    return at;
}

std::string hex(char const* at, char const* end) {
    std::string text;
    for (auto const* p = at; p != end && p < at + 2; ++p) {
        text += fmt::format("{}{:02X}", text.empty() ? "" : " ", static_cast<unsigned char>(*p));
    }
    return text;
}

Complaint bad_utf8(char const* at, char const* end) {
    auto const lead = static_cast<unsigned char>(*at);
    auto const alone = at + 1 == end || (static_cast<unsigned char>(at[1]) & 0xC0) != 0x80;
    Complaint c{.code = code::encoding, .from = at, .to = at + 1, .message = {}, .foreign = true};
    if (alone || lead < 0xC0) {
        auto const windows = lead < 0xA0;
        c.message = fmt::format("byte {} is not UTF-8; the file looks like {}", hex(at, at + 1),
                                windows ? "Windows-1252" : "Latin-1");
        c.hint = fmt::format("save it as UTF-8, or: iconv -f {} -t UTF-8 OLD > NEW",
                             windows ? "WINDOWS-1252" : "ISO-8859-1");
    } else {
        c.message = fmt::format("the bytes {} are not UTF-8", hex(at, end));
        c.hint = "save the file as UTF-8";
    }
    return c;
}

} // namespace

std::size_t bom_bytes(std::string_view text) {
    return text.starts_with("\xEF\xBB\xBF") ? 3 : 0;
}

bool is_clean(std::string_view text) {
    constexpr std::size_t size = 64;
    constexpr std::size_t long_line = limits::line_bytes / size - 1;
    auto const* const end = text.data() + text.size();
    auto const* checked = text.data() + bom_bytes(text); // characters may reach into the next block
    std::size_t without_end = 0;
    for (auto const* at = checked; at < end;) {
        auto const* const stop = at + std::min(size, static_cast<std::size_t>(end - at));
        auto const block = look_at(at, static_cast<std::size_t>(stop - at));
        without_end = block.has_end ? 0 : without_end + 1;
        if (without_end == long_line) {
            return false;
        }
        if (!block.plain) {
            checked = first_fault(std::max(checked, at), stop, end);
            if (checked < stop) {
                return false;
            }
        }
        at = stop;
    }
    return true;
}

std::optional<Complaint> complain_of_file(std::string_view text) {
    auto const* const at = text.data();
    if (text.size() > limits::file_bytes) {
        return Complaint{
            code::limit, at, at,
            fmt::format("the file has {} bytes, the limit is {} (256 MiB)", text.size(), limits::file_bytes),
            "split the plan, or include parts of it"};
    }
    if (text.starts_with("\xFF\xFE") || text.starts_with("\xFE\xFF")) {
        return Complaint{code::encoding, at, at + 2, "the file is UTF-16", "save it as UTF-8"};
    }
    if (auto const cr = text.find('\n') == text.npos ? text.find('\r') : text.npos; cr != text.npos) {
        return Complaint{code::encoding, at + cr, at + cr + 1, "the file's lines end in CR alone",
                         "save it with LF or CRLF line ends"};
    }
    return std::nullopt;
}

std::optional<Complaint> complain_of_line(char const* begin, char const* end) {
    auto const* const stop = end != begin && end[-1] == '\r' && *end == '\n' ? end - 1 : end;
    if (stop - begin > static_cast<std::ptrdiff_t>(limits::line_bytes)) {
        return Complaint{
            code::limit, begin, begin,
            fmt::format("the line has {} bytes, the limit is {}", stop - begin, limits::line_bytes),
            "a note or comment can be two lines"};
    }
    auto const* const at = first_fault(begin, stop, stop);
    if (at >= stop) {
        return std::nullopt;
    }
    auto const [code, bytes, well_formed] = decode(at, stop);
    if (!well_formed) {
        return bad_utf8(at, stop);
    }
    Complaint c{code::encoding, at, at + bytes, {}};
    if (code == 0) {
        c.message = "a NUL byte";
        c.hint = "delete it; was this file cut off or is it no text?";
    } else if (code == '\r') {
        c.message = "a CR without an LF";
        c.hint = "save the file with LF or CRLF line ends";
    } else if (code == bom) {
        c.message = "a byte order mark (U+FEFF) inside the file";
        c.hint = "delete it; it may only be the file's first character";
    } else {
        c.message = fmt::format("the control character U+{:04X}", static_cast<std::uint32_t>(code));
        c.hint = "delete it; of those only tab and line ends may stand in a file";
    }
    return c;
}

} // namespace lengthwise::grammar
