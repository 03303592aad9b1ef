#!/usr/bin/env python3
"""What is due is told on the desktop, over a real session bus, by a service of the desktop's kind that this script plays:

    dbus-run-session -- xvfb-run -a python3 notified.py --program PATH

A household whose stack was last fed more than two weeks ago is opened in a real window with the wish to be told: the call comes with its title and what is due. When none is told, and that none comes again, `ui_window_tests` looks at. With `--planted` no window is opened: calls that are wrong in one way each must be found.
"""
import argparse
import datetime
import os
import pathlib
import subprocess
import sys
import tempfile

from gi.repository import Gio, GLib

PATIENCE = 60  # seconds for what takes one or two, on a machine that does much else
INTERFACE = """<node><interface name="org.freedesktop.Notifications"><method name="Notify">
<arg type="s" direction="in"/><arg type="u" direction="in"/><arg type="s" direction="in"/><arg type="s" direction="in"/><arg type="s" direction="in"/>
<arg type="as" direction="in"/><arg type="a{sv}" direction="in"/><arg type="i" direction="in"/><arg type="u" direction="out"/></method></interface></node>"""


class Desktop:
    """Answers Notify and keeps what it was asked to show."""

    def __init__(self):
        self.shown = []
        self.loop = GLib.MainLoop()
        self.bus = Gio.bus_get_sync(Gio.BusType.SESSION, None)
        self.bus.register_object("/org/freedesktop/Notifications", Gio.DBusNodeInfo.new_for_xml(INTERFACE).interfaces[0], self.called, None, None)
        Gio.bus_own_name_on_connection(self.bus, "org.freedesktop.Notifications", Gio.BusNameOwnerFlags.NONE, lambda *_: self.loop.quit(), None)
        self.wait(PATIENCE)

    def called(self, _bus, _sender, _path, _interface, _method, given, call):
        self.shown.append(given.unpack())
        call.return_value(GLib.Variant("(u)", (len(self.shown),)))
        self.loop.quit()

    def wait(self, seconds):
        """Until something comes, at most so long."""
        end = GLib.timeout_add(int(seconds * 1000), self.loop.quit)
        self.loop.run()
        GLib.Source.remove(end) if GLib.MainContext.default().find_source_by_id(end) else None


def household(program, folder, env):
    """One young stack, fed once, a fortnight ago."""
    begun = datetime.date.today() - datetime.timedelta(days=60)
    rows = ["date,stack,action,slot,amount,unit,item,detail,note", f"{begun},Porch,setup,,,,,area=0.16;height=11;trays=3;sump=4;spigot=open;place=indoors;temp=20;stand=legs,",
            f"{begun},Porch,bed,,460,g,corrugated cardboard shredded,,", f"{begun},Porch,stock,,450,g,,,"]
    rows += [f"{begun + datetime.timedelta(days=7 * week)},Porch,feed,,300,g,kitchen mix,," for week in range(7)]
    journal = folder / "journal.csv"
    journal.write_text("\n".join(rows) + "\n", encoding="utf-8")
    file = folder / "porch.tierloam"
    subprocess.run([program, file, "--import", journal], check=True, env=env, stdout=subprocess.DEVNULL)
    return file


def run(program, file, env, desktop, seconds):
    window = subprocess.Popen([program, file], env=env)
    try:
        desktop.wait(seconds)
        return window.poll() is None
    finally:
        window.terminate()
        window.wait(PATIENCE)


def fault(shown):
    """What is wrong with the calls that came; nothing if it is one that tells what is due."""
    if len(shown) != 1:
        return f"told {len(shown)} times"
    name, replaces, _icon, title, text, actions, _hints, shown_for = shown[0]
    if name.lower() != "tierloam" or replaces != 0 or actions:
        return f"told by another name, in place of another call, or with actions: {shown[0]}"
    if not title or "Porch: " not in text or shown_for <= 0:
        return f"does not say what is due, or not for a while: {shown[0]}"
    return None


def planted():
    """Every wrong call is found, and the right one is not."""
    right = ["Tierloam", 0, "", "2 things are due", "Porch: feed 300 g", [], {}, 10000]
    if fault([right]):
        sys.exit(f"the right call was refused: {fault([right])}")
    wrong = {"none": [], "two": [right, right]}
    for name, place, value in (("another program", 0, "other"), ("in place of another", 1, 7), ("no title", 3, ""), ("no stack", 4, "feed 300 g"), ("with actions", 5, ["open", "Open"]), ("for no time", 7, 0)):
        call = list(right)
        call[place] = value
        wrong[name] = [call]
    for name, shown in wrong.items():
        if not fault(shown):
            sys.exit(f"not found: {name}")
    print(f"found: {', '.join(wrong)}")


def main():
    asked = argparse.ArgumentParser()
    asked.add_argument("--program")
    asked.add_argument("--planted", action="store_true")
    given = asked.parse_args()
    if given.planted:
        return planted()
    program = given.program
    with tempfile.TemporaryDirectory() as made:
        folder = pathlib.Path(made)
        env = {**os.environ, "QT_QPA_PLATFORM": "xcb", "LC_ALL": "C.UTF-8"}
        for name in ("CONFIG", "DATA", "CACHE", "STATE"):
            env[f"XDG_{name}_HOME"] = str(folder / name)
            (folder / name).mkdir()
        file = household(program, folder, env)
        desktop = Desktop()
        settings = folder / "CONFIG" / "tierloam" / "tierloam.ini"
        settings.parent.mkdir()
        settings.write_text("[due]\nonDesktop=true\n", encoding="utf-8")
        if not run(program, file, env, desktop, PATIENCE):
            sys.exit("the window was gone")
        if wrong := fault(desktop.shown):
            sys.exit(wrong)
        print(f"told once: {desktop.shown[0][3]} | {desktop.shown[0][4]}")


if __name__ == "__main__":
    main()
