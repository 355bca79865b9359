#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# Each lint finds the fault that it is for, in a small tree made up for it.   selftest.sh RESULT
set -u
case $1 in /*) result=$1 ;; *) result=$(pwd)/$1 ;; esac
name=$(basename "$result")
echo "== $name"
lints=$(cd "$(dirname "$0")" && pwd)
scratch=$(mktemp -d)
trap 'rm -rf "$scratch"' EXIT
cd "$scratch" || exit 1
passed=0
failed=0
spdx='/* SPDX-License-Identifier: GPL-3.0-or-later */'

tree() {
    rm -rf "$scratch/tree"
    mkdir -p tree/src/base tree/src/wall tree/src/report tree/include/lowwall tree/tables tree/docs tree/tests
    printf '%s\n/** Doubles.\n *  in    x   any */\n' "$spdx" >tree/include/lowwall/wall.h
    echo 'int lw_wall_twice(int x);' >>tree/include/lowwall/wall.h
    printf '%s\n#include <lowwall/wall.h>\n\nint lw_wall_twice(int x) {\n' "$spdx" >tree/src/wall/twice.c
    printf '  return 2 * x; /* [ABC p.1] */\n}\n' >>tree/src/wall/twice.c
    printf '# Sources\n\n### ABC\nA book.\n' >tree/docs/sources.md
    printf '# SPDX-License-Identifier: GPL-3.0-or-later\n' | tee tree/Makefile >tree/docs/x.sh
    printf '`src/base/` `src/wall/` `src/report/`\n' >tree/DEVELOPERS.md
    mkdir tree/.ci && cp tree/Makefile tree/.ci/run && touch tree/README.md tree/LICENSE
}
# finds LINT PATTERN: the lint's words about the tree; an empty pattern means silence
finds() {
    found=$(cd tree && sh "$lints/$1.sh" build 2>&1)
    if { [ -z "$2" ] && [ -z "$found" ]; } || { [ -n "$2" ] && printf '%s' "$found" | grep -q -e "$2"; }; then
        passed=$((passed + 1))
    else
        failed=$((failed + 1))
        printf 'lint %s: wanted "%s", said "%s"\n' "$1" "$2" "$found"
    fi
}
add() { printf "$1\n" >>tree/src/wall/twice.c; }

tree
for lint in includes case functions banned spdx docblock sources words toplevel; do finds $lint ''; done

add '#include <lowwall/report.h>' && finds includes 'wall is left of report'
kinds() {
    tree
    mkdir -p tree/src/checks tree/src/load_cases tree/tests/load_cases
    printf '#define LW_CHECK_KINDS(X)\n  X(SLIDING, 1, 1)\n' >tree/include/lowwall/checks.h
    printf '[LW_CHECK_SLIDING] = {.theory = "Sliding", .make = lw_check_sliding}\n' \
        >tree/src/load_cases/kinds.c
    printf 'lw_check lw_check_sliding(int x) {\n' >tree/src/checks/sliding.c
    printf '[LW_CHECK_SLIDING] = {1}\n' >tree/tests/load_cases/kinds.c
    printf '## Sliding\n' >tree/docs/theory.md
    for file in include/lowwall/checks.h src/load_cases/kinds.c tests/load_cases/kinds.c src/checks/ \
        docs/theory.md docs/results.md tables/formats.csv tests/report/rebuild.c README.md; do
        printf '\140%s\140\n' "$file"
    done |
        sed '1s/^/- **A check**: /; $s/$/\n- **A form**/' >>tree/DEVELOPERS.md
}
kinds && finds kinds ''
kinds && echo '  X(KEY, 0, 1)' >>tree/include/lowwall/checks.h && finds kinds 'kinds.c: no row of KEY'
kinds && echo 'int x;' >tree/src/checks/sliding.c && finds kinds 'no file has lw_check_sliding'
kinds && echo '## Other' >tree/docs/theory.md && finds kinds 'no heading Sliding'
kinds && add '  case LW_CHECK_SLIDING: return 1;' && finds kinds 'twice.c: a list of the kinds'
kinds && sed '/results.md/d' tree/DEVELOPERS.md >tree/d && mv tree/d tree/DEVELOPERS.md &&
    finds kinds 'not told of docs/results.md'

mutation() { # OLD NEW: a list with one mistake
    tree && mkdir tree/tests/mutations &&
        printf 'src/wall/twice.c\n- %s\n+ %s\n' "$1" "$2" >tree/tests/mutations/wall.txt
}
right='return 2 * x; /* [ABC p.1] */'
mutation "$right" 'return 3 * x;' && finds mutations ''
mutation "$right" "$right" && finds mutations 'wall.txt:2: nothing is changed'
mutation 'return x;' 'return 3 * x;' && finds mutations 'wall.txt:2: in src/wall/twice.c 0 times'
mutation "$right" 'return 3 * x;' && rm tree/src/wall/twice.c && finds mutations 'twice.c is not there'
mutation "$right" '' && finds mutations 'wants a file'
untaken() { # LINE REASON
    tree && mkdir tree/tests/setup &&
        printf 'src/wall/twice.c\n- %s\n%s\n' "$1" "$2" >tree/tests/setup/untaken.txt
}
untaken "$right" '= no wall is so thin' && finds untaken ''
untaken 'return x;' '= no wall is so thin' && finds untaken 'not in src/wall/twice.c: return x;'
untaken "$right" '' && finds untaken 'no reason stands below'

tree && mkdir tree/src/slip && echo 'int f(const lw_case_pad *pad);' >tree/src/slip/x.h &&
    finds case 'src/slip/x.h:1: right of the wall nobody asks what was told: lw_case_pad'
echo 'double lw_case_x(lw_load_case a); /* lw_case */' >tree/include/lowwall/fence.h
echo 'int f(lw_load_case load_case, lw_situation lw_cases); /* lw_case */' >tree/src/slip/x.h
finds case 'include/lowwall/fence.h:1: right of the wall'
echo 'int lw_wall_build(const lw_case *c);' >>tree/include/lowwall/wall.h
rm tree/include/lowwall/fence.h && finds case ''
mkdir tree/src/order && echo 'int f(const lw_case *c);' | tee tree/src/order/make.c >tree/src/order/x.c
echo 'int g(const lw_case_order *items);' >>tree/src/order/x.c
finds case 'src/order/x.c:1: right of the wall nobody asks what was told: lw_case$'
rm tree/src/order/x.c && finds case ''
tree && add '  plan->why = "people sit on a wall";' && finds sentences 'twice.c:7: mechanics say no'
tree && add '  /* it is said in a comment */ plan->slug = "people-sit-on-a-wall";' && finds sentences ''
tree && add '  lw_working_heading(working,\n"what all of it comes to");' && finds sentences ''
tree && add '  *source = "[RANKINE1857 with words of its own]";' && finds sentences ''
tree && add '#include <gsl/gsl_math.h>' && finds includes 'GSL is called from base'
tree && add '#include "../base/x.h"' && finds includes 'neither <lowwall'
tree && add '#include "base/x.h"' && finds includes ''
tree && add '#include "report/x.h"' && finds includes 'wall is left of report'
tree && add 'void lw_wall_say(void) { puts("x"); }' && finds includes 'mechanics allocates nothing'
tree && add 'int lw_wall_long(int a) {' && yes '  a++;' | head -n 61 >>tree/src/wall/twice.c &&
    add '  return a;\n}' && finds functions 'lw_wall_long has 62 code lines'
tree && add 'int lw_wall_fits(int a) {' && yes '  a++; /* x */' | head -n 59 >>tree/src/wall/twice.c &&
    add '\n  /* words */\n  return a;\n}' && finds functions ''
tree && add 'int lw_wall_many(int a, int b, int c, int d, int e, int f, int g) { return a; }' &&
    finds functions 'lw_wall_many takes 7 parameters'
tree && add 'int lw_wall_six(int a, int b, int c, int d, int e, int f, ...) { return a; }' &&
    finds functions ''
tree && echo 'int lw_wall_many(int a, int b, int c, int d, int e, int f, double (*g)(int, int));' \
    >>tree/include/lowwall/wall.h && finds functions 'wall.h:5: lw_wall_many takes 7 parameters'
tree && yes '' | head -n 400 >>tree/src/wall/twice.c && finds functions '406 lines'
tree && add "// $(printf '%0108d' 0)" && finds functions '111 characters'
tree && add "// $(printf '%0104d' 0)φφφ" && finds functions ''
tree && add 'void f(char *a) { strcpy(a, a); }' && finds banned 'banned: .*strcpy'
tree && add 'void f(char *a) { snprintf(a, 1, "strcpy(a)"); }' && finds banned ''
tree && add 'void f(json_t *a) { json_object_set_new(a, "b", json_null()); }' &&
    finds banned 'banned: .*json_object_set_new'
tree && mkdir tree/build && echo "${CC:-cc} -Werror" >tree/build/flags &&
    finds doubles 'build/flags: these let'
echo "${CC:-cc} -Werror -Wfloat-equal" >tree/build/flags && finds doubles ''
tree && echo 'int x;' >tree/src/base/x.c && finds spdx 'src/base/x.c:1: wants'
tree && printf '\nint lw_wall_bare(int x);\n' >>tree/include/lowwall/wall.h &&
    finds docblock 'before lw_wall_bare'
tree && printf 'int lw_wall_run(int x);\n' >>tree/include/lowwall/wall.h && finds docblock ''
tree && printf 'int lw_wall_run(int x, double y_m);\n' >>tree/include/lowwall/wall.h &&
    finds docblock 'wall.h:5: y_m of lw_wall_run has no range'
tree && sed 's/x   any/x   many/' tree/include/lowwall/wall.h >tree/w &&
    cp tree/w tree/include/lowwall/wall.h &&
    finds docblock 'x of lw_wall_twice has no range'
tree && echo 'x,[XYZ p.2]' >tree/tables/x.csv && finds sources 'x.csv:1: \[XYZ'
tree && echo 'x,[ABC p.2; XYZ p.2]' >tree/tables/x.csv && finds sources 'x.csv:1: \[XYZ'
tree && printf '### DEF\n' >>tree/docs/sources.md && finds sources 'DEF is cited nowhere'
tree && add '/* TO''DO */' && finds words 'twice.c:7'
tree && add '/* see /ho''me/someone */' && finds words 'twice.c:7'
if clang-format --version 2>/dev/null | grep -q 'version 14'; then
    tree && cp "$lints/../../.clang-format" tree && finds format ''
    tree && cp "$lints/../../.clang-format" tree && add 'int  x;' && finds format 'twice.c: not as clang'
fi
tree && mkdir tree/scripts && finds toplevel 'scripts: not at the top level'
tree && rm tree/LICENSE && finds toplevel 'LICENSE is not there'
tree && mkdir tree/src/soil && finds documents '`src/soil/` is not on the map'
tree && rm -r tree/src/report && finds documents '`src/report/` is not there'
options() {
    tree
    mkdir tree/build
    printf '#!/bin/sh\necho "  --short   in short"\necho "  -o, --output FILE"\n' >tree/build/lowwall
    chmod +x tree/build/lowwall
    printf '.Ss new, check\n.It Fl -short\nIn short.\n.Ss help\n.Fl -short\n' >tree/docs/lowwall.1
    echo '_lowwall() { COMPREPLY=(--output --short); }' >tree/docs/lowwall.bash
}
options && finds options ''
options && sed -i '2d' tree/docs/lowwall.1 && finds options 'lowwall.1: check has no --short'
options && sed -i 's/ --short//' tree/docs/lowwall.bash && finds options 'new does not complete --short'

tree && mkdir tree/build && echo '#include <stdlib.h>
    static int seen[9];
    int count_of_calls = 3;
    int *lw_seen(void) { return seen; }
    void lw_wall_leave(void) { exit(1); }' >tree/x.c && "${CC:-cc}" -c tree/x.c -o tree/x.o &&
    ar rcs tree/build/liblowwall.a tree/x.o
finds symbols 'public name without lw_: count_of_calls'
finds symbols 'seen: not constant'
finds symbols 'asks for exit'
"${CC:-cc}" -shared -fPIC -o tree/build/liblowwall.so tree/x.c
finds symbols 'lw_seen: in the shared library, and in no'
finds symbols 'lw_wall_twice: declared, and not in'

# Two files that call each other, and a third that calls one of them.
tree && mkdir -p tree/build/obj/src/wall && for file in 'twice thrice' 'thrice twice' 'once twice'; do
    set -- $file
    echo "int lw_$2(void); int lw_$1(void); int lw_$1(void) { return lw_$2(); }" >"tree/src/wall/$1.c" &&
        "${CC:-cc}" -c "tree/src/wall/$1.c" -o "tree/build/obj/src/wall/$1.o"
done
finds circles 'src/wall/thrice.c calls twice.c'
rm tree/src/wall/thrice.c && finds circles ''
echo "$passed $failed $name" >"$result"
