#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# Public prototypes have a doc block, which says of each number what it may be: see docblock.awk.
set -u
awk -f "$(dirname "$0")/docblock.awk" include/lowwall/*.h
