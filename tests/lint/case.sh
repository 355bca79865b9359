#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# What was asked and told stops where the wall is built: rooms right of it take plain numbers. An order asks
# in one file; the rest of it takes that file's values and the items of the order and of the courses.
set -u
here=$(dirname "$0")
parts='lw_case(_[a-z_]+)?|lw_quantity|lw_choice|lw_words|lw_origin|LW_(ABSENT|GIVEN|TABLE|ASSUMED)'
may='base|case|sheet|site|section|wall|result|report|precheck|heap|lowwall'
told() { # PATTERN: files on the way in
    sort | xargs awk -v told="$1" -f "$here/strip.awk" -f "$here/told.awk" /dev/null
}
{
    find src/pressure src/standards src/balance src/slip src/checks src/load_cases src/studies \
        -name '*.[ch]' 2>/dev/null
    find include/lowwall -name '*.h' | grep -vE "/($may)\.h$"
} | told "$parts"
find src/order -name '*.[ch]' ! -name make.c 2>/dev/null | told 'lw_case|lw_result'
