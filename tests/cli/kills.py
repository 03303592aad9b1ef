#!/usr/bin/env python3
"""kill -9 under load: processes that write, import and back up are killed at random moments; nothing acknowledged may be lost.

kills.py --program P --hand H --samples DIR [--rounds N]      (TIERLOAM_LONG: 300 rounds, else 25)

A file lives through 50 rounds. In each, two writers and now and then an import work on it and are killed after a random time; then every
id that was acknowledged, in all rounds so far, must be in the file with its note, the file whole, every backup whole, and a record must be
taken at once: a lock left by the dead keeps nobody out.
"""
import argparse
import os
import pathlib
import random
import sqlite3
import subprocess
import sys
import tempfile
import time

START = ("date,stack,action,slot,amount,unit,item,detail,note\n2031-01-01,Mill,setup,,,,,,\n"
         "2031-01-01,Mill,bed,,900,g,corrugated cardboard shredded,,\n2031-01-02,Mill,stock,,450,g,,,\n")


def acknowledged(log):
    """Whole lines only: a killed process may leave half a number."""
    text = log.read_text() if log.exists() else ""
    return {int(line) for line in text[:text.rfind("\n") + 1].split()}


def main():
    parser = argparse.ArgumentParser()
    parser.add_argument("--program", required=True)
    parser.add_argument("--hand", required=True)
    parser.add_argument("--samples")
    parser.add_argument("--rounds", type=int, default=300 if os.environ.get("TIERLOAM_LONG") else 25)
    options = parser.parse_args()
    chance = random.Random(20310501)
    lost, wrong, killed, imports = 0, [], 0, 0
    with tempfile.TemporaryDirectory() as name:
        folder = pathlib.Path(name)
        (folder / "start.csv").write_text(START)
        rows = "".join(f"2031-02-01,Mill,note,,,,,,import row {i}\n" for i in range(400))
        (folder / "more.csv").write_text(START.splitlines()[0] + "\n" + rows)
        run = lambda *arguments: subprocess.run([options.program, "h.tierloam", *arguments], cwd=folder, capture_output=True, text=True, check=False)
        known, acked = set(), 0
        for turn in range(options.rounds):
            if turn % 50 == 0:
                for old in folder.glob("h.tierloam*"):
                    old.unlink()
                assert run("--import", "start.csv").returncode == 0
                known, acked = set(), acked + len(known)
            logs = [folder / f"log{turn}-{i}" for i in range(2)]
            working = [subprocess.Popen([options.hand, "h.tierloam", "feed", "100000", log.name], cwd=folder, stderr=subprocess.DEVNULL) for log in logs]
            importing = turn % 5 == 0
            if importing:
                working.append(subprocess.Popen([options.program, "h.tierloam", "--import", "more.csv"], cwd=folder, stdout=subprocess.PIPE, stderr=subprocess.DEVNULL, text=True))
            time.sleep(chance.uniform(0.02, 1.0 if importing else 0.3))
            for process in working:
                process.kill()
            said = [process.communicate()[0] for process in working]
            killed += sum(process.returncode == -9 for process in working)
            for log in logs:
                known |= acknowledged(log)
                log.unlink(missing_ok=True)
            imports += bool(importing and said[-1])
            answer = run("--record", f"2031-06-01,Mill,note,,,,,,after round {turn}")
            if answer.returncode != 0:
                wrong.append(f"round {turn}: a record after it: {answer.returncode} {answer.stderr}")
                continue
            known.add(int(answer.stdout))
            database = sqlite3.connect(folder / "h.tierloam")
            if database.execute("PRAGMA integrity_check").fetchall() != [("ok",)]:
                wrong.append(f"round {turn}: the file is not whole")
            there = {row[0] for row in database.execute("SELECT id FROM entries WHERE deleted_at IS NULL")}
            if database.execute("SELECT count(*) FROM entries WHERE note LIKE 'import row%'").fetchone()[0] % 400:
                wrong.append(f"round {turn}: half an import")
            lost += len(known - there)
            database.close()
        for backup in (folder / "h backups").glob("*.tierloam"):
            database = sqlite3.connect(f"file:{backup}?mode=ro", uri=True)
            if database.execute("PRAGMA integrity_check").fetchall() != [("ok",)]:
                wrong.append(f"{backup.name} is not whole")
            database.close()
    print(f"{options.rounds} rounds, {killed} processes killed, {acked + len(known)} entries acknowledged, {imports} imports finished in time; lost {lost}, wrong {len(wrong)}")
    for line in wrong[:20]:
        print("WRONG", line)
    return 1 if lost or wrong or killed < options.rounds or not known else 0


if __name__ == "__main__":
    sys.exit(main())
