#!/usr/bin/env python3
"""From the start of the program to the first picture of its window, over the demo's normal and December day.
  start_bench.py BUILD_DIR [times]
Offscreen, and on an X server of its own where Xvfb is installed; drawn in software. The first two starts of each are
not counted: what is measured is a warm start. Prints a section of tests/bench/RESULTS.md."""
import datetime
import os
import pathlib
import shutil
import statistics
import subprocess
import sys
import tempfile
import time


def start(program, book, environment):
    began = time.monotonic_ns()  # CLOCK_MONOTONIC, as the program counts
    said = subprocess.run([program, "--book", book], env=environment, capture_output=True, text=True, check=True).stdout
    pictured, processor = said.split()
    return (int(pictured) - began) / 1e6, int(processor)


def measure(program, book, environment, times):
    for _ in range(2):
        start(program, book, environment)
    return [start(program, book, environment) for _ in range(times)]


def machine():
    for line in open("/proc/cpuinfo", encoding="ascii", errors="replace"):
        if line.startswith("model name"):
            return line.split(":", 1)[1].strip()
    return "unknown processor"


def main():
    build = pathlib.Path(sys.argv[1]).resolve()
    times = int(sys.argv[2]) if len(sys.argv) > 2 else 20
    program = build / "tests/bench/first_picture"
    folder = tempfile.TemporaryDirectory()
    home = pathlib.Path(folder.name)
    environment = dict(os.environ, HOME=folder.name, XDG_DATA_HOME=folder.name, XDG_RUNTIME_DIR=folder.name,
                       QT_QUICK_BACKEND="software", LC_ALL="C.UTF-8")
    environment.pop("DISPLAY", None)
    books = {}
    for name, orders in (("normal day", "small"), ("December day", "december")):
        subprocess.run([build / "app/stowbench", "demo", "--out", home / orders, "--orders", orders],
                       env=dict(environment, QT_QPA_PLATFORM="offscreen"), capture_output=True, check=False)
        books[name] = home / orders / "demo.book"

    rows = []
    screens = [("offscreen", dict(environment, QT_QPA_PLATFORM="offscreen"))]
    server = None
    if shutil.which("Xvfb"):
        read, write = os.pipe()
        server = subprocess.Popen(["Xvfb", "-displayfd", str(write), "-screen", "0", "1920x1080x24"], pass_fds=[write],
                                  stderr=subprocess.DEVNULL)
        display = os.read(read, 16).decode().strip()
        screens.append(("an X server", dict(environment, QT_QPA_PLATFORM="xcb", DISPLAY=":" + display)))
    try:
        for screen, where in screens:
            for name, book in books.items():
                found = measure(program, book, where, times)
                wall = [w for w, _ in found]
                rows.append((name, screen, len(found), statistics.median(wall), max(wall),
                             statistics.median(p for _, p in found), max(p for _, p in found)))
    finally:
        if server:
            server.terminate()

    print("## From the start to the first picture\n")
    print(f"{machine()}, {datetime.date.today()}; `start_bench.py BUILD {times}`. Warm; on the wall from before the "
          "program is started, and its processor time, all threads.\n")
    print("| book | drawn | starts | median ms | longest | processor: median ms | longest |")
    print("| --- | --- | --- | --- | --- | --- | --- |")
    for name, screen, count, *values in rows:
        print(f"| {name} | {screen} | {count} | " + " | ".join(f"{v:.0f}" for v in values) + " |")
    print()


if __name__ == "__main__":
    main()
