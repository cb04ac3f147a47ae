#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""Reads the sources and fails on an include that points the wrong way, on SQL, edits or sentences outside their
layers, and on a source that has grown beyond what one can hold in the head."""
import pathlib
import re
import sys

root = pathlib.Path(sys.argv[1])
WIDGETS = re.compile(r"<Q(Widget|MainWindow|Dialog|Printer|PushButton|LineEdit|Table(View|Widget)|Application)\b")
# folder -> what it may not include
RULES = [
    ("core", lambda f: "core/store" not in f, re.compile(r'<Q[A-Z]|"ui/|"app/|"core/store/'), "the pure core knows no Qt, disk or window"),
    ("core/store", lambda f: True, re.compile(r'"ui/|"app/|<QGui|<QPainter|<QWidget'), "the store knows no window"),
    ("ui/logic", lambda f: True, WIDGETS, "ui/logic knows no Widgets"),
    ("ui/logic", lambda f: True, re.compile(r'"app/|<QSql'), "ui/logic knows neither the program nor SQL"),
    ("app/cli", lambda f: True, WIDGETS, "the command line knows no Widgets"),
]
PAGES = ("ui/shell", "ui/common", "ui/bookings", "ui/designs", "ui/garden", "ui/shed", "ui/diary", "ui/season", "ui/fit", "ui/print", "app")
# What a line of a page may not hold.
BANNED = [
    (re.compile(r'<QSql|\b(SELECT|INSERT INTO|UPDATE \w+ SET|DELETE FROM)\b'), "SQL lives in core/store"),
    (re.compile(r'\bEdit\s+\w+\s*[({]"|\bEdit\s*[({]\s*"|\bedit\w*\.(put|erase)\('), "edits are put together in ui/logic/edits"),
    # A sentence made out of facts: words with a place for a figure or a name, and a full stop.
    (re.compile(r'tr\("[^"]*%[1n][^"]*\.",?'), "sentences are worded in ui/logic"),
]
LONGEST = {"ui/shell/main_window.cpp": 250, "ui/shell/main_window.h": 250}
wrong = []
seen = 0
for folder, applies, banned, why in RULES:
    for path in sorted(root.joinpath(folder).rglob("*")):
        name = path.relative_to(root).as_posix()
        if path.suffix not in (".h", ".cpp") or not applies(name):
            continue
        seen += 1
        for number, line in enumerate(path.read_text(encoding="utf-8").splitlines(), 1):
            if line.startswith("#include") and banned.search(line):
                wrong.append(f"{name}:{number}: {line.strip()} ({why})")
for path in sorted(root.joinpath("ui/shell").rglob("*")):
    if path.suffix in (".h", ".cpp") and path.name != "places.cpp":
        for number, line in enumerate(path.read_text(encoding="utf-8").splitlines(), 1):
            if re.search(r'#include "ui/(bookings|designs|garden|shed|diary|season|fit)/', line):
                wrong.append(f"{path.relative_to(root).as_posix()}:{number}: {line.strip()} (the shell knows places, not pages)")
for folder in PAGES:
    for path in sorted(root.joinpath(folder).rglob("*")):
        if path.suffix not in (".h", ".cpp"):
            continue
        name = path.relative_to(root).as_posix()
        for number, line in enumerate(path.read_text(encoding="utf-8").splitlines(), 1):
            for banned, why in BANNED:
                if banned.search(line):
                    wrong.append(f"{name}:{number}: {line.strip()} ({why})")
for folder in ("ui", "app", "core"):
    for path in sorted(root.joinpath(folder).rglob("*")):
        if path.suffix not in (".h", ".cpp"):
            continue
        name = path.relative_to(root).as_posix()
        length = len(path.read_text(encoding="utf-8").splitlines())
        if length > LONGEST.get(name, 400):
            wrong.append(f"{name}: {length} lines, at most {LONGEST.get(name, 400)}: look for a seam")
links = root.joinpath("core/CMakeLists.txt").read_text() + root.joinpath("ui/logic/CMakeLists.txt").read_text()
for line in links.splitlines():
    if line.startswith("withy_layer(withy_core") and "Qt6" in line or line.startswith("withy_layer(withy_ui_logic") and "Widgets" in line:
        wrong.append("link list: " + line)
if seen < 50:
    wrong.append(f"only {seen} sources were read: is the root right?")
print("\n".join(wrong) if wrong else f"{seen} sources, every arrow points inwards")
sys.exit(1 if wrong else 0)
