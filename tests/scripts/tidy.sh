#!/bin/sh
# clang-tidy over the sources of core that changed in the last day's commits, or over all of core with "full".
#   sh tests/scripts/tidy.sh BUILD_DIR [usual|full]
set -eu
cd "$(dirname "$0")/../.."
build=$1
if [ "${2:-usual}" = full ]; then
    files=$(find core -name '*.cpp' | sort)
else
    base=$(git rev-list -1 --before='24 hours ago' HEAD)
    [ -n "$base" ] || base=$(git hash-object -t tree /dev/null)
    files=$(git diff --name-only --diff-filter=d "$base" -- 'core/*.cpp' | sort)
fi
[ -z "$files" ] && { echo "nothing changed in core"; exit 0; }
# The precompiled header is gcc's; clang reads the plain one.
sed -e 's/-include [^ ]*cmake_pch\.hxx//; s/-Winvalid-pch//' "$build/compile_commands.json" >"$build/tidy_commands.json"
mkdir -p "$build/tidy" && mv "$build/tidy_commands.json" "$build/tidy/compile_commands.json"
echo "$files" | xargs -P2 -n4 clang-tidy -p "$build/tidy" --quiet 2>/dev/null
