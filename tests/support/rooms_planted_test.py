#!/usr/bin/env python3
"""Shows that rooms.py can fail: a small tree that keeps to its rooms passes, and each violation planted in it is reported where it is.

Usage: rooms_planted_test.py --qt DIR
"""
import argparse
import pathlib
import subprocess
import sys
import tempfile
import unittest

HERE = pathlib.Path(__file__).parent
ROOMS = """core/quantity uses= links=
core/journal uses=core/quantity links=
core/store uses=core/journal links=Qt6::Core,SQLite::SQLite3
core/household uses=core/journal,core/store links=Qt6::Gui
ui/shelf uses=core/household links=Qt6::Widgets
"""
TREE = {
    "core/quantity/units.h": "#include <string>\n",
    "core/journal/entry.cpp": '#include "core/journal/entry.h"\n#include "core/quantity/units.h"\n#include <vector>\n',
    "core/journal/entry.h": "#pragma once\n",
    "core/store/file.cpp": "#include <QString>\n#include <sqlite3.h>\n#include <unistd.h>\n",
    "core/household/door.h": "#include <QUndoStack>\n",
    "ui/shelf/page.cpp": '#include "core/household/door.h"\n#include <QWidget>\n#include <QPainter>\n#include "page.moc"\n',
    "app/main.cpp": '#include "core/household/door.h"\n',
    "app/window_start.cpp": '#include "ui/shelf/page.h"\n#include <QApplication>\n',
}
PLANTED = [
    ("core/quantity/units.h", '#include "core/journal/entry.h"', "core/quantity does not use core/journal"),
    ("core/store/file.cpp", '#include "core/quantity/units.h"', "core/store does not use core/quantity"),
    ("core/journal/entry.h", "#include <QString>", "core/journal does not link QtCore"),
    ("core/journal/entry.h", "#include <QtCore/QString>", "core/journal does not link QtCore"),
    ("core/journal/entry.h", "#include <unistd.h>", "the standard library only"),
    ("core/journal/entry.h", "#include <sqlite3.h>", "does not link SQLite::SQLite3"),
    ("core/household/door.h", "#include <QPainter>", "core never includes QPainter"),
    ("core/household/door.h", "#include <QWidget>", "core never includes QWidget"),
    ("core/household/door.h", "#  include <QtCharts/QChart>", "core never includes QtCharts/QChart"),
    ("core/household/door.h", '#include "ui/shelf/page.h"', "core/household does not use ui/shelf"),
    ("core/household/door.h", '#include "../journal/entry.h"', "does not use"),
    ("core/household/door.h", '#include "door_parts.h"', "a path starts at the top"),
    ("ui/shelf/page.cpp", '#include "core/store/file.h"', "ui/shelf does not use core/store"),
    ("ui/shelf/page.cpp", "#include <QChart>", "ui/shelf does not link QtCharts"),
    ("app/main.cpp", '#include "ui/shelf/page.h"', "only app/window_* may know the window"),
    ("app/main.cpp", "#include <QApplication>", "only app/window_* may know the window"),
    ("core/store/file.h", "#pragma once", "core/store/file.cpp:1: a source includes its own header first"),
    ("app/window_start.h", "#pragma once", "app/window_start.cpp:1: a source includes its own header first"),
    ("core/stray.cpp", "#include <vector>", "core is no room"),
]


class Planted(unittest.TestCase):
    def run_on(self, tree):
        with tempfile.TemporaryDirectory() as folder:
            root = pathlib.Path(folder)
            for name, text in tree.items():
                (root / name).parent.mkdir(parents=True, exist_ok=True)
                (root / name).write_text(text, encoding="utf-8")
            rooms = root / "rooms.txt"
            rooms.write_text(ROOMS, encoding="utf-8")
            return subprocess.run([sys.executable, HERE / "rooms.py", "--source", root, "--rooms", rooms, "--qt", QT],
                                  capture_output=True, text=True, check=False)

    def test_a_tree_that_keeps_to_its_rooms_passes(self):
        result = self.run_on(TREE)
        self.assertEqual((result.returncode, result.stdout), (0, ""), result.stderr)

    def test_each_planted_include_is_reported_where_it_is(self):
        for name, line, reason in PLANTED:
            with self.subTest(line=line, file=name):
                before = TREE.get(name, "")
                result = self.run_on({**TREE, name: before + line + "\n"})
                self.assertEqual(result.returncode, 1)
                self.assertEqual(len(result.stdout.splitlines()), 1, result.stdout)
                where = 1 if "is no room" in reason else before.count("\n") + 1
                if "own header" not in reason:  # there the reason names the source
                    self.assertTrue(result.stdout.startswith(f"{name}:{where}: "), result.stdout)
                self.assertIn(reason, result.stdout)

    def test_an_empty_tree_is_a_failure(self):
        self.assertEqual(self.run_on({"core/quantity/notes.txt": ""}).returncode, 1)


if __name__ == "__main__":
    parser = argparse.ArgumentParser()
    parser.add_argument("--qt", required=True)
    given, rest = parser.parse_known_args()
    QT = given.qt
    unittest.main(argv=[sys.argv[0], *rest])
