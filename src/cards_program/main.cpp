#include "cards_program/glib_errors.hpp"
#include "cards_program/make_cards.hpp"
#include "cli/descriptor_output.hpp"
#include "cli/disk_words.hpp"
#include "cli/options.hpp"
#include "cli/plans.hpp"
#include "cli/process.hpp"
#include "cli/run.hpp"

#include <cstdlib>

[[gnu::init_priority(101)]] lengthwise::cli::EndsWithoutMemory const ends_without_memory;

/// What `lengthwise cards` starts. Its words are those behind "lengthwise".
int main(int count, char** arguments) {
    using namespace lengthwise::cli;
    prepare_process();
    say_glib_errors();
    DescriptorOutput out{1};
    DescriptorOutput err{2};
    Disk disk;
    auto const paint = [](Cards const& options, Files& files, Console& console) {
        return make_cards(options, std::getenv("LENGTHWISE_FONTS"), files, console);
    };
    auto const code =
        run({arguments + (count > 0 ? 1 : 0), arguments + count}, disk, surroundings(), out, err, paint);
    out.flush();
    if (out.error() != 0) {
        err.write("lengthwise: cannot write standard output: " + words_of(out.error()) + "\n");
        return misused;
    }
    return code;
}
