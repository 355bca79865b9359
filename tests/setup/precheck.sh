#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# The pre-check as a PDF: fonts embedded, tagged, with title; on it and in the HTML no
# number that the JSON of the same sheet does not carry. Skipped with a word where poppler-utils or cairo are
# missing.
#   precheck.sh BUILD RESULT
set -u
build=$1
result=$2
. "$(dirname "$0")/counting.sh"
for tool in pdfinfo pdffonts pdftotext; do
    command -v $tool >/dev/null 2>&1 && continue
    echo "skipped: $tool is not installed (apt-get install poppler-utils)"
    counted
    exit 0
done
if ! "$build/lowwall" precheck -o "$scratch/try.pdf" docs/demo/bed.csv 2>"$scratch/why"; then
    echo "skipped: no PDF is made here: $(cat "$scratch/why")"
    counted
    exit 0
fi

pages() { pdfinfo "$pdf" | awk '/^Pages:/ { exit !($2 >= 1 && $2 <= 4) }'; }
titled() { pdfinfo "$pdf" | grep -q '^Title: *Pre-check' && pdfinfo "$pdf" | grep -q '^Tagged: *yes'; }
spoken() { grep -aq '/Lang (en)' "$pdf"; }
# As a reader for the blind has it: one document, who must see it first, rows with a head, words apart.
heard() {
    pdfinfo -struct-text "$pdf" >"$scratch/heard" 2>/dev/null
    head -n 1 "$scratch/heard" | grep -qx Document &&
        grep -A 1 -m 1 'H1' "$scratch/heard" | grep -q '"Who must see it: ' &&
        awk '$1 ~ /^TR/ { bad = bad || (rows && !heads); rows++; heads = 0 } $1 ~ /^TH/ { heads++ }
            END { exit bad || rows <= 20 || !heads }' "$scratch/heard" &&
            grep -Eq ' m, from the underside of the lowest course to the top, cap included"$' "$scratch/heard"
}
# In the drawing too, whose words are short and anywhere: no figure runs into the next word.
drawn_apart() {
    grep -A 1 -m 1 '^ *Figure' "$scratch/heard" | tail -n 1 >"$scratch/figure"
    grep -q '[0-9] kPa ' "$scratch/figure" && ! grep -Eq '(kPa|holds|tips|%)[A-Za-z0-9]' "$scratch/figure"
}
# Where the build found libqpdf. Without it neither is there, and the program says what to install.
parts() { "$build/lowwall" precheck --verify "$scratch/try.pdf" 2>&1 | grep -q 'without libqpdf, and'; }
explained() {
    cat "$scratch/heard" "$pdf" | grep -aEo '/Scope /(Row|Column)|/Alt [(]' | sort -u >"$scratch/told"
    [ "$(wc -l <"$scratch/told")" = 3 ]
}
brought() { "$build/lowwall" precheck --verify "$pdf" | grep -q 'byte for byte'; }
embedded() { pdffonts "$pdf" | awk 'NR > 2 { all++; for (i = 1; i <= NF; i++) if ($i == "yes" || $i == "no") {
    if ($i == "no") bad = 1; break } } END { exit !(all > 0 && !bad) }'; }
who() { pdftotext "$pdf" - | head -n 4 | grep -Eq 'council|engineer|authority|builder'; }
verified() { "$build/lowwall" precheck --verify "$(hash_in "$pdf")" "$@"; }
other() { ! "$build/lowwall" precheck --verify "$(hash_in "$pdf")" "$@" 'block unit weight=20.5 kN/m3'; }
# The hash as it stands on the paper, its groups on several lines.
hash_in() { pdftotext "$1" - | grep -Eo '\b[0-9a-f]{8}\b' | awk '!seen[$0]++' | head -n 8 | tr -d '\n'; }
# Every number with decimals and a unit stands in the JSON, in metres, kilopascals or plain, as it is printed;
# the JSON has twelve digits of it, so that one halfway between two may be printed as either.
carried() { # TEXT SHEET...
    text=$1
    shift
    grep -Eo '[0-9]+\.[0-9]+ (m|kPa|kN/m|kN m/m|kN/m3|deg)\b' "$text" |
        awk '{ print $1 }' | LC_ALL=C sort -u >"$scratch/printed"
    "$build/lowwall" check --json "$@" | grep -Eo -- '-?[0-9]+(\.[0-9]+)?([eE][-+]?[0-9]+)?' | awk '
        { v = $1 < 0 ? -$1 : $1
          for (d = 0; d < 5; d++)
              printf "%.*f\n%.*f\n%.*f\n", d, v, d, v * (1 + 1e-12), d, v * 57.29577951308232 }' |
        LC_ALL=C sort -u >"$scratch/carried"
    test -s "$scratch/printed" && ! LC_ALL=C comm -23 "$scratch/printed" "$scratch/carried" | grep .
}
all_of() { # SORT SHEET...
    sort=$1
    shift
    pdf=$scratch/one.pdf
    check "$sort: no PDF" "$build/lowwall" precheck -o "$pdf" "$@"
    check "$sort: more than four pages" pages
    check "$sort: no title, or not tagged" titled
    check "$sort: no language" spoken
    check "$sort: not read out in order" heard
    check "$sort: words of the drawing run together" drawn_apart
    parts || check "$sort: head cells or drawing not explained" explained
    parts || check "$sort: its own sheet is not that of its pages" brought
    check "$sort: a font is not embedded" embedded
    check "$sort: who must sign is not what comes first" who
    pdftotext -layout "$pdf" "$scratch/words"
    check "$sort: a number on paper that the JSON does not carry" carried "$scratch/words" "$@"
    "$build/lowwall" precheck -o "$scratch/one.html" "$@"
    sed 's/<[^>]*>/ /g' "$scratch/one.html" >"$scratch/words"
    check "$sort: a number in the HTML that the JSON does not carry" carried "$scratch/words" "$@"
    check "$sort: its hash does not verify" verified "$@"
    check "$sort: its hash verifies another wall" other "$@"
}
for sheet in bed terrace bank; do all_of "$sheet" "docs/demo/$sheet.csv"; done
all_of 'a bed against a fence' docs/demo/bed.csv 'site back=fence' 'fence height=1.8 m' 'drain outlets=0'
all_of 'everything at once' docs/demo/bank.csv 'storm rain=60 mm' 'trench depth=0.4 m' \
    'trench distance=0.9 m' 'seismic horizontal=0.1' 'fence height=1.8 m' \
    'fence place=behind' 'drain outlets=0'
# A hand that changes the sheet, or a file with none.
pdf=$scratch/try.pdf
"$build/lowwall" precheck -o "$pdf" docs/demo/bed.csv
brought_not() { # FILE WORDS
    ! "$build/lowwall" precheck --verify "$1" >"$scratch/said" 2>&1 && grep -q "$2" "$scratch/said"
}
"$build/lowwall" draw -o "$scratch/drawn.pdf" docs/demo/bed.csv
parts || check 'a drawing passes for a pre-check' brought_not "$scratch/drawn.pdf" 'no sheet.csv is attached'
echo 'no PDF at all' >"$scratch/no.pdf"
parts || check 'words pass for a PDF' brought_not "$scratch/no.pdf" 'no PDF'
mkdir "$scratch/other"
sed '2s/,1\.5,/,1.6,/' tables/formats.csv >"$scratch/other/formats.csv"
other_tables() {
    ! "$build/lowwall" precheck --verify "$pdf" --tables "$scratch/other" | grep -q 'belongs to'
}
parts || check 'other tables pass for those of the file' other_tables
# The hash: the order of rows does not count; a value and a table do.
hash=$(hash_in "$scratch/try.pdf")
belongs() { "$build/lowwall" precheck --verify "$hash" "$@"; }
belongs_not() { ! belongs "$@"; }
head -n 1 docs/demo/bed.csv >"$scratch/turned.csv"
tail -n +2 docs/demo/bed.csv | LC_ALL=C sort -r >>"$scratch/turned.csv"
mkdir "$scratch/same" "$scratch/changed"
cp tables/formats.csv "$scratch/same"
sed '2s/,1\.5,/,1.6,/' tables/formats.csv >"$scratch/changed/formats.csv"
check 'the hash does not belong to its own sheet' belongs docs/demo/bed.csv
check 'the order of rows changes the hash' belongs "$scratch/turned.csv"
check 'the same table from a folder changes the hash' belongs --tables "$scratch/same" docs/demo/bed.csv
check 'another table leaves the hash' belongs_not --tables "$scratch/changed" docs/demo/bed.csv
check 'another value leaves the hash' belongs_not docs/demo/bed.csv 'people on cap=no'
# A schedule: a file a row, none of them elsewhere, whatever the marks are; each brings its sheet.
{
    echo 'mark,wall height [mm],block height [mm],block depth [mm],site behind'
    for mark in W1 w1 W/1 ../../up /abs .. .hidden CON 'a b' index; do echo "$mark,400,200,350,bed"; done
    echo 'bad,4oo,200,350,bed'
} >"$scratch/street.csv"
mkdir "$scratch/in"
"$build/lowwall" precheck "$scratch/street.csv" -o "$scratch/in/made/" 2>"$scratch/said"
status=$?
faulty() { [ "$status" = 2 ] && grep -q 'row 12, column 2' "$scratch/said"; }
contained() {
    files=$(cd "$scratch/in" && find . -type f | grep -c '^[.]/made/[A-Za-z0-9_][A-Za-z0-9._-]*$')
    [ "$files" = 11 ] && [ "$(find "$scratch/in" | wc -l)" = 13 ]
}
linked() {
    index=$scratch/in/made/index.html
    for to in $(grep -o 'href="[^"]*"' "$index" | cut -d '"' -f 2); do
        case $to in
        '#'*) grep -q "id=\"${to#?}\"" "$index" || return 1 ;;
        *) [ -s "$scratch/in/made/$to" ] || return 1 ;;
        esac
    done
    grep -q 'column 2, wall height' "$index"
}
into() { "$build/lowwall" precheck "$scratch/street.csv" -o "$1" 2>/dev/null; }
kept() { ! into "$scratch/in" && contained; }
none_left() { ! into "$scratch/in/no/such/" && contained; }
check 'a schedule with a faulty row does not end as one' faulty
check 'a file of a schedule is missing, or left its folder' contained
check 'the index leads nowhere' linked
check 'a folder that holds something was written to' kept
check 'a folder that cannot be made leaves something' none_left
pdf=$scratch/in/made/a-b.pdf
parts || check 'a file of a schedule does not bring its sheet' brought
# No word stands out of its margin, by the widths of the letters that are there.
within() {
    pdftotext -bbox "$pdf" - | awk -F'"' '/<page/ { wide = $2 }
        /<word/ { if ($6 > wide - 29 || $2 < 29) { print; bad = 1 } } END { exit bad }'
}
two_pages() { [ "$(pdfinfo "$pdf" | awk '/^Pages:/ { print $2 }')" -le 2 ]; }
for sheet in bed terrace bank; do
    pdf=$scratch/wide.pdf
    "$build/lowwall" precheck -o "$pdf" "docs/demo/$sheet.csv" --date 2027-03-01
    check "$sheet: words stand out of the margin" within
    check "$sheet: more than two pages" two_pages
done
counted
