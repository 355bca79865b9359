#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# Functions up to 60 code lines and 6 parameters, files up to 400 lines, lines up to 110 characters.
set -u
here=$(dirname "$0")
LC_ALL=C
export LC_ALL
for file in $(find include src tests -name '*.[ch]' | sort); do
    awk -f "$here/strip.awk" "$file" | awk -v file="$file" -f "$here/functions.awk"
done
# Bytes that continue a UTF-8 character are not counted.
for file in Makefile $(find include src tests -name '*.[ch]' -o -name '*.sh' -o -name '*.awk' | sort); do
    awk -v file="$file" '
        { line = $0; gsub(/[\200-\277]/, "", line) }
        length(line) > 110 { printf "%s:%d: %d characters, 110 at most\n", file, FNR, length(line) }
        END { if (FNR > 400) printf "%s: %d lines, 400 at most\n", file, FNR }' "$file"
done
