#!/usr/bin/env python3
"""Names and notes that people give are filled into a text by one call of arg with all that belongs into it, or by the last of several:
a stack called "Balcony %1" would swallow what a later .arg fills in.

chained_args.py --source DIR     lists each place (exit 1 when there is one)
chained_args.py --planted        shows that it finds what it is made for, and nothing else
"""
import argparse
import pathlib
import re
import sys

# Words by which the sources call what people typed, and what turns such text into QString.
TYPED = re.compile(r"\b(?:stack|stacks|stackName|name|named|title|note|material|household|file|path|folder|fromStdString|toQString|fromUtf8)\b(?!\s*(?:\.|->)(?!name|title|note|material|toString|text))")
CHARACTER = re.compile(r"u?'(?:\\.[0-9a-fA-F]*|[^'\\\n])'")
STRING = re.compile(r'"(?:\\.|[^"\\\n])*"')
BLANK = re.compile(r"\s*(?://[^\n]*\s*)*")


def argument(text, at):
    """What stands in the brackets that open at `at`, and the place behind them; None where they do not close."""
    depth = 0
    start = at + 1
    while at < len(text):
        literal = STRING.match(text, at) or (None if text[at - 1].isdigit() else CHARACTER.match(text, at))
        if literal:
            at = literal.end()
            continue
        if text[at] in "([{":
            depth += 1
        elif text[at] in ")]}":
            depth -= 1
            if depth == 0:
                return text[start:at], at + 1
        at += 1
    return None


def chains(text):
    """(place, what each call takes) of calls of arg upon one another."""
    at = 0
    behind = 0
    while (at := text.find(".arg(", at)) >= 0:
        calls = []
        place = at
        while text.startswith(".arg(", place):
            found = argument(text, place + 4)
            if found is None:
                break
            calls.append(found[0])
            place = BLANK.match(text, found[1]).end()
        if len(calls) > 1 and at >= behind:
            yield at, calls
            behind = place
        at += 5


def faults(text):
    for at, calls in chains(text):
        for early in calls[:-1]:
            if not early.endswith(".size()") and TYPED.search(STRING.sub('""', early)):
                yield text.count("\n", 0, at) + 1, early


PLANTED = [
    ('tr("%1: %2").arg(stack).arg(tray.tray)', True),
    ('tr("%1: %2").arg(QString::fromStdString(step.stack), kindText(step.kind)).arg(step.tray)', True),
    ('tr("%1, tray %2").arg(label.stack)\n        .arg(label.tray)', True),
    ('tr("%1 %2").arg(material.name).arg(2)', True),
    ('tr("%1: %2").arg(stack, QString::number(tray.tray))', False),
    ('tr("tray %1 of %2").arg(tray.tray).arg(stack)', False),
    ('tr("%1 of %2").arg(QFileInfo{household->path()}.size()).arg(entries.size())', False),
    ('tr("%1").arg(tr("%1: %2").arg(tray.tray).arg("name"))', False),
]


def planted():
    wrong = [text for text, bad in PLANTED if bool(list(faults(text))) != bad]
    for text in wrong:
        print(f"judged wrongly: {text}")
    return 1 if wrong else 0


def main():
    options = argparse.ArgumentParser()
    options.add_argument("--source", type=pathlib.Path)
    options.add_argument("--planted", action="store_true")
    chosen = options.parse_args()
    if chosen.planted:
        return planted()
    seen = found = 0
    for room in ("core", "ui", "app"):
        for source in sorted((chosen.source / room).rglob("*")):
            if source.suffix not in (".cpp", ".h"):
                continue
            text = source.read_text(encoding="utf-8")
            seen += text.count(".arg(")
            for line, early in faults(text):
                found += 1
                print(f"{source.relative_to(chosen.source)}:{line}: .arg({early}) has another .arg behind it")
    print(f"{seen} calls of arg, {found} of what people typed before another")
    return 1 if found or seen == 0 else 0


if __name__ == "__main__":
    sys.exit(main())
