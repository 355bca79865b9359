#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# The sources of GSL, libcsv and jansson, in the versions that are installed here, for a compiler that has no
# packages of them.   sources.sh OUT
# Leaves OUT/gsl, OUT/libcsv, OUT/jansson and OUT/include. apt fetches and verifies them from where this
# system has its packages; of the system's own lists nothing is changed.
set -eu
out=$1
here=$(cd "$(dirname "$0")" && pwd)
mkdir -p "$out/fetched/lists/partial" "$out/fetched/from"
out=$(cd "$out" && pwd)

fail() {
    echo "sources.sh: $*" >&2
    echo "  make page wants the sources of GSL, libcsv and jansson: apt fetches them, with a network." >&2
    exit 1
}

# The places of packages are the places of sources.
name_places() {
    for list in /etc/apt/sources.list.d/*.sources; do
        [ -f "$list" ] || continue
        sed 's/^Types:.*/Types: deb-src/' "$list" >"$out/fetched/from/$(basename "$list")"
    done
    for list in /etc/apt/sources.list /etc/apt/sources.list.d/*.list; do
        [ -f "$list" ] || continue
        sed -n 's/^deb /deb-src /p' "$list" >"$out/fetched/from/$(basename "$list" .list).list"
    done
}

apt() {
    apt-get -qq -o Dir::Etc::sourcelist=/dev/null -o Dir::Etc::sourceparts="$out/fetched/from" \
        -o Dir::State::lists="$out/fetched/lists" -o Dir::Cache::srcpkgcache= -o Dir::Cache::pkgcache= \
        -o APT::Sandbox::User="$(id -un)" "$@"
}

# unpack PACKAGE NAME: the source that the installed package was made of, as OUT/NAME
unpack() {
    source=$(dpkg-query -W -f='${source:Package}=${source:Version}' "$1" 2>/dev/null) ||
        fail "$1 is not installed"
    (cd "$out/fetched" && apt source --download-only "$source" >/dev/null) || fail "apt has no source $source"
    rm -rf "${out:?}/$2"
    mkdir "$out/$2"
    tar -xf "$out/fetched/${source%%=*}"_*.orig.tar.* -C "$out/$2" --strip-components=1
}

# What their own configuring would find, for a system without files, locale or clock.
write_headers() {
    rm -rf "$out/include"
    mkdir -p "$out/include/gsl"
    for header in "$out"/gsl/gsl_*.h "$out"/gsl/*/gsl_*.h; do
        ln -s "$header" "$out/include/gsl/"
    done
    ln -s "$out/libcsv/csv.h" "$out/jansson/src/jansson.h" "$out/include/"
    sed -e 's/@json_inline@/inline/' -e 's/@json_have_long_long@/1/' -e 's/@json_have_[a-z_]*@/0/' \
        "$out/jansson/src/jansson_config.h.in" >"$out/include/jansson_config.h"
    : >"$out/include/jansson_private_config.h"
    cp "$here/gsl_config.h" "$out/include/config.h"
}

command -v apt-get >/dev/null 2>&1 || fail "there is no apt-get here"
name_places
apt update || fail "apt could not reach its packages"
unpack libgsl-dev gsl
unpack libcsv-dev libcsv
unpack libjansson-dev jansson
write_headers
