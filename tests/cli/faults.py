#!/usr/bin/env python3
"""Breaks the built program at its calls to the system, one after another, and looks at what is left.

faults.py --program P --hand H --samples DIR [--long]

Each job (record, import, edit, readings of a logger, migration, backup) is run again and again under strace. In run N the N-th call of one kind does not take
place: the program is killed there, or the call answers EIO or ENOSPC, once or from then on; N grows until the job survives. After each run:
what was acknowledged is in the file, what was told to have failed is not, the file is whole, every backup is a whole household, and a
program that lived ended with 0 or with 1 and a reason. Without --long N takes wider steps once it has passed the first calls.
"""
import argparse
import glob
import os
import pathlib
import shutil
import sqlite3
import subprocess
import sys
import tempfile

CALLS = ["pwrite64", "fdatasync", "fsync", "ftruncate", "unlink", "renameat2"]
WAYS = {"killed": "error=EIO:signal=KILL:when={n}", "EIO": "error=EIO:when={n}", "ENOSPC": "error=ENOSPC:when={n}", "ENOSPC from then on": "error=ENOSPC:when={n}+"}
START = ("date,stack,action,slot,amount,unit,item,detail,note\n2031-01-01,Mill,setup,,,,,,\n"
         "2031-01-01,Mill,bed,,900,g,corrugated cardboard shredded,,\n2031-01-02,Mill,stock,,450,g,,,\n")
ENVIRONMENT = {name: value for name, value in os.environ.items() if name not in ("DISPLAY", "WAYLAND_DISPLAY")} | {"QT_QPA_PLATFORM": "nonsense"}


class Bench:
    """A folder with a household as it stood before the job, copied afresh for each run."""

    def __init__(self, options, folder):
        self.options = options
        self.before = pathlib.Path(folder) / "before"
        self.now = pathlib.Path(folder) / "now"
        self.before.mkdir()
        (self.before / "start.csv").write_text(START)
        rows = [f"2031-02-{1 + i % 28:02},Mill,feed,,{100 + i},g,,,\"row {i} {'x' * 120}\"" for i in range(60)]
        (self.before / "more.csv").write_text(START.splitlines()[0] + "\n" + "\n".join(rows) + "\n")

    def program(self, *arguments, folder=None):
        return subprocess.run([self.options.program, *arguments], cwd=folder or self.before, env=ENVIRONMENT, capture_output=True, text=True, check=False)

    def fresh(self):
        shutil.rmtree(self.now, ignore_errors=True)
        shutil.copytree(self.before, self.now)

    def broken(self, command, inject):
        return subprocess.run(["strace", "-f", "-qq", "-o", "/dev/null", "-e", "trace=" + ",".join(CALLS), *(("-e", inject) if inject else ()), *command],
                              cwd=self.now, env=ENVIRONMENT, capture_output=True, text=True, check=False, timeout=120)


def notes(file):
    """Live notes and amounts, or what is wrong with the file; read by SQLite alone."""
    database = sqlite3.connect(f"file:{file}?mode=rw", uri=True)
    try:
        whole = database.execute("PRAGMA integrity_check").fetchall()
        if whole != [("ok",)]:
            return f"not whole: {whole}"
        held = sorted(database.execute("SELECT action, coalesce(amount, 0), note FROM entries WHERE deleted_at IS NULL").fetchall())
        if database.execute("SELECT 1 FROM sqlite_schema WHERE name = 'logged_readings'").fetchall():
            held += [("logged", *row, "") for row in database.execute("SELECT count(*), coalesce(sum(value), 0) FROM logged_readings").fetchall() if row[0] > 0]
        return held
    except sqlite3.Error as error:
        return f"unreadable: {error}"
    finally:
        database.close()


class Job:
    def __init__(self, name, command, acknowledged, prepare):
        self.name, self.command, self.acknowledged, self.prepare = name, command, acknowledged, prepare


def jobs(bench):
    program, hand = bench.options.program, bench.options.hand
    row = "2031-03-01,Mill,feed,,777,g,,,the new row"

    def started():
        assert bench.program("h.tierloam", "--import", "start.csv").returncode == 0

    def backed_up():
        started()
        assert bench.program("h.tierloam", "--record", "2031-01-03,Mill,note,,,,,,x").returncode == 0
        assert glob.glob(str(bench.before / "h backups/*_day.tierloam"))

    def older():
        shutil.copy(bench.options.samples / "household_schema_1.tierloam", bench.before / "h.tierloam")

    record = [program, "h.tierloam", "--record", row]
    yield Job("record", record, lambda answer: answer.stdout.strip().isdigit(), backed_up)
    yield Job("backup", record, lambda answer: answer.stdout.strip().isdigit(), started)
    yield Job("import", [program, "h.tierloam", "--import", "more.csv"], lambda answer: answer.stdout.startswith("imported"), backed_up)
    yield Job("edit", [hand, "h.tierloam", "edit"], lambda answer: answer.stdout == "done\n", backed_up)
    yield Job("readings", [hand, "h.tierloam", "readings", "400"], lambda answer: answer.stdout == "done\n", backed_up)
    yield Job("new file", [program, "n.tierloam", "--import", "start.csv"], lambda answer: answer.stdout.startswith("imported"), lambda: None)
    yield Job("migration", [program, "h.tierloam", "--record", "2031-05-02,Scullery,note,,,,,,the new row"], lambda answer: answer.stdout.strip().isdigit(), older)


class Count:
    def __init__(self):
        self.runs = self.survived = self.told = self.killed = self.after_all = 0
        self.wrong = []


def judge(bench, job, answer, before, after, how, count):
    """What must hold after a run, however it ended."""
    file = bench.now / job.command[1]

    def wrong(what):
        count.wrong.append(f"{job.name}, {how}: {what}; code {answer.returncode}, said «{answer.stdout.strip()}» «{answer.stderr.strip()}»")

    killed = answer.returncode in (-9, 137)
    if killed:
        count.killed += 1
    elif answer.returncode not in (0, 1):
        wrong("ended otherwise")
    elif answer.returncode == 1 and not answer.stderr.strip():
        wrong("failed without a reason")
    if not killed and answer.returncode == 0 and not job.acknowledged(answer):
        wrong("done without an answer")
    if not killed and answer.returncode == 1:
        count.told += 1
    held = notes(file) if file.exists() else []
    if not killed and answer.returncode == 1 and before == [] and file.exists() and file.stat().st_size > 0 and held not in ([], after):
        wrong("a new file half made")
    if isinstance(held, str) and not (before == [] and "no such table" in held):  # a blank new file is set up by the next call
        wrong(held)
    elif job.acknowledged(answer) and held != after:
        wrong("what was acknowledged is not there")
    elif not job.acknowledged(answer) and held not in (before, after) and not isinstance(held, str):
        wrong("half of it is there")
    elif answer.returncode == 1 and held == after and not job.acknowledged(answer):
        # The disk took the bytes, refused to confirm them and went on refusing: then the program must have said that it does not know.
        count.after_all += 1
        if "did not confirm" not in answer.stderr:
            wrong("told as failed, and there all the same")
    for backup in glob.glob(str(bench.now / "* backups/*.tierloam")) + glob.glob(str(bench.now / "*_step.tierloam")):
        if isinstance(notes(backup), str):
            wrong(f"backup {backup} {notes(backup)}")
    if not killed and glob.glob(str(bench.now / "**/.*.part*"), recursive=True) and answer.returncode == 0 and "unlink" not in how:
        wrong("a part of a copy left behind")
    # And the program goes on with it as if nothing had been.
    if count.runs % 5 == 0 or killed:
        again = bench.program(job.command[1], "--export", "out.csv", folder=bench.now)
        if again.returncode != 0 and before != []:
            wrong(f"cannot be opened afterwards: {again.stderr.strip()}")


def break_job(bench, job, long):
    job.prepare()
    file = bench.before / job.command[1]
    before = notes(file) if file.exists() else []
    bench.fresh()
    answer = bench.broken(job.command, None)
    after = notes(bench.now / job.command[1])
    assert answer.returncode == 0 and job.acknowledged(answer) and after != before and not isinstance(after, str), (job.name, answer, after)
    count = Count()
    for call in CALLS:
        for way, how in WAYS.items():
            n = 1
            while True:
                bench.fresh()
                answer = bench.broken(job.command, f"inject={call}:" + how.format(n=n))
                count.runs += 1
                judge(bench, job, answer, before, after, f"{call} {n} {way}", count)
                untouched = untouched_by(bench, job, call, n)
                if untouched:
                    count.survived += 1
                    break
                n += 1 if long or n < 3 else n
    return count


CALLS_MADE = {}


def untouched_by(bench, job, call, n):
    """Whether the job makes fewer than n such calls, so that nothing was injected."""
    if (job.name, call) not in CALLS_MADE:
        bench_now = bench.now
        shutil.rmtree(bench_now, ignore_errors=True)
        shutil.copytree(bench.before, bench_now)
        trace = bench_now / "trace"
        subprocess.run(["strace", "-f", "-qq", "-o", str(trace), "-e", "trace=" + call, *job.command], cwd=bench_now, env=ENVIRONMENT, capture_output=True, check=True)
        CALLS_MADE[job.name, call] = sum(1 for line in trace.read_text().splitlines() if f" {call}(" in line)
    return n > CALLS_MADE[job.name, call] + 1


def main():
    parser = argparse.ArgumentParser()
    parser.add_argument("--program", required=True)
    parser.add_argument("--hand", required=True)
    parser.add_argument("--samples", required=True, type=pathlib.Path)
    parser.add_argument("--long", action="store_true", default=bool(os.environ.get("TIERLOAM_LONG")))
    parser.add_argument("--only")
    options = parser.parse_args()
    if not shutil.which("strace"):
        print("install strace: tests/packages.txt", file=sys.stderr)
        return 1
    total, bad = 0, []
    with tempfile.TemporaryDirectory() as folder:
        probe = Bench(options, folder)
        names = [job.name for job in jobs(probe)]
    for name in names:
        if options.only and options.only != name:
            continue
        with tempfile.TemporaryDirectory() as folder:
            bench = Bench(options, folder)
            job = next(job for job in jobs(bench) if job.name == name)
            count = break_job(bench, job, options.long)
            made = {call: CALLS_MADE[name, call] for call in CALLS}
            print(f"{name}: {count.runs} runs ({made}); killed {count.killed}, told {count.told}, faults of the rest borne; "
                  f"told as failed but there {count.after_all}; wrong {len(count.wrong)}", flush=True)
            total += count.runs
            bad += count.wrong
    for line in bad[:60]:
        print("WRONG", line)
    print(f"{total} faults injected, {len(bad)} with a wrong end")
    return 1 if bad or total == 0 else 0


if __name__ == "__main__":
    sys.exit(main())
