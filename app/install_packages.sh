#!/bin/sh
# Installs the Debian packages named in the given lists, those that are missing only.
#   sh app/install_packages.sh LIST...
set -eu
missing=$(cat "$@" | while read -r package; do
    [ -z "$package" ] && continue
    state=$(dpkg-query -W -f='${Status}' "$package" 2>/dev/null || true)
    [ "$state" = "install ok installed" ] || echo "$package"
done)
[ -z "$missing" ] && exit 0

if [ "$(id -u)" -eq 0 ]; then
    as_root=env
elif command -v sudo >/dev/null 2>&1; then
    as_root="sudo env"
else
    echo "These packages are missing, and only root can install them (run this as root, or install sudo):" >&2
    echo "$missing" >&2
    exit 1
fi
echo "Installing: $(echo $missing)" >&2
$as_root DEBIAN_FRONTEND=noninteractive apt-get update -q >&2
# shellcheck disable=SC2086  # one word a package
$as_root DEBIAN_FRONTEND=noninteractive apt-get install -q -y --no-install-recommends $missing >&2
