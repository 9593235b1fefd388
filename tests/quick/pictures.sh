#!/bin/sh
# Takes a picture of every screen on the demo day into build/screens and looks it over.
#   sh tests/quick/pictures.sh          the demo's day in English at 1280x800
#   sh tests/quick/pictures.sh keep     that, and refreshes the pictures of the README
#   sh tests/quick/pictures.sh all      an empty book, the demo's day and the December day, in English and German,
#                                       light and dark, at 1280x800, 1920x1080 and twice the size; on contact sheets
#   sh tests/quick/pictures.sh one BOOK LANGUAGE LOOK SIZE      a walk of `all`, which has made the books
set -eu
cd "$(dirname "$0")/../.."
out="$PWD/build/screens"
export QT_QPA_PLATFORM=offscreen QT_QUICK_BACKEND=software LC_ALL=C.UTF-8 XDG_RUNTIME_DIR="$out"

if [ "${1:-}" = one ]; then
    here="$out/$2_$3_$4_$5"
    mkdir -p "$here"
    set -- "$@" --out "$here" --language "$3" --size "$5"
    if [ "$2" != empty ]; then
        cp "$out/books/$2.book" "$here/the.book"
        set -- "$@" --book "$here/the.book"
    fi
    if [ "$4" = dark ]; then set -- "$@" --dark; fi
    if [ "$5" = 640x400 ]; then export QT_SCALE_FACTOR=2; fi
    shift 5
    build/tests/quick/screens "$@" 2>"$here/said.txt" || true
    grep -v "^- " "$here/said.txt" >"$here/faults.txt" || true
    rm -rf "$here/the.book"* "$here/said.txt"
    echo "$(tail -n 1 "$here/faults.txt"): $(basename "$here")"
    QT_SCALE_FACTOR=1 exec build/tests/quick/contact_sheets "$here" "$here"/*.png >/dev/null
fi

cmake --build build --target stowbench screens contact_sheets >/dev/null
rm -rf "$out"
mkdir -p "$out/books"
chmod 700 "$out"
demo() {
    build/app/stowbench demo --out "$out/books/of_$1" --orders "$1" >/dev/null 2>&1 || true
    mv "$out/books/of_$1/demo.book" "$out/books/$1.book"
}
demo small
if [ "${1:-}" != all ]; then
    build/tests/quick/screens --book "$out/books/small.book" --out "$out"
    rm -rf "$out/books"
    ls "$out"
    if [ "${1:-}" = keep ]; then
        cp "$out/plan.png" tests/pictures/plan.png
        cp "$out/bench_weighed.png" tests/pictures/bench.png
    fi
    exit 0
fi

demo december
for book in empty small december; do
    for language in en de; do
        for look in light dark; do
            for size in 1280x800 1920x1080 640x400; do
                echo "$book $language $look $size"
            done
        done
    done
done | xargs -P "$(nproc)" -L1 sh tests/quick/pictures.sh one
rm -rf "$out/books"
# What is wrong, if anything is, also stands in faults.txt of each folder.
if cat "$out"/*/faults.txt | grep -v "^0 complaints"; then exit 1; fi
