#!/usr/bin/env python3
"""Holds every translation to its source text:  translations.py FOLDER [--against-sources]

One word for one thing (HOUSE_WORDS). Finished, not empty, the same placeholders, figures' keys, links and tags, as many mnemonics and line breaks, the same end (full stop, colon, ellipsis …), all
plural forms; and no piece of a sentence, which other languages join in another way. With --against-sources also that no text of the sources is missing (lupdate; for what may lag behind a day's work).
"""
import pathlib
import re
import shutil
import subprocess
import sys
import tempfile
import xml.etree.ElementTree as ET

PLACES = re.compile(r"%L?\d+|%L?n|\{[a-z0-9-]+\}|\[\[[a-z0-9-]+\||</?[a-z][^>]*>")
FORMS = 2  # of a plural, in each of the languages there are
END = re.compile(r"(…|\.|:|\?|!)?$")
JOINT = re.compile(r"[,;·]? ")  # what stands between the parts of a list
JOINED_YET = {"BedFields"}  # pieces of sentences still stand there: none is to come
# Words that stand for a thing which already has one: colony, stack, slot, castings, feed-to-cast, routine, bed and bedding, the list of what is due, food.
HOUSE_WORDS = {
    "de": r"\b[Vv]olks?\b|Wurm&?humus|auf Platz %|Fällig-Liste",
    "fr": r"bac de récupération|en place %1|nourriture-lombricompost|\b[Rr]outine|deux fois (moins|plus) vid|\w'\w",
    "es": r"\b[Cc]omidas?\b|\b(la|cada|ninguna|una) pila\b(?! de bandejas)|\bpuesto %|\bestantería|cobertura|\bcocón",
}
HEADERS = re.compile(r"^[^.]*\|")  # words by which a column is known: each language has its own


def faults_of(source, forms, plural, language=""):
    if plural and len(forms) != FORMS:
        yield f"{len(forms)} plural forms"
    for form in forms:
        if source.strip() and not form.strip():
            yield "empty"
            continue
        if HEADERS.match(source) and not PLACES.search(source):
            continue
        if (house := re.search(HOUSE_WORDS.get(language, "(?!)"), form)):
            yield f"«{house.group()}» has another word in this program"
        places, wanted = sorted(PLACES.findall(form)), sorted(PLACES.findall(source))
        if plural and "%n" not in places:  # "one tray" needs no number
            wanted = [each for each in wanted if each != "%n"]
        if places != wanted:
            yield f"placeholders {places}, not {wanted}"
        if form.replace("&&", "").count("&") != source.replace("&&", "").count("&"):
            yield "mnemonics"
        if ("\n" in form) != ("\n" in source):
            yield "line breaks"
        if len(source) > 8 and END.search(form.rstrip("\u00a0 ")).group(1) != END.search(source.rstrip("\u00a0 ")).group(1):
            yield f"ends in «{form[-1:]}», not in «{source[-1:]}»"


def messages(path):
    for context in ET.parse(path).getroot().findall("context"):
        for message in context.findall("message"):
            yield context.findtext("name"), message


def faults_in(path):
    for context, message in messages(path):
        source = message.findtext("source") or ""
        translation = message.find("translation")
        where = f"{path.name}: {context}: «{source[:60]}»"
        if (source[:1] in " ;" or source[-1:] == " ") and source and not JOINT.fullmatch(source) and context not in JOINED_YET:
            yield f"{where}: a piece of a sentence; give translators the whole"
        if translation is None or translation.get("type") == "unfinished":
            yield f"{where}: unfinished"
            continue
        plural = message.get("numerus") == "yes"
        forms = [each.text or "" for each in translation.findall("numerusform")] if plural else [translation.text or ""]
        # Words by which a page of the handbook is found are all that people may type.
        searched = context == "Handbook" and source[:1].islower() and END.search(source).group(1) is None
        for fault in faults_of(source, forms, plural, "" if searched else path.stem.split("_")[1]):
            yield f"{where}: {fault}"


def missing_in(path, top):
    """Texts of the sources that the file does not have in the context in which they are asked for."""
    with tempfile.TemporaryDirectory() as folder:
        fresh = pathlib.Path(folder) / path.name
        shutil.copy(path, fresh)
        subprocess.run(["/usr/lib/qt6/bin/lupdate", "-I", ".", "-locations", "none", "-no-obsolete", "core", "ui", "app", "-ts", str(fresh)], cwd=top, check=True,
                       capture_output=True)
        for context, message in messages(fresh):
            if path.stem.endswith("_en") and message.get("numerus") != "yes":
                continue
            if message.find("translation").get("type") == "unfinished":
                yield f"{path.name}: {context}: «{(message.findtext('source') or '')[:60]}»: not there, or not translated"


def main(arguments):
    folder = pathlib.Path(arguments[0])
    files = sorted(folder.glob("tierloam_*.ts"))
    found = [fault for path in files for fault in faults_in(path)]
    if "--against-sources" in arguments:
        found += [fault for path in files for fault in missing_in(path, folder.resolve().parents[1])]
    for fault in found[:50]:
        print(fault)
    print(f"{len(files)} languages, {sum(1 for path in files for _ in messages(path))} texts, {len(found)} at fault")
    return 1 if found or not files else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
