#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# What was asked and told stops where the wall is built: rooms right of it take plain numbers.
set -u
here=$(dirname "$0")
told='lw_case|lw_case_[a-z_]+|lw_quantity|lw_choice|lw_words|lw_origin|LW_ABSENT|LW_GIVEN|LW_TABLE|LW_ASSUMED'
may='base|case|sheet|site|section|wall|plan|order|result|report|precheck|heap|lowwall'
{
    find src/pressure src/standards src/balance src/slip src/checks src/load_cases src/studies \
        -name '*.[ch]' 2>/dev/null
    find include/lowwall -name '*.h' | grep -vE "/($may)\.h$"
} | sort | xargs awk -v told="$told" -f "$here/strip.awk" -f "$here/told.awk" /dev/null
