#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# Run every lint; each prints what it finds, and nothing is good.   run.sh BUILD
set -u
build=$1
here=$(dirname "$0")
results=$build/results/lint
rm -rf "$results"
mkdir -p "$results"
passed=1 # the reading by clang, which the Makefile has done before it comes here
failed=0
echo "ok    clang, every file"
for lint in "$here"/*.sh; do
    name=$(basename "$lint" .sh)
    case $name in run | selftest) continue ;; esac
    found=$(sh "$lint" "$build" 2>&1) || found="$found
$lint itself failed"
    if [ -z "$found" ]; then
        passed=$((passed + 1))
        echo "ok    $name"
    else
        failed=$((failed + 1))
        echo "FAIL  $name"
        printf '%s\n' "$found" | sed 's/^/      /'
    fi
done
echo "$passed $failed lint" >"$results/lint"
sh "$here/../setup/tally.sh" "$results"
