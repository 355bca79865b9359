#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# What nobody can take names a line that is there, and says why.
set -u
list=tests/setup/untaken.txt
[ -f "$list" ] || exit 0
awk '
    function bad(words) { print FILENAME ":" FNR ": " words }
    function is_there(old, file,   line, found) {
        while ((getline line <file) > 0) {
            sub(/^ +/, "", line)
            if (line == old) found = 1
        }
        close(file)
        return found
    }
    /^#/ || /^$/ { next }
    /^- / {
        if (waits) bad("no reason stands above: " $0)
        if (!is_there(substr($0, 3), file)) bad("not in " file ": " substr($0, 3))
        waits = 1
        next
    }
    /^= ./ { waits = 0; next }
    /^src\// { file = $0; next }
    { bad("wants a file, a - or a =") }
    END { if (waits) bad("no reason stands below") }' "$list"
