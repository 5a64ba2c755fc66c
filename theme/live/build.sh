#!/bin/sh
# Builds the modules that the practice cards run in the browser, and puts them beside this script: practice.wasm draws
# cases and marks answers, pictures.wasm draws the figures; relations.wasm holds the calculations that machines are
# made with, and turns_TOPIC.wasm what else a topic has: those that only ask and answer, and wrong turns.
#
# Run it whenever a test says that a module is stale. It needs wasm-opt (package binaryen) and one of
#   * a Rust with the browser's target:  rustup target add wasm32-unknown-unknown
#   * Debian's own Rust and linker:      apt-get install rustc cargo rust-src lld
set -eu
cd "$(dirname "$0")/../.."
target=wasm32-unknown-unknown
folder=${CARGO_TARGET_DIR:-target}
options="--locked --profile browser --target $target --package drivecourse-browser --lib --crate-type cdylib"
large=0

# Sentences are left out (the course hands them over), and so are names, places and reasons of panics.
RUSTFLAGS="--cfg wordless --remap-path-prefix=$PWD=. ${RUSTFLAGS:-}"
# The numbers are the most bytes a module may have, plain and compressed. A page with one topic loads three, the practice
# module, the relations and the topic's turns: together they stay below 400 KB.
build() {
    module practice 293300 139500 "$@" -- -C link-arg=--export-table -C link-arg=--growable-table
    module pictures 262144 106496 "$@" --features pictures
    module relations 79000 27500 "$@" --features calculations
    # As the program itself calls its topics: a test fails when one is left out.
    for topic in $(sed -n 's/.*Topic { id: "\([a-z]*\)".*/\1/p; s/^ *id: "\([a-z]*\)",$/\1/p' src/machine/topics.rs); do
        DRIVECOURSE_TOPIC=$topic
        export DRIVECOURSE_TOPIC
        module "turns_$topic" 32000 11500 "$@" --features calculations
        unset DRIVECOURSE_TOPIC
    done
}

# module NAME MOST MOST_PACKED COMMAND ...: builds a module with this command.
module() {
    name=$1 most=$2 packed=$3
    shift 3
    "$@"
    finish "$name" "$most" "$packed"
}

# smaller FROM TO OPTION ...: writes a module again with fewer bytes.
smaller() {
    from=$1 to=$2
    shift 2
    wasm-opt --flatten --rereloop -Oz -Oz "$@" --enable-bulk-memory --enable-sign-ext --enable-mutable-globals \
        --enable-nontrapping-float-to-int "$from" -o "$to"
}

# finish NAME MOST MOST_PACKED: makes the module just built smaller still, and holds it against its limits in bytes.
finish() {
    made=theme/live/$1.wasm
    smaller "$folder/$target/browser/drivecourse_browser.wasm" "$made" --strip-debug --strip-producers
    # Where there are no names left to take out, some more is found.
    smaller "$made" "$made"
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
    build cargo rustc $options
elif [ -x /usr/bin/rustc ] && command -v wasm-ld >/dev/null 2>&1; then
    # The library is built too, for size, without its texts about panics.
    RUSTFLAGS="$RUSTFLAGS -Zunstable-options -Cpanic=immediate-abort"
    export RUSTFLAGS RUSTC_BOOTSTRAP=1 RUSTC=/usr/bin/rustc CARGO_TARGET_WASM32_UNKNOWN_UNKNOWN_LINKER=wasm-ld
    build /usr/bin/cargo rustc -Zbuild-std=std,panic_abort -Zbuild-std-features=optimize_for_size $options
else
    sed -n '7,9s/^# //p' "$0" >&2
    exit 1
fi

# All are built before this fails, so that a course can be tried all the same.
exit $large
