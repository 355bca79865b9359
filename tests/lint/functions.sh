#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# Functions up to 60 code lines and 6 parameters, files up to 400 lines, lines up to 110 characters.
set -u
here=$(dirname "$0")
LC_ALL=C
export LC_ALL
find include src tests -name '*.[ch]' | sort |
    xargs awk -f "$here/strip.awk" -f "$here/functions.awk" /dev/null
# Bytes that continue a UTF-8 character are not counted.
{
    echo Makefile
    find include src tests -name '*.[ch]' -o -name '*.sh' -o -name '*.awk' | sort
} | xargs awk '
    function judge() { if (lines > 400) printf "%s: %d lines, 400 at most\n", name, lines }
    FNR == 1 { judge(); name = FILENAME }
    { lines = FNR }
    length($0) > 110 {
        line = $0; gsub(/[\200-\277]/, "", line)
        if (length(line) > 110) printf "%s:%d: %d characters, 110 at most\n", FILENAME, FNR, length(line)
    }
    END { judge() }'
