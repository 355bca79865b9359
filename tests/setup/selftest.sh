#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# The set-up and the runners themselves, on systems and records made up for it.   selftest.sh RESULT
set -u
case $1 in /*) result=$1 ;; *) result=$(pwd)/$1 ;; esac
name=$(basename "$result")
echo "== $name"
here=$(cd "$(dirname "$0")" && pwd)
scratch=$(mktemp -d)
trap 'rm -rf "$scratch"' EXIT
passed=0
failed=0
# check WORDS CONDITION...: a command that must succeed
check() {
    words=$1
    shift
    if "$@" >/dev/null 2>&1; then
        passed=$((passed + 1))
    else
        failed=$((failed + 1))
        echo "set-up: $words"
        sed 's/^/    /' "$scratch/said"
    fi
}
says() { grep -q -e "$1" "$scratch/said"; }
silent() { [ ! -s "$scratch/said" ]; }
apt_never_ran() { [ ! -e "$scratch/installed" ]; }
apt_installed() { grep -q -e "$1" "$scratch/installed"; }

# system UID [apt] [sudo]: a PATH whose compiler finds only what stands in $scratch/has or was "installed"
system() {
    rm -rf "${scratch:?}/bin" "$scratch/installed"
    mkdir "$scratch/bin"
    for tool in sh awk grep cat env head; do ln -s "$(command -v $tool)" "$scratch/bin/$tool"; done
    printf '#!/bin/sh\necho %s\n' "$1" >"$scratch/bin/id"
    cat >"$scratch/bin/cc" <<'SCRIPT'
#!/bin/sh
for argument in "$@"; do
    case $argument in -l*) grep -qs -e "${argument#-l}" "$SCRATCH/has" "$SCRATCH/installed"; exit ;; esac
done
SCRIPT
    printf '#!/bin/sh\ncase $* in *install*) echo "$@" >>"$SCRATCH/installed";; esac\n' \
        >"$scratch/bin/apt-get"
    cat >"$scratch/bin/pkg-config" <<'SCRIPT'
#!/bin/sh
name=$2
[ "$name" != pangocairo ] || name=pango
grep -qs -e "$name" "$SCRATCH/has" "$SCRATCH/installed"
SCRIPT
    cat >"$scratch/bin/find" <<'SCRIPT'
#!/bin/sh
grep -s -e fonts "$SCRATCH/has" "$SCRATCH/installed"
SCRIPT
    printf '#!/bin/sh\nshift\n[ "$1" = true ] || exec "$@"\n' >"$scratch/bin/sudo"
    case " $* " in *' apt '*) ;; *) rm "$scratch/bin/apt-get" ;; esac
    case " $* " in *' sudo '*) ;; *) rm "$scratch/bin/sudo" ;; esac
    chmod +x "$scratch"/bin/*
}
setup() { # MODE PURPOSE
    status=0
    SCRATCH=$scratch PATH=$scratch/bin CC=cc sh "$here/setup.sh" "$@" >"$scratch/said" 2>&1 || status=$?
}

echo 'c gsl csv jansson cairo pangocairo libqpdf fonts' >"$scratch/has"
system 0 apt
setup --install demo
check 'with all there it succeeds' [ "$status" = 0 ]
check 'with all there it says nothing' silent
check 'with all there apt does not run' apt_never_ran

echo 'c gsl' >"$scratch/has"
system 0 apt
setup --install demo
check 'as root it installs and succeeds' [ "$status" = 0 ]
check 'as root it installs what is missing' apt_installed 'libcsv-dev libjansson-dev'
check 'as root it installs nothing that is there' apt_installed 'recommends libcsv'
setup --install demo
check 'a second time it says nothing' silent

system 1000 apt sudo
setup --install demo
check 'with sudo it installs' apt_installed libcsv-dev

system 1000 apt
setup --install demo
check 'without the right it fails' [ "$status" = 1 ]
check 'without the right apt does not run' apt_never_ran
check 'it names Debian packages' says 'apt install libcsv-dev libjansson-dev$'
check 'it names Fedora packages' says 'dnf install libcsv-devel jansson-devel$'
check 'it names Homebrew packages' says 'brew install libcsv jansson$'

system 0
setup --install demo
check 'without apt it fails' [ "$status" = 1 ]
check 'without apt it names packages' says 'libcsv-devel'

echo 'c gsl csv jansson' >"$scratch/has"
system 1000
setup --install demo
check 'without cairo it succeeds' [ "$status" = 0 ]
check 'without cairo it says what is left out' says '^PDF and PNG are left out; they want libcairo2-dev'
echo 'c gsl csv jansson cairo pangocairo fonts' >"$scratch/has"
setup --install demo
check 'without libqpdf it succeeds' [ "$status" = 0 ]
check 'without libqpdf it says what is left out' says '^A PDF brings no sheet.* libqpdf-dev'
echo 'c gsl' >"$scratch/has"

system 0 apt
setup --check demo
check '--check installs nothing' apt_never_ran
check '--check fails when something is missing' [ "$status" = 1 ]

# The replay of records: a copy of it, beside records of its own and a command of its own.
mkdir "$scratch/records" "$scratch/command"
cp tests/recorded/run.sh tests/recorded/same.awk "$scratch/records/"
printf '#!/bin/sh\necho "ratio 1.25 $1"\nexit 4\n' >"$scratch/command/lowwall"
chmod +x "$scratch/command/lowwall"
replay() { # TEXT: the only record
    rm -f "$scratch"/records/*.txt
    # shellcheck disable=SC2059
    [ -z "$1" ] || printf "$1" >"$scratch/records/only.txt"
    status=0
    sh "$scratch/records/run.sh" "$scratch/command/lowwall" "$scratch/replayed" >"$scratch/said" 2>&1 ||
        status=$?
    counted=$(cat "$scratch/replayed")
}
replay 'Words.\n$ lowwall a\nratio 1.25 a\n[exit 4]\n'
check 'a true record passes' [ "$counted" = '1 0 replayed' ]
replay '$ lowwall a\nratio 1.24 a\n[exit 4]\n'
check 'another digit fails' [ "$counted" = '0 1 replayed' ]
check 'another digit is shown' says '+ratio 1.25 a'
replay '$ lowwall a\nratio 1.25 a\n[exit 0]\n'
check 'another exit status fails' [ "$counted" = '0 1 replayed' ]
replay '$ lowwall a\nratio 1.25 a\n'
check 'a record without its exit status fails' [ "$counted" = '0 1 replayed' ]
replay '$ lowwall --json\nratio 1.2500000000001 --json\n[exit 4]\n'
check 'the last bits of a number in JSON may differ' [ "$counted" = '1 0 replayed' ]
replay '$ lowwall --json\nratio 1.2501 --json\n[exit 4]\n'
check 'more than the last bits may not' [ "$counted" = '0 1 replayed' ]
replay ''
check 'no record at all fails' [ "$counted" = '0 1 replayed' ]

# The closing line.
mkdir "$scratch/results"
tally() { status=0; sh "$here/tally.sh" "$scratch/results" >"$scratch/said" 2>&1 || status=$?; }
tally
check 'no runner fails' [ "$status" = 1 ]
check 'no runner is counted as failed' says '^0 passed, 1 failed$'
echo '3 0 a' >"$scratch/results/a"
tally
check 'all passed succeeds' [ "$status" = 0 ]
echo '0 0 b' >"$scratch/results/b"
tally
check 'a runner that ran nothing fails' says '^3 passed, 1 failed$'

# What a runner of Criterion leaves: its count, and below the results nothing else.
rm -f "$scratch"/results/*
mkdir "$scratch/results/test"
printf '#!/bin/sh\necho "[====] Synthesis: Tested: 9999 | Passing: 9999 | Failing: 0 | Crashing: 0 "\n' \
    >"$scratch/command/tests"
chmod +x "$scratch/command/tests"
sh "$here/unit.sh" "$scratch/command/tests" "$scratch/results/test/unit" >"$scratch/said" 2>&1
tally
check 'the closing line of everything counts a runner once' says '^9999 passed, 0 failed$'

# Mistakes made on purpose, in a tree whose only test looks for one sum, and is asked for by its room alone.
mkdir -p "$scratch/tree/src/wall/part" "$scratch/tree/tests/wall" "$scratch/tree/tests/recorded" \
    "$scratch/tree/tests/mutations"
cp tests/mutations/run.sh tests/mutations/listed.sh "$scratch/tree/tests/mutations/"
printf '#!/bin/sh\nexit 0\n' >"$scratch/tree/tests/recorded/run.sh"
printf 'Test(wall, sums) {\n' >"$scratch/tree/tests/wall/sums.c"
printf 'int f(void) {\n  sum = a + b;\n  return unseen;\n}\n' >"$scratch/tree/src/wall/part/a.c"
cat >"$scratch/tree/Makefile" <<'SCRIPT'
test-programs:
	@! grep -q broken src/wall/part/a.c
	@mkdir -p $(BUILD)
	@printf '#!/bin/sh\ncase $$* in *"@(wall)/"*) ;; *) exit 0 ;; esac\n' >$(BUILD)/lowwall-tests
	@printf 'grep -q "sum = a + b" src/wall/part/a.c && exit\necho "[FAIL] wall::sums: (0.0s)"\nexit 1\n' \
	    >>$(BUILD)/lowwall-tests
	@chmod +x $(BUILD)/lowwall-tests
SCRIPT
mutate() { # LIST
    # shellcheck disable=SC2059
    printf "src/wall/part/a.c\n$1" >"$scratch/tree/tests/mutations/wall.txt"
    status=0
    (cd "$scratch/tree" && sh tests/mutations/run.sh build build/results/mutate) >"$scratch/said" 2>&1 ||
        status=$?
    counted=$(cat "$scratch/tree/build/results/mutate")
}
mutate '- sum = a + b;\n+ sum = a - b;\n'
check 'a mistake that a test notices passes' [ "$counted" = '1 0 mutate' ]
check 'the test is named' says 'wall.txt:2: wall::sums$'
mutate '- sum = a + b;\n+ sum = a - b;\n- return unseen;\n+ return !unseen;\n'
check 'one that survives is named' says '^SURVIVED .*wall.txt:4: src/wall/part/a.c'
check 'three may survive' [ "$status" = 0 ]
mutate "$(printf -- '- return unseen;\n+ return %d;\n' 1 2 3 4)"
check 'a fourth may not' [ "$counted" = '0 4 mutate' ]
mutate '- return unseen;\n+ return 1;\n= nobody sees it\n'
check 'an equivalent is told with its reason' says '^equal .*: nobody sees it$'
mutate '- sum = a + b;\n+ sum = b - a;\n= nobody sees it\n'
check 'one that is noticed is none' [ "$counted" = '0 1 mutate' ]
mutate '- sum = b + a;\n+ sum = b - a;\n'
check 'a line that is gone is an error that names it' says 'wall.txt:2: .* 0 times, not once: sum = b + a;'
check 'and nothing is run' [ "$counted" = '0 1 mutate' ]
mutate '- return unseen;\n+ broken\n'
check 'what does not build is no mistake' [ "$counted" = '0 1 mutate' ]
check 'the copy is whole again' grep -q 'return unseen' "$scratch/tree/build/mutate/tree/src/wall/part/a.c"

# Coverage: the count by line and by branch, of a room and of all.
mkdir -p "$scratch/tree/tests/setup" "$scratch/covered/obj/src/wall" "$scratch/gcov"
printf '#!/bin/sh\nexit 0\n' >"$scratch/tree/tests/setup/unit.sh"
: >"$scratch/covered/obj/src/wall/a.gcno"
cat >"$scratch/gcov/gcov" <<'SCRIPT'
#!/bin/sh
cat <<'SEEN'
        -:    0:Source:src/wall/a.c
        -:    1:int f(int a, int b) {
       1*:    2:  assert(a < 100);
branch  0 taken 0 (fallthrough)
branch  1 taken 1
       1*:    3:  if (a > 0 && b > 0) return 1;
branch  0 taken 1 (fallthrough)
branch  1 taken 0
branch  2 taken 3 (fallthrough)
branch  3 never executed
    #####:    4:  return 2;
        -:    5:}
SEEN
SCRIPT
chmod +x "$scratch/gcov/gcov"
cover() { # LIST
    # shellcheck disable=SC2059
    printf "$1" >"$scratch/tree/tests/setup/untaken.txt"
    status=0
    (cd "$scratch/tree" && PATH=$scratch/gcov:$PATH sh "$here/cover.sh" "$scratch/covered") \
        >"$scratch/said" 2>&1 || status=$?
}
cover ''
check 'lines and branches of a file' says '  66.7 % of     3 lines    50.0 % of     4 branches  src/wall/a.c$'
check 'and of its room' says '  50.0 % of     4 branches  all of src/wall$'
cp "$scratch/covered/untaken.txt" "$scratch/said"
check 'what no test takes is listed' says '^src/wall/a.c:3: way 2 of: if (a > 0 && b > 0) return 1;$'
cover 'src/wall/a.c\n- if (a > 0 && b > 0) return 1;\n= nobody has such a wall\n'
check 'what nobody can take is left out of a second share' says 'wall, 100.0 % of what can be taken$'
check 'and of the list of what no test takes' [ ! -s "$scratch/covered/untaken.txt" ]
check 'a list that is right passes' [ "$status" = 0 ]
cover 'src/wall/a.c\n- if (a > 0) return 1;\n= it was there\n'
check 'a line that is not there fails' [ "$status" = 1 ]
check 'and is named' says 'no condition stands at src/wall/a.c:if (a > 0) return 1;$'
sed 's/branch  1 taken 0/branch  1 taken 4/; s/never executed/taken 2/' "$scratch/gcov/gcov" \
    >"$scratch/gcov/all"
mv "$scratch/gcov/all" "$scratch/gcov/gcov" && chmod +x "$scratch/gcov/gcov"
cover 'src/wall/a.c\n- if (a > 0 && b > 0) return 1;\n= nobody has such a wall\n'
check 'a line that is taken is an error' says 'every way is taken of src/wall/a.c:if (a > 0 && b > 0)'
echo "$passed $failed $name" >"$result"
