#!/bin/sh
# How much of core its tests run through; fails under 90 % of the lines.
#   sh tests/scripts/coverage.sh BUILD_DIR      the report: BUILD_DIR/coverage.txt
set -eu
cd "$(dirname "$0")/../.."
build=$1
mkdir -p "$build"
cmake -G Ninja -B "$build" -DSTOW_KIND=coverage -DSTOW_WINDOW=OFF -DSTOW_TESTS=ON >"$build/configure.log" 2>&1 ||
    { cat "$build/configure.log"; exit 1; }
cmake --build "$build"
STOW_EXTENT=usual ctest --test-dir "$build" -j2 --quiet --output-on-failure
# Counts of branches overflow in hot loops, which gcovr 5.2 takes for an error of parsing.
gcovr -r . --object-directory "$build" -f 'core/.*' -j2 --gcov-ignore-parse-errors --fail-under-line 90 \
    --print-summary -o "$build/coverage.txt" "$build/core" 2>"$build/coverage.log"
