#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# Includes go one way along the rooms; each library belongs to the rooms that own it; mechanics only computes.
set -u
here=$(dirname "$0")
for file in $(find include src -name '*.[ch]' | sort); do
    awk -v file="$file" -f "$here/includes.awk" "$file"
done
for file in $(find src/soil src/wall src/pressure src/checks src/order -name '*.[ch]' 2>/dev/null | sort); do
    calls='malloc|calloc|realloc|free|f?open|fclose|v?f?printf|f?puts|f?putc|putchar|fwrite'
    awk -f "$here/strip.awk" "$file" | awk -v file="$file" -v calls="(^|[^a-z0-9_])($calls)[ ]*\\(" '
        match($0, calls) {
            printf "%s:%d: mechanics allocates nothing, opens nothing, prints nothing: %s\n", file, FNR,
                substr($0, RSTART, RLENGTH)
        }'
done
