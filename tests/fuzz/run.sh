#!/bin/sh
# Builds the parsers for libFuzzer and tries each for so many seconds; stops at the first that fails.
#   sh tests/fuzz/run.sh [SECONDS] [BUILD_DIR]
# New inputs are kept in BUILD_DIR/corpus; the seeds of the tree and the demo's own files are only read.
set -eu
cd "$(dirname "$0")/../.."
seconds=${1:-30}
build=${2:-build/fuzz}
mkdir -p "$build"
cmake -G Ninja -B "$build" -DSTOW_KIND=fuzz -DSTOW_WINDOW=OFF -DSTOW_TESTS=ON >"$build/configure.log" 2>&1 ||
    { cat "$build/configure.log"; exit 1; }
cmake --build "$build"
try() { # try NAME SEED_DIRECTORY...
    name=$1
    shift
    mkdir -p "$build/corpus/$name"
    echo "== $name, $seconds s"
    ASAN_OPTIONS=detect_leaks=1 "$build/tests/fuzz/fuzz_$name" -max_total_time="$seconds" -timeout=20 -rss_limit_mb=3000 \
        -max_len=65536 -print_final_stats=1 -artifact_prefix="$build/corpus/$name-" \
        "$build/corpus/$name" "$@" >"$build/corpus/$name.log" 2>&1 || { tail -40 "$build/corpus/$name.log"; exit 1; }
    grep -E 'number_of_executed_units' "$build/corpus/$name.log"
}
try csv demo_orders
try rate_sheet rate_tables
try fit_json tests/fuzz/seeds/fit
try price_json tests/fuzz/seeds/price
try payload tests/fuzz/seeds/payload
try hid_report tests/fuzz/seeds/hid
try book
