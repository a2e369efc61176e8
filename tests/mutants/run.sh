#!/usr/bin/env bash
# Makes the slips of mutants.txt one at a time in a copy of the tree and asks whether a test notices.
# usage: run.sh [WORD]     only slips in files whose path holds WORD
#
# Exit code 1 if one survives, does not stand in its file once, or does not compile. LENGTHWISE_MUTANTS names
# a folder for the copy and its build, which then stays; LENGTHWISE_JOBS says how many slips are tried at once.
# CXX and CMAKE_CXX_COMPILER_LAUNCHER are heeded.
set -uo pipefail
here=$(cd "$(dirname "${BASH_SOURCE[0]}")" && pwd)
root=$(cd "$here/../.." && pwd)
table=$here/mutants.txt
work=${LENGTHWISE_MUTANTS:-}
jobs=${LENGTHWISE_JOBS:-1}

# Tests that start programs or take minutes are left out.
quick='~[long]~[hostile]~[programs]'

# --- one slip: called by this script itself, with $work, $limit and the number of the slip's line ---------

# The units' headers are in every file, so they are shown to the units' own tests alone.
is_unit_header() { # FILE
    [[ $1 == src/units/*.hpp ]]
}

apply() { # FILE WAS NOW: the changed text
    was=$2 now=$3 awk '
        { line = $0; blanks = line; sub(/[^ ].*/, "", blanks); sub(/^ */, "", line) }
        line == ENVIRON["was"] { found++; print blanks ENVIRON["now"]; next }
        { print }
        END { exit found == 1 ? 0 : 1 }' "$copy/$1"
}

# The objects that are made of a file.
objects_of() { # FILE
    if is_unit_header "$1"; then
        ninja -t query tests/lengthwise_units_tests | grep -o 'tests/CMakeFiles/.*\.o$'
    elif [[ $1 == *.hpp ]]; then
        ninja -t deps | awk -v header="../../$1" '
            /^[^ ]/ { object = $1; sub(/:$/, "", object) }
            $1 == header && object ~ /lengthwise_core\.dir/ { print object }'
    else
        echo "CMakeFiles/lengthwise_core.dir/$1.o"
    fi
}

# Each object anew, with the changed file in place of its own; then the tests with these objects before all.
compile() { # FILE TARGET
    local object command new=()
    for object in $(objects_of "$1"); do
        command=$(ninja -t commands -s "$object" | sed -E 's/ -MD -MT [^ ]+ -MF [^ ]+//')
        command=${command/ -o $object / -iquote $mine/src -iquote $mine -o $mine/${#new[@]}.o }
        bash -c "${command/ -c $copy\/$1/ -c $mine/$1}" || return 1
        new+=("$mine/${#new[@]}.o")
    done
    command=$(ninja -t commands -s "tests/$2" | sed -E 's/^: && //; s/ && (:|cd .*)$//')
    if is_unit_header "$1"; then
        for object in $(objects_of "$1"); do
            command=${command/ $object/}
        done
    fi
    bash -c "${command/ -o tests\/$2 / ${new[*]} -o $mine/tests }"
}

of_files() { # FILE...: these tests, as Catch2 wants it said
    local spec= file
    for file in "$@"; do
        [[ -e $file ]] && spec+="${spec:+,}[#$(basename "$file" .cpp)]$quick"
    done
    echo "$spec"
}

# A slip may make a loop endless; that counts as noticed. Seconds of the processor: others may be at work, too.
passes() { # PROGRAM SPEC
    (
        ulimit -v 8000000
        ulimit -t "$limit"
        cd tests && "$1" -# --abort "$2"
    ) >"$mine/log" 2>&1
}

# The nearest tests first: of the file, of its folder, all.
noticed_by() { # FILE
    local folder stem
    folder=$copy/tests/$(basename "$(dirname "$1")")
    stem=$(basename "${1%.*}")
    local specs=("$(of_files "$folder/$stem"_*test.cpp)" "$(of_files "$folder"/*_test.cpp)" "$quick")
    local names=("its own tests" "its folder's tests" "another test") i
    for i in 0 1 2; do
        if [[ -n ${specs[i]} ]] && ! passes "$mine/tests" "${specs[i]}"; then
            echo "${names[i]}"
            return 0
        fi
    done
    return 1
}

try() { # LINE
    local file why was now target answer
    { IFS= read -r file && IFS= read -r was && IFS= read -r now; } < <(tail -n "+$1" "$table" | head -3)
    why=${file#*: } file=${file%%: *} was=${was#- } now=${now#+ }
    mine=$work/slip-$1
    target=lengthwise_tests
    is_unit_header "$file" && target=lengthwise_units_tests
    mkdir -p "$mine/$(dirname "$file")"
    if ! apply "$file" "$was" "$now" >"$mine/$file"; then
        answer="DOES NOT APPLY"
    elif ! compile "$file" "$target" >"$mine/log" 2>&1; then
        answer="DOES NOT COMPILE"
        grep -m 3 error "$mine/log"
    elif answer=$(noticed_by "$file"); then
        printf 'noticed by %-18s  %s: %s\n' "$answer" "$file" "$why"
        rm -rf "$mine"
        return 0
    else
        answer=SURVIVED
    fi
    rm -rf "$mine"
    printf '%s  %s: %s\n  - %s\n  + %s\n' "$answer" "$file" "$why" "$was" "$now"
    return 1
}

if [[ ${1:-} == --line ]]; then
    copy=$work/tree
    cd "$copy/build/mutants" && try "$2"
    exit
fi

# --- all of them --------------------------------------------------------------------------------------------

only=${1:-}
if [[ -z $work ]]; then
    work=$(mktemp -d)
    trap 'rm -rf "$work"' EXIT
fi
copy=$work/tree
build=$copy/build/mutants
mkdir -p "$copy"
tar -C "$root" --exclude=./build --exclude='./build-*' --exclude=./.git --exclude=./.cache -cf - . |
    tar -C "$copy" -xf -

linker=
for each in lld gold; do
    if command -v "ld.$each" >/dev/null; then
        linker=-fuse-ld=$each
        break
    fi
done
{
    cmake -S "$copy" -B "$build" -G Ninja -DCMAKE_BUILD_TYPE=Release -DCMAKE_CXX_FLAGS_RELEASE= \
        -DCMAKE_CXX_FLAGS="-O1 -D_GLIBCXX_ASSERTIONS" -DCMAKE_EXE_LINKER_FLAGS=$linker -DLENGTHWISE_HARDEN=OFF \
        -DLENGTHWISE_CARDS=OFF -DLENGTHWISE_TESTS=ON &&
        ninja -C "$build" -j "$jobs" lengthwise_tests lengthwise_units_tests
} >"$work/log" 2>&1 || {
    tail -20 "$work/log"
    exit 1
}
TIMEFORMAT=%0U
unchanged() {
    (cd "$build/tests" && ./lengthwise_units_tests && ./lengthwise_tests "$quick") >"$work/log" 2>&1
}
needed=$({ time unchanged; } 2>&1) || {
    echo "the tests fail without any slip:"
    tail -30 "$work/log"
    exit 1
}
export LENGTHWISE_MUTANTS=$work limit=$((3 * needed + 60))

grep -nE '^[a-z]' "$table" | grep -F -- "$only" | cut -d: -f1 |
    xargs -P "$jobs" -I '{}' "$here/run.sh" --line '{}' | tee "$work/report"
bad=$(grep -cE '^(SURVIVED|DOES NOT)' "$work/report")
echo "$(grep -c '^noticed' "$work/report") slips noticed, $bad not"
((bad == 0))
