#!/bin/sh
# The package in a clean Debian 12, outside the usual tests (needs root, debootstrap and the archive): installs, runs the
# demo day as an ordinary user without a socket of the internet, opens the window; when it is removed the book stays.
#   sh tests/scripts/clean_root.sh stowbench_0.1.0_amd64.deb ROOT     ROOT: a folder that is not there yet
set -eu
package=$(realpath "$1")
root=$2
[ ! -e "$root" ] || { echo "$root is there already" >&2; exit 2; }
debootstrap --variant=minbase bookworm "$root" >"$root.log" 2>&1 || { tail -n 5 "$root.log" >&2; exit 1; }
cp "$package" "$root/root/stowbench.deb"
trap 'umount "$root/proc" 2>/dev/null || true' EXIT
mount -t proc proc "$root/proc"
cat >"$root/root/try.sh" <<'END'
set -eu
export DEBIAN_FRONTEND=noninteractive LC_ALL=C.UTF-8
apt-get -q update >/dev/null
apt-get -q install -y --no-install-recommends strace /root/stowbench.deb >/dev/null
useradd -m maker
cat >/home/maker/try.sh <<'INNER'
set -eu
cd
export LC_ALL=C.UTF-8 XDG_RUNTIME_DIR="$HOME/run" QT_QUICK_BACKEND=software
mkdir -m 700 run
strace -f -e trace=socket,connect -o trace stowbench demo --out day >/dev/null 2>&1
grep -q "exited with 0" trace
stowbench --book day/demo.book verify
QT_QPA_PLATFORM=offscreen timeout 20 strace -f -e trace=socket,connect -o trace_window \
    stowbench --book day/demo.book || [ $? = 124 ] # it stays open until it is ended
ls "day/demo copies"/*.book # made by the open window
if grep AF_INET trace trace_window; then echo "a socket of the internet was opened" >&2; exit 1; fi
INNER
su maker -c "sh /home/maker/try.sh"
apt-get -q purge -y stowbench >/dev/null
[ ! -e /usr/bin/stowbench ]
[ -s /home/maker/day/demo.book ]
echo "installed, worked, removed; the book stays"
END
chroot "$root" sh /root/try.sh
