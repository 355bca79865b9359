# SPDX-License-Identifier: GPL-3.0-or-later
# C without its words: comments go, strings and characters are emptied, lines stay where they are.
{
  out = ""
  n = length($0)
  for (i = 1; i <= n; i++) {
    c = substr($0, i, 1)
    two = substr($0, i, 2)
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
  if (quote != "" && substr($0, n, 1) != "\\") quote = ""
  print out
}
