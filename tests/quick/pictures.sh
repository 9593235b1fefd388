#!/bin/sh
# Takes a picture of every screen on the demo day into build/screens and looks it over.
#   sh tests/quick/pictures.sh          the demo's day in English at 1280x800
#   sh tests/quick/pictures.sh keep     that, and refreshes the pictures of the README
#   sh tests/quick/pictures.sh all      an empty book, the demo's day and the December day, in English and German,
#                                       light and dark, at 1280x800, 1920x1080 and twice the size; on contact sheets
set -eu
cd "$(dirname "$0")/../.."
cmake --build build --target stowbench screens contact_sheets >/dev/null
out="$PWD/build/screens"
rm -rf "$out"
mkdir -p "$out/books"
chmod 700 "$out"
export QT_QPA_PLATFORM=offscreen QT_QUICK_BACKEND=software LC_ALL=C.UTF-8 XDG_RUNTIME_DIR="$out"

build/app/stowbench demo --out "$out/books/day" >/dev/null 2>&1
mv "$out/books/day/demo.book" "$out/books/day.book"
if [ "${1:-}" != all ]; then
    build/tests/quick/screens --book "$out/books/day.book" --out "$out"
    rm -rf "$out/books"
    ls "$out"
    if [ "${1:-}" = keep ]; then
        cp "$out/plan.png" tests/pictures/plan.png
        cp "$out/bench_weighed.png" tests/pictures/bench.png
    fi
    exit 0
fi

build/app/stowbench demo --out "$out/books/december" --orders december >/dev/null 2>&1
mv "$out/books/december/demo.book" "$out/books/december.book"
for book in empty day december; do
    for language in en de; do
        for look in light dark; do
            for size in 1280x800 1920x1080 640x400; do
                echo "$book $language $look $size"
            done
        done
    done
done >"$out/list"
# One a processor; what is wrong stands in faults.txt of each folder.
xargs -P "$(nproc)" -L1 sh -c '
    here="$0/$1_$2_$3_$4"
    mkdir -p "$here"
    set -- "$here" "$1" "--language $2 --size $4" "$3" "$4" "$0/books/$1.book"
    [ "$2" = empty ] || { cp "$6" "$1/the.book" && set -- "$1" "$2" "$3 --book $1/the.book" "$4" "$5"; }
    [ "$4" = dark ] && set -- "$1" "$2" "$3 --dark" "$4" "$5"
    [ "$5" = 640x400 ] && export QT_SCALE_FACTOR=2
    build/tests/quick/screens --out "$1" $3 2>"$1/said.txt" || true
    grep -v "^- " "$1/said.txt" >"$1/faults.txt" || true
    rm -rf "$1"/the.book* "$1/said.txt"
    echo "$(tail -n 1 "$1/faults.txt"): $(basename "$1")"
    QT_SCALE_FACTOR=1 build/tests/quick/contact_sheets "$1" "$1"/*.png >/dev/null
' "$out" <"$out/list"
rm -rf "$out/books" "$out/list"
if grep -hv "^0 complaints" "$out"/*/faults.txt; then exit 1; fi
