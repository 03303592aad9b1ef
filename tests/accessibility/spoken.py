#!/usr/bin/env python3
"""What assistive technology sees of the running program, asked over the accessibility bus as a screen reader asks:

    dbus-run-session -- xvfb-run -a python3 spoken.py --program PATH

Opens the demo household in a real window, finds every stack and tray by name, feeds one through its accessible action, and reads the entry in the file.
"""
import argparse
import csv
import os
import pathlib
import subprocess
import sys
import tempfile
import time

import gi

gi.require_version("Atspi", "2.0")
from gi.repository import Atspi  # noqa: E402  the version has to be named first

PATIENCE = 60  # seconds for what takes one, on a machine that does much else


def until(what, look):
    """The first thing that `look` finds; it is asked again until then."""
    end = time.monotonic() + PATIENCE
    while time.monotonic() < end:
        try:
            found = look()
        except gi.repository.GLib.Error:
            found = None  # an object that went away while it was asked
        if found:
            return found
        time.sleep(0.05)  # between two looks, not for a result
    sys.exit(f"not there after {PATIENCE} s: {what}")


def children(of):
    for i in range(of.get_child_count()):
        child = of.get_child_at_index(i)
        if child is not None:
            yield child


def walk(of):
    yield of
    for child in children(of):
        yield from walk(child)


def showing(of):
    return of.get_state_set().contains(Atspi.StateType.SHOWING)


def program_on_bus(pid):
    for application in children(Atspi.get_desktop(0)):
        if application.get_process_id() == pid and application.get_child_count() > 0:
            return application
    return None


def feeds_of(program, household, environment, to):
    subprocess.run([program, household, "--export", to], check=True, env=environment)
    with open(to, encoding="utf-8", newline="") as file:
        return [row["stack"] for row in csv.DictReader(file) if row["action"] == "feed"]


def press(of):
    action = of.get_action_iface()  # deprecated without a successor in this release
    if action is None or action.get_n_actions() == 0:
        sys.exit(f"«{of.get_name()}» can be read but not pressed")
    action.do_action(0)


def main():
    arguments = argparse.ArgumentParser()
    arguments.add_argument("--program", required=True)
    program = arguments.parse_args().program
    with tempfile.TemporaryDirectory() as folder:
        environment = dict(os.environ, QT_QPA_PLATFORM="xcb", QT_LINUX_ACCESSIBILITY_ALWAYS_ON="1", LC_ALL="C.UTF-8", LANGUAGE="en")
        for kind in ("DATA", "CONFIG", "CACHE", "STATE"):
            environment[f"XDG_{kind}_HOME"] = folder + "/" + kind.lower()
        running = subprocess.Popen([program, "--demo"], env=environment)
        try:
            check(running, program, environment, pathlib.Path(folder))
        finally:
            running.kill()
            running.wait()


def check(running, program, environment, folder):
    application = until("the program on the accessibility bus", lambda: program_on_bus(running.pid))
    household = until("the demo household's file", lambda: next((folder / "data").rglob("*.tierloam"), None))
    stacks = sorted(set(feeds_of(program, household, environment, folder / "before.csv")))

    def named(role_is, name_has):
        return [each for each in walk(application) if showing(each) and role_is(each) and name_has(each.get_name() or "")]

    anything = lambda each: True
    for stack in stacks:
        until(f"the stack {stack}", lambda: named(anything, lambda name: name.startswith(stack)))
    trays = until("trays", lambda: named(anything, lambda name: "tray" in name.lower() and "slot" in name.lower()))
    nameless = [each for each in walk(application)
                if showing(each) and each.get_role() in (Atspi.Role.PUSH_BUTTON, Atspi.Role.TOGGLE_BUTTON, Atspi.Role.CHECK_BOX, Atspi.Role.TEXT, Atspi.Role.COMBO_BOX)
                and not (each.get_name() or "").strip()]
    if nameless:
        sys.exit("no name: " + ", ".join(f"{each.get_role_name()} in «{each.get_parent().get_name()}»" for each in nameless))

    before = len(feeds_of(program, household, environment, folder / "before.csv"))
    is_button = lambda each: each.get_role() == Atspi.Role.PUSH_BUTTON
    feed = until("a button that feeds", lambda: named(is_button, lambda name: name.startswith("Feed")))[0]
    press(feed)
    until("one feeding more", lambda: len(feeds_of(program, household, environment, folder / "after.csv")) == before + 1)
    print(f"{len(stacks)} stacks, {len(trays)} trays named; «{feed.get_name()}» pressed, one feeding more in the file")


if __name__ == "__main__":
    main()
