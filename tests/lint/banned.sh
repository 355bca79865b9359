#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# Calls that are banned. A test may change the locale, to show that the library does not mind.
set -u
here=$(dirname "$0")
calls='sprintf|vsprintf|strcpy|stpcpy|strcat|strtok|atof|atoi|atol|sscanf|scanf|gets|alloca'
hold() { # CALLS FOLDER...
    calls=$1
    shift
    find "$@" -name '*.[ch]' | sort |
        xargs awk -v calls="$calls" -v words=banned -f "$here/strip.awk" -f "$here/calls.awk" /dev/null
}
hold "$calls|setlocale" include src
hold "$calls" tests
# A key that finds no memory is missed at the end only when it went in by the doors of json/set.c.
hold 'json_object_set[a-z_]*|json_array_(set|append|insert)[a-z_]*|json_pack[a-z_]*|json_dump[a-z_]*' src |
    { grep -v '^src/report/json/set\.c:' || true; }
