#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# What the built library shows and asks for.   symbols.sh BUILD
# Names begin with lw_; no state outlives a call; the library does not print, exit or touch its host. The
# shared one shows the functions that the public headers declare, and no other name.
set -u
library=$1/liblowwall.a
[ -f "$library" ] || { echo "$library is not there"; exit 0; }
nm -A --defined-only --extern-only "$library" |
    awk '$NF !~ /^lw_/ { printf "%s: public name without lw_: %s\n", $1, $NF }'
nm -A -f sysv "$library" 2>/dev/null | awk -F '|' '
    $NF ~ /^(\.data|\.bss|\.tdata|\.tbss|\*COM\*)/ && $NF !~ /^\.data\.rel\.ro/ && $4 ~ /OBJECT|TLS/ {
        gsub(/ /, "", $1); printf "%s: not constant\n", $1
    }'
asks='_?exit|abort|setlocale|v?printf|puts|putchar|perror|stdout|stderr|signal|gsl_set_error_handler.*'
nm -A -u "$library" | awk -v asks="^($asks)(@.*)?\$" '
    $NF ~ asks {
        printf "%s asks for %s: that is for main\n", $1, $NF
    }'

shared=$1/liblowwall.so
[ -e "$shared" ] || { echo "$shared is not there"; exit 0; }
{
    cat include/lowwall/*.h | awk '/^[a-z][a-z_0-9 *]*lw_[a-z0-9_]*\(/ && !/^typedef/ {
        name = $0; sub(/\(.*/, "", name); sub(/.*[ *]/, "", name); print name, "declared"
    }'
    nm -D --defined-only "$shared" | awk '{ print $NF, "shown" }'
} | LC_ALL=C sort -u | awk '
    { said[$1] = said[$1] " " $2; name[++n] = $1 }
    END {
        for (i = 1; i <= n; i++) {
            if (said[name[i]] == " declared") print name[i] ": declared, and not in the shared library"
            if (said[name[i]] == " shown") print name[i] ": in the shared library, and in no public header"
        }
    }'
