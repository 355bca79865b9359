# SPDX-License-Identifier: GPL-3.0-or-later
# Words of the case.   awk -v told=PATTERN -f strip.awk -f told.awk FILE...
BEGIN { pattern = "(^|[^A-Za-z0-9_])(" told ")($|[^A-Za-z0-9_])" }
match($0, pattern) {
  word = substr($0, RSTART, RLENGTH)
  gsub(/[^A-Za-z0-9_]/, "", word)
  printf "%s:%d: right of the wall nobody asks what was told: %s\n", FILENAME, FNR, word
}
