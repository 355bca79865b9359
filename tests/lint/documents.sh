#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# The map of rooms is that of src/; the changelog has its head; man page and completion can be read.
set -u
for folder in src/*/ src/*/*/; do
    [ -d "$folder" ] || continue # the pattern itself, where no room has folders
    grep -q "\`$folder\`" DEVELOPERS.md || echo "DEVELOPERS.md: \`$folder\` is not on the map of rooms"
done
for folder in $(grep -o '`src/[a-z_/]*/`' DEVELOPERS.md | tr -d '`' | sort -u); do
    [ -d "$folder" ] || echo "DEVELOPERS.md: \`$folder\` is not there"
done
grep -q '^## Unreleased' docs/CHANGELOG.md || echo 'docs/CHANGELOG.md: no Unreleased head'
if [ -f docs/lowwall.1 ]; then mandoc -T lint docs/lowwall.1; else echo 'docs/lowwall.1 is not there'; fi
if [ -f docs/lowwall.bash ]; then bash -n docs/lowwall.bash; else echo 'docs/lowwall.bash is not there'; fi
