#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# Let one request for memory or one step of writing fail in each command of commands.txt, and see that what it
# leaves is the undisturbed output, or status 1 and the file as it was.   run.sh COMMAND PRELOAD TRIES RESULT
# TRIES is how many faults a command and kind are tried, evenly spread where there are more places to fail.
set -u
command=$1
preload=$2
tries=$3
result=$4
name=$(basename "$result")
scratch=$(mktemp -d)
trap 'rm -rf "$scratch"' EXIT
echo "== $name"
LC_ALL=C
TERM=dumb
export LC_ALL TERM
# As little stack as docs/library.md says is enough.
ulimit -s 1024

# once KIND AT: the command line with that fault; leaves $scratch/out (standard output), err, and $status
once() {
    rm -rf "$scratch/to"
    mkdir "$scratch/to"
    [ -z "$file" ] || echo 'what was there' >"$scratch/to/$file"
    status=0
    fault="FAULT_KIND=$1 FAULT_AT=$2 FAULT_COUNT=$scratch/count LD_PRELOAD=$preload"
    eval "$patience env $fault $command $arguments" \
        </dev/null >"$scratch/out" 2>"$scratch/err" || status=$?
    if [ -n "$folder" ]; then
        left=$(cd "$scratch/to" && find . -name '.?*')
        [ -z "$left" ] || complain "left behind: $left"
        written=$scratch/packed
        (cd "$scratch/to" && find . -type f | sort | while read -r one; do
            echo "$one" && cat "$one"
        done) >"$written"
    elif [ -n "$file" ]; then
        left=$(cd "$scratch/to" && echo .l* *)
        [ "$left" = ".l* $file" ] || complain "left behind: $left"
        written=$scratch/to/$file
    else
        written=$scratch/out
    fi
}

complain() {
    failed=$((failed + 1))
    printf '      %s fault %s of %s: %s\n' "$kind" "$at" "$places" "$1"
}

# Is what was written as it was before the command ran? Of standard output a first part may be out already.
untouched() {
    if [ -n "$folder" ]; then
        [ ! -e "$scratch/to/wall" ]
    elif [ -n "$file" ]; then
        echo 'what was there' | cmp -s - "$written"
    else
        head -c "$(wc -c <"$written")" "$scratch/whole" | cmp -s - "$written"
    fi
}

judge() {
    if [ "$status" -ge 128 ] && [ "$paper$kind" = yesmemory ]; then
        untouched || complain 'it died and left another file'
    elif [ "$status" = 1 ] && [ "$usual" != 1 ]; then
        untouched || complain 'status 1, but something was written'
        [ -s "$scratch/err" ] || complain 'status 1 without a word'
    elif [ "$status" != "$usual" ]; then
        complain "status $status, undisturbed $usual"
    elif ! cmp -s "$written" "$scratch/whole" && [ "$paper$kind" != yesmemory ]; then
        complain "status $status, but another output"
    fi
}

try() { # KIND
    kind=$1
    at=0 places=?
    once "$kind" 0
    usual=$status
    [ "$usual" -lt 128 ] || complain 'it died undisturbed'
    cp "$written" "$scratch/whole"
    read -r places <"$scratch/count"
    [ "$places" -gt 0 ] || complain 'there was nothing to fail'
    step=$(((places + tries - 1) / tries))
    [ "$step" -gt 0 ] || step=1
    at=1
    while [ "$at" -le "$places" ]; do
        once "$kind" "$at"
        judge
        at=$((at + step))
    done
}

passed=0
bad=0
while IFS= read -r line; do
    case $line in '' | '#'*) continue ;; esac
    paper=no patience=
    # A thread of pango waits for ever where memory fails inside it: that counts as dead.
    case $line in 'paper '*) paper=yes patience='timeout -s KILL 60' line=${line#paper } ;; esac
    file='' folder=
    case $line in
    *OUT/*) folder=yes ;;
    *OUT*) file=$(printf '%s' "$line" | sed 's/.*OUT/wall/; s/ .*//') ;;
    esac
    arguments=$(printf '%s' "$line" | sed "s|OUT|$scratch/to/wall|")
    failed=0
    told=$(try memory; try write; echo "faults $failed")
    case $told in
    'faults 0') passed=$((passed + 1)) ;;
    *)
        bad=$((bad + 1))
        echo "FAIL  lowwall $line"
        printf '%s\n' "$told" | head -n 12
        ;;
    esac
done <tests/faults/commands.txt
echo "$passed $bad $name" >"$result"
