#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# Run every runner on what is built in BUILD and add up.   all.sh BUILD
# Each runner leaves one line `PASSED FAILED NAME` in BUILD/results/test/; the closing line is their sum.
set -u
build=$1
here=$(dirname "$0")
results=$build/results/test
rm -rf "$results"
mkdir -p "$results"

# The tests of the library's own numbers want a host that writes a decimal comma.
if [ ! -d "$build/locale/de_DE.UTF-8" ] && [ -f /usr/share/i18n/locales/de_DE ]; then
    mkdir -p "$build/locale"
    localedef -i de_DE -f UTF-8 "$build/locale/de_DE.UTF-8"
fi
if [ -d "$build/locale" ]; then
    LOCPATH=$(cd "$build" && pwd)/locale:/usr/lib/locale
    export LOCPATH
fi

# A fault inside a test must end it with a signal: Criterion passes over a leak otherwise.
sanitized() {
    LSAN_OPTIONS=print_suppressions=0:suppressions=$(pwd)/tests/setup/leaks.txt \
        ASAN_OPTIONS=abort_on_error=1:detect_leaks=1 \
        UBSAN_OPTIONS=halt_on_error=1:print_stacktrace=1 "$@"
}

# run NAME COMMAND...: a runner that ends without a word of its result has failed.
run() {
    name=$1
    shift
    echo "0 1 $name" >"$results/$name"
    "$@" "$results/$name"
}
# The unit tests use every core now and then, the rest only one: they go side by side, and what the rest says
# is kept until the unit tests have had their say.
rest() {
    run recorded-sanitized sanitized sh tests/recorded/run.sh "$build/sanitize/lowwall"
    run recorded sh tests/recorded/run.sh "$build/lowwall"
    run drawings sh "$here/drawings.sh" "$build/lowwall"
    run precheck sh "$here/precheck.sh" "$build"
    run schedule sh "$here/schedule.sh" "$build/lowwall"
    run headers sh "$here/headers.sh"
    run threads sh "$here/threads.sh" "$build/thread/threads"
    run faults sh tests/faults/run.sh "$build/lowwall" "$build/faults/preload.so" 60
    run installed sh "$here/installed.sh" "$build"
    run page sh tests/page/page.sh "$build"
    run setup sh "$here/selftest.sh"
    run lint-rules sh tests/lint/selftest.sh
}
rest >"$build/rest.log" 2>&1 &
root=$(cd "$build" && pwd)
run unit env LOWWALL="$root/lowwall" sh "$here/unit.sh" "$build/lowwall-tests"
run unit-sanitized sanitized env LOWWALL="$root/sanitize/lowwall" \
    sh "$here/unit.sh" "$build/sanitize/lowwall-tests"
wait
cat "$build/rest.log"
sh "$here/tally.sh" "$results"
