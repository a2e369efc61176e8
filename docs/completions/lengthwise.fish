# Completion of lengthwise for fish. Made by the program's tests.

complete -c lengthwise -f
complete -c lengthwise -n __fish_use_subcommand -l help -s h
complete -c lengthwise -n __fish_use_subcommand -l version

complete -c lengthwise -n __fish_use_subcommand -a new -d 'a first plan'
complete -c lengthwise -n '__fish_seen_subcommand_from new' -l help -s h
complete -c lengthwise -n '__fish_seen_subcommand_from new' -l today -x -d 'a date, 2027-05-04'
complete -c lengthwise -n '__fish_seen_subcommand_from new' -l output -s o -r -F -d 'a file\'s name'
complete -c lengthwise -n '__fish_seen_subcommand_from new' -l force

complete -c lengthwise -n __fish_use_subcommand -a compose -d 'a plan to race day'
complete -c lengthwise -n '__fish_seen_subcommand_from compose' -l help -s h
complete -c lengthwise -n '__fish_seen_subcommand_from compose' -l race -x -d 'a race or its distance, sprint or 1000m'
complete -c lengthwise -n '__fish_seen_subcommand_from compose' -l on -x -d 'a date, 2027-06-06'
complete -c lengthwise -n '__fish_seen_subcommand_from compose' -l from -x -d 'a date, 2027-04-26'
complete -c lengthwise -n '__fish_seen_subcommand_from compose' -l days -x -d 'days of the week, Tue,Fri'
complete -c lengthwise -n '__fish_seen_subcommand_from compose' -l at -x -d 'a time of day, 07:00'
complete -c lengthwise -n '__fish_seen_subcommand_from compose' -l slot -x -d 'a time with its unit, 45min'
complete -c lengthwise -n '__fish_seen_subcommand_from compose' -l not -x -d 'dates, 2027-05-17,2027-05-20'
complete -c lengthwise -n '__fish_seen_subcommand_from compose' -l race-name -x -d 'its name, "Gull Island"'
complete -c lengthwise -n '__fish_seen_subcommand_from compose' -l pool -x -d 'a pool\'s length, 25m, 25yd or "33 1/3 m"'
complete -c lengthwise -n '__fish_seen_subcommand_from compose' -l resume -r -F -d 'a plan\'s file'
complete -c lengthwise -n '__fish_seen_subcommand_from compose' -l after -x -d 'the last week that stays, "week 3"'
complete -c lengthwise -n '__fish_seen_subcommand_from compose' -l longest -x -d 'a distance, 200m'
complete -c lengthwise -n '__fish_seen_subcommand_from compose' -l session -x -d 'a distance, 1000m'
complete -c lengthwise -n '__fish_seen_subcommand_from compose' -l threshold -x -d 'the time for 100 in this pool, 2:05'
complete -c lengthwise -n '__fish_seen_subcommand_from compose' -l kit -x -d 'board, buoy, both with a comma, or none'
complete -c lengthwise -n '__fish_seen_subcommand_from compose' -l race-in-pool
complete -c lengthwise -n '__fish_seen_subcommand_from compose' -l limit -x -d 'a rule and its value, "rep-step 25%"'
complete -c lengthwise -n '__fish_seen_subcommand_from compose' -l explain
complete -c lengthwise -n '__fish_seen_subcommand_from compose' -l color -x -a 'auto always never'
complete -c lengthwise -n '__fish_seen_subcommand_from compose' -l ascii
complete -c lengthwise -n '__fish_seen_subcommand_from compose' -l width -x -d 'columns, 40 to 400'
complete -c lengthwise -n '__fish_seen_subcommand_from compose' -l output -s o -r -F -d 'a file\'s name'
complete -c lengthwise -n '__fish_seen_subcommand_from compose' -l force

complete -c lengthwise -n __fish_use_subcommand -a check -d 'what to mend'
complete -c lengthwise -n '__fish_seen_subcommand_from check' -k -a '(__fish_complete_suffix .swim)'
complete -c lengthwise -n '__fish_seen_subcommand_from check' -l help -s h
complete -c lengthwise -n '__fish_seen_subcommand_from check' -l strict
complete -c lengthwise -n '__fish_seen_subcommand_from check' -l format -x -a 'text json sarif'
complete -c lengthwise -n '__fish_seen_subcommand_from check' -l color -x -a 'auto always never'
complete -c lengthwise -n '__fish_seen_subcommand_from check' -l ascii
complete -c lengthwise -n '__fish_seen_subcommand_from check' -l width -x -d 'columns, 40 to 400'
complete -c lengthwise -n '__fish_seen_subcommand_from check' -l output -s o -r -F -d 'a file\'s name'
complete -c lengthwise -n '__fish_seen_subcommand_from check' -l force

complete -c lengthwise -n __fish_use_subcommand -a tidy -d 'the neat spelling'
complete -c lengthwise -n '__fish_seen_subcommand_from tidy' -k -a '(__fish_complete_suffix .swim)'
complete -c lengthwise -n '__fish_seen_subcommand_from tidy' -l help -s h
complete -c lengthwise -n '__fish_seen_subcommand_from tidy' -l check
complete -c lengthwise -n '__fish_seen_subcommand_from tidy' -l stdout
complete -c lengthwise -n '__fish_seen_subcommand_from tidy' -l color -x -a 'auto always never'
complete -c lengthwise -n '__fish_seen_subcommand_from tidy' -l ascii
complete -c lengthwise -n '__fish_seen_subcommand_from tidy' -l width -x -d 'columns, 40 to 400'

complete -c lengthwise -n __fish_use_subcommand -a tally -d 'metres, lengths, time'
complete -c lengthwise -n '__fish_seen_subcommand_from tally' -k -a '(__fish_complete_suffix .swim)'
complete -c lengthwise -n '__fish_seen_subcommand_from tally' -l help -s h
complete -c lengthwise -n '__fish_seen_subcommand_from tally' -l week -x -d 'a week\'s number, 1 to 999'
complete -c lengthwise -n '__fish_seen_subcommand_from tally' -l session -x -d 'a day or a name'
complete -c lengthwise -n '__fish_seen_subcommand_from tally' -l lane -x -d 'a lane\'s number, 1 to 100'
complete -c lengthwise -n '__fish_seen_subcommand_from tally' -l swimmer -x -d 'a swimmer\'s name'
complete -c lengthwise -n '__fish_seen_subcommand_from tally' -l by -x -a 'stroke mode effort gear section swimmer'
complete -c lengthwise -n '__fish_seen_subcommand_from tally' -l format -x -a 'text json'
complete -c lengthwise -n '__fish_seen_subcommand_from tally' -l color -x -a 'auto always never'
complete -c lengthwise -n '__fish_seen_subcommand_from tally' -l ascii
complete -c lengthwise -n '__fish_seen_subcommand_from tally' -l width -x -d 'columns, 40 to 400'
complete -c lengthwise -n '__fish_seen_subcommand_from tally' -l output -s o -r -F -d 'a file\'s name'
complete -c lengthwise -n '__fish_seen_subcommand_from tally' -l force

complete -c lengthwise -n __fish_use_subcommand -a deck -d 'for the pool side'
complete -c lengthwise -n '__fish_seen_subcommand_from deck' -k -a '(__fish_complete_suffix .swim)'
complete -c lengthwise -n '__fish_seen_subcommand_from deck' -l help -s h
complete -c lengthwise -n '__fish_seen_subcommand_from deck' -l week -x -d 'a week\'s number, 1 to 999'
complete -c lengthwise -n '__fish_seen_subcommand_from deck' -l session -x -d 'a day or a name'
complete -c lengthwise -n '__fish_seen_subcommand_from deck' -l lane -x -d 'a lane\'s number, 1 to 100'
complete -c lengthwise -n '__fish_seen_subcommand_from deck' -l swimmer -x -d 'a swimmer\'s name'
complete -c lengthwise -n '__fish_seen_subcommand_from deck' -l today -x -d 'a date, 2027-05-04'
complete -c lengthwise -n '__fish_seen_subcommand_from deck' -l pool -x -d 'a pool\'s length, 25m, 25yd or "33 1/3 m"'
complete -c lengthwise -n '__fish_seen_subcommand_from deck' -l start -x -d 'a time of day, 07:00'
complete -c lengthwise -n '__fish_seen_subcommand_from deck' -l left -x -d 'a time, 20min, 90s or 1:30'
complete -c lengthwise -n '__fish_seen_subcommand_from deck' -l after -x -d 'a row\'s number, as deck shows it'
complete -c lengthwise -n '__fish_seen_subcommand_from deck' -l gap -x -d 'seconds, 1s to 60s'
complete -c lengthwise -n '__fish_seen_subcommand_from deck' -l swimmers -x -d 'how many in a lane, 2 to 20'
complete -c lengthwise -n '__fish_seen_subcommand_from deck' -l color -x -a 'auto always never'
complete -c lengthwise -n '__fish_seen_subcommand_from deck' -l ascii
complete -c lengthwise -n '__fish_seen_subcommand_from deck' -l width -x -d 'columns, 40 to 400'
complete -c lengthwise -n '__fish_seen_subcommand_from deck' -l output -s o -r -F -d 'a file\'s name'
complete -c lengthwise -n '__fish_seen_subcommand_from deck' -l force

complete -c lengthwise -n __fish_use_subcommand -a chart -d 'longest rep and race'
complete -c lengthwise -n '__fish_seen_subcommand_from chart' -k -a '(__fish_complete_suffix .swim)'
complete -c lengthwise -n '__fish_seen_subcommand_from chart' -l help -s h
complete -c lengthwise -n '__fish_seen_subcommand_from chart' -l lane -x -d 'a lane\'s number, 1 to 100'
complete -c lengthwise -n '__fish_seen_subcommand_from chart' -l swimmer -x -d 'a swimmer\'s name'
complete -c lengthwise -n '__fish_seen_subcommand_from chart' -l color -x -a 'auto always never'
complete -c lengthwise -n '__fish_seen_subcommand_from chart' -l ascii
complete -c lengthwise -n '__fish_seen_subcommand_from chart' -l width -x -d 'columns, 40 to 400'
complete -c lengthwise -n '__fish_seen_subcommand_from chart' -l output -s o -r -F -d 'a file\'s name'
complete -c lengthwise -n '__fish_seen_subcommand_from chart' -l force

complete -c lengthwise -n __fish_use_subcommand -a cards -d 'waterproof cards'
complete -c lengthwise -n '__fish_seen_subcommand_from cards' -k -a '(__fish_complete_suffix .swim)'
complete -c lengthwise -n '__fish_seen_subcommand_from cards' -l help -s h
complete -c lengthwise -n '__fish_seen_subcommand_from cards' -l week -x -d 'a week\'s number, 1 to 999'
complete -c lengthwise -n '__fish_seen_subcommand_from cards' -l session -x -d 'a day or a name'
complete -c lengthwise -n '__fish_seen_subcommand_from cards' -l lane -x -d 'a lane\'s number, 1 to 100'
complete -c lengthwise -n '__fish_seen_subcommand_from cards' -l swimmer -x -d 'a swimmer\'s name'
complete -c lengthwise -n '__fish_seen_subcommand_from cards' -l size -x -a 'whole half quarter eighth a5 a6 a7 3x5in 4x6in'
complete -c lengthwise -n '__fish_seen_subcommand_from cards' -l sheet -x -a 'a4 letter'
complete -c lengthwise -n '__fish_seen_subcommand_from cards' -l margin -x -d 'what the printer leaves white, 0mm to 40mm'
complete -c lengthwise -n '__fish_seen_subcommand_from cards' -l hole
complete -c lengthwise -n '__fish_seen_subcommand_from cards' -l back -x -a 'overview pace'
complete -c lengthwise -n '__fish_seen_subcommand_from cards' -l copies -x -d 'a number, 1 to 100'
complete -c lengthwise -n '__fish_seen_subcommand_from cards' -l test-sheet
complete -c lengthwise -n '__fish_seen_subcommand_from cards' -l distance -x -d 'how far away it is read, 30cm to 3m'
complete -c lengthwise -n '__fish_seen_subcommand_from cards' -l preview -r -F -d 'an SVG\'s name'
complete -c lengthwise -n '__fish_seen_subcommand_from cards' -l format -x -a 'pdf png'
complete -c lengthwise -n '__fish_seen_subcommand_from cards' -l color -x -a 'auto always never'
complete -c lengthwise -n '__fish_seen_subcommand_from cards' -l ascii
complete -c lengthwise -n '__fish_seen_subcommand_from cards' -l width -x -d 'columns, 40 to 400'
complete -c lengthwise -n '__fish_seen_subcommand_from cards' -l output -s o -r -F -d 'a file\'s name'
complete -c lengthwise -n '__fish_seen_subcommand_from cards' -l force

complete -c lengthwise -n __fish_use_subcommand -a export -d 'for other programs'
complete -c lengthwise -n '__fish_seen_subcommand_from export' -k -a '(__fish_complete_suffix .swim)'
complete -c lengthwise -n '__fish_seen_subcommand_from export' -l help -s h
complete -c lengthwise -n '__fish_seen_subcommand_from export' -l as -x -a 'json csv ics html md'
complete -c lengthwise -n '__fish_seen_subcommand_from export' -l rows -x -a 'line session week'
complete -c lengthwise -n '__fish_seen_subcommand_from export' -l week -x -d 'a week\'s number, 1 to 999'
complete -c lengthwise -n '__fish_seen_subcommand_from export' -l session -x -d 'a day or a name'
complete -c lengthwise -n '__fish_seen_subcommand_from export' -l lane -x -d 'a lane\'s number, 1 to 100'
complete -c lengthwise -n '__fish_seen_subcommand_from export' -l swimmer -x -d 'a swimmer\'s name'
complete -c lengthwise -n '__fish_seen_subcommand_from export' -l color -x -a 'auto always never'
complete -c lengthwise -n '__fish_seen_subcommand_from export' -l ascii
complete -c lengthwise -n '__fish_seen_subcommand_from export' -l width -x -d 'columns, 40 to 400'
complete -c lengthwise -n '__fish_seen_subcommand_from export' -l output -s o -r -F -d 'a file\'s name'
complete -c lengthwise -n '__fish_seen_subcommand_from export' -l force

complete -c lengthwise -n __fish_use_subcommand -a pace -d 'threshold from swims'
complete -c lengthwise -n '__fish_seen_subcommand_from pace' -l help -s h
complete -c lengthwise -n '__fish_seen_subcommand_from pace' -l pool -x -d 'a pool, 25m, 25yd, "33 1/3 m" or "open water"'
complete -c lengthwise -n '__fish_seen_subcommand_from pace' -l predict -x -d 'distances, 750m,1500m'
complete -c lengthwise -n '__fish_seen_subcommand_from pace' -l stops
complete -c lengthwise -n '__fish_seen_subcommand_from pace' -l into -r -F -d 'a plan\'s file'
complete -c lengthwise -n '__fish_seen_subcommand_from pace' -l format -x -a 'text json'
complete -c lengthwise -n '__fish_seen_subcommand_from pace' -l color -x -a 'auto always never'
complete -c lengthwise -n '__fish_seen_subcommand_from pace' -l ascii
complete -c lengthwise -n '__fish_seen_subcommand_from pace' -l width -x -d 'columns, 40 to 400'
complete -c lengthwise -n '__fish_seen_subcommand_from pace' -l output -s o -r -F -d 'a file\'s name'
complete -c lengthwise -n '__fish_seen_subcommand_from pace' -l force

complete -c lengthwise -n __fish_use_subcommand -a explain -d 'any word or rule'
complete -c lengthwise -n '__fish_seen_subcommand_from explain' -a 'Fri Mon Sat Sun Thu Tue Wed about allow as at back band before board breast breaths broken build buoy calendar caution choice cool cool-down crawl descend distance down drill easy evens every factor feasible fins first fly for from front h hard hold home-wall if in include kick lane lanes last lengths limit long longest m main medley middle min minus needed negative next nothing odds off on open paddles pause per plan plus pool pull race race-rep rep-step reserve rest rest-band rpe s second-look send-off session session-floor sessions set shape slot snorkel split sprint standard steady stops super-sprint swim swimmer syntax-amount syntax-character syntax-comma syntax-count syntax-date syntax-encoding syntax-group syntax-include syntax-limit syntax-line syntax-name syntax-number syntax-pairing syntax-place syntax-selector syntax-split syntax-string syntax-time syntax-twice syntax-word taper threshold time tread up use warm warm-up water week week-growth wetsuit whole-lengths with x yd'
complete -c lengthwise -n '__fish_seen_subcommand_from explain' -l help -s h
complete -c lengthwise -n '__fish_seen_subcommand_from explain' -l color -x -a 'auto always never'
complete -c lengthwise -n '__fish_seen_subcommand_from explain' -l ascii
complete -c lengthwise -n '__fish_seen_subcommand_from explain' -l width -x -d 'columns, 40 to 400'
