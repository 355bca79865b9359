#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# Run the fuzz programs of BUILD, two at a time, each for SECONDS; one tree is fed the same way each time.
#   run.sh BUILD SECONDS TARGET|all RESULT
set -u
build=$1
seconds=$2
target=$3
result=$4
name=$(basename "$result")
echo "== $name, $seconds s a target"
mkdir -p "$build/corpus" "$build/found"

# The words of the vocabulary, as libFuzzer wants them: names and words of items, names of units.
"$build/lowwall" list items --csv >"$build/items.csv"
"$build/lowwall" list units --csv >"$build/units.csv"
cat "$build/items.csv" "$build/units.csv" | tr ',|=' '\n\n\n' | tr -d '"\\' |
    awk 'length > 1 && length < 40 && /^[ -~]+$/ && !seen[$0]++ { printf "\"%s\"\n", $0 }' \
        >"$build/words.dict"

# Of the book's walls a few: each takes a while to run, and the time is for what is new.
mkdir -p "$build/seeds"
rm -f "$build/seeds"/*
cp docs/demo/*.csv "$build/seeds"
ls tests/handbook/walls/*.csv | awk 'NR % 12 == 1' | while read -r wall; do cp "$wall" "$build/seeds"; done

seeds() { # TARGET
    case $1 in
    sheet) echo docs/demo tests/sheet/bad tests/handbook/walls ;;
    run | reports) echo "$build/seeds" ;;
    *) [ ! -d "tests/fuzz/seeds/$1" ] || echo "tests/fuzz/seeds/$1" ;;
    esac
}

fuzz() { # TARGET
    mkdir -p "$build/corpus/$1"
    # shellcheck disable=SC2046
    ASAN_OPTIONS=detect_leaks=1:allocator_may_return_null=1 "$build/targets/$1" \
        -seed="${SEED:-1}" -runs="${RUNS:--1}" \
        -max_total_time="$seconds" -timeout=120 -report_slow_units=60 -rss_limit_mb=2048 \
        -max_len=8192 -dict="$build/words.dict" \
        -artifact_prefix="$build/found/$1-" -print_final_stats=1 -verbosity=1 \
        "$build/corpus/$1" $(seeds "$1") >"$build/$1.log" 2>&1
    echo $? >"$build/$1.status"
}

targets=
for program in "$build"/targets/*; do
    one=$(basename "$program")
    [ "$target" = all ] || [ "$target" = "$one" ] || continue
    targets="$targets $one"
done
# Two lists, side by side.
half() { # WHICH
    turn=0
    for one in $targets; do
        turn=$((1 - turn))
        [ $turn != "$1" ] || fuzz "$one"
    done
}
half 0 &
half 1
wait

passed=0
failed=0
for one in $targets; do
    runs=$(sed -n 's/^stat::number_of_executed_units: *//p' "$build/$one.log")
    if [ "$(cat "$build/$one.status")" = 0 ] && [ "${runs:-0}" -gt 0 ]; then
        passed=$((passed + 1))
        echo "ok    $one: $runs inputs"
    else
        failed=$((failed + 1))
        echo "FAIL  $one"
        grep -a -A 25 -e 'broken:' -e 'ERROR' -e 'runtime error' -e 'SUMMARY' "$build/$one.log" | head -n 60
    fi
done
[ $((passed + failed)) -gt 0 ] || echo "there is no target $target"
echo "$passed $failed $name" >"$result"
echo "$passed passed, $failed failed"
[ $failed = 0 ] && [ $passed -gt 0 ]
