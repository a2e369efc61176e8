#include "recogniser/against.hpp"

#include "fuzz/promise.hpp"
#include "fuzz/target.hpp"

/// The parser reads what the notation's pages say, as a second reader of theirs does.
void lengthwise::fuzz::run(std::string_view bytes) {
    no_fault(recogniser::disagreement(bytes), "parser and recogniser agree on a text");
}
