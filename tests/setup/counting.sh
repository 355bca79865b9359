#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# What runners share: a scratch directory that goes with them, and the count of what passed. To be sourced,
# with $result set; `counted` at the end writes the runner's line.
runner=$(basename "$0" .sh)
name=$(basename "$result")
echo "== $name"
passed=0
failed=0
scratch=$(mktemp -d)
trap 'rm -rf "$scratch"' EXIT

note() { # WHAT STATUS
    if [ "$2" = 0 ]; then
        passed=$((passed + 1))
    else
        failed=$((failed + 1))
        echo "$runner: $1"
    fi
}

check() { # WHAT COMMAND...
    words=$1
    shift
    outcome=0
    "$@" >"$scratch/log" 2>&1 || outcome=1
    note "$words" $outcome
    [ $outcome = 0 ] || tail -n 20 "$scratch/log"
}

counted() {
    echo "$passed $failed $name" >"$result"
}
