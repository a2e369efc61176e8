#include "document.hpp"

#include "encoding.hpp"
#include "tokens.hpp"

#include <array>
#include <initializer_list>
#include <utility>

namespace lengthwise::grammar {

namespace {

/// The form of a line by its first word.
constexpr auto forms = [] {
    std::array<Form, static_cast<std::size_t>(Word::count_)> table{};
    table.fill(Form::unknown);
    auto const begin = [&table](Form form, std::initializer_list<Word> words) {
        for (auto const word : words) {
            table[static_cast<std::size_t>(word)] = form;
        }
    };
    begin(Form::plan, {Word::plan});
    begin(Form::head, {Word::race, Word::swimmer, Word::before, Word::set, Word::include});
    begin(Form::setting, {Word::pool, Word::threshold, Word::rest, Word::factor, Word::limit, Word::allow});
    begin(Form::week, {Word::week});
    begin(Form::session, {Word::session});
    begin(Form::section, {Word::warm_up, Word::drill, Word::main, Word::cool_down, Word::warm, Word::cool});
    begin(Form::pause, {Word::pause});
    begin(Form::item, {Word::lane, Word::if_, Word::use});
    return table;
}();

Form form_of(Word word) {
    return forms[static_cast<std::size_t>(word)];
}

/// Statements and headings: no parenthesis reaches across them.
bool ends_groups(Word word) {
    switch (form_of(word)) {
    case Form::pause:
    case Form::note:
    case Form::item:
    case Form::unknown:
        return false;
    case Form::setting:
        return word != Word::rest && word != Word::threshold;
    default:
        return true;
    }
}

} // namespace

Document::Document(Source const& source)
    : source_(source), reading_(result_.tree, source.text(), source.base()),
      at_(source.text().data() + bom_bytes(source.text())) {
    result_.tree.text = source.text();
    result_.tree.base = source.base();
}

ParseResult Document::read() {
    if (auto complaint = complain_of_file(source_.text())) {
        report(std::move(*complaint));
        return std::move(result_);
    }
    clean_ = is_clean(source_.text());
    read_lines();
    if (reading_.depth + beyond_ > 0) {
        close_groups(reading_.end);
    }
    close_week();
    reading_.nodes.finish();
    result_.findings.sort_by_place();
    return std::move(result_);
}

void Document::read_lines() {
    while (at_ != reading_.end) {
        auto const* const line = at_;
        muted_ = false;
        if (!clean_ && !in_order(line)) {
            continue;
        }
        at_ = skip_indentation(line, reading_.end);
        if (is_digit(*at_) && section_ != none && reading_.depth + beyond_ == 0) { // most lines
            read_as(Form::item, {at_, reading_.nodes.size(), 0, Awaits::item});
            continue;
        }
        auto const* after = at_;
        if (read_line_end(after, reading_)) {
            at_ = after;
        } else if (reading_.depth + beyond_ > 0) {
            read_group_line();
        } else {
            read_statement();
        }
    }
}

Form Document::form_here() {
    if (is_digit(*at_) || *at_ == '(' || (*at_ == ':' && is_digit(at_[1]))) {
        return Form::item;
    }
    if (*at_ == '"') {
        return child_ == nullptr ? Form::setting : Form::note;
    }
    auto const& first = reading_.word(at_);
    if (first.word != Word::swim) {
        return form_of(first.word);
    }
    auto const& second = reading_.word(first.end);
    return second.word == Word::down ? Form::section : Form::unknown;
}

void Document::read_statement() {
    auto const form = form_here();
    auto const* const begin = at_;
    if (form == Form::unknown) {
        if (auto const meant = meant_here(); meant != Word::none) {
            return read_opener_like(meant);
        }
    }
    astray_ = form != Form::unknown && !place(form);
    read_as(form, {at_, reading_.nodes.size(), 0, Awaits::item});
    first_ = first_ == nullptr && form != Form::unknown && !supposed_ ? begin : first_;
}

/// What an unknown first word was meant for, if that begins a line.
Word Document::meant_here() {
    auto const& first = reading_.word(at_);
    if (first.begin == first.end || first.word != Word::none || muted_ || enough_said()) {
        return Word::none;
    }
    std::string_view const letters{first.begin, static_cast<std::size_t>(first.end - first.begin)};
    auto const known = find_word(letters); // where something touches it: `week1`
    return known == Word::none ? meant_opener(letters) : form_of(known) == Form::unknown ? Word::none : known;
}

/// A first word that is a slip for `word`: said once, then read as it.
void Document::read_opener_like(Word word) {
    Trace trace;
    trace.miss(at_, word, word, Thing::none);
    report(complain_of_place({Form::unknown, at_, line_end(), 0, trace}));
    trace.take_for(at_, word);
    auto const touched = clings_to_word(*reading_.word(at_).end);
    reading_.trace = &trace;
    reading_.forget();
    auto const form = form_here();
    astray_ = !place(form);
    Mark const mark{at_, reading_.nodes.size(), 0, Awaits::item};
    begin_line(form, mark);
    if (auto const* after = at_; touched && !read_form(form, after, reading_)) {
        reading_.trace = nullptr; // `main2`: what follows is part of the same slip
        reading_.forget();
        give_up(form, mark);
    } else {
        diagnose(form, mark, trace);
    }
    end_line(form);
}

void Document::read_as(Form form, Mark const& mark) {
    if (mark.depth == 0) {
        begin_line(form, mark);
    }
    auto const* after = at_;
    if (read_form(form, after, reading_)) {
        at_ = after;
    } else {
        Trace trace;
        diagnose(form, mark, trace);
    }
    end_line(form);
}

void Document::begin_line(Form form, Mark const& mark) {
    top_ = mark.size;
    top_begin_ = mark.begin;
    set_ = form == Form::head && reading_.word(mark.begin).word == Word::set ? mark.size : none;
    reading_.awaits = Awaits::item;
    reading_.labelled = false;
}

void Document::end_line(Form form) {
    if (reading_.depth + beyond_ > 0) {
        return;
    }
    if (form == Form::item || form == Form::unknown || set_ != none) {
        finish_item();
    }
    if (std::exchange(astray_, false)) {
        reading_.nodes.drop_from(top_);
        reading_.push(Kind::bad, top_begin_, top_begin_);
    }
}

void Document::read_group_line() {
    Mark const mark{at_, reading_.nodes.size(), reading_.depth, reading_.awaits};
    auto const form = form_here();
    auto const first = reading_.word(at_).word;
    auto const word = form == Form::unknown && first == Word::none ? meant_here() : first;
    if (ends_groups(word) || (form == Form::section)) {
        close_groups(at_);
        return;
    }
    auto const labelled = word == Word::lane || word == Word::if_;
    if (beyond_ > 0 || labelled || (form != Form::item && form != Form::unknown)) {
        refuse_in_group(form, mark);
        end_line(Form::item);
    } else {
        open_before_ = reading_.open;
        read_as(form, mark);
    }
}

void Document::finish_item() {
    if (spoiled_) {
        spoiled_ = false;
        auto const named_set =
            set_ != none && set_ + 1 < reading_.nodes.size() && reading_.nodes[set_ + 1].kind == Kind::name;
        reading_.nodes.drop_from(named_set ? set_ + 2 : top_);
        if (named_set) { // keeps its name, so that `use` does not miss it, too
            auto const& name = reading_.nodes[set_ + 1];
            auto const* const behind = reading_.place(name.begin + name.value);
            auto const item = reading_.push(Kind::item, behind, behind);
            reading_.push(Kind::distance, behind, behind, 100 * number_scale,
                          static_cast<std::uint8_t>(WrittenUnit::metres));
            reading_.close(item);
        } else {
            reading_.push(Kind::bad, top_begin_, top_begin_);
        }
    }
    if (set_ != none && set_ < reading_.nodes.size() && reading_.nodes[set_].kind == Kind::set) {
        reading_.close(set_);
    }
    set_ = none;
}

} // namespace lengthwise::grammar
