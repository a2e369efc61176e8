#!/usr/bin/env bash
# Builds the fuzz targets with clang and lets each search, as many at a time as there are cores.
#
#     tests/fuzz/run.sh 30              every target for 30 seconds
#     tests/fuzz/run.sh 1200 road       one of them for twenty minutes
#
# Inputs that reach further are kept in build/fuzz/corpus/TARGET, and the next run begins with them. One that
# breaks a promise, takes 5 seconds or 1 GiB ends its run; it lies in build/fuzz/broken.
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/../.."
export seconds=${1:?"usage: tests/fuzz/run.sh SECONDS [TARGET...]"}
shift
export programs=build/fuzz/tests/fuzz

cmake --preset fuzz >/dev/null
cmake --build --preset fuzz
if [[ $# == 0 ]]; then
    set -- $(cd "$programs" && ls | sed -n 's/^fuzz_//p')
fi

search() { # TARGET
    local corpus=build/fuzz/corpus/$1 found=tests/fuzz/found/$1 log=build/fuzz/$1.log
    mkdir -p "$corpus" build/fuzz/broken
    local inputs=("$corpus" "$programs/seeds/inputs")
    [[ ! -d $found ]] || inputs+=("$found")
    # -entropic=0: with so many edges its book-keeping takes most of the time.
    if ! "$programs/fuzz_$1" -max_total_time="$seconds" -entropic=0 -timeout=5 -rss_limit_mb=1024 -malloc_limit_mb=512 \
        -max_len=16384 -dict="$programs/seeds/dictionary" -artifact_prefix="build/fuzz/broken/$1-" \
        -print_final_stats=1 "${inputs[@]}" >"$log" 2>&1; then
        tail -n 60 "$log"
        echo "$1: broken; see build/fuzz/broken and tests/fuzz/README.md"
        return 1
    fi
    awk -v target="$1" '/^#[0-9]+.*cov: / { edges = $4 }
                        /number_of_executed_units/ { print target ": " $2 " executions, " edges " edges" }' "$log"
}
export -f search

printf '%s\n' "$@" | xargs -P "$(nproc)" -I{} bash -euo pipefail -c 'search {}'
