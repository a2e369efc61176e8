#include "cli/cards_program.hpp"
#include "cli/descriptor_output.hpp"
#include "cli/disk_words.hpp"
#include "cli/plans.hpp"
#include "cli/process.hpp"
#include "cli/run.hpp"

[[gnu::init_priority(101)]] lengthwise::cli::EndsWithoutMemory const ends_without_memory;

int main(int count, char** arguments) {
    using namespace lengthwise::cli;
    prepare_process();
    DescriptorOutput out{1};
    DescriptorOutput err{2};
    Disk disk;
    std::vector<std::string> const words{arguments + (count > 0 ? 1 : 0), arguments + count};
    auto const code = run(words, disk, surroundings(), out, err, cards_program(words));
    out.flush();
    if (out.error() != 0) {
        err.write("lengthwise: cannot write standard output: " + words_of(out.error()) + "\n");
        return misused;
    }
    return code;
}
