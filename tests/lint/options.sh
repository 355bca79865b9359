#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# Each option that a command's help lists is completed, and stands on the man page.   options.sh BUILD
set -u
lowwall=$1/lowwall
[ -x "$lowwall" ] || exit 0
[ -f docs/lowwall.1 ] && [ -f docs/lowwall.bash ] || exit 0
scratch=$(mktemp -d)
trap 'rm -rf "$scratch"' EXIT
for command in $(sed -n 's/^\.Ss //p' docs/lowwall.1 | tr -d ,); do
    "$lowwall" help "$command" | sed -nE 's/^  (-[a-z], )?--([a-z]+).*/\2/p' | sort -u >"$scratch/options"
    bash -c '. docs/lowwall.bash; COMP_WORDS=(lowwall "$1" --) COMP_CWORD=2
        _lowwall lowwall -- "$1"; printf "%s\n" "${COMPREPLY[@]}"' bash "$command" >"$scratch/completed"
    awk -v command="$command" '
        /^\.S[sh] / { gsub(/,/, ""); inside = 0; for (i = 2; i <= NF; i++) if ($i == command) inside = 1 }
        inside' docs/lowwall.1 >"$scratch/page"
    while read -r option; do
        grep -qxe "--$option" "$scratch/completed" ||
            echo "docs/lowwall.bash: $command does not complete --$option"
        case $option in tables | units | output | help) continue ;; esac # told once, under check
        grep -qe "Fl -$option\>" "$scratch/page" || echo "docs/lowwall.1: $command has no --$option"
    done <"$scratch/options"
done
