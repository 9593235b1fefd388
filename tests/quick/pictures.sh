#!/bin/sh
# Takes a picture of every screen on the demo day into build/screens, and with "keep" refreshes those of the README.
#   sh tests/quick/pictures.sh [keep]
set -eu
cd "$(dirname "$0")/../.."
cmake --build build --target stowbench screens >/dev/null
rm -rf build/screens
mkdir -p build/screens
chmod 700 build/screens
export QT_QPA_PLATFORM=offscreen QT_QUICK_BACKEND=software LC_ALL=C.UTF-8
export XDG_RUNTIME_DIR="$PWD/build/screens"
build/app/stowbench demo --out build/screens/day >/dev/null 2>&1
build/tests/quick/screens --book build/screens/day/demo.book --out build/screens
rm -rf build/screens/day
ls build/screens
if [ "${1:-}" = keep ]; then
    cp build/screens/plan.png tests/pictures/plan.png
    cp build/screens/bench_weighed.png tests/pictures/bench.png
fi
