# SPDX-License-Identifier: GPL-3.0-or-later
# Lengths and parameters.   awk -f strip.awk -f functions.awk FILE...
function parameters(head,    i, c, depth, count, word, total) {
  # the parameters are in the first parentheses; `void` and `...` are none
  depth = 0; word = ""; total = 0
  for (i = 1; i <= length(head); i++) {
    c = substr(head, i, 1)
    if (c == "(" && depth++ == 0) continue
    if (c == ")" && --depth == 0) break
    if (depth == 1 && c == ",") { total += counts(word); word = ""; continue }
    if (depth >= 1) word = word c
  }
  return total + counts(word)
}
function counts(word) {
  gsub(/[ \t]/, "", word)
  return word != "" && word != "void" && word != "..."
}
function named(head) {
  sub(/[ \t]*\(.*/, "", head)
  sub(/.*[ \t*]/, "", head)
  return head
}
function judge(head, line) {
  if (parameters(head) > 6)
    printf "%s:%d: %s takes %d parameters, 6 at most\n", FILENAME, line, named(head), parameters(head)
}
FNR == 1 { depth = inside = code = continued = 0; text = "" }
/^[ \t]*#/ || continued { continued = /\\$/; next }
{
  has_code = $0 ~ /[^ \t{}]/
  if (inside) code += has_code
  if (depth > 0 && !/[{}]/) next # nothing on this line opens or closes a function
  for (i = 1; i <= length($0); i++) {
    c = substr($0, i, 1)
    if (c == "{") {
      if (depth == 0 && text ~ /extern[ \t]+""[ \t]*$/) { text = ""; continue }
      if (depth++ == 0 && text ~ /\)[ \t]*$/) {
        inside = 1; head = text; start = FNR; code = has_code && $0 !~ /\{[ \t]*$/
        judge(head, FNR)
      }
    } else if (c == "}") {
      if (depth > 0 && --depth == 0) {
        if (inside && code > 60)
          printf "%s:%d: %s has %d code lines, 60 at most\n", FILENAME, start, named(head), code
        inside = 0; text = ""
      }
    } else if (depth == 0) {
      if (c != ";") { text = text c; continue }
      if (text ~ /^[ \t]*[a-z].*[a-z_][a-z_0-9]*\(.*\)/ && text !~ /=/ && text !~ /^[ \t]*typedef/)
        judge(text, FNR)
      text = ""
    }
  }
  if (depth == 0 && text != "") text = text " "
}
