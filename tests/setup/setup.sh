#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# What lowwall needs from the system.   setup.sh --install|--check demo|page|test|fuzz|lint
# Looks for headers, libraries and programs, not for packages: not all have a .pc file, and a library built by
# hand is as good. --install adds what is missing with apt (root or `sudo -n`); where that cannot be done, and
# with --check, it prints the package names and stops.
set -eu
mode=$1
purpose=$2
CC=${CC:-cc}
CXX=${CXX:-c++}

# need HEADER LIBRARY: does a program with this header compile and link? CC may be two words (`ccache gcc`).
links() {
    printf '#include <%s>\nint main(void) { return 0; }\n' "$1" |
        $CC ${CPPFLAGS:-} ${LDFLAGS:-} -x c - "-l$2" -o /dev/null 2>/dev/null
}
has() { command -v "$1" >/dev/null 2>&1; }
compiles_cxx() { printf '#include <cstddef>\nint main() {}\n' | $CXX -x c++ -fsyntax-only - 2>/dev/null; }

# A locale with a decimal comma, or the words to make one from: the tests show that it changes nothing.
comma_locale() { [ -f /usr/share/i18n/locales/de_DE ] || locale -a 2>/dev/null | grep -q "^de_DE"; }

# Words on paper want letters.
any_font() {
    [ -n "$(find /usr/share/fonts /usr/local/share/fonts -name '*.[to]tf' 2>/dev/null | head -n 1)" ]
}

# The runtime of libFuzzer comes apart from the compiler, in a package of its version.
has_fuzzer() {
    printf 'int LLVMFuzzerTestOneInput(void) { return 0; }\n' |
        clang -x c - -fsanitize=fuzzer,address -o /dev/null 2>/dev/null
}

# One line a need: slug, then its package on Debian, Fedora, Homebrew (- : comes with the system).
packages() {
    cat <<'TABLE'
libc libc6-dev glibc-devel -
gsl libgsl-dev gsl-devel gsl
csv libcsv-dev libcsv-devel libcsv
jansson libjansson-dev jansson-devel jansson
criterion libcriterion-dev criterion-devel criterion
cxx g++ gcc-c++ -
pkg-config pkg-config pkgconf-pkg-config pkgconf
comma-locale locales glibc-locale-source -
clang clang clang llvm
fuzzer libclang-rt-14-dev compiler-rt llvm
clang-format clang-format clang-tools-extra clang-format
mandoc mandoc mandoc mandoc
cairo libcairo2-dev cairo-devel cairo
pango libpango1.0-dev pango-devel pango
qpdf libqpdf-dev qpdf-devel qpdf
pdftotext poppler-utils poppler-utils poppler
fonts fonts-dejavu-core dejavu-sans-fonts -
clang-14 clang-14 - -
lld-14 lld-14 - -
wasi-libc wasi-libc - -
wasm-runtime libclang-rt-14-dev-wasm32 - -
node nodejs - -
chromium chromium - -
chromedriver chromium-driver - -
selenium python3-selenium - -
TABLE
}

# The runtime of WebAssembly, too, comes apart from its compiler.
links_wasm() {
    printf 'int main(void) { return 0; }\n' | clang-14 --target=wasm32-wasi -x c - -o /dev/null 2>/dev/null
}
has_selenium() {
    for python in python3 /usr/bin/python3; do
        "$python" -c 'import selenium' 2>/dev/null && return
    done
    return 1
}

present() {
    case $1 in
    libc) links stdlib.h c ;;
    gsl) links gsl/gsl_math.h gsl ;;
    csv) links csv.h csv ;;
    jansson) links jansson.h jansson ;;
    criterion) links criterion/criterion.h criterion ;;
    cxx) compiles_cxx ;;
    comma-locale) comma_locale ;;
    cairo) pkg-config --exists cairo 2>/dev/null ;;
    pango) pkg-config --exists pangocairo 2>/dev/null ;;
    qpdf) pkg-config --exists libqpdf 2>/dev/null ;;
    fonts) any_font ;;
    fuzzer) has_fuzzer ;;
    lld-14) has wasm-ld-14 ;;
    wasi-libc) [ -d /usr/include/wasm32-wasi ] ;;
    wasm-runtime) links_wasm ;;
    selenium) has_selenium ;;
    *) has "$1" ;;
    esac
}

needs() {
    case $purpose in
    demo) echo libc gsl csv jansson ;;
    page) echo libc gsl csv jansson clang-14 lld-14 wasi-libc wasm-runtime ;;
    test) echo libc gsl csv jansson criterion cxx pkg-config comma-locale ;;
    fuzz) echo libc gsl csv jansson clang fuzzer ;;
    lint) echo libc gsl csv jansson criterion clang mandoc ;;
    *) echo "setup.sh: unknown purpose $purpose" >&2; exit 2 ;;
    esac
}

# What it does less without: PDF and PNG, and a look at the form of files.
wishes() {
    case $purpose in
    demo | page | fuzz) echo pkg-config cairo pango qpdf fonts ;;
    test) echo pkg-config cairo pango qpdf fonts pdftotext ;;
    lint) echo clang-format ;;
    esac
}
# The page, in node and in a browser.
page_wishes() {
    [ "$purpose" != test ] || echo clang-14 lld-14 wasi-libc wasm-runtime node chromium chromedriver selenium
}

missing() { # NEED...
    for need in "$@"; do
        present "$need" || printf '%s ' "$need"
    done
}

# names COLUMN NEED...: the packages of one system for these needs
names() {
    column=$1
    shift
    for need in "$@"; do
        packages | awk -v need="$need" -v column="$column" '
            $1 == need && $column != "-" { printf " %s", $column }'
    done
}

tell() {
    echo "lowwall needs what is not installed here: $*"
    echo "  Debian, Ubuntu:  apt install$(names 2 "$@")"
    echo "  Fedora:          dnf install$(names 3 "$@")"
    echo "  Homebrew:        brew install$(names 4 "$@")"
}

install() {
    if [ "$(id -u)" = 0 ]; then
        as_root=
    elif has sudo && sudo -n true 2>/dev/null; then
        as_root='sudo -n'
    else
        return 1
    fi
    wanted=$(names 2 "$@")
    echo "Installing$wanted"
    # A list that cannot be renewed may still be good enough: the installation itself decides.
    apt="$as_root env DEBIAN_FRONTEND=noninteractive apt-get"
    $apt update -qq || true
    # shellcheck disable=SC2086
    $apt install -y -qq --no-install-recommends $wanted >/dev/null
}

# What is wished for is installed by itself: where it cannot be had, the rest is had all the same.
# shellcheck disable=SC2046
lacking=$(missing $(needs)) wished= paged=
if [ "$mode" = --install ]; then
    # shellcheck disable=SC2046
    wished=$(missing $(wishes)) paged=$(missing $(page_wishes))
fi
[ -n "$lacking$wished$paged" ] || exit 0
if [ "$mode" = --install ] && has apt-get; then
    # shellcheck disable=SC2086
    [ -z "$lacking$wished" ] || install $lacking $wished || true
    # shellcheck disable=SC2086
    [ -z "$paged" ] || install $paged || true
    # shellcheck disable=SC2046
    lacking=$(missing $(needs)) wished=$(missing $(wishes)) paged=$(missing $(page_wishes))
fi
if [ -z "$lacking" ]; then
    left='PDF and PNG are left out; they want'
    [ "$wished" != 'qpdf ' ] || left='A PDF brings no sheet and no words for its drawing; that wants'
    # shellcheck disable=SC2086
    [ -z "$wished" ] || echo "$left$(names 2 $wished) (Debian's names)"
    # shellcheck disable=SC2086
    [ -z "$paged" ] || echo "Not all tests of the page run; they want$(names 2 $paged) (Debian's names)"
    exit 0
fi
# shellcheck disable=SC2086
tell $lacking >&2
exit 1
