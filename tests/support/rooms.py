#!/usr/bin/env python3
"""Holds every #include to the rooms: a file may include its own room and those its room uses, and of the system only what the room links.
A source includes its own header first, by which that header is compiled alone.

Usage: rooms.py --source DIR --rooms FILE --qt DIR
  --source  the source tree
  --rooms   the rooms as CMake knows them, one a line: "core/journal uses=core/quantity links=Qt6::Core"
  --qt      the folder of Qt's headers, to tell which module a header belongs to
Prints each violation as FILE:LINE: reason; exit 1 if there is one, or if there is nothing to look at.
"""
import argparse
import pathlib
import re
import sys

INCLUDE = re.compile(r'^\s*#\s*include\s*([<"])([^>"]+)[>"]')
SOURCES = ("*.cpp", "*.h")
# Of Qt Gui these paint; core hands over values and lets ui paint them.
PAINTING = {"QPainter", "QPaintDevice", "QPaintEngine", "QPicture", "QPixmap", "QPdfWriter"}
# Never in core, not even by way of another module: they drag in the window.
NOT_IN_CORE = {"QtWidgets", "QtCharts", "QtPrintSupport", "QtSvgWidgets"}
SYSTEM = {"sqlite3.h": "SQLite::SQLite3"}
INTRINSICS = {"immintrin.h"}


class Rooms:
    def __init__(self, text):
        self.uses, self.links = {}, {}
        for line in filter(None, text.splitlines()):
            name, uses, links = line.split(" ")
            self.uses[name] = set(filter(None, uses.removeprefix("uses=").split(",")))
            self.links[name] = set(filter(None, links.removeprefix("links=").split(",")))

    def modules(self, room):
        """Everything that the room links, itself or by the rooms it uses, with what Qt's modules bring along."""
        found, todo = set(), [room]
        while todo:
            name = todo.pop()
            found |= self.links.get(name, set())
            todo += self.uses.get(name, set())
        brings = {"Qt6::Charts": {"Qt6::Widgets"}, "Qt6::PrintSupport": {"Qt6::Widgets"}, "Qt6::Widgets": {"Qt6::Gui"},
                  "Qt6::Svg": {"Qt6::Gui"}, "Qt6::DBus": {"Qt6::Core"}, "Qt6::Gui": {"Qt6::Core"}, "Qt6::Sql": {"Qt6::Core"}}
        for _ in brings:
            for module in list(found):
                found |= brings.get(module, set())
        return found


def qt_modules_of(header, qt):
    """Names of the Qt modules whose folder holds this header, as "QtGui"."""
    if header.startswith("Qt") and "/" in header:
        return [header.split("/")[0]]
    return [folder.name for folder in sorted(qt.glob("Qt*")) if (folder / header).exists()]


def reason_against_system(room, header, rooms, qt):
    if header in SYSTEM:
        return None if SYSTEM[header] in rooms.modules(room) else f"{room} does not link {SYSTEM[header]}"
    modules = qt_modules_of(header, qt) if header[:1] in "Qq" else []
    if modules:
        if room.startswith("core/"):
            if header.split("/")[-1] in PAINTING or any(module in NOT_IN_CORE for module in modules):
                return f"core never includes {header}"
        linked = rooms.modules(room)
        if not any("Qt6::" + module.removeprefix("Qt") in linked for module in modules):
            return f"{room} does not link {' or '.join(modules)}"
        return None
    standard = re.fullmatch(r"[a-z_]+", header) is not None
    if standard or header in INTRINSICS:
        return None
    return None if "Qt6::Core" in rooms.modules(room) else f"{room} may include the standard library only"


def reason_against_own(room, header, rooms):
    if "/" not in header:
        return None if header.endswith(".moc") else "a path starts at the top of the source tree"
    other = "/".join(header.split("/")[:2])
    if other == room or other in rooms.uses[room]:
        return None
    return f"{room} does not use {other}"


def own_header_later(path, source):
    """The line of the first include of a source that is not its own header, though there is one; else None."""
    own = path.with_suffix(".h")
    if path.suffix != ".cpp" or not own.exists():
        return None
    for number, line in enumerate(path.read_text(encoding="utf-8").splitlines(), 1):
        match = INCLUDE.match(line)
        if match:
            return None if match[2] == own.relative_to(source).as_posix() else number
    return 1


def violations(source, rooms, qt):
    """Yields (file, line, reason); a tree without sources is a violation too."""
    seen = 0
    for top in sorted({room.split("/")[0] for room in rooms.uses}):  # a build without a window knows no rooms of ui
        for path in sorted(file for pattern in SOURCES for file in (source / top).rglob(pattern)):
            seen += 1
            room = path.parent.relative_to(source).as_posix()
            if room not in rooms.uses:
                yield path, 1, f"{room} is no room"
                continue
            if (number := own_header_later(path, source)):
                yield path, number, "a source includes its own header first"
            for number, line in enumerate(path.read_text(encoding="utf-8").splitlines(), 1):
                match = INCLUDE.match(line)
                if not match:
                    continue
                bracket, header = match.groups()
                against = (reason_against_own(room, header, rooms) if bracket == '"'
                           else reason_against_system(room, header, rooms, qt))
                if against:
                    yield path, number, f"includes {header}: {against}"
    for path in sorted(file for pattern in SOURCES for file in (source / "app").glob(pattern)):
        seen += 1
        if (number := own_header_later(path, source)):
            yield path, number, "a source includes its own header first"
        if path.stem.startswith("window_"):
            continue
        for number, line in enumerate(path.read_text(encoding="utf-8").splitlines(), 1):
            match = INCLUDE.match(line)
            if match and (match[2].startswith("ui/")
                          or any(module in NOT_IN_CORE for module in qt_modules_of(match[2], qt) if match[1] == "<")):
                yield path, number, f"includes {match[2]}: only app/window_* may know the window"
    if seen == 0:
        yield source, 0, "no source file found"


def main():
    parser = argparse.ArgumentParser()
    for name in ("source", "rooms", "qt"):
        parser.add_argument("--" + name, type=pathlib.Path, required=True)
    given = parser.parse_args()
    rooms = Rooms(given.rooms.read_text(encoding="utf-8"))
    if not rooms.uses or not (given.qt / "QtCore" / "QString").exists():
        print("no rooms, or Qt's headers are not where they were said to be", file=sys.stderr)
        return 1
    found = list(violations(given.source, rooms, given.qt))
    for path, line, reason in found:
        print(f"{path.relative_to(given.source)}:{line}: {reason}")
    return 1 if found else 0


if __name__ == "__main__":
    sys.exit(main())
