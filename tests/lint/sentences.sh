#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# Mechanics hand up kinds and numbers; what is said of them stands in one list of a header or in a report.
# Not looked at: src/pressure, whose words are working and refusals of a formula; the table of check kinds.
set -u
here=$(dirname "$0")
find src/soil src/wall src/standards src/balance src/slip src/checks src/load_cases src/studies src/order \
    -name '*.[ch]' ! -path src/load_cases/kinds.c 2>/dev/null | sort |
    xargs awk -f "$here/sentences.awk" /dev/null
