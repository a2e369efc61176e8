#!/bin/sh
# One sheet of four cards, made by lengthwise and by a browser that prints the same words, at the same places, as
# HTML: both one after the other, several times, the least of each. Needs chromium and poppler-utils.
#
#     tests/bench/cards.sh build/release/lengthwise [PLAN] [RUNS]
set -eu
program=$1
plan=${2:-$(dirname "$0")/../../sets/two-lanes-yards.swim}
runs=${3:-5}
folder=$(mktemp -d)
trap 'rm -rf "$folder"' EXIT

"$program" cards "$plan" --week 1 -o "$folder/cards.pdf" 2> "$folder/log"
pdftotext -bbox "$folder/cards.pdf" "$folder/words.html"
# Each word becomes a span at its place; points are points.
awk 'BEGIN { print "<!doctype html><meta charset=utf-8><style>@page{size:A4;margin:0}body{margin:0;font-family:Inter}" \
             "div{position:relative;width:595pt;height:841pt;page-break-after:always}" \
             "span{position:absolute;white-space:pre;font-weight:500}</style>" }
     /<page / { print "<div>" } /<\/page>/ { print "</div>" }
     /<word / { split($0, a, "\""); text = $0; sub(/^[^>]*>/, "", text); sub(/<\/word>.*/, "", text)
                printf "<span style=\"left:%spt;top:%spt;font-size:%.2fpt\">%s</span>\n", a[2], a[4], (a[8] - a[4]) / 1.21, text }' \
    "$folder/words.html" > "$folder/cards.html"

now() { date +%s%N; }
least_ours=0
least_browser=0
for run in $(seq "$runs"); do
    begin=$(now)
    "$program" cards "$plan" --week 1 --force -o "$folder/cards.pdf" 2> "$folder/log"
    middle=$(now)
    chromium --headless --no-sandbox --disable-gpu --no-pdf-header-footer --print-to-pdf="$folder/browser.pdf" \
        "file://$folder/cards.html" 2> "$folder/log"
    end=$(now)
    ours=$(((middle - begin) / 1000))
    browser=$(((end - middle) / 1000))
    if [ "$run" = 1 ] || [ "$ours" -lt "$least_ours" ]; then least_ours=$ours; fi
    if [ "$run" = 1 ] || [ "$browser" -lt "$least_browser" ]; then least_browser=$browser; fi
done
echo "$least_ours $least_browser" |
    awk '{ printf "cards %.1f ms, browser %.1f ms: %.0f times\n", $1 / 1000, $2 / 1000, $2 / $1 }'
