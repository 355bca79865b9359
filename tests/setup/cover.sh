#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# Run the unit tests and the records of a cover build; print the share of lines reached, a line a file.
#   cover.sh BUILD
set -u
build=$1
mkdir -p "$build/results"
find "$build" -name '*.gcda' -exec rm -f {} +
failed=0
LOWWALL=$(cd "$build" && pwd)/lowwall sh tests/setup/unit.sh "$build/lowwall-tests" "$build/results/unit" \
    >"$build/unit.log" 2>&1 || failed=1
sh tests/recorded/run.sh "$build/lowwall" "$build/results/recorded" >"$build/recorded.log" 2>&1 || failed=1
for object in $(find "$build/obj/src" -name '*.gcno' | LC_ALL=C sort); do
    gcov -n "$object" 2>/dev/null
done | awk '
    /^File / { file = $2; gsub(/\047/, "", file) }
    /^Lines executed:/ && file ~ /^src\// {
        split($0, part, /[:%]| of /); share = part[2]; lines = $NF
        if (!(file in total)) { total[file] = lines; reached[file] = share * lines / 100; order[++n] = file }
        file = ""
    }
    END {
        for (i = 1; i <= n; i++) {
            f = order[i]; printf "%6.1f %% of %4d  %s\n", 100 * reached[f] / total[f], total[f], f
            all += total[f]; hit += reached[f]
        }
        if (!n) { print "no lines reached"; exit 1 }
        printf "%6.1f %% of %d lines reached\n", 100 * hit / all, all
    }' || exit 1
[ "$failed" = 0 ] || echo "some tests failed in this build: see $build/unit.log and $build/recorded.log"
