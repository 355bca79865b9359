# SPDX-License-Identifier: GPL-3.0-or-later
# Doc blocks of public prototypes.   awk -f docblock.awk HEADER...
# A comment stands directly before each prototype, or before the unbroken run of prototypes that it is in. Its
# inputs name each number that a function takes (double or int) with its range: 0 or more, 1 to count, > 0,
# as above, any.
BEGIN {
  range = "(^|[^a-z])(any|as above|as lw_[a-z_]+)([^a-z]|$)|<|(^|[^-])>|≤|≥|[0-9] or more|[0-9] to "
}
FNR == 1 { before = ""; in_comment = in_prototype = 0 }
in_comment { read_doc($0); if (/\*\//) { in_comment = 0; before = "comment" } next }
/^[ \t]*\/\*/ {
  start_doc()
  read_doc($0)
  if (/\*\//) before = "comment"
  else in_comment = 1
  next
}
in_prototype { prototype = prototype " " $0; if (/;/) end_prototype(); next }
/^[a-z][a-z_0-9 *]*lw_[a-z0-9_]*\(/ {
  if (/^typedef/) { before = "other"; next }
  documented = before == "comment" || before == "documented" || /\/\*/
  name = $0
  sub(/\(.*/, "", name)
  sub(/.*[ *]/, "", name)
  if (!documented) printf "%s:%d: no doc block before %s\n", FILENAME, FNR, name
  state = documented ? "documented" : "other"
  prototype = $0
  line = FNR
  in_prototype = 1
  if (/;/) end_prototype()
  next
}
/^#/ && before == "documented" { next }
{ before = "other" }

# Comments of inputs, by name: "a, b   words" and the lines that follow it.
function start_doc() { split("", told); section = ""; names = "" }
function read_doc(text,    key) {
  sub(/^[ \t]*\/?\*+ ?/, "", text)
  sub(/\*\/.*/, "", text)
  if (text ~ /^ (in|out|gives|note|from) /) {
    section = substr(text, 2)
    sub(/ .*/, "", section)
    names = ""
    text = substr(text, 8)
  } else text = text ~ /^       / ? substr(text, 8) : text
  if (section != "in") return
  if (match(text, /^[a-z][a-z0-9_]*(, [a-z][a-z0-9_]*)*(  |$)/)) {
    names = substr(text, 1, RLENGTH)
    sub(/ *$/, "", names)
    text = substr(text, RLENGTH)
  }
  count = split(names, each, ", ")
  for (i = 1; i <= count; i++) told[each[i]] = told[each[i]] " " text
}
function end_prototype(    parameters, depth, i, c, count, parameter) {
  in_prototype = 0
  before = state
  parameters = substr(prototype, index(prototype, "(") + 1)
  depth = 1
  for (i = 1; depth > 0 && i <= length(parameters); i++) {
    c = substr(parameters, i, 1)
    if (c == "(") depth++
    if (c == ")") depth--
  }
  count = split(substr(parameters, 1, i - 2), parameter, /, */)
  for (i = 1; i <= count; i++) {
    if (parameter[i] !~ /^ *(double|float|int|long|unsigned) +[a-z0-9_]+ *$/) continue
    sub(/^ *[a-z]+ +/, "", parameter[i])
    sub(/ *$/, "", parameter[i])
    if (told[parameter[i]] !~ range)
      printf "%s:%d: %s of %s has no range in its doc block\n", FILENAME, line, parameter[i], name
  }
}
