#!/usr/bin/env python3
"""app/setup.sh and app/start.sh with stand-ins for dpkg-query, apt-get, sudo, id and cmake: what they install, build, start and say."""
import os
import pathlib
import shutil
import subprocess
import sys
import tempfile
import time
import unittest

TOP = pathlib.Path(__file__).parents[2]


class Sandbox:
    """A copy of the scripts, and a folder of stand-ins that is all of PATH but for plain tools."""

    def __init__(self, folder):
        self.top = pathlib.Path(folder) / "checkout"
        self.bin = pathlib.Path(folder) / "bin"
        self.calls = pathlib.Path(folder) / "calls"
        (self.top / "app").mkdir(parents=True)
        self.bin.mkdir()
        for name in ("core", "ui", "resources", "demo-data"):
            (self.top / name).mkdir()
        for name in ("CMakeLists.txt", "CMakePresets.json"):
            (self.top / name).write_text("")
        for name in ("setup.sh", "start.sh"):
            shutil.copy(TOP / "app" / name, self.top / "app")
        (self.top / "app/packages.txt").write_text("# what it takes\ncmake\ng++ # the compiler\n")
        for tool in "sh cat sed mktemp rm dirname date touch find mkdir mv tail env uname".split():
            (self.bin / tool).symlink_to(shutil.which(tool))

    def stand_in(self, name, body):
        path = self.bin / name
        path.write_text(f'#!/bin/sh\necho "{name} $*" >>"{self.calls}"\n{body}\n')
        path.chmod(0o755)

    def debian(self, installed, user=0):
        cases = "|".join(installed) or "none"
        self.stand_in("dpkg-query", f'for last; do :; done; case $last in {cases}) printf installed ;; *) exit 1 ;; esac')
        self.stand_in("apt-get", "echo apt says much")
        self.stand_in("id", f"echo {user}")

    def run(self, *command, **environment):
        if self.calls.exists():
            self.calls.unlink()
        result = subprocess.run(["sh", *map(str, command)], capture_output=True, text=True, check=False, cwd=self.top.parent,
                                stdin=subprocess.DEVNULL, env={"PATH": str(self.bin), **environment})
        calls = self.calls.read_text().splitlines() if self.calls.exists() else []
        return result, [call for call in calls if not call.startswith(("dpkg-query", "id "))]

    def setup(self):
        return self.run(self.top / "app/setup.sh", self.top / "app/packages.txt")

    def start(self, *arguments, **environment):
        return self.run(self.top / "app/start.sh", *arguments, **environment)


class WithSandbox(unittest.TestCase):
    def setUp(self):
        self.folder = tempfile.TemporaryDirectory()
        self.addCleanup(self.folder.cleanup)
        self.box = Sandbox(self.folder.name)


class Setup(WithSandbox):
    def test_touches_nothing_when_nothing_is_missing(self):
        self.box.debian(["cmake", "g++"], user=1000)
        result, calls = self.box.setup()
        self.assertEqual((result.returncode, result.stdout, result.stderr, calls), (0, "", "", []))

    def test_installs_only_what_is_missing_as_root(self):
        self.box.debian(["cmake"])
        result, calls = self.box.setup()
        self.assertEqual(result.returncode, 0, result.stderr)
        self.assertEqual(calls, ["apt-get update", "apt-get install -y --no-install-recommends g++"])
        self.assertNotIn("apt says much", result.stdout + result.stderr)

    def test_asks_sudo_when_not_root(self):
        self.box.debian(["g++"], user=1000)
        self.box.stand_in("sudo", '[ "$1" = -n ] && exit 0; exec "$@"')
        result, calls = self.box.setup()
        self.assertEqual(result.returncode, 0, result.stderr)
        self.assertIn("apt-get install -y --no-install-recommends cmake", calls)
        self.assertTrue(any(call.startswith("sudo env DEBIAN_FRONTEND=noninteractive apt-get install") for call in calls), calls)

    def test_says_exactly_what_to_install_without_root_and_sudo(self):
        self.box.debian([], user=1000)
        result, calls = self.box.setup()
        self.assertEqual((result.returncode, calls), (1, []))
        self.assertIn("apt-get update && apt-get install --no-install-recommends cmake g++\n", result.stderr)

    def test_shows_why_an_installation_failed(self):
        self.box.debian([])
        self.box.stand_in("apt-get", "echo no such mirror; exit 100")
        result, _ = self.box.setup()
        self.assertEqual(result.returncode, 1)
        self.assertIn("no such mirror", result.stderr)
        self.assertIn("«apt-get update» failed", result.stderr)

    def test_names_the_packages_on_another_system_and_goes_on(self):
        result, _ = self.box.setup()
        self.assertEqual(result.returncode, 0)
        self.assertIn("cmake g++", result.stderr)


class Start(WithSandbox):
    def setUp(self):
        super().setUp()
        self.box.debian(["cmake", "g++"])
        program = self.box.top / "build/app/tierloam"
        self.built = pathlib.Path(self.folder.name) / "built" # what the stand-in of cmake puts in its place
        self.built.write_text(f'#!/bin/sh\necho "tierloam $* platform=$QT_QPA_PLATFORM" >>"{self.box.calls}"\nexit ${{PROGRAM_STATUS:-0}}\n')
        self.built.chmod(0o755)
        (self.box.bin / "cp").symlink_to(shutil.which("cp"))
        self.box.stand_in("cmake", f'mkdir -p "{program.parent}" && cp -p "{self.built}" "{program}"')

    def started(self, *arguments, **environment):
        result, calls = self.box.start(*arguments, **environment)
        return result, [call for call in calls if call.startswith("tierloam")]

    def test_builds_first_then_only_starts_until_something_changes(self):
        _, calls = self.box.start(DISPLAY=":0")
        self.assertEqual(calls, ["cmake --preset release", f"cmake --build {self.box.top}/build", "tierloam --demo platform="])
        _, calls = self.box.start(DISPLAY=":0")
        self.assertEqual(calls, ["tierloam --demo platform="])
        later = time.time() + 5
        (self.box.top / "core/new.cpp").write_text("")
        os.utime(self.box.top / "core/new.cpp", (later, later))
        _, calls = self.box.start(DISPLAY=":0")
        self.assertEqual(calls[0], "cmake --preset release")

    def test_passes_arguments_on(self):
        (pathlib.Path(self.folder.name) / "mine").write_text("")
        for arguments, expected in (((), "--demo"), (("--lang", "de"), "--demo --lang de"), (("my bin.tierloam",), "my bin.tierloam"),
                                    (("mine",), "mine"), (("--demo", "--theme", "dark"), "--demo --theme dark"),
                                    (("--portrait", "there"), "--demo --portrait there")):
            with self.subTest(arguments):
                _, calls = self.started(*arguments, DISPLAY=":0")
                self.assertEqual(calls, [f"tierloam {expected} platform="])

    def test_needs_no_display_for_calls_without_a_window(self):
        for arguments in (("--version",), ("a.tierloam", "--summary"), ("a.tierloam", "--import", "j.csv")):
            with self.subTest(arguments):
                _, calls = self.started(*arguments)
                self.assertEqual(calls, [f"tierloam {' '.join(arguments)} platform="])

    def test_draws_the_pages_without_a_display_and_says_so(self):
        result, calls = self.started()
        self.assertEqual(calls, [f"tierloam --demo --portrait {self.box.top}/build/pages platform=offscreen"])
        self.assertIn("There is no display.", result.stderr)
        self.assertIn(f"{self.box.top}/build/pages", result.stderr)

    def test_draws_the_pages_when_the_display_cannot_be_opened(self):
        result, calls = self.started(DISPLAY=":99", PROGRAM_STATUS="134")
        self.assertEqual(len(calls), 2)
        self.assertIn("--portrait", calls[1])
        self.assertIn("could not be opened", result.stderr)

    def test_hands_on_the_status_of_the_program(self):
        result, calls = self.started(DISPLAY=":0", PROGRAM_STATUS="2")
        self.assertEqual((result.returncode, len(calls)), (2, 1))

    def test_shows_the_end_of_a_failed_build_and_builds_again(self):
        self.box.stand_in("cmake", "echo error: it does not fit; exit 1")
        for _ in range(2):
            result, calls = self.box.start(DISPLAY=":0")
            self.assertEqual((result.returncode, calls), (1, ["cmake --preset release"]))
            self.assertIn("it does not fit", result.stderr)


if __name__ == "__main__":
    sys.exit(unittest.main())
