# SPDX-License-Identifier: GPL-3.0-or-later
# The literals of the page's modules that are longer than a label: three words or more. What is filled in
# counts as one word, so that a sentence cannot hide behind it.   awk -f sentences.awk MODULE.js ...
# Of a literal everything is printed but what is filled in, which is a + there; with its file before it.

function tell(text,    words, n, i, count) {
    gsub(/[\t ]+/, " ", text)
    sub(/^ /, "", text)
    sub(/ $/, "", text)
    n = split(text, words, " ")
    for (i = 1; i <= n; i++) if (words[i] ~ /[A-Za-z+]/) count++
    if (count >= 3 && text ~ /[a-z]/) print file ": " text
}

# A literal from the character after its mark on; gives the place after its end.
function literal(mark,    text, c, depth) {
    text = ""
    for (; at <= length(all); at++) {
        c = substr(all, at, 1)
        if (c == "\\") { text = text substr(all, at + 1, 1); at++; continue }
        if (c == mark) break
        if (mark == "`" && c == "$" && substr(all, at + 1, 1) == "{") {
            text = text "+"
            at += 2
            inside()
            continue
        }
        text = text c
    }
    at++
    tell(text)
}

# What is filled in, up to its brace; literals inside it are literals like any other.
function inside(    c, depth) {
    for (depth = 1; at <= length(all); at++) {
        c = substr(all, at, 1)
        if (c == "{") depth++
        else if (c == "}" && --depth == 0) return
        else if (c == "\"" || c == "`") { at++; literal(c); at-- }
    }
}

function read_all(    c, two, before) {
    for (at = 1; at <= length(all);) {
        c = substr(all, at, 1)
        two = substr(all, at, 2)
        if (two == "/*") {
            at += index(substr(all, at), "*/") + 1
        } else if (c == "'") { # one character between
            at += 3
        } else if (c == "/" && before ~ /[(,=]/) { # a pattern
            for (at++; substr(all, at, 1) != "/"; at++) if (substr(all, at, 1) == "\\") at++
            at++
        } else if (c == "\"" || c == "`") {
            at++
            literal(c)
        } else {
            at++
        }
        if (c !~ /[ \n]/) before = c
    }
}

FNR == 1 {
    if (file != "") read_all()
    file = FILENAME
    sub(/.*\//, "", file)
    all = ""
}
{ all = all $0 "\n" }
END { if (file != "") read_all() }
