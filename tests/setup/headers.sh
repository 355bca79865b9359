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
# A struct that a caller begins is begun by {0} in C++ as well.
begun() {
    printf '#include <lowwall/%s>\n' report.h result.h
    echo 'int main() {'
    for type in lw_error lw_text lw_case lw_faults lw_result lw_order lw_plane lw_thrust lw_trial_wedge \
        lw_strip lw_bearing lw_slip lw_slip_ground lw_method lw_section lw_site lw_verdict lw_situations \
        lw_wall; do
        echo "  { $type begun = {0}; (void)begun; }"
    done
    echo '}'
}
if begun | ${CXX:-c++} -std=c++17 -Wall -Werror -Iinclude -fsyntax-only -x c++ -; then
    passed=$((passed + 1))
else
    echo 'a struct that begins as {0} in C does not in C++'
    failed=$((failed + 1))
fi
echo "$passed $failed $name" >"$result"
