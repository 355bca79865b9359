#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# The mistakes of the lists, one a line, their parts parted by tabs: list and line, file, old, new, reason.
# What is wrong with a list goes to standard error: each line must be in its file, once, and be changed.
#   listed.sh LIST...
set -u
awk '
    function bad(words) { print place ": " words >"/dev/stderr" }
    function times(old, file,   line, n, there) {
        while ((there = (getline line <file)) > 0) {
            sub(/^ +/, "", line)
            n += line == old
        }
        close(file)
        return there < 0 ? -1 : n + 0
    }
    function done(   n) {
        if (old == "" && new == "" && why == "") return
        if (file == "" || old == "" || new == "") {
            bad("wants a file, a - and a +")
        } else {
            printf "%s\t%s\t%s\t%s\t%s\n", place, file, old, new, why
            n = times(old, file)
            if (n < 0) bad(file " is not there")
            else if (n != 1) bad("in " file " " n " times, not once: " old)
            if (old == new) bad("nothing is changed: " old)
        }
        old = new = why = ""
    }
    FNR == 1 { done(); file = "" }
    /^#/ || /^[ ]*$/ { next }
    /^- / { done(); old = substr($0, 3); place = FILENAME ":" FNR; next }
    /^[+] / { new = substr($0, 3); next }
    /^= / { why = substr($0, 3); next }
    { done(); file = $0; place = FILENAME ":" FNR }
    END { done() }' "$@"
