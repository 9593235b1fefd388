#!/bin/sh
# Writes tests/bench/RESULTS.md from what the benchmark programs print.
#   sh tests/bench/results.sh BUILD_DIR RESULTS_DIR [long]
# RESULTS_DIR (tests/bench/results holds those of the tree) keeps a file a section; one that is there is not measured
# again: remove it to renew the section. Container loading and bins take hours: without `long` their tables are only
# written where their result files are there already (container_loading.txt, bins.txt; the programs go on where they
# stopped).
set -eu
cd "$(dirname "$0")/../.."
build=$(cd "$1" && pwd)
mkdir -p "$2"
results=$(cd "$2" && pwd)
extent=${3:-}

section() { # section NAME PROGRAM ARGUMENTS...
    name=$1
    shift
    if [ -s "$results/$name.md" ]; then return; fi
    program=$1
    shift
    (cd "$results" && "$build/tests/bench/$program" "$@") >"$results/$name.part"
    mv "$results/$name.part" "$results/$name.md"
}
long_section() { # long_section RESULT_FILE NAME PROGRAM ARGUMENTS...
    file=$1
    shift
    if [ "$extent" = long ] || [ -s "$results/$file" ]; then section "$@"; fi
}
second_opinions() {
    echo "## Agreement with others, and soundness"
    echo
    echo "Tests with \`STOW_EXTENT=full\`, $(date -u +%Y-%m-%d). The integer program is solved by CBC with the volume cut;"
    echo "brute force tries every whole-unit place on boxes of at most 6×6×6 (tests/core/fitting/brute_force_test.cpp)."
    echo "A single disagreement, or a question that fits by construction and is refused, fails the test."
    echo
    for test in outside/integer_program_test fitting_test; do
        STOW_EXTENT=full "$build/tests/$test" --gtest_filter='IntegerProgram*:BruteForce*:Puzzle*:Soundness*' \
            >"$results/test.out" 2>&1
        grep -E 'cases|questions|puzzles put|twins:' "$results/test.out" | sed 's/^/- /'
    done
    rm "$results/test.out"
    echo
}

section small_orders small_orders --orders 300
section dissections dissections --puzzles 240
if [ ! -s "$results/second_opinions.md" ]; then # a test that fails ends the script; its words are in test.out
    second_opinions >"$results/second_opinions.part"
    mv "$results/second_opinions.part" "$results/second_opinions.md"
fi
section december december
section day day_bench 1
section day_2 day_bench 2
section book book_bench "$build/large_book"
section book_million book_bench "$build/larger_book" 132000
section window window_bench
if [ ! -s "$results/start.md" ]; then python3 tests/bench/start_bench.py "$build" >"$results/start.md"; fi
section sizes size_bench 1
section sizes_2 size_bench 2
long_section container_loading.txt container_loading container_loading --first 20 --seconds 30
long_section container_loading_full.txt container_loading_full container_loading --first 20 --seconds 30 \
    --support full --results container_loading_full.txt
long_section bins.txt bins bins --seconds 5

{
    cat "$results/intro.md"
    for name in small_orders dissections second_opinions container_loading container_loading_full bins december day day_2 book book_million \
        window start sizes sizes_2; do
        if [ -s "$results/$name.md" ]; then cat "$results/$name.md"; fi
    done
} >tests/bench/RESULTS.md
