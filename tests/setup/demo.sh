#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# Check every demo wall.   demo.sh COMMAND
# 0, 3, 4 and 5 are verdicts; anything else is a failure of the program or of the sheet.
set -u
command=$1
ran=0
bad=0
for sheet in docs/demo/*.csv; do
    [ -f "$sheet" ] || continue
    ran=$((ran + 1))
    printf '\n$ lowwall check %s\n' "$sheet"
    status=0
    "$command" check "$sheet" || status=$?
    printf '[exit %s]\n' "$status"
    case $status in
    0 | 3 | 4 | 5) ;;
    *) bad=$((bad + 1)) ;;
    esac
done
if [ "$ran" = 0 ]; then
    echo 'demo: no sheet found in docs/demo/' >&2
    exit 1
fi
[ "$bad" = 0 ]
