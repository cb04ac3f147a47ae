#!/usr/bin/python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""Reads the window through AT-SPI, as a screen reader does, from another process.

read_names.py WITHY: starts the program on a copy of the demo season within a session bus and a virtual
display of its own. Fails on a control that takes the keyboard and has no name, and when a place is not
found by its name. Exit code 77: what it needs is not installed.
"""
import os
import shutil
import signal
import subprocess
import sys
import tempfile
import time

SKIP = 77
PLACES = ["Bookings", "Designs", "Garden", "Shed", "Diary", "Season"]


def outside(program):
    needed = ["dbus-run-session", "xvfb-run"]
    missing = [tool for tool in needed if not shutil.which(tool)]
    launcher = next((p for p in ("/usr/libexec/at-spi-bus-launcher", "/usr/lib/at-spi2-core/at-spi-bus-launcher")
                     if os.path.exists(p)), None)
    try:
        import gi
        gi.require_version("Atspi", "2.0")
    except (ImportError, ValueError):
        missing.append("python3-gi with gir1.2-atspi-2.0")
    if not launcher:
        missing.append("at-spi2-core")
    if missing:
        print("skipped, not installed: " + ", ".join(missing))
        return SKIP
    env = dict(os.environ, WITHY_INSIDE="1", WITHY_LAUNCHER=launcher, NO_AT_BRIDGE="0")
    env.pop("QT_QPA_PLATFORM", None)
    return subprocess.run(["xvfb-run", "-a", "-s", "-screen 0 1280x800x24", "dbus-run-session", "--",
                           "/usr/bin/python3", __file__, program], env=env, check=False).returncode


def inside(program):
    import gi
    gi.require_version("Atspi", "2.0")
    from gi.repository import Atspi

    bus = subprocess.Popen([os.environ["WITHY_LAUNCHER"], "--launch-immediately"])
    home = tempfile.mkdtemp(prefix="withy-atspi-")
    env = dict(os.environ, HOME=home, XDG_DATA_HOME=home, XDG_CONFIG_HOME=home, XDG_RUNTIME_DIR=home,
               QT_QPA_PLATFORM="xcb", QT_LINUX_ACCESSIBILITY_ALWAYS_ON="1")
    time.sleep(1)
    window = subprocess.Popen([program, "--demo"], env=env)
    try:
        return walk(Atspi, window)
    finally:
        window.send_signal(signal.SIGTERM)
        bus.terminate()
        window.wait(20)
        shutil.rmtree(home, ignore_errors=True)


def find_program(Atspi):
    for _ in range(60):
        desktop = Atspi.get_desktop(0)
        for i in range(desktop.get_child_count()):
            child = desktop.get_child_at_index(i)
            if child and "withy" in (child.get_name() or "").lower() and child.get_child_count() > 0:
                return child
        time.sleep(0.5)
    return None


def visit(Atspi, node, seen, depth=0):
    """Every accessible thing that is showing, with its role, name and whether it takes the keyboard."""
    if depth > 40:
        return
    for i in range(min(node.get_child_count(), 400)):
        child = node.get_child_at_index(i)
        if child is None:
            continue
        states = child.get_state_set()
        if states.contains(Atspi.StateType.SHOWING):
            seen.append((child.get_role_name(), child.get_name() or "", states.contains(Atspi.StateType.FOCUSABLE)))
            visit(Atspi, child, seen, depth + 1)


def walk(Atspi, window):
    program = find_program(Atspi)
    if program is None:
        print("the program did not show itself on the accessibility bus")
        return 1
    time.sleep(2)
    seen = []
    visit(Atspi, program, seen)
    nameless = [role for role, name, focusable in seen if focusable and not name
                and role not in ("filler", "frame", "scroll pane", "viewport", "table cell", "tree item", "list item")]
    print(f"{len(seen)} things showing, {sum(1 for s in seen if s[2])} of them take the keyboard")
    for role, name, focusable in seen:
        if focusable:
            print(f"  {role}: {name}")
    names = {name for _, name, _ in seen}
    wrong = [place for place in PLACES if place not in names]
    if wrong:
        print("not found by name: " + ", ".join(wrong))
    if nameless:
        print("no name: " + ", ".join(nameless))
    return 1 if wrong or nameless or window.poll() is not None or len(seen) < 20 else 0


if __name__ == "__main__":
    sys.exit(inside(sys.argv[1]) if os.environ.get("WITHY_INSIDE") else outside(sys.argv[1]))
