#!/bin/sh
# Prints at the window before a real print system: CUPS with a printer that writes files (CUPS-PDF), stopped, failing and
# removed. As root, on a machine whose print system may be played with (a container): it adds two printers and takes
# them away again. Packages: cups, cups-ipp-utils, printer-driver-cups-pdf.
#   sh tests/scripts/file_printer.sh BUILD
set -eu
build=${1:?the folder of a build with tests}
backend=/usr/lib/cups/backend/stowfails
printers="stow_file stow_fails"
ours=

tidy() {
    for printer in $printers; do
        cancel -a "$printer" 2>/dev/null || true
        lpadmin -x "$printer" 2>/dev/null || true
    done
    rm -f "$backend"
    [ -z "$ours" ] || kill "$ours"
}

for program in cupsd lpadmin ipptool; do
    command -v "$program" >/dev/null || PATH=$PATH:/usr/sbin
    command -v "$program" >/dev/null || { echo "$program is missing: see the packages above" >&2; exit 1; }
done
trap tidy EXIT
if ! lpstat -r | grep -q "is running"; then
    mkdir -p /run/cups
    cupsd -f &
    ours=$!
    for _ in 1 2 3 4 5 6 7 8 9 10; do
        lpstat -r | grep -q "is running" && break
        sleep 1
    done
fi
# A printer whose every job fails, with words.
cat >"$backend" <<'END'
#!/bin/sh
[ $# -gt 0 ] || { echo 'file stowfails:/ "fails" "fails"'; exit 0; }
echo "ERROR: The cable is out." >&2
exit 1
END
chmod 700 "$backend"
model=lsb/usr/cups-pdf/CUPS-PDF_opt.ppd
lpadmin -p stow_file -E -v cups-pdf:/ -m "$model" 2>/dev/null
lpadmin -p stow_fails -E -v stowfails:/ -m "$model" 2>/dev/null

folder=$(sed -n 's/^Out //p' /etc/cups/cups-pdf.conf | sed "s|\${HOME}|$HOME|")
mkdir -p "$folder"
STOW_FILE_PRINTER=stow_file STOW_FAILING_PRINTER=stow_fails STOW_FILE_PRINTER_FOLDER="$folder" \
    QT_QPA_PLATFORM=offscreen QT_QUICK_BACKEND=software XDG_RUNTIME_DIR="$build" LC_ALL=C.UTF-8 \
    QTEST_FUNCTION_TIMEOUT=600000 "$build/tests/quick/file_printer_window_test"
