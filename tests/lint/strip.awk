# SPDX-License-Identifier: GPL-3.0-or-later
# C without its words: comments go, strings and characters are emptied, lines stay where they are. Rules that
# follow in the same run of awk see what is left:   awk -f strip.awk -f RULES FILE...
function stripped(line,    out, n, i, c, two) {
  n = length(line)
  for (i = 1; i <= n; i++) {
    c = substr(line, i, 1)
    two = substr(line, i, 2)
    if (comment) {
      if (two == "*/") { comment = 0; i++; out = out " " }
    } else if (quote != "") {
      if (c == "\\") i++
      else if (c == quote) { out = out c; quote = "" }
    } else if (two == "/*") { comment = 1; i++ }
    else if (two == "//") break
    else {
      if (c == "\"" || c == "\047") quote = c
      out = out c
    }
  }
  if (quote != "" && substr(line, n, 1) != "\\") quote = ""
  return out
}
FNR == 1 { comment = 0; quote = "" }
# Most lines have nothing to strip, and going through a line letter by letter is slow.
comment || quote != "" || /["'\/]/ { $0 = stripped($0) }
