#!/bin/sh
# Builds the module that the practice cards run in the browser, and puts it beside this script.
#
# Run it whenever a test says that the module is stale. It needs wasm-opt (package binaryen) and one of
#   * a Rust with the browser's target:  rustup target add wasm32-unknown-unknown
#   * Debian's own Rust and linker:      apt-get install rustc cargo rust-src lld
set -eu
cd "$(dirname "$0")/../.."
target=wasm32-unknown-unknown
folder=${CARGO_TARGET_DIR:-target}

# Sentences are left out (the course hands them over), and so are names, places and reasons of panics.
RUSTFLAGS="--cfg wordless --remap-path-prefix=$PWD=. ${RUSTFLAGS:-}"
build() {
    "$@" --locked --profile browser --target $target --package drivecourse-browser --lib
}

if rustup target list --installed 2>/dev/null | grep -q $target; then
    export RUSTFLAGS
    build cargo build
elif [ -x /usr/bin/rustc ] && command -v wasm-ld >/dev/null 2>&1; then
    # The library is built too, for size, without its texts about panics.
    RUSTFLAGS="$RUSTFLAGS -Zunstable-options -Cpanic=immediate-abort"
    export RUSTFLAGS RUSTC_BOOTSTRAP=1 RUSTC=/usr/bin/rustc CARGO_TARGET_WASM32_UNKNOWN_UNKNOWN_LINKER=wasm-ld
    build /usr/bin/cargo build -Zbuild-std=std,panic_abort -Zbuild-std-features=optimize_for_size
else
    sed -n '3,7s/^# //p' "$0" >&2
    exit 1
fi

made=theme/live/drivecourse.wasm
wasm-opt -Oz --strip-debug --strip-producers --enable-bulk-memory --enable-sign-ext --enable-mutable-globals \
    --enable-nontrapping-float-to-int "$folder/$target/browser/drivecourse_browser.wasm" -o "$made"
size=$(wc -c <"$made")
packed=$(gzip -9 -c "$made" | wc -c)
echo "$made: $size bytes, $packed compressed"
[ "$size" -le 409600 ] && [ "$packed" -le 153600 ] || {
    echo "the module is larger than 400 KB, or 150 KB compressed" >&2
    exit 1
}
