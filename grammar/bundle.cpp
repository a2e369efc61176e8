#include "bundle.hpp"

#include "codes.hpp"
#include "limits.hpp"
#include "parse.hpp"

#include <algorithm>
#include <fmt/core.h>
#include <string_view>
#include <unordered_set>
#include <utility>
#include <vector>

namespace lengthwise::grammar {
namespace {

/// The path up to its last slash, the slash included; nothing without one.
std::string folder_of(std::string_view path) {
    return std::string{path.substr(0, path.rfind('/') + 1)};
}

/// Statements that are well placed in a plan's file and have no place in an included one.
/// (Sections and items outside a session are the parser's findings already.)
bool belongs_to_plan(Kind kind) {
    switch (kind) {
    case Kind::plan:
    case Kind::race:
    case Kind::swimmer:
    case Kind::before:
    case Kind::pool:
    case Kind::pool_open_water:
    case Kind::threshold:
    case Kind::default_rest:
    case Kind::factor:
    case Kind::limit:
    case Kind::allow:
    case Kind::note_line:
    case Kind::week:
    case Kind::session:
        return true;
    default:
        return false;
    }
}

/// The first such statement from a node of the top level on.
std::optional<std::uint32_t> next_of_plan(Tree const& tree, std::uint32_t from) {
    for (auto i = from; i < tree.size(); i = tree.next(i)) {
        if (belongs_to_plan(tree.nodes[i].kind)) {
            return i;
        }
    }
    return std::nullopt;
}

/// The word a statement begins with.
Span first_word(Tree const& tree, std::uint32_t node) {
    auto const begin = tree.nodes[node].begin;
    auto const text = tree.text.substr(begin - tree.base);
    auto const end = std::min(text.find_first_of(" \t\r\n"), text.size());
    return {begin, begin + static_cast<std::uint32_t>(end)};
}

/// Reads the root and, file after file, what each includes.
class Gathering {
  public:
    Gathering(Bundle& bundle, Reader& reader) : bundle_(bundle), reader_(reader) {}

    void run(std::string name, std::string text, std::optional<std::string> const& path) {
        auto home = path ? resolve_root(*path) : std::string{};
        folder_ = folder_of(home);
        auto const size = text.size();
        bool const too_big = size > limits::file_bytes;
        add({std::move(home), {}, 0}, std::move(name), too_big ? std::string{} : std::move(text));
        if (too_big) {
            error({}, fmt::format("the file has {} bytes, at most {} may be", size, limits::file_bytes), {});
        }
        for (std::size_t i = 0; i < bundle_.files.size(); ++i) {
            follow_includes(i);
        }
    }

  private:
    struct Origin {
        std::string path; ///< where it really lies; empty for standard input
        Span included_at; ///< the statement that first reached it; empty for the root
        int depth = 0;    ///< how many includes lie between it and the root
    };

    std::string resolve_root(std::string const& path) {
        auto resolved = reader_.resolve_links(path);
        if (auto const* const refusal = std::get_if<Reader::Refusal>(&resolved)) {
            no_folder_ = fmt::format("cannot find this plan's folder: {}", refusal->reason);
            return {};
        }
        return std::move(std::get<Reader::Path>(resolved).absolute);
    }

    void add(Origin origin, std::string name, std::string text) {
        auto const base = bundle_.files.empty() ? 0 : bundle_.files.back().source.end() + 1;
        bytes_ += text.size();
        // The tree views the source's text, so the source must stand in its place first.
        auto& file = bundle_.files.emplace_back(File{Source{std::move(name), std::move(text), base}, {}});
        auto parsed = parse(file.source);
        file.tree = std::move(parsed.tree);
        bundle_.findings.append(parsed.findings);
        origins_.push_back(std::move(origin));
    }

    void follow_includes(std::size_t index) {
        auto const& tree = bundle_.files[index].tree;
        for (std::uint32_t i = 0; i + 1 < tree.size(); i = tree.next(i)) {
            if (tree.nodes[i].kind == Kind::include && tree.nodes[i + 1].kind == Kind::name) {
                follow(index, cover(tree.span(i), tree.span(i + 1)), unescape(tree.raw_string(i + 1)));
            }
        }
    }

    void follow(std::size_t from, Span at, std::string const& path) {
        auto const& origin = origins_[from];
        if (origin.path.empty()) {
            error(at, no_folder_, "save it as a file first");
        } else if (path.empty() || path.front() == '/') {
            error(at, "an include's path starts at its own file's folder", "include \"drills.swim\"");
        } else if (auto real = resolve(at, origin, path); !real.empty()) {
            reach(from, at, path, std::move(real));
        }
    }

    /// Where the include really lies; empty after an error.
    std::string resolve(Span at, Origin const& origin, std::string const& path) {
        auto resolved = reader_.resolve_links(folder_of(origin.path) + path);
        if (auto const* const refusal = std::get_if<Reader::Refusal>(&resolved)) {
            unreadable(at, path, refusal->reason);
            return {};
        }
        auto& real = std::get<Reader::Path>(resolved).absolute;
        if (!(real + '/').starts_with(folder_)) {
            error(at, fmt::format("{} lies outside the plan's folder", path),
                  fmt::format("move it beside {} or below", bundle_.root().source.name()));
            return {};
        }
        return std::move(real);
    }

    void reach(std::size_t from, Span at, std::string const& path, std::string real) {
        if (real == origins_.front().path) {
            check_root(at, path);
        } else if (reached_.insert(real).second && within_limits(from, at)) {
            read(from, at, path, std::move(real));
        }
    }

    /// The root may be included again only if it is a file of sets itself.
    void check_root(Span at, std::string const& path) {
        if (next_of_plan(bundle_.root().tree, 0)) {
            error(at,
                  fmt::format("{} is this plan itself; an included file holds only set and include", path),
                  "move its sets to a file of their own");
        }
    }

    bool within_limits(std::size_t from, Span at) {
        auto const depth = origins_[from].depth + 1;
        if (depth > limits::include_depth) {
            error(at,
                  fmt::format("includes are {} deep here, at most {} may be", depth, limits::include_depth),
                  {});
            return false;
        }
        if (bundle_.files.size() >= limits::include_files) {
            error(at,
                  fmt::format("this is file {} of the plan, at most {} may be", bundle_.files.size() + 1,
                              limits::include_files),
                  {});
            return false;
        }
        return true;
    }

    void read(std::size_t from, Span at, std::string const& path, std::string real) {
        auto result = reader_.read(real, limits::file_bytes);
        if (auto const* const refusal = std::get_if<Reader::Refusal>(&result)) {
            unreadable(at, path, refusal->reason);
            return;
        }
        auto& text = std::get<Reader::Text>(result).bytes;
        if (bytes_ + text.size() > limits::bundle_bytes) {
            error(at,
                  fmt::format("with {} the plan has {} bytes, at most {} may be", path, bytes_ + text.size(),
                              limits::bundle_bytes),
                  {});
            return;
        }
        auto name = folder_of(bundle_.files[from].source.name()) + path;
        auto const depth = origins_[from].depth + 1;
        add({std::move(real), at, depth}, std::move(name), std::move(text));
        check_included();
    }

    void check_included() {
        auto const& tree = bundle_.files.back().tree;
        for (auto i = next_of_plan(tree, 0); i; i = next_of_plan(tree, tree.next(*i))) {
            bundle_.findings.add({
                .severity = Severity::error,
                .rule = code::include,
                .span = first_word(tree, *i),
                .message = "an included file holds only set and include",
                .hint = fmt::format("write it in {}", bundle_.root().source.name()),
                .related = {{origins_.back().included_at, "included here"}},
            });
        }
    }

    void unreadable(Span at, std::string_view path, std::string_view reason) {
        error(at, fmt::format("cannot read {}: {}", path, reason), {});
    }

    void error(Span at, std::string message, std::string hint) {
        bundle_.findings.add({
            .severity = Severity::error,
            .rule = code::include,
            .span = at,
            .message = std::move(message),
            .hint = std::move(hint),
        });
    }

    Bundle& bundle_;
    Reader& reader_;
    std::string no_folder_ = "standard input has no folder to include from";
    std::string folder_;          ///< of the root; all includes lie in it or below
    std::vector<Origin> origins_; ///< beside Bundle::files
    std::unordered_set<std::string> reached_;
    std::uint64_t bytes_ = 0;
};

} // namespace

File const& Bundle::file_of(std::uint32_t offset) const {
    auto const after =
        std::ranges::upper_bound(files, offset, {}, [](File const& f) { return f.source.base(); });
    return *std::prev(after);
}

Bundle bundle(std::string name, std::string text, std::optional<std::string> const& path, Reader& reader) {
    Bundle result;
    Gathering{result, reader}.run(std::move(name), std::move(text), path);
    result.findings.sort_by_place();
    return result;
}

} // namespace lengthwise::grammar
