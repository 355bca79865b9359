#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# Within a room calls go one way from file to file.   circles.sh BUILD
set -u
build=$1
for room in $(find src -type d | sed -n 's|^src/||p' | LC_ALL=C sort); do
    find "$build/obj/src/$room" -maxdepth 1 -name '*.o' 2>/dev/null | LC_ALL=C sort | while read -r object; do
        [ -f "src/$room/$(basename "$object" .o).c" ] || continue # what is left of a file that is gone
        nm "$object" | sed "s|^|$(basename "$object" .o) |"
    done | awk -v room="$room" '
        $2 == "U" { asks[++n] = $1; what[n] = $3; next }
        $3 ~ /^[TRDB]$/ { home[$4] = $1; file[$1] }
        END {
            # Take away what calls nothing that is left, until nothing goes.
            do {
                gone = 0
                for (f in file) calls[f] = ""
                for (i = 1; i <= n; i++) {
                    to = home[what[i]]
                    if (asks[i] in file && to in file && to != asks[i]) calls[asks[i]] = to
                }
                for (f in file) if (calls[f] == "") { delete file[f]; gone++ }
            } while (gone)
            for (f in file)
                printf "src/%s/%s.c calls %s.c, which comes back to it or to a circle\n", room, f, calls[f]
        }' | LC_ALL=C sort
done
