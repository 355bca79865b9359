#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# What the built library shows and asks for.   symbols.sh BUILD
# Public names begin with lw_; no state outlives a call; the library does not print, exit or touch its host.
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
