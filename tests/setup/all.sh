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

LOWWALL=$(cd "$build" && pwd)/lowwall sh "$here/unit.sh" "$build/lowwall-tests" "$results/unit"
LOWWALL=$(cd "$build/sanitize" && pwd)/lowwall sanitized \
    sh "$here/unit.sh" "$build/sanitize/lowwall-tests" "$results/unit-sanitized"
sh tests/recorded/run.sh "$build/lowwall" "$results/recorded"
sanitized sh tests/recorded/run.sh "$build/sanitize/lowwall" "$results/recorded-sanitized"
sh "$here/drawings.sh" "$build/lowwall" "$results/drawings"
sh "$here/precheck.sh" "$build" "$results/precheck"
sh "$here/schedule.sh" "$build/lowwall" "$results/schedule"
sh "$here/headers.sh" "$results/headers"
sh "$here/threads.sh" "$build/thread/threads" "$results/threads"
sh "$here/installed.sh" "$build" "$results/installed"
sh "$here/selftest.sh" "$results/setup"
sh tests/lint/selftest.sh "$results/lint-rules"
sh "$here/tally.sh" "$results"
