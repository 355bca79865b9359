#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# Turn CSV files into C, so that the library carries its tables, and what docs/sources.md says that each key
# is: embed.sh SOURCES.md FILE.csv ... > tables_data.c
# Bytes are written as numbers: a string literal has a length limit in C and would need escapes.
set -eu
[ $# -gt 1 ] || { echo "embed.sh: sources and tables are wanted" >&2; exit 1; }
sources=$1
shift
[ -s "$sources" ] || { echo "embed.sh: $sources is missing or empty" >&2; exit 1; }

for file in "$@"; do
  [ -s "$file" ] || { echo "embed.sh: $file is missing or empty" >&2; exit 1; }
done

printf '/* Made by src/tables/embed.sh from the CSV files: change those. */\n'
printf '#include "tables/embedded.h"\n'
number=0
for file in "$@"; do
  printf '\nstatic const unsigned char table_%d[] = {\n' "$number"
  od -An -v -tu1 "$file" | sed -e 's/^ *//' -e 's/  */,/g' -e 's/$/,/'
  printf '};\n'
  number=$((number + 1))
done

printf '\nconst lw_embedded lw_embedded_tables[] = {\n'
number=0
for file in "$@"; do
  name=${file##*/}
  printf '    {"%s", table_%d, sizeof table_%d},\n' "${name%.csv}" "$number" "$number"
  number=$((number + 1))
done
printf '};\n\nconst size_t lw_embedded_table_count = %d;\n' "$number"

# A row of four cells whose first is a key: the key, what it is, whether it was read.
printf '\nconst lw_embedded_source lw_embedded_sources[] = {\n'
awk -F' *[|] *' '
    NF == 6 && $2 ~ /^[A-Z][A-Z0-9.\/-]*[A-Z0-9]$/ && $2 != "KEY" && !($2 in met) {
        met[$2] = 1
        gsub(/[`*]/, "", $3); gsub(/\\/, "\\\\", $3); gsub(/"/, "\\\"", $3)
        printf "    {\"%s\", \"%s\"},\n", $2, $3
    }' "$sources"
printf '    {NULL, NULL}};\n'
