#!/bin/sh
# clang-tidy over the sources of core that changed in the last day's commits (or include a header that did), or over all
# of core with "full". Fails where there is a finding or a file that clang cannot read.
#   sh tests/scripts/tidy.sh BUILD_DIR [usual|full]
set -eu
cd "$(dirname "$0")/../.."
build=$1
if [ "${2:-usual}" = full ]; then
    files=$(find core -name '*.cpp' | sort)
else
    base=$(git rev-list -1 --before='24 hours ago' HEAD)
    [ -n "$base" ] || base=$(git hash-object -t tree /dev/null)
    files=$({
        git diff --name-only --diff-filter=d "$base" -- 'core/*.cpp'
        git diff --name-only --diff-filter=d "$base" -- 'core/*.h' | while read -r header; do
            grep -rlF --include='*.cpp' "#include \"$header\"" core || true
        done
    } | sort -u)
fi
[ -z "$files" ] && { echo "nothing changed in core"; exit 0; }
# The precompiled header is gcc's; clang reads what each file includes itself.
mkdir -p "$build/tidy"
sed -e 's/-include [^ ]*cmake_pch\.hxx//; s/-Winvalid-pch//' "$build/compile_commands.json" \
    >"$build/tidy/compile_commands.json"
status=0
echo "$files" | xargs -P2 -n1 clang-tidy -p "$build/tidy" --quiet 2>"$build/tidy/stderr" || status=$?
# On stderr it counts the warnings it leaves out (in other libraries' headers); the rest is worth reading.
grep -vE '^([0-9]+ warnings?( and [0-9]+ errors?)?|[0-9]+ errors?) generated\.$' "$build/tidy/stderr" >&2 || true
[ "$status" = 0 ] && echo "clang-tidy: $(echo "$files" | wc -l) files of core are clean"
exit "$status"
