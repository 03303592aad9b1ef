#!/usr/bin/env python3
"""--calendar read back by python3-icalendar: what is due and planned, whole days, UIDs that stay while the journal grows.

ics_read_back.py --program TIERLOAM
"""
import argparse
import pathlib
import subprocess
import sys
import tempfile

import icalendar

HEADER = "date,stack,action,slot,amount,unit,item,detail,note\n"
NAME = "Größe, \"Lean-to\", back\\wall 🪱🪱🪱🪱🪱🪱🪱🪱🪱🪱🪱🪱🪱🪱🪱🪱"


def cell(text):
    return '"' + text.replace('"', '""') + '"'


def journal(weeks):
    rows = [HEADER]
    for stack in ("Mill", NAME):
        name = cell(stack)
        rows.append(f"2030-01-05,{name},setup,,,,,temp=22;trays=3;spigot=shut,\n")
        rows.append(f"2030-01-05,{name},bed,,480,g,corrugated cardboard shredded,,\n")
        rows.append(f"2030-01-05,{name},stock,,450,g,,,\n")
        for tray, day in (("a", "2030-03-25"), ("b", "2030-06-05")):
            rows.append(f"{day},{name},bed,,480,g,corrugated cardboard shredded,,{tray}\n")
    for week in range(weeks):
        day = (import_date() + 7 * week).isoformat()
        for stack in ("Mill", NAME):
            rows.append(f"{day},{cell(stack)},feed,,800,g,,,\n")
    return "".join(rows)


class import_date:
    """2030-01-12, to which days are added."""

    def __add__(self, days):
        import datetime
        return datetime.date(2030, 1, 12) + datetime.timedelta(days=days)


def calendar(program, folder, weeks, at):
    name = f"h{weeks}"
    (folder / f"{name}.csv").write_text(journal(weeks), encoding="utf-8")
    if not (folder / f"{name}.tierloam").exists():
        subprocess.run([program, folder / f"{name}.tierloam", "--import", folder / f"{name}.csv"], check=True, capture_output=True)
    target = folder / f"{name}-{at}.ics"
    subprocess.run([program, folder / f"{name}.tierloam", "--calendar", target, "--at", at], check=True, capture_output=True)
    return target.read_bytes()


def checked(data, failures):
    for line in data.split(b"\r\n"):
        if b"\n" in line or b"\r" in line:
            failures.append("a line break that is not CRLF")
        if len(line) > 75:
            failures.append(f"a line of {len(line)} octets")
        line.decode("utf-8")  # folded inside a character: this fails
    read = icalendar.Calendar.from_ical(data)
    events = [part for part in read.walk() if part.name == "VEVENT"]
    if not events:
        failures.append("no events")
    uids = [str(event["UID"]) for event in events]
    if len(set(uids)) != len(uids):
        failures.append("a UID twice")
    for event in events:
        if (event["DTEND"].dt - event["DTSTART"].dt).days != 1:
            failures.append(f"{event['UID']}: not one day")
    return {str(event["UID"]): event for event in events}


def main():
    options = argparse.ArgumentParser()
    options.add_argument("--program", required=True)
    program = options.parse_args().program
    failures = []
    with tempfile.TemporaryDirectory() as name:
        folder = pathlib.Path(name)
        first = checked(calendar(program, folder, 30, "2030-08-10"), failures)
        later = checked(calendar(program, folder, 31, "2030-08-14"), failures)
        again = checked(calendar(program, folder, 30, "2030-08-12"), failures)
    summaries = [str(event["SUMMARY"]) for event in first.values()]
    if not any(text.startswith(NAME + ": ") for text in summaries):
        failures.append(f"the stack's name did not come back: {summaries}")
    lifts = {uid for uid in first if "-lift-" in uid}
    if not lifts:
        failures.append(f"no lift among {sorted(first)}")
    if not lifts & set(later):
        failures.append("no lift kept its UID while the journal grew")
    if not lifts <= set(again):
        failures.append(f"lifts lost from one export to the next: {lifts - set(again)}")
    # The check can fail: a line cut inside a character, and one that is too long.
    planted = []
    try:
        checked(b"BEGIN:VCALENDAR\r\nX:" + b"a" * 90 + b"\r\nEND:VCALENDAR\r\n", planted)
    except Exception:  # noqa: BLE001 - whatever the library says
        planted.append("refused")
    if not planted:
        failures.append("a planted fault was not seen")
    for failure in failures:
        print(failure)
    print(f"{len(first)} events, {len(lifts)} lifts")
    return 1 if failures else 0


if __name__ == "__main__":
    sys.exit(main())
