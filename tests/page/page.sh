#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# The page: how it is joined, its module in node against the native build, and all of it in a browser, used as
# a person would. What cannot be had here does not run, is said, and is missing from the count.
#   page.sh BUILD RESULT
set -u
build=$1
result=$2
. "$(dirname "$0")/../setup/counting.sh"
here=$(dirname "$0")

join() { sh src/page/join.sh "$scratch/core" "$scratch/page" "$scratch/style" "$@" >"$scratch/joined"; }
holds() { grep -qF -e "$1" "$scratch/joined"; }
joined() {
    join "$scratch/one.js" "$scratch/two.js" && holds 'const two = one + 1;' && holds 'body { }' &&
        holds "$(gzip -9n <"$scratch/core" | base64)" && ! holds import && ! holds export && ! holds @
}
refused() { ! join "$scratch/one.js" "$scratch/one.js" 2>"$scratch/why" && grep -q one "$scratch/why"; }
printf 'core' >"$scratch/core"
printf '@CORE@\n<style>\n@STYLE@\n@SCRIPT@\n' >"$scratch/page"
printf 'body { }\n' >"$scratch/style"
printf 'export const one = 1;\n' >"$scratch/one.js"
printf 'import { one } from "./one.js";\nconst two = one + 1;\n' >"$scratch/two.js"
check "modules, style and core are joined" joined
check "a name that two modules have is refused" refused

# Nothing in a file of the page names a host, and no module reaches out.
alone() {
    ! grep -nE 'https?://|fetch\(|XMLHttp|WebSocket|sendBeacon|EventSource' src/page/*.js src/page/*.css
}
check "no module of the page asks a network" alone

# Every sentence about a wall stands in the core: a module has labels, and the words of this list.
sentences() { awk -f "$here/sentences.awk" "$@" | LC_ALL=C sort -u; }
own_words() {
    sentences src/page/*.js >"$scratch/said"
    grep -v '^#' "$here/own_words.txt" | diff - "$scratch/said" >&2
}
found() {
    sentences "$scratch/three.js" | tr '\n' '|' >"$scratch/said"
    grep -qF 'three.js: It holds +.|three.js: so it seems|' "$scratch/said"
}
cat >"$scratch/three.js" <<'EOF'
/* "no words of ours" */
const a = "Two words", b = /"[^"]/, c = '"';
const d = `It holds ${a ? "so it seems" : "no"}.`;
EOF
check "a sentence in a module is found" found
check "no module has a sentence about a wall" own_words

python=
for each in python3 /usr/bin/python3; do
    "$each" -c 'import selenium' 2>/dev/null && python=$each && break
done

# add FILE: "PASSED FAILED" of a part of its own
add() {
    read -r well ill <"$1" || well=0 ill=1
    passed=$((passed + well))
    failed=$((failed + ill))
}

module() {
    "$build/page/native" 500 docs/demo/*.csv >"$scratch/answers" &&
        node "$here/module.mjs" "$build/lowwall.html" "$build/page/core.wasm" \
            <"$scratch/answers" >"$scratch/module"
    [ -s "$scratch/module" ] || echo "0 1" >"$scratch/module"
    add "$scratch/module"
}
browser() {
    "$python" "$here/browser.py" "$build/lowwall.html" >"$scratch/browser"
    [ -s "$scratch/browser" ] || echo "0 1" >"$scratch/browser"
    add "$scratch/browser"
}

made() {
    MAKEFLAGS='' MAKELEVEL='' make --no-print-directory BUILD="$build" run-page "$build/page/native"
}
if ! made >"$scratch/made" 2>&1; then
    echo "page: NOT RUN, the page could not be made here:"
    tail -n 4 "$scratch/made" | sed 's/^/    /'
else
    if command -v node >/dev/null 2>&1; then
        module
    else
        echo "page: NOT RUN in node: it is not installed"
    fi
    if [ -n "$python" ] && command -v chromedriver >/dev/null 2>&1; then
        browser
    else
        echo "page: NOT RUN in a browser: chromium, chromedriver and selenium are not all installed"
    fi
fi
counted
