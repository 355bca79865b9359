#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# No `==` or `!=` on doubles: two ways to compute one number differ in the last bit. Ask for < or > instead.
set -u
for file in $(find src -name '*.c' | sort); do
    "${CC:-cc}" -std=c17 -Wfloat-equal -Iinclude -Isrc -fsyntax-only "$file" 2>&1 | grep 'float-equal'
done
true
