#!/usr/bin/env python3
"""Brings the texts of all languages up to date with the sources:  python3 resources/translations/refresh.py

New texts come in as unfinished, texts that are gone go out. English keeps plural forms alone. The contexts are those that the program asks for at run
time, which lupdate finds only with the headers in sight (-I).
"""
import pathlib
import subprocess
import sys
import xml.etree.ElementTree as ET

TOP = pathlib.Path(__file__).resolve().parents[2]
LUPDATE = "/usr/lib/qt6/bin/lupdate"
ROOMS = ["core", "ui", "app"]


def update(target, language):
    """Writes what lupdate finds into `target`, keeping what is translated there."""
    done = subprocess.run([LUPDATE, "-I", ".", "-locations", "none", "-no-obsolete", "-source-language", "en", "-target-language", language, *ROOMS, "-ts", str(target)],
                          cwd=TOP, capture_output=True, text=True)
    for line in (done.stdout + done.stderr).splitlines():
        if "lacks Q_OBJECT" in line or "lacks Q_DECLARE" in line:
            sys.exit("tr() asks for the context of a base class: " + line)
    if done.returncode != 0:
        sys.exit(done.stderr)


def main():
    for target in sorted((TOP / "resources/translations").glob("tierloam_*.ts")):
        language = target.stem.split("_")[1]
        if language == "en":
            plural(target)
        else:
            update(target, language)
            unfinished = sum(1 for each in ET.parse(target).iter("translation") if each.get("type") == "unfinished")
            print(f"{target.name}: {unfinished} unfinished")


def plural(target):
    update(target, "en")
    tree = ET.parse(target)
    root = tree.getroot()
    for context in list(root.findall("context")):
        for message in list(context.findall("message")):
            if message.get("numerus") != "yes":
                context.remove(message)
        if not context.findall("message"):
            root.remove(context)
    ET.indent(tree, "    ")
    text = ET.tostring(root, encoding="unicode")
    target.write_text('<?xml version="1.0" encoding="utf-8"?>\n<!DOCTYPE TS>\n' + text + "\n", encoding="utf-8")
    unfinished = text.count('type="unfinished"')
    print(f"{target.name}: {unfinished} unfinished")


if __name__ == "__main__":
    main()
