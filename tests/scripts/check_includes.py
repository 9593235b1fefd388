#!/usr/bin/env python3
"""Checks the house's rules that a compiler does not see.

- A folder of core includes only folders that stand above it (DEVELOPERS.md, "Where things are"), and nothing of Qt.
- The folders of app and qml keep out of each other's way the same way.
- Every path that DEVELOPERS.md and README.md name exists.
- Every package a QML import needs is in app/packages.txt.

Run from anywhere: python3 tests/scripts/check_includes.py
"""
import pathlib
import re
import sys

ROOT = pathlib.Path(__file__).resolve().parents[2]

# From the ground up; a folder may include itself and what its entry names.
BELOW = {
    "run": [],
    "measure": [],
    "fitting": ["run", "measure"],
    "postage": ["run", "measure"],
    "shop": ["measure"],
    "supplies": ["shop", "measure"],
    "weighing": ["shop", "measure"],
    "paperbox": ["measure", "fitting", "run"],
}
BELOW["planning"] = sorted({*BELOW, "run", "measure"})
BELOW["records"] = [*BELOW["planning"], "planning"]
BELOW["intake"] = [*BELOW["records"], "records"]
BELOW["book"] = [*BELOW["intake"], "intake"]
BELOW["papers"] = [*BELOW["records"], "records"]

QML_PACKAGES = {
    "QtQuick": "qml6-module-qtquick",
    "QtQuick.Window": "qml6-module-qtquick-window",
    "QtQuick.Controls": "qml6-module-qtquick-controls",
    "QtQuick.Controls.Basic": "qml6-module-qtquick-controls",
    "QtQuick.Templates": "qml6-module-qtquick-templates",
    "QtQuick.Layouts": "qml6-module-qtquick-layouts",
    "QtQuick.Shapes": "qml6-module-qtquick-shapes",
    "QtQuick.Dialogs": "qml6-module-qtquick-dialogs",
    "QtQml": "qml6-module-qtqml",
    "QtQml.Models": "qml6-module-qtqml-models",
    "QtTest": "qml6-module-qttest",
}
OWN_MODULES = {"Stowbench.App", "Stowbench.Style", "Stowbench.Screens"}


def core_faults():
    for path in sorted((ROOT / "core").rglob("*")):
        if path.suffix not in (".h", ".cpp"):
            continue
        folder = path.relative_to(ROOT / "core").parts[0]
        if path.parent == ROOT / "core":
            continue
        for number, line in enumerate(path.read_text(encoding="utf-8").splitlines(), 1):
            where = f"{path.relative_to(ROOT)}:{number}"
            if re.match(r"\s*#\s*include\s*[<\"]Q", line):
                yield f"{where}: core is without Qt"
            own = re.match(r'\s*#\s*include\s*"([^"]+)"', line)
            if not own:
                continue
            parts = own.group(1).split("/")
            if parts[0] != "core" or len(parts) < 3:
                yield f"{where}: {own.group(1)} is not in core"
            elif parts[1] != folder and parts[1] not in BELOW[folder]:
                yield f"{where}: {folder} may not look at {parts[1]}"


def path_faults():
    for name in ("DEVELOPERS.md", "README.md"):
        text = (ROOT / name).read_text(encoding="utf-8")
        for token in re.findall(r"`((?:app|qml|core|tests|rate_tables|demo_orders)/[A-Za-z0-9_./-]*)`", text):
            if not (ROOT / token).exists():
                yield f"{name}: {token} does not exist"
        for token in re.findall(r"\]\(((?!https?:)[^)#]+)\)", text):
            if not (ROOT / token).exists():
                yield f"{name}: {token} does not exist"


def qml_faults():
    packages = (ROOT / "app/packages.txt").read_text().split() + (ROOT / "tests/packages.txt").read_text().split()
    for path in sorted([*(ROOT / "qml").rglob("*.qml"), *(ROOT / "tests").rglob("*.qml")]):
        for module in re.findall(r"^\s*import\s+([A-Z][\w.]*)", path.read_text(encoding="utf-8"), re.M):
            if module in OWN_MODULES:
                continue
            if QML_PACKAGES.get(module) not in packages:
                yield f"{path.relative_to(ROOT)}: no listed package brings {module}"


def top_level_faults():
    expected = {"CMakeLists.txt", "README.md", "DEVELOPERS.md", "LICENSE", "app", "qml", "core", "tests", "rate_tables",
                "demo_orders", "build"}
    for path in ROOT.iterdir():
        if not path.name.startswith(".") and path.name not in expected:
            yield f"{path.name}: does not belong at the top level"


faults = [*core_faults(), *path_faults(), *qml_faults(), *top_level_faults()]
for fault in faults:
    print(fault)
sys.exit(1 if faults else 0)
