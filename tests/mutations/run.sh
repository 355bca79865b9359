#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# Make one mistake at a time in a copy of the tree, and see whether a test notices.
#   run.sh BUILD RESULT [ROOM...]
# The lists tests/mutations/ROOM.txt hold, for each mistake, the file and below it
#   - the line as it stands, which is there once
#   + what it is changed to
#   = why nobody can notice, if that is so: an equivalent
# The copy lies in BUILD/mutate and is built there by make; a line that is not there any more is an error, and
# nothing is run. Survivors are named. It fails when more than three survive, or an equivalent does not.
set -u
build=$1
result=$2
shift 2
mkdir -p "$build/mutate" "$(dirname "$result")"
work=$(cd "$build/mutate" && pwd)
case $result in /*) ;; *) result=$(pwd)/$result ;; esac
name=$(basename "$result")
here=tests/mutations
allowed=3
nice=${NICE:-10}

[ $# -gt 0 ] || set -- $(find $here -name '*.txt' -exec basename {} .txt ';' | LC_ALL=C sort)
lists=''
for room in "$@"; do
    [ -f "$here/$room.txt" ] || { echo "$here/$room.txt is not there"; exit 2; }
    lists="$lists $here/$room.txt"
done

# shellcheck disable=SC2086
sh $here/listed.sh $lists >"$work/list" 2>"$work/bad"
tab=$(printf '\t')
[ -s "$work/list" ] || echo "no mutation is listed" >>"$work/bad"
if [ -s "$work/bad" ]; then
    cat "$work/bad"
    echo "0 1 $name" >"$result"
    exit 1
fi

# The copy keeps the times of its files, so that make builds only what has changed since the last run. What a
# run that was cut short had changed is newer than what was built of it.
tree=$work/tree
mkdir -p "$tree"
for part in Makefile README.md DEVELOPERS.md LICENSE include src tests tables docs; do
    [ -e "$part" ] || continue
    rm -rf "${tree:?}/$part"
    cp -pR "$part" "$tree/"
done
[ ! -f "$work/changed" ] || (cd "$tree" && touch -c "$(cat "$work/changed")")
rm -f "$work/changed"
cd "$tree" || exit 1

build_copy() {
    nice -n "$nice" make --no-print-directory BUILD=build CFLAGS=-g0 ${JOBS:+JOBS=$JOBS} test-programs \
        >"$work/make.log" 2>&1
}
units() { # FILTER...
    LOWWALL=$tree/build/lowwall nice -n "$nice" timeout 900 \
        build/lowwall-tests --color=never --fail-fast "$@" >"$work/tests.log" 2>&1
}
# The tests of the mistake's own room first: they are few, and most mistakes end there.
noticed() { # FILE: 0 when a test fails, and $by is which
    room=$(echo "$1" | cut -d / -f 2)
    suites=$(cat tests/"$room"/*.c 2>/dev/null | sed -n 's/^[A-Za-z]*Test(\([a-z_0-9]*\),.*/\1/p' |
        LC_ALL=C sort -u | tr '\n' '|')
    if [ -n "$suites" ] && ! units --filter "@(${suites%|})/*" || ! units; then
        by=$(sed -n 's/^\[\(FAIL\|CRASH\)\] \([^ ]*\):.*/\2/p' \
            "$work/tests.log" | head -n 1)
        return 0
    fi
    if ! nice -n "$nice" timeout 900 sh tests/recorded/run.sh build/lowwall "$work/recorded" \
        >"$work/tests.log" 2>&1; then
        by=$(sed -n 's/^\(tests\/recorded\/[^:]*\):.*/\1/p' "$work/tests.log" | head -n 1)
        return 0
    fi
    return 1
}

mkdir -p build
if ! build_copy || noticed none; then
    echo "the tree as it stands does not pass: see $work/make.log and $work/tests.log"
    echo "0 1 $name" >"$result"
    exit 1
fi

restore() {
    [ ! -f "$work/changed" ] || { cp "$work/whole" "$(cat "$work/changed")" && rm -f "$work/changed"; }
}
trap restore EXIT
trap 'exit 1' INT TERM HUP
caught=0
survived=0
equal=0
wrong=0
# mistake PLACE FILE OLD NEW REASON
mistake() {
    cp -p "$2" "$work/whole"
    echo "$2" >"$work/changed"
    old=$3 new=$4 awk '{ line = $0; sub(/^ +/, "", line) }
        line == ENVIRON["old"] { $0 = substr($0, 1, length($0) - length(line)) ENVIRON["new"] }
        { print }' "$work/whole" >"$2"
    by=''
    if ! build_copy; then
        wrong=$((wrong + 1))
        echo "wrong     $1: does not build: $4"
        grep -m 1 'error' "$work/make.log"
    elif noticed "$2"; then
        if [ -z "$5" ]; then
            caught=$((caught + 1))
            echo "caught    $1: ${by:-a test that did not end}"
        else
            wrong=$((wrong + 1))
            echo "wrong     $1: listed as an equivalent, but ${by:-a test} notices it: $4"
        fi
    elif [ -n "$5" ]; then
        equal=$((equal + 1))
        echo "equal     $1: $5"
    else
        survived=$((survived + 1))
        echo "SURVIVED  $1: $2
          - $3
          + $4"
    fi
    restore
}
while IFS=$tab read -r place file old new why; do
    mistake "$place" "$file" "$old" "$new" "$why" </dev/null
done <"$work/list"

bad=$wrong
[ "$survived" -le "$allowed" ] || bad=$((bad + survived))
echo "$caught mistakes caught, $survived survived; $equal that nobody can notice; $wrong wrongly listed"
echo "$((caught + equal)) $bad $name" >"$result"
[ "$bad" = 0 ]
