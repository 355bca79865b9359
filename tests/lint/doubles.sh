#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# No `==` or `!=` on doubles: two ways to compute one number differ in the last bit. Ask for < or > instead.
# The compiler refuses them in src/; here it is asked whether it still does, with the flags of BUILD.
set -u
flags=$(cat "$1/flags" 2>/dev/null) || flags=
[ -n "$flags" ] || { echo "$1/flags is not there"; exit 0; }
# shellcheck disable=SC2086
if printf 'int lw_same(double a);\nint lw_same(double a) { return a != 0.5; }\n' |
    $flags -fsyntax-only -x c - >/dev/null 2>&1; then
    echo "$1/flags: these let two doubles be compared with !="
fi
