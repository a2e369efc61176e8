// Runs one golden case, or with --update writes what the program says now into it.
//
//     lengthwise_case [--update] FILE.case…

#include "cases/case_file.hpp"
#include "support/program.hpp"
#include "support/temp_folder.hpp"

#include <cstdio>
#include <fstream>
#include <string>

using namespace lengthwise;
using cases::CaseFile;

namespace {

/// The case as the program answers it today.
CaseFile answered(CaseFile file) {
    support::TempFolder const folder;
    support::Run run;
    for (auto const& section : file.sections) {
        if (section.kind() == "file") {
            folder.file(section.argument(), section.body);
        } else if (section.kind() == "run") {
            run.arguments = cases::words_of(section.argument());
        } else if (section.kind() == "input") {
            run.input = section.body;
        }
    }
    run.folder = folder.path();
    auto const ending = support::run(run);
    for (auto& section : file.sections) {
        if (section.kind() == "out") {
            section.body = ending.out;
        } else if (section.kind() == "err") {
            section.body = ending.err;
        } else if (section.kind() == "after") {
            section.body = support::bytes_of(folder.path(section.argument()));
        } else if (section.kind() == "exit") {
            section.head = "exit " + std::to_string(ending.code);
        }
    }
    return file;
}

/// A case without all of these could pass without looking.
char const* missing(CaseFile const& file) {
    for (auto const* kind : {"run", "out", "err", "exit"}) {
        if (file.find(kind) == nullptr) {
            return kind;
        }
    }
    return nullptr;
}

bool run_case(std::string const& path, bool update) {
    auto const text = support::bytes_of(path);
    auto const file = cases::parse_case(text);
    if (auto const* const kind = missing(file)) {
        std::printf("%s: no section \"--- %s\"\n", path.c_str(), kind);
        return false;
    }
    auto const now = cases::write_case(answered(file));
    if (now == text) {
        return true;
    }
    if (update) {
        std::ofstream{path, std::ios::binary} << now;
        std::printf("updated %s\n", path.c_str());
        return true;
    }
    std::printf("%s: not as it was. Now it is:\n\n%s", path.c_str(), now.c_str());
    return false;
}

} // namespace

int main(int count, char** arguments) {
    auto const update = count > 1 && std::string{arguments[1]} == "--update";
    auto good = count > (update ? 2 : 1);
    for (int i = update ? 2 : 1; i < count; ++i) {
        good = run_case(arguments[i], update) && good;
    }
    return good ? 0 : 1;
}
