#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# Calls that are banned. A test may change the locale, to show that the library does not mind.
set -u
here=$(dirname "$0")
for file in $(find include src tests -name '*.[ch]' | sort); do
    calls='sprintf|vsprintf|strcpy|stpcpy|strcat|strtok|atof|atoi|atol|sscanf|scanf|gets|alloca'
    case $file in tests/*) ;; *) calls="$calls|setlocale" ;; esac
    awk -f "$here/strip.awk" "$file" | awk -v file="$file" -v calls="(^|[^A-Za-z0-9_])($calls)[ ]*\\\\(" '
        match($0, calls) { printf "%s:%d: banned: %s\n", file, FNR, substr($0, RSTART, RLENGTH) }'
done
