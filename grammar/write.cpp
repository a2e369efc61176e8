#include "write.hpp"

#include "item_writer.hpp"
#include "page.hpp"

#include <utility>

namespace lengthwise::grammar {
namespace {

/// What opens a line of its own inside a week, session or section; all else belongs to
/// the line of that.
bool opens_line(Kind kind) {
    switch (kind) {
    case Kind::session:
    case Kind::section:
    case Kind::item:
    case Kind::pause:
    case Kind::note_line:
    case Kind::pool:
    case Kind::pool_open_water:
    case Kind::threshold:
    case Kind::default_rest:
    case Kind::factor:
    case Kind::limit:
    case Kind::allow:
    case Kind::bad:
        return true;
    default:
        return false;
    }
}

/// Leaves that stand on the line of the leaf before them.
bool continues_line(Kind kind) {
    return kind == Kind::name || kind == Kind::note || kind == Kind::rest_to;
}

/// Writes statements, line by line.
class Writer {
  public:
    Writer(Tree const& tree, Page& page) : tree_(tree), page_(page), items_(tree, page) {}

    void file() {
        PoolScope const pool{items_.lap, lap_set_in(0, tree_.size())};
        lines(0, tree_.size(), 0);
        page_.finish();
    }

    /// A pause or a note line.
    void leaf_line(std::uint32_t i) { run(i, end_of_line(i), 0); }

  private:
    /// Holds a pool in force while its scope is written.
    class PoolScope {
      public:
        PoolScope(std::uint32_t& lap, std::optional<std::uint32_t> inner)
            : lap_(lap), outer_(std::exchange(lap, inner.value_or(lap))) {}
        PoolScope(PoolScope const&) = delete;
        PoolScope& operator=(PoolScope const&) = delete;
        ~PoolScope() { lap_ = outer_; }

      private:
        std::uint32_t& lap_;
        std::uint32_t outer_;
    };

    [[nodiscard]] Node const& node(std::uint32_t i) const { return tree_.nodes[i]; }

    /// ItemWriter::lap for the pool that a scope sets; nothing when it sets none.
    [[nodiscard]] std::optional<std::uint32_t> lap_set_in(std::uint32_t first, std::uint32_t end) const {
        for (auto i = first; i < end; i = tree_.next(i)) {
            auto const& n = node(i);
            if (n.kind == Kind::pool) {
                bool const counts = n.value > number_scale && n.value % number_scale != 0;
                return counts ? n.value : 0;
            }
            if (n.kind == Kind::pool_open_water) {
                return 0;
            }
            if (n.kind == Kind::week || n.kind == Kind::session || n.kind == Kind::section) {
                break; // settings stand before the first child
            }
        }
        return std::nullopt;
    }

    [[nodiscard]] std::uint32_t end_of_line(std::uint32_t i) const {
        auto end = tree_.next(i);
        while (!is_container(node(i).kind) && end < tree_.size() && continues_line(node(end).kind)) {
            ++end;
        }
        return end;
    }

    void lines(std::uint32_t first, std::uint32_t end, int level) {
        for (auto i = first; i < end; i = end_of_line(i)) {
            page_.start_line(line_begin(tree_, i), level);
            run(i, end_of_line(i), level);
        }
    }

    /// Nodes on the line in hand.
    void run(std::uint32_t first, std::uint32_t end, int level) {
        for (auto i = first; i < end; i = tree_.next(i)) {
            if (is_container(node(i).kind)) {
                container(i, level);
            } else {
                items_.leaf(i);
            }
        }
    }

    void container(std::uint32_t i, int level) {
        switch (node(i).kind) {
        case Kind::race:
            return race(i);
        case Kind::swimmer:
            return clause("swimmer", i, level);
        case Kind::before:
            return clause("before", i, level);
        case Kind::threshold:
            return clause("threshold", i, level);
        case Kind::limit:
            return clause("limit", i, level);
        case Kind::allow:
            return clause("allow", i, level);
        case Kind::week:
            return scope("week", i, level);
        case Kind::session:
            return scope("session", i, level);
        case Kind::section:
            return scope(spelling(node(i).as_word()), i, level);
        case Kind::set:
            return set(i, level);
        default:
            return items_.item(i, level);
        }
    }

    void clause(std::string_view keyword, std::uint32_t i, int level) {
        page_.say(keyword);
        run(i + 1, tree_.next(i), level);
    }

    void race(std::uint32_t i) {
        page_.say("race");
        for (auto child = i + 1; child < tree_.next(i); ++child) {
            if (node(child).kind == Kind::date) {
                page_.say("on");
            }
            items_.leaf(child);
        }
    }

    /// A week, session or section: its own line, then what it holds, a level deeper.
    void scope(std::string_view keyword, std::uint32_t i, int level) {
        auto const end = tree_.next(i);
        PoolScope const pool{items_.lap, lap_set_in(i + 1, end)};
        auto body = i + 1;
        while (body < end && !opens_line(node(body).kind)) {
            body = tree_.next(body);
        }
        page_.say(keyword);
        run(i + 1, body, level);
        lines(body, end, level + 1);
    }

    /// A set's numbers are left as they are: the pool is that of the place of use.
    void set(std::uint32_t i, int level) {
        PoolScope const pool{items_.lap, 0};
        page_.say("set");
        items_.leaf(i + 1);
        page_.say("=");
        run(i + 2, tree_.next(i), level);
    }

    Tree const& tree_;
    Page& page_;
    ItemWriter items_;
};

} // namespace

Traced write_traced(Tree const& tree) {
    Page page{tree};
    Writer{tree, page}.file();
    return page.take();
}

std::string write(Tree const& tree) {
    return write_traced(tree).text;
}

std::string write_line(Tree const& tree, std::uint32_t node) {
    Page page{tree};
    if (tree.nodes[node].kind == Kind::item) {
        ItemWriter{tree, page}.item_on_one_line(node);
    } else {
        Writer{tree, page}.leaf_line(node);
    }
    return page.take().text;
}

} // namespace lengthwise::grammar
