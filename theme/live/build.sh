#!/bin/sh
# Builds the two modules that the practice cards run in the browser, and puts them beside this script:
# practice.wasm draws cases and marks answers, pictures.wasm draws the figures.
#
# Run it whenever a test says that a module is stale. It needs wasm-opt (package binaryen) and one of
#   * a Rust with the browser's target:  rustup target add wasm32-unknown-unknown
#   * Debian's own Rust and linker:      apt-get install rustc cargo rust-src lld
set -eu
cd "$(dirname "$0")/../.."
target=wasm32-unknown-unknown
folder=${CARGO_TARGET_DIR:-target}
large=0

# Sentences are left out (the course hands them over), and so are names, places and reasons of panics.
RUSTFLAGS="--cfg wordless --remap-path-prefix=$PWD=. ${RUSTFLAGS:-}"
build() {
    "$@" --locked --profile browser --target $target --package drivecourse-browser --lib --crate-type cdylib
    finish practice 409600 153600
    "$@" --locked --profile browser --target $target --package drivecourse-browser --lib --crate-type cdylib --features pictures
    finish pictures 262144 106496
}

# finish NAME MOST MOST_PACKED: makes the module just built smaller still, and holds it against its limits in bytes.
finish() {
    made=theme/live/$1.wasm
    wasm-opt -Oz --strip-debug --strip-producers --enable-bulk-memory --enable-sign-ext --enable-mutable-globals \
        --enable-nontrapping-float-to-int "$folder/$target/browser/drivecourse_browser.wasm" -o "$made"
    size=$(wc -c <"$made")
    packed=$(gzip -9 -c "$made" | wc -c)
    echo "$made: $size bytes, $packed compressed"
    if [ "$size" -gt "$2" ] || [ "$packed" -gt "$3" ]; then
        echo "theme/live/build.sh: the module is larger than $2 bytes, or $3 compressed" >&2
        large=1
    fi
}

if rustup target list --installed 2>/dev/null | grep -q $target; then
    export RUSTFLAGS
    build cargo rustc
elif [ -x /usr/bin/rustc ] && command -v wasm-ld >/dev/null 2>&1; then
    # The library is built too, for size, without its texts about panics.
    RUSTFLAGS="$RUSTFLAGS -Zunstable-options -Cpanic=immediate-abort"
    export RUSTFLAGS RUSTC_BOOTSTRAP=1 RUSTC=/usr/bin/rustc CARGO_TARGET_WASM32_UNKNOWN_UNKNOWN_LINKER=wasm-ld
    build /usr/bin/cargo rustc -Zbuild-std=std,panic_abort -Zbuild-std-features=optimize_for_size
else
    sed -n '6,8s/^# //p' "$0" >&2
    exit 1
fi

# Both are built before this fails, so that a course can be tried all the same.
exit $large
