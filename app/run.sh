#!/bin/sh
# Installs what is missing, builds, and opens the window on the demo day. Without a display it prints the day and
# writes its papers instead. Further arguments go to stowbench.
set -eu
cd "$(dirname "$0")/.."
sh app/install_packages.sh app/packages.txt
mkdir -p build
cmake -G Ninja -B build -DSTOW_KIND=release -DSTOW_TESTS=OFF >build/configure.log 2>&1 ||
    { cat build/configure.log; exit 1; }
cmake --build build --target stowbench

if [ $# -gt 0 ]; then
    exec build/app/stowbench "$@"
fi
if [ -n "${DISPLAY:-}${WAYLAND_DISPLAY:-}" ]; then
    # The demo shop has a book of its own; yours is never touched by it.
    [ -e build/demo.book ] || build/app/stowbench --book build/demo.book demo --out build/demo_day
    exec build/app/stowbench --book build/demo.book
fi
build/app/stowbench demo --out build/demo_day
echo "No display here, so the day is printed above. Its papers are in $(pwd)/build/demo_day"
