#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# Install below a scratch directory, link a stranger's program to what lies there, uninstall.
#   installed.sh BUILD RESULT
set -u
build=$1
result=$2
. "$(dirname "$0")/counting.sh"
prefix=$scratch/usr
PKG_CONFIG_PATH=$prefix/lib/pkgconfig
export PKG_CONFIG_PATH

own_make() { MAKEFLAGS='' MAKELEVEL='' make --no-print-directory BUILD="$build" PREFIX="$prefix" "$@"; }
pc() { pkg-config "$@" lowwall; }
cat >"$scratch/stranger.c" <<'SOURCE'
#include <lowwall/base.h>
#include <stdio.h>
int main(void) {
  lw_error error = {0};
  lw_status status = lw_error_set(&error, LW_NOT_READ, LW_REASON_NONE, "%s", LW_VERSION);
  puts(error.text);
  return status == LW_NOT_READ ? 0 : 1;
}
SOURCE
cp "$scratch/stranger.c" "$scratch/stranger.cc"
# A host that leaves GSL its own handler, which aborts: hopeless questions must come back as a status. It asks
# the library's own calls into GSL as well.
cat >"$scratch/host.c" <<'SOURCE'
#include <gsl/gsl_errno.h>
#include <lowwall/lateral.h>
#include <math.h>

#include "base/solve.h"

static double no_root(double x, const void *context) { return context ? x : 1.0 + x * x; }
static double no_number(double x, const void *context) { return context ? x : x / 0.0 - x / 0.0; }
static double wall(double x, const void *context) { return context ? x : x < 0.3 ? 1e300 : -1e300; }
static void handler(const char *reason, const char *file, int line, int number) {
  (void)reason, (void)file, (void)line, (void)number;
}
int main(void) {
  const lw_function f[] = {no_root, no_number, wall};
  const double ends[] = {-1.0, 0.0, 0.25, 1e-12, 1.0, 1e300, INFINITY, NAN};
  const int count = sizeof ends / sizeof ends[0];
  lw_minimum least;
  double x = 0.0;
  for (int turn = 0; turn < 2; turn++) {
    for (int k = 0; k < 3 * count * count; k++) {
      double a = ends[k / count % count], b = ends[k % count];
      (void)lw_solve_root(f[k / count / count], NULL, a, b, 1e-9, &x);
      (void)lw_solve_minimum(f[k / count / count], NULL, a, b, 8, &least);
      lw_slot slot = {.width_m = a, .unit_weight_kn_per_m3 = 18.0, .wall_friction_rad = 0.5};
      lw_lateral lateral;
      lw_error error;
      (void)lw_slot_thrust(&slot, 0.3, b, &lateral, &error, NULL);
    }
    if (lw_solve_root(no_root, NULL, 0.0, 1.0, 1e-9, &x) == LW_OK) return 1;
    if (turn == 0) gsl_set_error_handler(handler);
  }
  return gsl_set_error_handler(NULL) == handler ? 0 : 2;
}
SOURCE
host() {
    # shellcheck disable=SC2046
    ${CC:-cc} "$scratch/host.c" $(pc --cflags) -Isrc $(pkg-config --cflags gsl) "$prefix/lib/liblowwall.a" \
        $(pc --static --libs-only-l | sed 's/-llowwall//') -o "$scratch/host" && "$scratch/host"
}
shared() { # COMPILER SOURCE
    # shellcheck disable=SC2046
    "$1" "$scratch/$2" $(pc --cflags --libs) -o "$scratch/shared" &&
        LD_LIBRARY_PATH=$prefix/lib "$scratch/shared"
}
static() {
    # shellcheck disable=SC2046
    ${CC:-cc} "$scratch/stranger.c" $(pc --cflags) "$prefix/lib/liblowwall.a" \
        $(pc --static --libs-only-l | sed 's/-llowwall//') -o "$scratch/static" && "$scratch/static"
}
# The examples of docs/library.md, as they stand there: both tell the same wall.
block() { awk -v fence="\`\`\`$1" '$0 == fence { on = 1; next } /^```/ { on = 0 } on' docs/library.md; }
in_c() {
    block c >"$scratch/wall.c"
    # shellcheck disable=SC2046
    ${CC:-cc} -std=c17 -Wall -Wextra -Werror "$scratch/wall.c" $(pc --cflags --libs) -o "$scratch/wall" &&
        LD_LIBRARY_PATH=$prefix/lib "$scratch/wall" >"$scratch/wall.out" &&
        head -n 2 "$scratch/wall.out" | tr '\n' ' ' |
        grep -q '^K 0.2973, thrust 10.70 kN/m angle-out-of-range $'
}
in_python() {
    block python >"$scratch/wall.py"
    LD_LIBRARY_PATH=$prefix/lib python3 "$scratch/wall.py" >"$scratch/python.out" &&
        [ "$(head -n 1 "$scratch/python.out")" = "$(sed -n 3p "$scratch/wall.out")" ] &&
        [ "$(tail -n 1 "$scratch/python.out")" = refused ]
}
# Only what the public headers themselves include.
own_flags_only() { [ "$(pc --cflags | sed 's/ *$//')" = "-I$prefix/include" ]; }
same_version() { [ "$("$scratch/static")" = "$(pc --modversion)" ]; }
nothing_left() { [ -z "$(find "$prefix" -type f -o -type l)" ]; }

check 'make install fails' own_make install
for file in bin/lowwall lib/liblowwall.a lib/liblowwall.so lib/liblowwall.so.0 lib/pkgconfig/lowwall.pc \
    include/lowwall/base.h share/man/man1/lowwall.1 share/bash-completion/completions/lowwall; do
    check "$file is not there" test -s "$prefix/$file"
done
check 'the installed command does not run' "$prefix/bin/lowwall" --help
check 'a C program does not link to the shared library' shared ${CC:-cc} stranger.c
check 'a C++ program does not link to the shared library' shared "${CXX:-c++}" stranger.cc
check 'a C program does not link to the static library' static
check 'the example in C of docs/library.md fails' in_c
! command -v python3 >/dev/null || check 'the example in Python of docs/library.md fails' in_python
check 'pkg-config --cflags asks for more than the headers do' own_flags_only
check 'the library aborts its host, or changes GSL'"'"'s handler' host
check 'the pkg-config file has another version' same_version
check 'make uninstall fails' own_make uninstall
check 'make uninstall leaves something' nothing_left
counted
