#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# The top level holds what it should and nothing else but dot-files (and what git ignores).
set -u
allowed='README.md DEVELOPERS.md LICENSE Makefile src include tests tables docs'
for name in $allowed; do
    [ -e "$name" ] || echo "$name is not there"
done
for name in *; do
    case " $allowed " in *" $name "*) continue ;; esac
    git check-ignore -q "$name" 2>/dev/null || [ "$name" = build ] || echo "$name: not at the top level"
done
