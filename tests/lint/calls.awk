# SPDX-License-Identifier: GPL-3.0-or-later
# Calls that may not stand in these files.
#   awk -v calls=PATTERN -v words=WORDS -f strip.awk -f calls.awk FILE...
BEGIN { pattern = "(^|[^A-Za-z0-9_])(" calls ")[ ]*\\(" }
match($0, pattern) { printf "%s:%d: %s: %s\n", FILENAME, FNR, words, substr($0, RSTART, RLENGTH) }
