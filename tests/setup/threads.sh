#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# Run each program of tests/threads/, built with the thread sanitizer.   threads.sh DIR RESULT
set -u
directory=$1
result=$2
name=$(basename "$result")
passed=0
failed=0
for source in tests/threads/*.c; do
    [ -f "$source" ] || exit 0
    program=$directory/$(basename "$source" .c)
    echo "== $name: $source"
    if "$program"; then passed=$((passed + 1)); else failed=$((failed + 1)); fi
done
echo "$passed $failed $name" >"$result"
