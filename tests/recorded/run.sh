#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# Replay the recorded command lines.   run.sh COMMAND RESULT
# A record NAME.txt: words about it, then `$ lowwall ARGS` as typed in this directory, what it prints (both
# streams), and `[exit N]`; any number of these. Text must be the same to the printed digit; where a command
# line has --json, numbers may differ by 1e-9 of their size, because maths libraries differ in the last bit.
set -u
case $1 in /*) command=$1 ;; *) command=$(pwd)/$1 ;; esac
case $2 in /*) result=$2 ;; *) result=$(pwd)/$2 ;; esac
name=$(basename "$result")
echo "== $name"
cd "$(dirname "$0")" || exit 1
scratch=$(mktemp -d)
trap 'rm -rf "$scratch"' EXIT
PATH=$(dirname "$command"):$PATH
LC_ALL=C
TERM=dumb
export PATH LC_ALL TERM
unset NO_COLOR COLUMNS LINES

# The record with each command's output of today in place of the one recorded.
replay() { # RECORD
    inside=no
    status=none
    while IFS= read -r line || [ -n "$line" ]; do
        case $line in
        '$ '*)
            inside=yes
            printf '%s\n' "$line"
            status=0
            sh -c "${line#\$ }" </dev/null >"$scratch/out" 2>&1 || status=$?
            cat "$scratch/out"
            ;;
        '[exit '*']')
            printf '[exit %s]\n' "$status"
            inside=no
            ;;
        *) [ "$inside" = yes ] || printf '%s\n' "$line" ;;
        esac
    done <"$1"
}

well_formed() { # RECORD: at least one command, and each command line group closed
    awk '/^\$ / { open = 1; seen = 1 } /^\[exit [0-9]+\]$/ { open = 0 } END { exit !(seen && !open) }' "$1"
}

passed=0
failed=0
for record in *.txt; do
    [ -f "$record" ] || continue
    replay "$record" >"$scratch/now"
    if ! well_formed "$record"; then
        failed=$((failed + 1))
        echo "tests/recorded/$record: no command line, or no [exit N] after it"
    elif cmp -s "$record" "$scratch/now" || awk -f same.awk "$record" "$scratch/now"; then
        passed=$((passed + 1))
    else
        failed=$((failed + 1))
        echo "tests/recorded/$record: recorded (-) and today (+) differ"
        diff -u "$record" "$scratch/now" | head -n 60
    fi
done
if [ $((passed + failed)) = 0 ]; then
    echo 'tests/recorded: no record found'
    failed=1
fi
echo "$passed $failed $name" >"$result"
[ "$failed" = 0 ]
