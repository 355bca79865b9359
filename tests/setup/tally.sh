#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# Add up the results below DIR and print the closing line.   tally.sh DIR
# A runner with nothing run has failed, and so has a directory with no runner in it.
set -u
find "$1" -type f 2>/dev/null | LC_ALL=C sort | xargs cat /dev/null | awk '
    NF >= 3 && $1 ~ /^[0-9]+$/ && $2 ~ /^[0-9]+$/ {
        if ($1 + $2 == 0) $2 = 1
        printf "%6d passed %4d failed  %s\n", $1, $2, $3
        passed += $1; failed += $2; lines++; next
    }
    { failed++ }
    END {
        if (!lines) failed++
        printf "%d passed, %d failed\n", passed, failed
        exit failed > 0
    }'
