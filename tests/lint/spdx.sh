#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# One SPDX line at the head of each source file.
set -u
mark='SPDX-License-Identifier: GPL-3.0-or-later'
find include src tests -name '*.[ch]' | sort | xargs awk -v mark="/* $mark */" '
    FNR == 1 && $0 != mark { printf "%s:1: wants %s\n", FILENAME, mark }' /dev/null
find include src tests -name '*.[ch]' -size 0 -exec echo '{}:1: is empty' ';'
{
    printf '%s\n' Makefile .ci/run
    find src tests docs -name '*.sh' -o -name '*.awk' -o -name '*.bash' | sort
} | xargs awk -v mark="# $mark" '
    function judge() { if (name != "" && !seen) printf "%s:1: wants %s\n", name, mark }
    FNR == 1 { judge(); name = FILENAME; seen = 0 }
    FNR <= 2 && $0 == mark { seen = 1 }
    END { judge() }'
