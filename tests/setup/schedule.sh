#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# Schedules through the command as a user has them: the same bytes whatever the number of threads, ends that
# leave nothing behind, memory that does not grow, progress on a terminal only.   schedule.sh COMMAND RESULT
set -u
LC_ALL=C
TERM=dumb
export LC_ALL TERM
case $1 in /*) command=$1 ;; *) command=$(pwd)/$1 ;; esac
case $2 in /*) result=$2 ;; *) result=$(pwd)/$2 ;; esac
. "$(dirname "$0")/counting.sh"
cd "$scratch" || exit 1

# Invented walls; with `faulty` some rows name a soil that is not, have a height that cannot be or cells too
# many. The note is long, for a sheet is read in blocks and a few rows are to fill one.
walls() { # ROWS [faulty]
    awk -v rows="$1" -v faulty="${2:-}" 'BEGIN {
        print "mark,note,wall height [mm],site behind,block height [mm],block depth [mm],soil 1 name"
        note = "An invented wall in a school kitchen garden on a hillside and one of the many of its schedule"
        for (i = 0; i < rows; i++) {
            height = faulty && i % 53 == 9 ? "-5" : 200 * (1 + i % 4)
            soil = faulty && i % 37 == 5 ? "clean snad" : "clean sand"
            more = faulty && i % 91 == 17 ? ",x,y" : ""
            printf "W%d,%s,%s,bed,200,%d,%s%s\n", i, note, height, 200 + i % 250, soil, more
        }
    }'
}

# --- the same bytes ---

both() { # THREADS SHEET ARGS...: the two streams as one, and the exit status
    threads=$1
    sheet=$2
    shift 2
    status=0
    "$command" check -j "$threads" "$sheet" "$@" >"streams-$threads" 2>&1 || status=$?
    echo "exit $status" >>"streams-$threads"
}
same() { # WHAT SHEET ARGS...
    what=$1
    shift
    both 1 "$@"
    for n in 2 5; do
        both "$n" "$@"
        cmp -s streams-1 "streams-$n"
        note "$what: $n threads give something else than one" $?
    done
}

walls 150 faulty >mixed.csv
same 'a schedule with faulty rows' mixed.csv
grep -q '^exit 2$' streams-1 && [ "$(grep -c '^W' streams-1)" = 150 ] && grep -q '^mixed.csv: row ' streams-1
note 'a schedule with faulty rows: not every row is in the results, or the faults are not told' $?
same 'an item for every row' mixed.csv 'block depth=600 mm'
walls 3 >few.csv
same 'JSON lines' few.csv --json
[ "$(grep -c '^{.*}$' streams-1)" = 3 ] && [ "$(wc -l <streams-1)" = 4 ]
note 'JSON lines: not an object a line' $?
{ walls 40 && echo 'W,"bed'; } >broken.csv
same 'a quotation mark never closed' broken.csv
same 'a file that is not put in place' broken.csv -o results.csv
[ ! -e results.csv ]
note 'a quotation mark never closed leaves a result file' $?
echo 'mark,wal height [mm]' >header.csv
same 'a faulty header' header.csv
echo 'mark,wall height [mm]' >rowless.csv
same 'a header without rows' rowless.csv

# --- ends ---

if [ -c /dev/full ]; then
    same 'a full disk' mixed.csv -o /dev/full
    grep -q 'not-written' streams-2 && grep -q '^exit 1$' streams-2
    note 'a full disk is not told' $?
fi
walls 600 >many.csv
{ "$command" check -j 3 many.csv 2>said || echo "exit $?" >ended; } | head -n 1 >/dev/null
[ "$(cat ended)" = 'exit 1' ] && [ ! -s said ]
note 'a reader that had enough: not exit status 1 in silence' $?

mkfifo feed
waits() { # SECONDS COMMAND...: until the command succeeds
    tries=$(($1 * 20))
    shift
    until "$@"; do
        tries=$((tries - 1))
        [ "$tries" -gt 0 ] || return 1
        sleep 0.05
    done
}
half_written() { [ -n "$(find . -name '.lowwall.*')" ]; }
"$command" check -j 3 - -o results.csv <feed &
running=$!
exec 3>feed
cat many.csv >&3
waits 10 half_written
note 'nothing is written before the end of the schedule' $?
kill "$running"
status=0
wait "$running" 2>/dev/null || status=$?
exec 3>&-
[ "$status" = 143 ] && ! half_written && [ ! -e results.csv ]
note "a signal: ends with $status, or leaves a file half written" $?

# --- memory: the most that was ever in use, read while the command waits for more rows ---

# Until it has worked off all that it was sent: its processor time stands still.
works_off() { # PROCESS
    spent=-1
    for turn in 1 2 3 4 5 6 7 8 9 10; do
        before=$spent
        spent=$(awk '{ print $14 + $15 }' "/proc/$1/stat")
        [ "$spent" != "$before" ] || return 0
        sleep 0.2
    done
}

peak_kb() { # ROWS ARGS...
    rows=$1
    shift
    "$command" check "$@" - -o results.csv <feed &
    running=$!
    exec 3>feed
    walls "$rows" >&3
    works_off "$running"
    awk '$1 == "VmHWM:" { print $2 }' "/proc/$running/status"
    exec 3>&-
    wait "$running"
}
if [ -r /proc/self/status ]; then
    # With several, chance decides which of them have ever worked, and so which memory was touched.
    for threads in 1 3; do
        spread=$((threads == 1 ? 512 : 6000))
        short=$(peak_kb 1000 -j "$threads")
        long=$(peak_kb 5000 -j "$threads")
        [ "$long" -gt 0 ] && [ "$long" -le $((short + spread)) ]
        note "$threads threads: 1000 rows in $short KB, 5000 in $long KB" $?
    done
else
    echo 'schedule: without /proc, so the memory is not measured'
fi

# More threads than there is room for are done without; room for none is said.
"$command" check many.csv -j 1 >one.csv
(ulimit -v 500000 && exec "$command" check many.csv -j 100) >short.csv 2>said
cmp -s one.csv short.csv && [ ! -s said ]
note 'fewer threads than asked for: other results' $?
status=0
(ulimit -v 150000 && exec "$command" check many.csv -j 256) >short.csv 2>said || status=$?
[ "$status" = 1 ] && [ ! -s short.csv ] && grep -q 'no-memory' said
note "no room for a crew: exit status $status: $(cat said)" $?

# --- progress ---

"$command" check many.csv -o results.csv 2>said
[ ! -s said ]
note 'progress is shown where standard error is no terminal' $?
# A slow sheet by way of a pipe: no size, so rows and rate only. A file: the time left too.
slow='{ cat many.csv; sleep 0.3; sed "1d; s/^W/V/" many.csv; }'
if command -v script >/dev/null 2>&1; then
    seen() { TERM=xterm script -qec "$1" /dev/null </dev/null >screen 2>&1; }
    seen "$slow | '$command' check - -o results.csv"
    grep -q '[0-9] rows, [0-9]* a second' screen
    note 'no progress on a terminal' $?
    ! grep -q 'left' screen
    note 'a time left, though nobody knows how long a pipe is' $?
    [ "$(tr '\r' '\n' <screen | sed -n '$p' | od -An -c | tr -d ' \n')" = '033[K' ]
    note 'the progress is not wiped out at the end' $?
    seen "$slow | '$command' check -"
    ! grep -q ' a second' screen
    note 'progress among the results' $?
    seen "$slow | TERM=dumb '$command' check - -o results.csv"
    ! grep -q ' a second' screen
    note 'progress on a terminal that cannot wipe a line' $?
    # Enough rows that someone has to wait for them, however fast they become.
    for rows in 20 80 320 1280; do
        walls "$rows" >slow.csv
        seen "'$command' check slow.csv --json -o results.csv"
        grep -q '\] *[0-9]* %  [0-9]* rows, [0-9]* a second, [0-9]*:[0-9][0-9] left' screen && break
    done
    note 'no bar and no time left for a file' $?
else
    echo 'schedule: without script, so the progress is not looked at'
fi
counted
