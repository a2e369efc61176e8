#!/usr/bin/env bash
# How much of the core the everyday tests go through. usage: run.sh [WORD]     with WORD, also the lines and
# branches that are left in files whose path holds it
#
# The core is grammar/ and src/ without src/cli, src/paint and src/cards_program. Branches that only an exception
# takes are not counted: the core throws none, so they are the compiler's own, out of memory or out of bounds.
# Ends with 1 below 95 % of lines or 85 % of branches. Needs gcovr (Debian: gcovr).
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/../.."
build=build/coverage

cmake --preset coverage >/dev/null
cmake --build --preset coverage --parallel "$(nproc)"
find "$build" -name '*.gcda' -delete
# One process for all: each writes some hundred files of counters when it ends.
"$build/tests/lengthwise_tests" '~[long]'
ctest --test-dir "$build" --parallel "$(nproc)" --tests-regex '^case: ' --output-on-failure --quiet

report=(gcovr --root . --filter grammar/ --filter 'src/(units|plan|calc|tailor|check|compose|report|cards)/'
    --exclude-throw-branches --exclude-unreachable-branches
    "$build/CMakeFiles/lengthwise_core.dir" "$build/CMakeFiles/lengthwise_cli.dir")
bad=0
"${report[@]}" -j "$(nproc)" --json "$build/coverage.json" --csv "$build/coverage.csv" \
    --fail-under-line 95 --fail-under-branch 85 || bad=1

# file, lines, of them run, share, branches, of them taken, share
awk -F, '
    NR > 1 {
        folder = $1
        sub(/\/[^\/]*$/, "", folder)
        for (i = 1; i <= 2; ++i) {
            key = i == 1 ? folder : "the core"
            lines[key] += $2; run[key] += $3; branches[key] += $5; taken[key] += $6
        }
    }
    END {
        for (key in lines)
            printf "%-12s  lines %5d of %5d, %5.1f %%   branches %5d of %5d, %5.1f %%\n", key, run[key], lines[key],
                100 * run[key] / lines[key], taken[key], branches[key], 100 * taken[key] / branches[key] | "sort"
    }' "$build/coverage.csv"
if [[ $# -gt 0 ]]; then
    gcovr --root . --add-tracefile "$build/coverage.json" --filter ".*$1.*"
    gcovr --root . --add-tracefile "$build/coverage.json" --filter ".*$1.*" --branches
fi
exit "$bad"
