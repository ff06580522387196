#!/usr/bin/env python3
"""Times builds of the demo after one change of each kind, against making everything anew.

    src/test/scripts/rebuild-times.py [ROUNDS]

Copies the demo to a temporary folder. For every kind of change, in each round (5 if not said) anew: a build with all made
anew, then a change and a build by a run of its own, and the same change seen by a run that watches. Prints medians in
seconds and what was made anew. ADUMBRATE names the launcher, if not that of the tree. Needs a quiet machine.
"""
import os
import re
import shutil
import statistics
import subprocess
import sys
import tempfile
import time
from pathlib import Path

ROOT = Path(__file__).resolve().parents[3]
LAUNCHER = os.environ.get("ADUMBRATE", str(ROOT / "adumbrate"))
ITEMS = ["--only", "preview,underlay,drawing"]
TOLD = re.compile(r"built in ([\d.]+) s; reused: .*; made anew: (.*?)(; watching)?$")


def sheet_change(pattern, values):
    """Replaces a number of the sheet file by one that it has not had yet."""
    def change(yard, turn):
        sheet = yard / "kiln-yard.sheet.yaml"
        sheet.write_text(re.sub(pattern, lambda m: m[1] + values(turn) + m[2], sheet.read_text(), count=1))
    return change


def file_change(name, tail):
    """Gives a file another content that shows the same."""
    def change(yard, turn):
        with open(yard / name, "ab") as file:
            file.write(tail + str(turn).encode())
    return change


CHANGES = {
    "nothing": lambda yard, turn: os.utime(yard / "kiln-yard.sheet.yaml"),
    "opacity": sheet_change(r"(occlusion.png, opacity: )[\d.]+( )", lambda turn: str(40 + turn)),
    "pen": sheet_change(r"(0060a8\", width: )[\d.]+( mm)", lambda turn: f"0.{140 + turn}"),
    "figure moved": sheet_change(r"(foot: \[)[\d.]+(, 228.3\])", lambda turn: f"{334 + turn / 10}"),
    "shadow re-exported": file_change("shadow.jpg", b"\n"),
    "lines re-exported": file_change("lines.pdf", b"\n%"),
}


def build(sheet, *options):
    begin = time.monotonic()
    done = subprocess.run([LAUNCHER, "build", str(sheet), *ITEMS, *options], capture_output=True, text=True, check=True)
    told = [match for line in done.stderr.splitlines() if (match := TOLD.match(line))]
    return time.monotonic() - begin, told[-1][2] if told else "everything"


def main():
    rounds = int(sys.argv[1]) if len(sys.argv) > 1 else 5
    with tempfile.TemporaryDirectory() as folder:
        yard = Path(folder) / "yard"
        shutil.copytree(ROOT / "passes" / "kiln-yard", yard, ignore=shutil.ignore_patterns("out"))
        sheet = yard / "kiln-yard.sheet.yaml"
        build(sheet)
        turn = 0
        full = [build(sheet, "--anew")[0] for _ in range(rounds)]
        print(f"{'all anew':20} {statistics.median(full):5.2f}")
        single = {}
        for name, change in CHANGES.items():
            times = []
            for _ in range(rounds):
                turn += 1
                change(yard, turn)
                seconds, made = build(sheet)
                times.append(seconds)
            single[name] = statistics.median(times), made
        watch = subprocess.Popen(
            [LAUNCHER, "build", str(sheet), *ITEMS, "--watch"],
            stdout=subprocess.DEVNULL, stderr=subprocess.PIPE, text=True)

        def told():
            for line in watch.stderr:
                if match := TOLD.match(line.strip()):
                    return float(match[1])
            raise SystemExit("the watching run ended")

        told()
        for name, change in CHANGES.items():
            times = []
            for _ in range(rounds):
                turn += 1
                time.sleep(0.3)
                change(yard, turn)
                times.append(told())
            seconds, made = single[name]
            print(f"{name:20} {seconds:5.2f} {statistics.median(times):5.2f}  {made}")
        watch.terminate()


if __name__ == "__main__":
    main()
