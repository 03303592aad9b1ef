#!/usr/bin/env python3
"""The check of translations must see what is planted here, one fault at a time."""
import pathlib
import sys
import tempfile

import translations

GOOD = """<TS version="2.1" language="xx"><context><name>C</name>
<message><source>&amp;Save %1 to {place} and [[id|words]]…</source><translation>%1 &amp;tu {place} od [[id|mots]]…</translation></message>
<message numerus="yes"><source>%n tray(s) of %1.</source><translation><numerusform>une di %1.</numerusform><numerusform>%n di %1.</numerusform></translation></message>
</context></TS>"""

PLANTED = [
    ("<translation>%1 &amp;tu", "<translation type=\"unfinished\">%1 &amp;tu"),
    ("%1 &amp;tu", "%2 &amp;tu"),
    ("%1 &amp;tu", "%1 tu"),
    ("{place} od", "place od"),
    ("od [[id|", "od [[ie|"),
    ("mots]]…</tr", "mots]]</tr"),
    ("<numerusform>%n di %1.</numerusform>", ""),
    ("%n di %1.", "%n di."),
    ("une di %1.", ""),
    ("<source>%n tray", "<source> %n tray"),
    ("<source>%n tray", "<source>; %n tray"),
    (" of %1.</source>", " of %1. </source>"),
]


# Each second word for a thing, by language.
SECOND_WORDS = [("de", "das Volk wächst"), ("de", "Wurmhumus"), ("fr", "le bac de récupération"), ("fr", "une routine"), ("fr", "jusqu'à"), ("es", "la pila"), ("es", "el puesto %1")]


def found(text, language="xx"):
    with tempfile.TemporaryDirectory() as folder:
        path = pathlib.Path(folder) / f"tierloam_{language}.ts"
        path.write_text(text, encoding="utf-8")
        return list(translations.faults_in(path))


def main():
    if found(GOOD):
        print("the good one:", found(GOOD))
        return 1
    missed = [(old, new) for old, new in PLANTED if old not in GOOD or not found(GOOD.replace(old, new))]
    for language, words in SECOND_WORDS:
        said = GOOD.replace("%1 &amp;tu", f"%1 &amp;tu {words.replace(' %1', ' ')}" if "%1" not in words else f"{words} &amp;tu")
        if found(GOOD, language) or not found(said, language):
            missed.append((language, words))
    print(f"{len(PLANTED) + len(SECOND_WORDS) - len(missed)} of {len(PLANTED) + len(SECOND_WORDS)} planted faults seen", missed)
    return 1 if missed else 0


if __name__ == "__main__":
    sys.exit(main())
