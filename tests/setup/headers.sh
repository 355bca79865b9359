#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# Each public header compiles alone, as C17 and as C++17.   headers.sh RESULT
set -u
result=$1
name=$(basename "$result")
echo "== $name"
passed=0
failed=0
try() {
    header=$1
    shift
    if printf '#include <lowwall/%s>\nint main(void) { return 0; }\n' "$header" |
        "$@" -Wall -Wextra -Werror -Iinclude -fsyntax-only -; then
        passed=$((passed + 1))
    else
        echo "include/lowwall/$header: does not compile alone with $*"
        failed=$((failed + 1))
    fi
}
for file in include/lowwall/*.h; do
    try "$(basename "$file")" ${CC:-cc} -std=c17 -x c
    try "$(basename "$file")" ${CXX:-c++} -std=c++17 -x c++
done
echo "$passed $failed $name" >"$result"
