#!/bin/sh
# How much of core its tests ran through; fails under 90 % of the lines.
#   sh tests/scripts/coverage.sh BUILD_DIR      built with STOW_KIND=asan, its tests run with
#                                               LLVM_PROFILE_FILE=BUILD_DIR/counted/%4m.profraw
# The report, a line a file: BUILD_DIR/coverage.txt
set -eu
cd "$(dirname "$0")/../.."
build=$1
llvm-profdata merge -sparse "$build"/counted/*.profraw -o "$build/counted/all.profdata"
set --
for program in "$build"/tests/*_test; do
    [ ! -x "$program" ] || set -- "$@" -object "$program"
done
shift # the first program is named without "-object"
llvm-cov report "$@" -instr-profile "$build/counted/all.profdata" -show-region-summary=0 -show-branch-summary=0 \
    -ignore-filename-regex='/usr/|/tests/|cmake_pch' >"$build/coverage.txt"
awk '$1 == "TOTAL" { percent = $(NF); print "lines of core run through: " percent }
     END { exit percent + 0 < 90 }' "$build/coverage.txt"
