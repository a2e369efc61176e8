#include "support/outside.hpp"

#include "support/temp_folder.hpp"

#include <array>
#include <cstdio>
#include <memory>
#include <stdexcept>

namespace lengthwise::support {

std::string output_of(std::string const& command) {
    std::unique_ptr<FILE, int (*)(FILE*)> const pipe{popen(command.c_str(), "r"), pclose};
    if (pipe == nullptr) {
        throw std::runtime_error{"cannot start " + command};
    }
    std::string text;
    std::array<char, 4096> piece{};
    while (auto const read = std::fread(piece.data(), 1, piece.size(), pipe.get())) {
        text.append(piece.data(), read);
    }
    return text;
}

std::string jq(std::string const& documents, std::string const& filter) {
    TempFolder const folder;
    return output_of("jq -c '" + filter + "' '" + folder.file("documents.json", documents) + "' 2>&1");
}

std::string schema_verdicts(std::string const& schema, std::vector<std::string> const& documents) {
    auto const script =
        "import json, sys, jsonschema\n"
        "schema = json.load(open('" LENGTHWISE_ROOT "/" +
        schema +
        "'))\n"
        "jsonschema.Draft202012Validator.check_schema(schema)\n"
        "good = jsonschema.Draft202012Validator(schema).is_valid\n"
        "print(''.join('+' if good(json.loads(line)) else '-' for line in sys.stdin), end='')\n";
    std::string lines;
    for (auto const& document : documents) {
        lines += document;
    }
    return python(script, lines);
}

std::string python(std::string const& script, std::string const& input) {
    TempFolder const folder;
    auto const answer = output_of("PYTHONUTF8=1 python3 '" + folder.file("script.py", script) + "' < '" +
                                  folder.file("input", input) + "' 2>&1");
    if (answer.find("No module named") != std::string::npos) {
        throw std::runtime_error{answer};
    }
    return answer;
}

} // namespace lengthwise::support
