#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# A mistake of tests/mutations/ names a line that is there: whoever changes the line changes the list.
set -u
lists=$(ls tests/mutations/*.txt 2>/dev/null) || exit 0
# shellcheck disable=SC2086
sh "$(dirname "$0")/../mutations/listed.sh" $lists 2>&1 >/dev/null
