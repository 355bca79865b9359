#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# Print a record with the output of today, for a person to read.   record.sh COMMAND RECORD
# It writes no file: who has read every line of what it prints puts it in place by hand.
set -u
case $1 in /*) command=$1 ;; *) command=$(pwd)/$1 ;; esac
case $2 in /*) record=$2 ;; *) record=$(pwd)/$2 ;; esac
cd "$(dirname "$0")" || exit 1
PATH=$(dirname "$command"):$PATH
LC_ALL=C
TERM=dumb
export PATH LC_ALL TERM
unset NO_COLOR COLUMNS LINES
inside=no
while IFS= read -r line || [ -n "$line" ]; do
    case $line in
    '$ '*)
        inside=yes
        printf '%s\n' "$line"
        status=0
        sh -c "${line#\$ }" </dev/null 2>&1 || status=$?
        ;;
    '[exit '*']')
        printf '[exit %s]\n' "$status"
        inside=no
        ;;
    *) [ "$inside" = yes ] || printf '%s\n' "$line" ;;
    esac
done <"$record"
