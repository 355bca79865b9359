#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# Each `[KEY locator]` in code, tables, documents and tests is an entry of docs/sources.md, and each is used.
# An entry is a heading, table row or list item that begins with the key: `### KEY`, `| KEY |`, `- **KEY**`.
set -u
LC_ALL=C
export LC_ALL
scratch=$(mktemp -d)
trap 'rm -rf "$scratch"' EXIT
[ -f docs/sources.md ] || { echo 'docs/sources.md is not there'; exit 0; }
awk '
    /^(#+ |\| *|[-*] )[`*[]*[A-Z][A-Z0-9.-]*[A-Z0-9][]`*]*( |\||:|$)/ {
        sub(/^(#+ |\| *|[-*] )[`*[]*/, ""); match($0, /^[A-Z][A-Z0-9.-]*[A-Z0-9]/)
        print substr($0, 1, RLENGTH)
    }' docs/sources.md | grep -v '^KEY$' | sort -u >"$scratch/entries"
find src include tables docs tests \( -name '*.[ch]' -o -name '*.csv' -o -name '*.md' -o -name '*.1' \
    -o -name '*.json' -o -name '*.txt' \) ! -path docs/sources.md | sort | xargs awk '
    {
        rest = $0
        while (match(rest, /\[[A-Z][A-Z0-9.-]*[A-Z0-9] [^]+=*<>-][^]]*\]/)) {
            cited = substr(rest, RSTART + 1, RLENGTH - 2); rest = substr(rest, RSTART + RLENGTH)
            parts = split(cited, part, /; */)
            for (i = 1; i <= parts; i++) if (match(part[i], /^[A-Z][A-Z0-9.-]*[A-Z0-9] /))
                print substr(part[i], 1, RLENGTH - 1), FILENAME ":" FNR
        }
    }' | grep -v '^KEY ' >"$scratch/cited"
awk '
    NR == FNR { entry[$1] = 1; next }
    !($1 in entry) { print $2 ": [" $1 " ...] is no entry of docs/sources.md" }
' "$scratch/entries" "$scratch/cited"
awk '
    NR == FNR { used[$1] = 1; next }
    !($1 in used) { print "docs/sources.md: " $1 " is cited nowhere" }
' "$scratch/cited" "$scratch/entries"
