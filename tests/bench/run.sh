#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# Timings as ratios, in one run.   LOWWALL=... run.sh FOLDER-OF-BENCH-PROGRAMS
set -eu
programs=$1
rows=${ROWS:-100000}
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT

echo 'The parts of one check:'
"$programs/kernels"

# A street of invented walls, no two alike.
awk -v rows="$rows" 'BEGIN {
  print "mark,site behind,site back,wall height [mm],wall embedment [mm],block height [mm]," \
        "block depth [mm],block unit weight [kN/m3],setback [mm],people on cap,ground slope [deg]," \
        "soil 1 friction angle [deg],soil 1 unit weight [kN/m3],base friction," \
        "allowable bearing [kPa],drain outlets,stone width [mm],load 1 kind,load 1 pressure [kPa]"
  for (i = 0; i < rows; i++)
    printf "W%d,ground,ground,%d,200,200,%d,21,%d,yes,%d,%.2f,%.2f,0.45,100,%d,300,uniform,%.2f\n",
           i, 200 * (1 + i % 5), 300 + i % 400, i % 3 * 10, i % 11, 28 + i % 701 / 100,
           17 + i % 301 / 100, i % 3, 1 + i % 900 / 100
}' >"$work/street.csv"

now() { date +%s%N; }
time_of() {
    best=
    for round in 1 2 3; do
        start=$(now)
        "$@" >/dev/null 2>&1 || [ $? -ge 3 ]
        took=$(($(now) - start))
        if [ -z "$best" ] || [ "$took" -lt "$best" ]; then best=$took; fi
    done
    echo "$best"
}

parse=$(time_of "$programs/parse" "$work/street.csv")
check=$(time_of "$LOWWALL" check "$work/street.csv" -o "$work/results.csv")
written=$(wc -l <"$work/results.csv")
[ "$written" -eq $((rows + 1)) ] || { echo "bench: $written rows written of $rows" >&2; exit 1; }
awk -v rows="$rows" -v parse="$parse" -v check="$check" 'BEGIN {
  printf "A schedule of %d walls, twelve columns written:\n", rows
  printf "  libcsv alone parses the file in      %8.3f s\n", parse / 1e9
  printf "  lowwall checks every wall in         %8.3f s   %.0f walls a second, %.0f times the bare parse\n",
         check / 1e9, rows / (check / 1e9), check / parse
}'
