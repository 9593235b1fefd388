#!/bin/sh
# Tries each parser under libFuzzer for so many seconds, two at a time; fails where one does.
#   sh tests/fuzz/run.sh BUILD_DIR SECONDS        BUILD_DIR: built with STOW_KIND=asan
# New inputs are kept in BUILD_DIR/corpus; the seeds of the tree and the demo's own files are only read.
set -eu
cd "$(dirname "$0")/../.."
build=$1
seconds=$2
mkdir -p "$build/corpus"
try() { # try NAME SEED_DIRECTORY...
    name=$1
    shift
    mkdir -p "$build/corpus/$name"
    if "$build/tests/fuzz/fuzz_$name" -max_total_time="$seconds" -timeout=20 -rss_limit_mb=3000 -max_len=65536 \
        -print_final_stats=1 -artifact_prefix="$build/corpus/$name-" "$build/corpus/$name" "$@" \
        >"$build/corpus/$name.log" 2>&1; then
        echo "$name: $(sed -n 's/^stat::number_of_executed_units: *//p' "$build/corpus/$name.log") inputs in $seconds s"
    else
        tail -40 "$build/corpus/$name.log"
        touch "$build/corpus/failed"
    fi
}
rm -f "$build/corpus/failed"
(
    try csv demo_orders
    try fit_json tests/fuzz/seeds/fit
    try payload tests/fuzz/seeds/payload
    try book
) &
try rate_sheet rate_tables
try price_json tests/fuzz/seeds/price
try hid_report tests/fuzz/seeds/hid
wait
[ ! -e "$build/corpus/failed" ]
