#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# Timings as ratios, in one run.   LOWWALL=... [ROWS=100000] run.sh FOLDER-OF-BENCH-PROGRAMS
# The street of walls that hold up ground has a tenth of the rows: each is searched for slips.
set -eu
programs=$1
here=$(dirname "$0")
rows=${ROWS:-100000}
# In memory where there is such a place: a disk is not what is timed.
work=$(mktemp -d -p /dev/shm 2>/dev/null || mktemp -d)
trap 'rm -rf "$work"' EXIT

echo 'The parts of one check:'
"$programs/kernels"

printf '\nWhat the search for slips misses:\n'
"$programs/slip" 2000 100

now() { date +%s%N; }
# The faster of two runs; the statuses below 3 of `lowwall check` are faults, those of a verdict are none.
time_of() {
    best=
    for round in 1 2; do
        start=$(now)
        "$@" >/dev/null 2>&1 || [ $? -ge 3 ] || { echo "bench: failed: $*" >&2; exit 1; }
        took=$(($(now) - start))
        if [ -z "$best" ] || [ "$took" -lt "$best" ]; then best=$took; fi
    done
    echo "$best"
}

# say WHAT NANOSECONDS ROWS LOWWALL-NANOSECONDS: how long, how many a second, and lowwall beside it
say() {
    awk -v what="$1" -v took="$2" -v rows="$3" -v own="$4" 'BEGIN {
        printf "  %-40s %8.3f s %10.0f rows a second", what, took / 1e9, rows / (took / 1e9)
        if (own && own != took) printf "   lowwall takes %.4g times as long", own / took
        print ""
    }'
}

# A Python that has numpy: the first on the path may be another than the one that packages are for.
python=
for candidate in "${PYTHON:-python3}" /usr/bin/python3; do
    [ -z "$python" ] && "$candidate" -c 'import numpy' 2>/dev/null && python=$candidate
done
octave=$(command -v octave-cli || true)

# other NAME COMMAND...: another program that computes the same numbers; the bench fails where it does not
other() {
    other=$1
    shift
    "$@" "$work/street.csv" "$work/other.csv" >"$work/said" 2>&1 || { cat "$work/said" >&2; exit 1; }
    if ! "$programs/agree" "$work/first.json" "$work/other.csv" >"$work/said"; then
        head -n 4 "$work/said" >&2
        echo "bench: $other does not compute what lowwall computes" >&2
        exit 1
    fi
    say "$other, four numbers a wall" "$(time_of "$@" "$work/street.csv" "$work/other.csv")" "$count" "$check"
    sed 's/^/      /' "$work/said"
}

street() { # SORT ROWS WORDS
    count=$2
    awk -v sort="$1" -v rows="$count" -f "$here/street.awk" >"$work/street.csv"
    check=$(time_of "$LOWWALL" check "$work/street.csv" -o "$work/results.csv")
    written=$(wc -l <"$work/results.csv")
    [ "$written" -eq $((count + 1)) ] || { echo "bench: $written rows written of $count" >&2; exit 1; }
    if cut -d, -f2 "$work/results.csv" | grep -q '^"*fault'; then
        echo "bench: a row of $1 has a fault" >&2
        exit 1
    fi
    holds=$(grep -c ',holds,' "$work/results.csv" || true)
    if [ "$1" = beds ] && [ $((3 * holds)) -lt $((2 * count)) ]; then
        echo "bench: only $holds of $count beds hold: the street is no longer one of ordinary beds" >&2
        exit 1
    fi
    printf '\n%s: %d rows, of which %d hold, every column written\n' "$3" "$count" "$holds"
    say 'lowwall, every check and situation' "$check" "$count" "$check"
    if "$LOWWALL" check --help | grep -q -e '-j'; then
        two=$(time_of "$LOWWALL" check -j 2 "$work/street.csv" -o "$work/results.csv")
        say 'lowwall -j 2' "$two" "$count" 0
        awk -v one="$check" -v two="$two" 'BEGIN { printf "      %.2f times as fast as one\n", one / two }'
    fi
    say 'libcsv alone, the bare parse' "$(time_of "$programs/parse" "$work/street.csv")" "$count" "$check"
}

# The first walls of a street, in full, for the others to agree with.
first() {
    head -n 21 "$work/street.csv" >"$work/first.csv"
    "$LOWWALL" check --json "$work/first.csv" >"$work/first.json" 2>/dev/null || [ $? -ge 3 ]
}
others() {
    first
    if [ -n "$python" ]; then
        other numpy "$python" "$here/coulomb.py"
    else
        echo '  numpy is not installed (Debian: python3-numpy): left out'
    fi
    if [ -n "$octave" ]; then
        other Octave "$octave" --no-init-file --quiet "$here/coulomb.m"
    else
        echo '  Octave is not installed (Debian: octave): left out'
    fi
}

street beds "$rows" 'Garden beds'
others
street walls $((rows / 10)) 'Walls that hold up ground'
others
street mixed $((rows / 10)) 'A mixed street: setbacks, slopes, people, one outlet or none'
