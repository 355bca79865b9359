# SPDX-License-Identifier: GPL-3.0-or-later
# Completion of lowwall for bash.

_lowwall_words() {
    local IFS=$'\n'
    mapfile -t COMPREPLY < <(compgen -W "$1" -- "$2")
}

_lowwall_check() {
    case $2 in
    -*) _lowwall_words $'--full\n--working\n--working=all\n--as\n--likely\n--json\n--format\n--units\n--tables\n--jobs\n--output\n--help\n--version' "$2" ;;
    *) mapfile -t COMPREPLY < <(compgen -f -- "$2") ;;
    esac
}

_lowwall_wall() { # OPTIONS WORD
    case $2 in
    -*) _lowwall_words "$1" "$2" ;;
    *) mapfile -t COMPREPLY < <(compgen -f -- "$2") ;;
    esac
}

_lowwall_list() {
    local lists=$'soils\ninterfaces\nmaterials\nloads\nbearing\nplant\nconventions\nformats\nplaces\nlimits\nconditions\nclearances'
    lists+=$'\nthresholds\nfences\nordering\nhazards\nquestions\nchoices\nmethods\nitems\nunits'
    case $2 in
    -*) _lowwall_words $'--csv\n--json\n--markdown\n--tables\n--output\n--help' "$2" ;;
    *)
        if [[ $3 = limits ]]; then
            _lowwall_words "$(lowwall list places --csv 2>/dev/null | sed -e 1d -e 's/,.*//')" "$2"
        elif [[ $3 = formats ]]; then
            _lowwall_words "$(lowwall list formats --csv 2>/dev/null | sed -e 1d -e 's/,.*//' | sort -u)" "$2"
        else
            _lowwall_words "$lists" "$2"
        fi
        ;;
    esac
}

_lowwall() {
    local word=$2 before=$3
    COMPREPLY=()
    if [[ $COMP_CWORD = 1 ]]; then
        _lowwall_words $'ask\ncheck\norder\npegs\nfit\ndraw\nprecheck\nform\nnew\nlist\npressure\nbearing\nslip\nhelp\nversion\n--help\n--version' "$word"
        return
    fi
    case $before in
    -o | --output) mapfile -t COMPREPLY < <(compgen -f -- "$word"); return ;;
    --format)
        _lowwall_words "all"$'\n'"$(lowwall list formats --csv 2>/dev/null | sed -e 1d -e 's/,.*//' | sort -u)" "$word"
        return
        ;;
    --units) _lowwall_words $'metric\nus' "$word"; return ;;
    --as) _lowwall_words $'text\nmarkdown\nhtml' "$word"; return ;;
    --view) _lowwall_words $'section\nelevation\nplan' "$word"; return ;;
    -j | --jobs) _lowwall_words "$(seq "$(getconf _NPROCESSORS_ONLN)")" "$word"; return ;;
    --tables) mapfile -t COMPREPLY < <(compgen -d -- "$word"); return ;;
    esac
    case ${COMP_WORDS[1]} in
    ask) _lowwall_wall $'--units\n--tables\n--output\n--help' "$word" ;;
    check) _lowwall_check "$1" "$word" ;;
    order | pegs | fit) _lowwall_wall $'--csv\n--json\n--as\n--units\n--tables\n--output\n--help' "$word" ;;
    draw) _lowwall_wall $'--view\n--width\n--units\n--tables\n--output\n--help' "$word" ;;
    form) _lowwall_words $'--paper\n--units\n--tables\n--output\n--help' "$word" ;;
    precheck) _lowwall_wall $'--as\n--paper\n--date\n--verify\n--units\n--tables\n--output\n--help' "$word" ;;
    list) _lowwall_list "$1" "$word" "$before" ;;
    new) _lowwall_words $'bed\nground\nsection\n--output\n--help' "$word" ;;
    pressure) _lowwall_wall $'--json\n--csv\n--working\n--width\n--units\n--tables\n--output\n--help' "$word" ;;
    bearing | slip) _lowwall_words $'--json\n--units\n--help' "$word" ;;
    help) _lowwall_words $'ask\ncheck\norder\npegs\nfit\ndraw\nprecheck\nform\nnew\nlist\npressure\nbearing\nslip' "$word" ;;
    esac
}

complete -o filenames -F _lowwall lowwall
