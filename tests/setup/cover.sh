#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# Run the unit tests and the records of a cover build; print the share of lines and of branches reached, a
# line a file, a line a room and one for all. A branch is a way that a condition can go: of `a && b` there are
# four. Those of an assertion are left out, for none can be taken that ends a test. What nobody can take is
# in tests/setup/untaken.txt with its reason, and a room has a share with it and one without; a line of that
# list that is taken, or not there, is an error. Where else no test goes is listed in BUILD/untaken.txt.
#   cover.sh BUILD
set -u
build=$1
list=tests/setup/untaken.txt
mkdir -p "$build/results"
find "$build" -name '*.gcda' -exec rm -f {} +
failed=0
LOWWALL=$(cd "$build" && pwd)/lowwall sh tests/setup/unit.sh "$build/lowwall-tests" "$build/results/unit" \
    >"$build/unit.log" 2>&1 || failed=1
sh tests/recorded/run.sh "$build/lowwall" "$build/results/recorded" >"$build/recorded.log" 2>&1 || failed=1
: >"$build/untaken.txt"
for object in $(find "$build/obj/src" -name '*.gcno' | LC_ALL=C sort); do
    gcov -b -c -t "$object" 2>/dev/null
done | awk -v untaken="$build/untaken.txt" -v list="$list" '
    # The list: a file, then each line as it stands there and why nobody can take it.
    BEGIN {
        while ((getline row <list) > 0) {
            if (row ~ /^src\//) of = row
            else if (row ~ /^- /) { listed[of ":" substr(row, 3)] = 1; asked[++asks] = of ":" substr(row, 3) }
        }
    }
    # A header is seen from many objects: what one of them reaches is reached.
    function see_line(key, hit) {
        if (!(key in line)) { line[key] = 0; lines[file]++ }
        if (hit && !line[key]) { line[key] = 1; line_hits[file]++ }
    }
    function see_branch(key, hit) {
        if (!(key in branch)) { branch[key] = 0; branches[file]++; place[++places] = key; code[key] = source }
        if (hit && !branch[key]) { branch[key] = 1; branch_hits[file]++ }
    }
    function share(hit, all) { return all ? 100 * hit / all : 100 }
    function shown(name, l, lh, b, bh) {
        printf "%6.1f %% of %5d lines  %6.1f %% of %5d branches  %s\n", share(lh, l), l, share(bh, b), b, name
    }
    function shown_room(name, l, lh, b, bh, out) {
        shown(name (out ? sprintf(", %.1f %% of what can be taken", share(bh, b - out)) : ""), l, lh, b, bh)
    }
    /^ *-: *0:Source:/ {
        file = $0; sub(/^.*0:Source:/, "", file)
        if (file !~ /^src\//) { file = ""; next }
        if (file in lines) next
        lines[file] = line_hits[file] = branches[file] = branch_hits[file] = 0
        order[++n] = file
        next
    }
    file == "" { next }
    /^ *[-#=0-9]+\**: *[0-9]+:/ {
        split($0, part, ":"); number = part[2] + 0; at = 0
        source = $0; sub(/^[^:]*:[^:]*:[ \t]*/, "", source)
        asserts = source ~ /(^|[^_a-z])assert\(/
        if (part[1] !~ /-/) see_line(file ":" number, part[1] !~ /[#=]/)
        next
    }
    /^branch / && !/\(throw\)/ && !asserts { see_branch(file ":" number ":" ++at, $3 == "taken" && $4 > 0) }
    END {
        for (i = 1; i <= n; i++) {
            f = order[i]; split(f, part, "/"); room = part[2]
            shown(f, lines[f], line_hits[f], branches[f], branch_hits[f])
            if (!(room in room_lines)) rooms[++m] = room
            room_lines[room] += lines[f]; room_line_hits[room] += line_hits[f]
            room_branches[room] += branches[f]; room_branch_hits[room] += branch_hits[f]
        }
        if (!n) { print "no lines reached"; exit 1 }
        for (i = 1; i <= places; i++) {
            split(place[i], part, ":"); key = part[1] ":" code[place[i]]
            if (key in listed) there[key] = 1
            if (branch[place[i]] || !(key in listed)) continue
            open[key] = 1; split(part[1], folder, "/"); out[folder[2]]++; outs++
        }
        for (i = 1; i <= m; i++) {
            r = rooms[i]
            shown_room("all of src/" r, room_lines[r], room_line_hits[r], room_branches[r],
                       room_branch_hits[r], out[r])
            l += room_lines[r]; lh += room_line_hits[r]; b += room_branches[r]; bh += room_branch_hits[r]
        }
        shown_room("all", l, lh, b, bh, outs)
        for (i = 1; i <= places; i++) {
            split(place[i], part, ":")
            if (branch[place[i]] || (part[1] ":" code[place[i]]) in listed) continue
            printf "%s:%d: way %d of: %s\n", part[1], part[2], part[3], code[place[i]] >untaken
        }
        for (i = 1; i <= asks; i++) {
            if (asked[i] in open) continue
            why = asked[i] in there ? "every way is taken of " : "no condition stands at "
            print list ": " why asked[i]
            wrong = 1
        }
        exit wrong
    }' || exit 1
[ "$failed" = 0 ] || echo "some tests failed in this build: see $build/unit.log and $build/recorded.log"
