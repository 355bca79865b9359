#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# A kind of check has what DEVELOPERS.md says of adding one, and no other file keeps a list of kinds.
set -u
names=include/lowwall/checks.h
table=src/load_cases/kinds.c
walls=tests/load_cases/kinds.c
[ -f "$names" ] || exit 0
[ -f "$table" ] || { echo "$table is not there"; exit 0; }
for name in $(sed -n '/define LW_CHECK_KINDS/,/^$/ s/^ *X(\([A-Z_]*\),.*/\1/p' "$names"); do
    for file in "$table" "$walls"; do
        grep -q "\[LW_CHECK_$name\] =" "$file" || echo "$file: no row of $name"
    done
done
sed -n 's/.*\.make\(_ground\)\{0,1\} = \(lw_[a-z_]*\).*/\2/p' "$table" | sort -u | while read -r function; do
    grep -q "^[a-z_]* $function(" src/checks/*.c src/load_cases/*.c ||
        echo "src/checks: no file has $function"
done
sed -n 's/.*\.theory = "\([^"]*\)".*/\1/p' "$table" | sort -u | while read -r heading; do
    grep -q "^##* $heading\$" docs/theory.md || echo "docs/theory.md: no heading $heading"
done
grep -rnE 'case LW_CHECK_|\[LW_CHECK_[A-Z]*\] =' --include='*.c' src | grep -v "^$table:" |
    sed 's/:.*/: a list of the kinds of check; its place is the table/' | sort -u
told=$(sed -n '/^- \*\*A check\*\*/,/^- \*\*A form/p' DEVELOPERS.md)
for file in "$names" "$table" "$walls" src/checks/ docs/theory.md docs/results.md tables/formats.csv \
    tests/report/rebuild.c README.md; do
    case $told in *"\`$file\`"*) ;; *) echo "DEVELOPERS.md: who adds a check is not told of $file" ;; esac
done
