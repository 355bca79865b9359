#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# Includes go one way along the rooms; each library belongs to the rooms that own it; mechanics only computes.
set -u
here=$(dirname "$0")
find include src -name '*.[ch]' | sort | xargs awk -f "$here/includes.awk"
calls='malloc|calloc|realloc|free|f?open|fclose|v?f?printf|f?puts|f?putc|putchar|fwrite'
find src/soil src/wall src/pressure src/standards src/balance src/slip src/checks src/load_cases src/studies \
    src/order -name '*.[ch]' 2>/dev/null | sort |
    xargs awk -v calls="$calls" -v words='mechanics allocates nothing, opens nothing, prints nothing' \
        -f "$here/strip.awk" -f "$here/calls.awk" /dev/null
