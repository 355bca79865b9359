#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# The page as one file, on standard output.   join.sh CORE.wasm PAGE.html PAGE.css MODULE.js ...
# The modules come in the order in which they use each other. Joined they are one script, so that their lines
# of import and the word export go, and no two of them may have a name in common.
set -eu
core=$1 page=$2 style=$3
shift 3

twice=$(sed -n -E 's/^(export )?(async )?(function|const|let) ([A-Za-z0-9_]+).*/\4/p' "$@" | sort | uniq -d)
[ -z "$twice" ] || { echo "join.sh: two modules have" $twice >&2; exit 1; }

script() {
    printf '"use strict";\n(() => {\n'
    awk '/^\/\* SPDX/ || /^import / { next } { sub(/^export /, ""); print }' "$@"
    printf '})();\n'
}

while IFS= read -r line; do
    case $line in
    *@STYLE@*) cat "$style" ;;
    *@SCRIPT@*) script "$@" ;;
    *@CORE@*) gzip -9n <"$core" | base64 | tr -d '\n' ;;
    *) printf '%s\n' "$line" ;;
    esac
done <"$page"
