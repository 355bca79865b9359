#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# The drawings of the demo walls, held against the tools that others have.   drawings.sh COMMAND RESULT
# xmllint reads each SVG, rsvg-convert renders it, pdftotext finds each of its words in the PDF, pdffonts all
# fonts inside. A tool that is not installed is named and its tests are left out.
set -u
LC_ALL=C
export LC_ALL
command=$1
result=$2
. "$(dirname "$0")/counting.sh"

have() {
    command -v "$1" >/dev/null 2>&1 && return 0
    case " ${missing:-} " in *" $1 "*) ;; *) missing="${missing:-} $1" && echo "drawings: without $1" ;; esac
    return 1
}

# One line a word of text, as written in the SVG, entities undone.
words_of() { # SVG
    sed -n 's/^<text [^>]*>\(.*\)<\/text>$/\1/p' "$1" |
        sed 's/&lt;/</g; s/&gt;/>/g; s/&quot;/"/g; s/&amp;/\&/g' | tr -s ' ' '\n' | sort -u
}

svg() { # FILE
    "$command" draw --view "$view" --width "$width" "$sheet" -o "$1"
    note "$1 is not written" $?
    if have xmllint; then
        xmllint --noout "$1"
        note "$sheet, $view $width mm: not XML" $?
    fi
    if have rsvg-convert; then
        rsvg-convert "$1" >"$scratch/rendered.png" && [ -s "$scratch/rendered.png" ]
        note "$sheet, $view $width mm: cannot be rendered" $?
    fi
}

pdf() { # SVG FILE
    "$command" draw --view "$view" --width "$width" "$sheet" -o "$2" 2>"$scratch/said" || {
        grep -q 'without cairo' "$scratch/said"
        note "$sheet, $view: $(cat "$scratch/said")" $?
        return
    }
    if have pdftotext; then
        pdftotext -layout "$2" - | tr -s ' \n\f' '\n' | sort -u >"$scratch/printed"
        words_of "$1" | comm -23 - "$scratch/printed" >"$scratch/lost"
        [ ! -s "$scratch/lost" ]
        note "$sheet, $view: not in the PDF: $(head -n 5 "$scratch/lost" | tr '\n' ' ')" $?
    fi
    if have pdffonts; then
        pdffonts "$2" | awk 'NR > 2 { n++; if ($(NF - 4) != "yes") bad = 1 } END { exit n == 0 || bad }'
        note "$sheet, $view: a font is not embedded" $?
    fi
}

for sheet in docs/demo/*.csv; do
    for view in section elevation plan; do
        for width in 180 95; do svg "$scratch/$view-$width.svg"; done
        width=180
        pdf "$scratch/$view-180.svg" "$scratch/$view.pdf"
    done
done

# The comparison sees a word that the PDF lacks, the reader a tag that is not closed.
echo 'nowhere' >"$scratch/printed"
words_of "$scratch/section-180.svg" | comm -23 - "$scratch/printed" >"$scratch/lost"
[ -s "$scratch/lost" ]
note 'words that are missing are not missed' $?
if have xmllint; then
    sed '$d' "$scratch/plan-180.svg" >"$scratch/open.svg"
    ! xmllint --noout "$scratch/open.svg" 2>/dev/null
    note 'an open tag is not seen' $?
fi
counted
