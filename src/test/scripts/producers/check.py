#!/usr/bin/python3
"""Reads a set that make.py made and prints how it compares, by producer; ends with 1 if a file differs or a pass lies elsewhere.

    check.py FOLDER LINES.pdf PASS      (CLASSPATH: libraries and compiled classes, test classes included)

PASS is placed by every file that is marked so, and by LINES.pdf itself: corners may lie a tenth of a pixel apart.
"""
import json
import subprocess
import sys
from pathlib import Path

PER_PIXEL = 0.1


def java(*arguments):
    return subprocess.run(["java", "-Xmx1g", "-Djava.awt.headless=true", *map(str, arguments)],
                          stdout=subprocess.PIPE, stderr=subprocess.DEVNULL).stdout.decode()


def placement(lines, raster):
    told = java("org.adumbrate.cli.Adumbrate", "register", lines, raster, "--json", "-")
    return json.loads(told)["placements"][0]


def apart(one, other, scale):
    """The largest distance of a corner, in pixels of the pass; the second sheet's page may be scaled."""
    worst = 0
    for u in (0, one["widthPx"]):
        for v in (0, one["heightPx"]):
            at = [[row[0] * u + row[1] * v + row[2] for row in p["passToSheet"]] for p in (one, other)]
            pixel = abs(one["passToSheet"][0][0])
            worst = max(worst, *(abs(a - b / scale) / pixel for a, b in zip(*at)))
    return worst


def length(expected):
    """Of all that a file should hold, in mm."""
    return sum(float(color.split("=")[1]) for color in expected.split(","))


def main():
    folder, lines, raster = map(Path, sys.argv[1:4])
    wrong, table = 0, {}
    for row in java("org.adumbrate.producers.ProducedFiles", folder).splitlines():
        fields = row.split("\t")
        if len(fields) < 3:
            continue
        producer = fields[0].split("-")[0].split(".")[0]
        same = fields[1] == "same"
        files, good = table.get(producer, (0, 0))
        table[producer] = (files + 1, good + same)
        if not same:
            wrong += 1
            print(f"{fields[0]}: {fields[1]}" + (f" [{fields[2]}]" if fields[2] else ""))
    true = placement(lines, raster)
    rows = [row.split("\t") for row in (folder / "expected.tsv").read_text().splitlines()]
    whole = next(length(expected) for name, _, _, expected in rows if name == "cairo-plain.pdf")
    for name, _, placed, expected in rows:
        if not placed:
            continue
        found = placement(folder / name, raster)
        off = apart(true, found, length(expected) / whole) if found["status"] == "aligned" else float("inf")
        if off > PER_PIXEL:
            wrong += 1
        print(f"{name}: {raster.name} {found['status']}, {off:.4f} px off")
    print("\n| producer | files | within bounds |\n| --- | --- | --- |")
    for producer, (files, good) in sorted(table.items()):
        print(f"| {producer} | {files} | {good} |")
    print(f"| all | {sum(f for f, _ in table.values())} | {sum(g for _, g in table.values())} |")
    sys.exit(1 if wrong else 0)


main()
