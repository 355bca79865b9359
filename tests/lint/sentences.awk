# SPDX-License-Identifier: GPL-3.0-or-later
# Five words in a row, in a statement that writes no working and refuses no formula; a source is no sentence.
#   awk -f sentences.awk FILE...
BEGIN {
  may = "working|lw_step|formula|symbol|title|lw_bearing_|bearing_share|lw_check_tell"
  may = may "|lw_error_set|refuse[(]|static_assert"
  five = "[a-z]+,? [a-z]+,? [a-z]+,? [a-z]+,? [a-z]+"
}
FNR == 1 { statement = found = "" }
/^[ \t]*(\/\*|\*|#)/ { next }
{
  statement = statement " " $0
  rest = $0
  while (found == "" && match(rest, /"[^"]*"/)) {
    words = substr(rest, RSTART + 1, RLENGTH - 2)
    rest = substr(rest, RSTART + RLENGTH)
    if (words ~ five && words !~ /^\[/) { found = words; line = FNR }
  }
}
/;[ \t]*(\/\*.*)?$|^}/ {
  if (found != "" && statement !~ may) printf "%s:%d: mechanics say no sentences: %s\n", FILENAME, line, found
  statement = found = ""
}
