#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# Check every demo wall, and make all there is of it in demo/ beside the command.   demo.sh COMMAND
# 0, 3, 4 and 5 are verdicts; anything else is a failure of the program or of the sheet.
set -u
command=$1
out=$(dirname "$command")/demo
ran=0
bad=0
mkdir -p "$out" || exit 1

# What needs no word when it goes well.
make() { # FILE, then COMMAND ...
    file=$1
    shift
    "$@" -o "$out/$file" || bad=$((bad + 1))
}

paper=no
small='wall height=400 mm'
if "$command" draw "$small" 'block height=200 mm' 'block depth=300 mm' -o "$out/try.pdf" 2>"$out/try"; then
    paper=yes
fi
why=$(sed -n '1s,^lowwall draw: [a-z-]*: ,,p' "$out/try")
rm -f "$out/try" "$out/try.pdf"

drawings() { # SHEET NAME
    for view in section elevation plan; do
        make "$2-$view.svg" "$command" draw --view "$view" "$1"
        [ "$paper" = no ] || make "$2-$view.pdf" "$command" draw --view "$view" "$1"
    done
    make "$2-section-phone.svg" "$command" draw --width 95 "$1"
}

lists() { # SHEET NAME
    make "$2-order.txt" "$command" order "$1"
    make "$2-order.csv" "$command" order --csv "$1"
    make "$2-pegs.txt" "$command" pegs "$1"
    make "$2-precheck.html" "$command" precheck "$1"
    [ "$paper" = no ] || make "$2-precheck.pdf" "$command" precheck "$1"
}

for sheet in docs/demo/*.csv; do
    [ -f "$sheet" ] || continue
    ran=$((ran + 1))
    name=$(basename "$sheet" .csv)
    status=0
    "$command" check --full "$sheet" -o "$out/$name.txt" || status=$?
    case $status in
    0 | 3 | 4 | 5)
        printf '\n$ lowwall check %s\n' "$sheet"
        "$command" check "$sheet" || :
        printf '[exit %s]\n' "$status"
        drawings "$sheet" "$name"
        lists "$sheet" "$name"
        ;;
    *) bad=$((bad + 1)) ;;
    esac
done
if [ "$ran" = 0 ]; then
    echo 'demo: no sheet found in docs/demo/' >&2
    exit 1
fi
printf '\nIn %s/ of each wall: report, section, elevation, plan, order, pegs, pre-check.\n' "$out"
[ "$paper" = yes ] || printf 'They are SVG, HTML and text only: %s\n' "$why"
[ "$bad" = 0 ]
