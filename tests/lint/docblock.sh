#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# A comment directly before each public prototype, or before the unbroken run of prototypes that it is in.
set -u
for file in include/lowwall/*.h; do
    awk -v file="$file" '
        # state: what the line before was (comment, prototype or other)
        in_comment { if (/\*\//) { in_comment = 0; before = "comment" } next }
        /^[ \t]*\/\*/ { if (!/\*\//) in_comment = 1; else before = "comment"; next }
        in_prototype { if (/;/) { in_prototype = 0; before = state } next }
        /^[a-z][a-z_0-9 *]*lw_[a-z0-9_]*\(/ {
            if (/^typedef/) { before = "other"; next }
            documented = before == "comment" || before == "documented" || /\/\*/
            if (!documented) {
                name = $0; sub(/\(.*/, "", name); sub(/.*[ *]/, "", name)
                printf "%s:%d: no doc block before %s\n", file, FNR, name
            }
            state = documented ? "documented" : "other"
            if (!/;/) in_prototype = 1
            before = state
            next
        }
        /^#/ && before == "documented" { next }
        { before = "other" }' "$file"
done
