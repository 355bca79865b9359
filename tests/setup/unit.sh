#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# Run one Criterion binary and count.   unit.sh BINARY RESULT
set -u
binary=$1
result=$2
name=$(basename "$result")
echo "== $name"
if [ ! -x "$binary" ]; then
    echo "$binary is not there"
    echo "0 1 $name" >"$result"
    exit 1
fi
# Beside the binary: whatever lies below the results is counted.
log=$(dirname "$binary")/$name.log
status=0
"$binary" --color=never >"$log" 2>&1 || status=$?
# A sanitizer's report can run to thousands of lines; all of it stays in the log.
head -n 400 "$log"

# What the sources hold must have run: a file left out of the link would go unnoticed otherwise.
written=$(find tests -name '*.c' ! -path 'tests/bench/*' ! -path 'tests/fuzz/*' ! -path 'tests/threads/*' \
    ! -path 'tests/setup/*' ! -path 'tests/lint/*' -exec cat {} + | grep -c '^\(Parameterized\)\{0,1\}Test(')
awk -v name="$name" -v status="$status" -v written="$written" '
    /Synthesis: Tested:/ {
        gsub(/[^0-9|]/, ""); split($0, part, "|")
        tested = part[1]; passed = part[2]; failed = part[3]
    }
    END {
        if (status != 0 && failed == 0) failed = 1
        if (tested < written) failed += written - tested
        print passed + 0, failed + 0, name
        exit failed > 0 || passed == 0
    }' "$log" >"$result" || {
    echo "$name: $(cat "$result"); $written are written, and none may be skipped; the whole log is $log"
}
