#!/bin/sh
# Installs what is missing, builds, runs all tests; the output ends with ctest's summary.
#   sh tests/run.sh        what every change must pass
#   sh tests/run.sh full   that, and what takes longer
set -eu
cd "$(dirname "$0")/.."
extent=${1:-usual}
sh app/install_packages.sh app/packages.txt tests/packages.txt
# The usual run tries the same cases each time, so that its word does not depend on luck; the full run tries others.
export STOW_EXTENT="$extent" # how many of the cases drawn from seeds are tried: tests/bench/extent.h
if [ "$extent" = full ]; then
    export RC_PARAMS="max_success=1000"
else
    export RC_PARAMS="seed=20261125"
fi

configure() { # configure DIR OPTIONS...: quiet unless it fails
    dir=$1
    shift
    mkdir -p "$dir"
    cmake -G Ninja -B "$dir" "$@" >"$dir/configure.log" 2>&1 || { cat "$dir/configure.log"; exit 1; }
}

echo "== all tests under address and undefined-behaviour sanitizers, those of core first"
export LLVM_PROFILE_FILE="$PWD/build/asan/counted/%4m.profraw" # four files a program, each added to by many runs of it
rm -rf build/asan/counted
configure build/asan -DSTOW_KIND=asan -DSTOW_TESTS=ON
cmake --build build/asan
# The long draws of cases are for the release build: under the sanitizers they would take an hour.
STOW_EXTENT=usual ctest --test-dir build/asan -L core -j2 --quiet --output-on-failure

echo "== what of core its tests ran through"
sh tests/scripts/coverage.sh build/asan
export LLVM_PROFILE_FILE=/dev/null
STOW_EXTENT=usual ctest --test-dir build/asan -LE "core|scripts" -j2 --quiet --output-on-failure

echo "== parsers under libFuzzer"
if [ "$extent" = full ]; then seconds=600; else seconds=30; fi
sh tests/fuzz/run.sh build/asan "$seconds"

echo "== clang-tidy and cppcheck"
configure build -DSTOW_KIND=release -DSTOW_TESTS=ON
sh tests/scripts/tidy.sh build "$extent"
sh tests/scripts/cppcheck.sh

echo "== release build and all tests"
cmake --build build
cmake --build build --target bench_programs # built only; they measure when asked to
ctest --test-dir build -j2 --output-on-failure
