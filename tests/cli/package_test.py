#!/usr/bin/env python3
"""What stands around the program on a desktop agrees with the program: manual page, desktop entry, type of household files, metainfo, icons.

package_test.py --program PROGRAM --desktop FOLDER --source DIR
  --desktop  the folder in which the build puts what it makes
The package itself is built and tried by tests/support/package.sh.
"""
import argparse
import configparser
import gzip
import os
import pathlib
import re
import struct
import subprocess
import sys
import tempfile
import unittest
import xml.etree.ElementTree as tree

MIME = "{http://www.freedesktop.org/standards/shared-mime-info}"


def said(*arguments):
    return subprocess.run([given.program, *arguments], capture_output=True, text=True, check=True, timeout=60).stdout


def lacking(help_text, page):
    """Words of --help that the manual page does not hold; blanks and troff's own marks apart."""
    plain = re.sub(r"\\f[BR]", "", page).replace("\\-", "-").replace("\\&", "").replace("\\e", "\\")
    words = set(re.findall(r"\S+", plain))
    return [word for word in re.findall(r"\S+", help_text) if word not in words]


def entry():
    parsed = configparser.ConfigParser(interpolation=None, strict=True)
    parsed.optionxform = str
    parsed.read(given.source / "app/desktop/tierloam.desktop", encoding="utf-8")
    return parsed["Desktop Entry"]


def metainfo():
    return tree.parse(given.desktop / "tierloam.metainfo.xml").getroot()


def type_of_files():
    return tree.parse(given.desktop / "tierloam.xml").getroot().find(MIME + "mime-type")


class Package(unittest.TestCase):
    def test_manual_page_holds_all_that_help_says(self):
        page = gzip.open(given.desktop / "tierloam.1.gz", "rt", encoding="utf-8").read()
        help_text = said("--help")
        self.assertEqual(lacking(help_text, page), [])
        self.assertIn(".TH TIERLOAM 1", page)
        # What must not pass: a call more than the page has.
        self.assertEqual(lacking(help_text + "tierloam FILE --frobnicate", page), ["--frobnicate"])

    def test_help_names_every_option_that_is_understood(self):
        known = re.findall(r'Option\{"(--[a-z-]+)"', (given.source / "app/command_line.cpp").read_text(encoding="utf-8"))
        self.assertGreater(len(known), 10)
        self.assertEqual([option for option in known if option not in said("--help")], [])

    def test_a_household_file_is_known_by_its_bytes(self):
        outer, inner = type_of_files().find(MIME + "magic/" + MIME + "match"), type_of_files().find(MIME + "magic/" + MIME + "match/" + MIME + "match")
        with tempfile.TemporaryDirectory() as folder:
            file = pathlib.Path(folder) / "h.tierloam"
            csv = pathlib.Path(folder) / "j.csv"
            csv.write_text("date,stack,action,slot,amount,unit,item,detail,note\n2031-01-01,Mill,setup,,,,,,\n", encoding="utf-8")
            said(str(file), "--import", str(csv))
            beginning = file.read_bytes()[:100]
        self.assertTrue(beginning.startswith(outer.get("value").encode().decode("unicode_escape").encode("latin-1")))
        self.assertEqual(inner.get("type"), "big32")
        self.assertEqual(struct.unpack_from(">I", beginning, int(inner.get("offset")))[0], int(inner.get("value"), 16))

    def test_entry_type_and_metainfo_name_the_same(self):
        kind = type_of_files().get("type")
        self.assertEqual(entry()["MimeType"], kind + ";")
        self.assertEqual(metainfo().findtext("provides/mediatype"), kind)
        self.assertEqual(type_of_files().find(MIME + "glob").get("pattern"), "*.tierloam")
        self.assertEqual(metainfo().findtext("launchable"), "tierloam.desktop")
        # Under no domain, since the project owns none.
        self.assertEqual(metainfo().findtext("id"), "tierloam")
        self.assertEqual(metainfo().findtext("developer_name"), "Tierloam")
        self.assertEqual(entry()["Exec"], "tierloam %f")
        version = said("--version").split()[-1]
        self.assertEqual(metainfo().find("releases/release").get("version"), version)

    def test_icons_are_there_in_all_sizes(self):
        for size in (16, 22, 24, 32, 48, 64, 128, 256, 512):
            picture = (given.desktop / f"icons/{size}.png").read_bytes()
            self.assertEqual(picture[:8], b"\x89PNG\r\n\x1a\n")
            self.assertEqual(struct.unpack_from(">II", picture, 16), (size, size))

    def test_no_time_and_no_path_of_this_machine_is_in_what_was_made(self):
        for made in given.desktop.rglob("*"):
            if not made.is_file():
                continue
            data = made.read_bytes()
            self.assertNotIn(str(given.source).encode(), data, made)
            if made.suffix == ".gz":
                self.assertEqual(data[4:8], b"\0\0\0\0", f"{made} holds a time")
                self.assertEqual(data[3] & 8, 0, f"{made} holds a name")


if __name__ == "__main__":
    parser = argparse.ArgumentParser()
    for name in ("program", "desktop", "source"):
        parser.add_argument("--" + name, type=pathlib.Path, required=True)
    given, rest = parser.parse_known_args()
    os.environ["LC_ALL"] = "C.UTF-8"
    unittest.main(argv=sys.argv[:1] + rest)
