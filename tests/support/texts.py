#!/usr/bin/env python3
"""English plural forms: every text with a number has a singular and a plural in resources/translations/tierloam_en.ts.

texts.py --source DIR --lupdate PROGRAM           checks (exit 1 and a list when one is missing)
texts.py --source DIR --lupdate PROGRAM --write   adds what is missing, formed from marks such as "day(s)" and "entry(ies)"
"""
import argparse
import pathlib
import re
import shutil
import subprocess
import sys
import tempfile
import xml.etree.ElementTree as tree

FILE = "resources/translations/tierloam_en.ts"


def forms(source):
    """Singular and plural of a text that marks them: "entry(ies)", "box(es)", "day(s)", "goes|go" is not marked and stays."""
    one = re.sub(r"\((?:s|es|ies)\)", "", source)
    many = re.sub(r"y\(ies\)", "ies", source)
    many = re.sub(r"\((s|es)\)", r"\1", many)
    return one, many


def updated(source, lupdate, target):
    subprocess.run([lupdate, "-silent", "-I", str(source), "-pluralonly", "-locations", "none", "-no-obsolete", "-source-language", "en", "-target-language", "en",
                    str(source / "core"), str(source / "ui"), str(source / "app"), "-ts", str(target)], check=True, capture_output=True)


def missing(root):
    for context in root.iter("context"):
        for message in context.iter("message"):
            if message.get("numerus") != "yes":
                continue
            texts = [form.text or "" for form in message.iter("numerusform")]
            if len(texts) < 2 or not all(texts) or any(re.search(r"\((s|es|ies)\)", text) for text in texts):
                yield context.findtext("name"), message


def main():
    options = argparse.ArgumentParser()
    options.add_argument("--source", required=True, type=pathlib.Path)
    options.add_argument("--lupdate", required=True)
    options.add_argument("--write", action="store_true")
    chosen = options.parse_args()
    kept = chosen.source / FILE
    with tempfile.TemporaryDirectory() as folder:
        work = pathlib.Path(folder) / "tierloam_en.ts"
        if kept.exists():
            shutil.copy(kept, work)
        updated(chosen.source, chosen.lupdate, work)
        document = tree.parse(work)
        lacking = list(missing(document.getroot()))
        if not chosen.write:
            for context, message in lacking:
                print(f"{context}: no English forms of «{message.findtext('source')}»")
            count = sum(1 for message in document.getroot().iter("message") if message.get("numerus") == "yes")
            print(f"{count} texts with a number, {len(lacking)} without both forms")
            return 1 if lacking or count == 0 else 0
        for _, message in lacking:
            translation = message.find("translation")
            translation.attrib.pop("type", None)
            for form in list(translation):
                translation.remove(form)
            for text in forms(message.findtext("source")):
                tree.SubElement(translation, "numerusform").text = text
        tree.indent(document, "    ")
        kept.parent.mkdir(parents=True, exist_ok=True)
        kept.write_text('<?xml version="1.0" encoding="utf-8"?>\n<!DOCTYPE TS>\n' + tree.tostring(document.getroot(), encoding="unicode") + "\n", encoding="utf-8")
    return 0


if __name__ == "__main__":
    sys.exit(main())
