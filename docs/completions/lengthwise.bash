# Completion of lengthwise for bash. Made by the program's tests.

_lengthwise_take() {
    mapfile -t COMPREPLY < <(compgen "$@" -- "${COMP_WORDS[COMP_CWORD]}")
}

_lengthwise_plans() {
    local folders
    _lengthwise_take -f -X '!*.swim'
    mapfile -t folders < <(compgen -d -- "${COMP_WORDS[COMP_CWORD]}")
    COMPREPLY+=("${folders[@]}")
}

_lengthwise() {
    local command=${COMP_WORDS[1]} before=${COMP_WORDS[COMP_CWORD - 1]} options='' behind=nothing
    COMPREPLY=()
    if ((COMP_CWORD == 1)); then
        _lengthwise_take -W 'new compose check tidy tally deck chart cards export pace explain help --help --version'
        return
    fi
    case $command:$before in
    new:--today) : ;;
    new:--output) _lengthwise_take -f ;;
    new:-o) _lengthwise_take -f ;;
    compose:--race) : ;;
    compose:--on) : ;;
    compose:--from) : ;;
    compose:--days) : ;;
    compose:--at) : ;;
    compose:--slot) : ;;
    compose:--not) : ;;
    compose:--race-name) : ;;
    compose:--pool) : ;;
    compose:--resume) _lengthwise_take -f ;;
    compose:--after) : ;;
    compose:--longest) : ;;
    compose:--session) : ;;
    compose:--threshold) : ;;
    compose:--kit) : ;;
    compose:--limit) : ;;
    compose:--color) _lengthwise_take -W 'auto always never' ;;
    compose:--width) : ;;
    compose:--output) _lengthwise_take -f ;;
    compose:-o) _lengthwise_take -f ;;
    check:--format) _lengthwise_take -W 'text json sarif' ;;
    check:--color) _lengthwise_take -W 'auto always never' ;;
    check:--width) : ;;
    check:--output) _lengthwise_take -f ;;
    check:-o) _lengthwise_take -f ;;
    tidy:--color) _lengthwise_take -W 'auto always never' ;;
    tidy:--width) : ;;
    tally:--week) : ;;
    tally:--session) : ;;
    tally:--lane) : ;;
    tally:--swimmer) : ;;
    tally:--by) _lengthwise_take -W 'stroke mode effort gear section swimmer' ;;
    tally:--format) _lengthwise_take -W 'text json' ;;
    tally:--color) _lengthwise_take -W 'auto always never' ;;
    tally:--width) : ;;
    tally:--output) _lengthwise_take -f ;;
    tally:-o) _lengthwise_take -f ;;
    deck:--week) : ;;
    deck:--session) : ;;
    deck:--lane) : ;;
    deck:--swimmer) : ;;
    deck:--today) : ;;
    deck:--pool) : ;;
    deck:--start) : ;;
    deck:--left) : ;;
    deck:--after) : ;;
    deck:--gap) : ;;
    deck:--swimmers) : ;;
    deck:--color) _lengthwise_take -W 'auto always never' ;;
    deck:--width) : ;;
    deck:--output) _lengthwise_take -f ;;
    deck:-o) _lengthwise_take -f ;;
    chart:--lane) : ;;
    chart:--swimmer) : ;;
    chart:--color) _lengthwise_take -W 'auto always never' ;;
    chart:--width) : ;;
    chart:--output) _lengthwise_take -f ;;
    chart:-o) _lengthwise_take -f ;;
    cards:--week) : ;;
    cards:--session) : ;;
    cards:--lane) : ;;
    cards:--swimmer) : ;;
    cards:--size) _lengthwise_take -W 'whole half quarter eighth a5 a6 a7 3x5in 4x6in' ;;
    cards:--sheet) _lengthwise_take -W 'a4 letter' ;;
    cards:--margin) : ;;
    cards:--back) _lengthwise_take -W 'overview pace' ;;
    cards:--copies) : ;;
    cards:--distance) : ;;
    cards:--preview) _lengthwise_take -f ;;
    cards:--format) _lengthwise_take -W 'pdf png' ;;
    cards:--color) _lengthwise_take -W 'auto always never' ;;
    cards:--width) : ;;
    cards:--output) _lengthwise_take -f ;;
    cards:-o) _lengthwise_take -f ;;
    export:--as) _lengthwise_take -W 'json csv ics html md' ;;
    export:--rows) _lengthwise_take -W 'line session week' ;;
    export:--week) : ;;
    export:--session) : ;;
    export:--lane) : ;;
    export:--swimmer) : ;;
    export:--color) _lengthwise_take -W 'auto always never' ;;
    export:--width) : ;;
    export:--output) _lengthwise_take -f ;;
    export:-o) _lengthwise_take -f ;;
    pace:--pool) : ;;
    pace:--predict) : ;;
    pace:--into) _lengthwise_take -f ;;
    pace:--format) _lengthwise_take -W 'text json' ;;
    pace:--color) _lengthwise_take -W 'auto always never' ;;
    pace:--width) : ;;
    pace:--output) _lengthwise_take -f ;;
    pace:-o) _lengthwise_take -f ;;
    explain:--color) _lengthwise_take -W 'auto always never' ;;
    explain:--width) : ;;
    *) _lengthwise_else ;;
    esac
}

_lengthwise_else() {
    case $command in
    new)
        options='--help -h --today --output -o --force'
        behind=nothing
        ;;
    compose)
        options='--help -h --race --on --from --days --at --slot --not --race-name --pool --resume --after --longest --session --threshold --kit --race-in-pool --limit --explain --color --ascii --width --output -o --force'
        behind=nothing
        ;;
    check)
        options='--help -h --strict --format --color --ascii --width --output -o --force'
        behind=plans
        ;;
    tidy)
        options='--help -h --check --stdout --color --ascii --width'
        behind=plans
        ;;
    tally)
        options='--help -h --week --session --lane --swimmer --by --format --color --ascii --width --output -o --force'
        behind=plans
        ;;
    deck)
        options='--help -h --week --session --lane --swimmer --today --pool --start --left --after --gap --swimmers --color --ascii --width --output -o --force'
        behind=plans
        ;;
    chart)
        options='--help -h --lane --swimmer --color --ascii --width --output -o --force'
        behind=plans
        ;;
    cards)
        options='--help -h --week --session --lane --swimmer --size --sheet --margin --hole --back --copies --test-sheet --distance --preview --format --color --ascii --width --output -o --force'
        behind=plans
        ;;
    export)
        options='--help -h --as --rows --week --session --lane --swimmer --color --ascii --width --output -o --force'
        behind=plans
        ;;
    pace)
        options='--help -h --pool --predict --stops --into --format --color --ascii --width --output -o --force'
        behind=nothing
        ;;
    explain)
        options='--help -h --color --ascii --width'
        behind=words
        ;;
    help)
        _lengthwise_take -W 'new compose check tidy tally deck chart cards export pace explain '
        return
        ;;
    esac
    if [[ ${COMP_WORDS[COMP_CWORD]} == -* ]]; then
        _lengthwise_take -W "$options"
    elif [[ $behind == plans ]]; then
        _lengthwise_plans
    elif [[ $behind == words ]]; then
        _lengthwise_take -W 'Fri Mon Sat Sun Thu Tue Wed about allow as at back band before board breast breaths broken build buoy calendar caution choice cool cool-down crawl descend distance down drill easy evens every factor feasible fins first fly for from front h hard hold home-wall if in include kick lane lanes last lengths limit long longest m main medley middle min minus needed negative next nothing odds off on open paddles pause per plan plus pool pull race race-rep rep-step reserve rest rest-band rpe s second-look send-off session session-floor sessions set shape slot snorkel split sprint standard steady stops super-sprint swim swimmer syntax-amount syntax-character syntax-comma syntax-count syntax-date syntax-encoding syntax-group syntax-include syntax-limit syntax-line syntax-name syntax-number syntax-pairing syntax-place syntax-selector syntax-split syntax-string syntax-time syntax-twice syntax-word taper threshold time tread up use warm warm-up water week week-growth wetsuit whole-lengths with x yd'
    fi
}

complete -o filenames -F _lengthwise lengthwise
