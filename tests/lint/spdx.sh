#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# One SPDX line at the head of each source file.
set -u
mark='SPDX-License-Identifier: GPL-3.0-or-later'
for file in $(find include src tests -name '*.[ch]' | sort); do
    [ "$(head -n 1 "$file")" = "/* $mark */" ] || echo "$file:1: wants /* $mark */"
done
for file in Makefile .ci/run $(find src tests docs -name '*.sh' -o -name '*.awk' -o -name '*.bash' | sort); do
    head -n 2 "$file" | grep -q "^# $mark\$" || echo "$file:1: wants # $mark"
done
