"""The lines of one sheet, as plain numbers, and the book that is kept of files that draw them."""
import re
import subprocess
from pathlib import Path

MM = 25.4 / 72


class Scene:
    """Strokes of a page: colour as three shares of 1, both ends in points, y up, in the order of the file."""

    def __init__(self, pdf, every=1):
        text = subprocess.run(["qpdf", "--qdf", "--object-streams=disable", str(pdf), "-"],
                              check=True, stdout=subprocess.PIPE).stdout.decode("latin-1")
        box = re.search(r"/MediaBox \[\s*([\d.]+)\s+([\d.]+)\s+([\d.]+)\s+([\d.]+)", text)
        self.width, self.height = float(box.group(3)), float(box.group(4))
        number = r"([-\d.]+)"
        line = re.compile(rf"{number} {number} {number} RG {number} w {number} {number} m ((?:{number} {number} l ?)+)S")
        self.strokes = []
        for m in line.finditer(text):
            rgb = tuple(float(c) for c in m.group(1, 2, 3))
            at = tuple(float(c) for c in m.group(5, 6))
            for x, y in re.findall(rf"{number} {number} l", m.group(7)):
                to = (float(x), float(y))
                self.strokes.append((rgb, at, to))
                at = to
        self.strokes = self.strokes[::every]

    def by_color(self):
        colors = {}
        for rgb, a, b in self.strokes:
            colors.setdefault(rgb, []).append((a, b))
        return colors

    def lengths(self):
        """mm in each colour, by its hexadecimal name."""
        lengths = {}
        for rgb, (ax, ay), (bx, by) in self.strokes:
            name = hexadecimal(rgb)
            lengths[name] = lengths.get(name, 0) + ((bx - ax) ** 2 + (by - ay) ** 2) ** 0.5 * MM
        return lengths


def hexadecimal(rgb):
    return "#%02x%02x%02x" % tuple(round(255 * c) for c in rgb)


def cmyk(rgb):
    """Black as far as it goes, inks for the rest: CSS Color Module Level 5, without a profile."""
    k = 1 - max(rgb)
    return (0, 0, 0, 1) if k >= 1 else tuple((1 - c - k) / (1 - k) for c in rgb) + (k,)


def grey(rgb):
    """ISO 32000-1, 10.3.3."""
    return 0.3 * rgb[0] + 0.59 * rgb[1] + 0.11 * rgb[2]


class Book:
    """What each file should hold, and the files themselves, in a folder."""

    def __init__(self, folder, scene):
        self.folder, self.scene, self.rows, self.failed = Path(folder), scene, [], []
        self.folder.mkdir(parents=True, exist_ok=True)

    def path(self, name):
        return self.folder / name

    def add(self, name, scale=1.0, per_metre=0.1, color=hexadecimal, strokes=None, placed=False):
        """Notes a file that was made.

        scale      how much longer its lines are than the scene's
        per_metre  by how many mm in a metre each colour may be off
        color      what a colour of the scene is in it
        """
        if not self.path(name).exists():
            self.failed.append(name + ": was not written")
            return
        lengths = {}
        for rgb, (ax, ay), (bx, by) in self.scene.strokes:
            key = color(rgb)
            lengths[key] = lengths.get(key, 0) + ((bx - ax) ** 2 + (by - ay) ** 2) ** 0.5 * MM * scale
        self.rows.append((name, per_metre, placed, lengths))

    def attempt(self, what, make):
        """Runs one maker; a program that is not installed costs its files and no others."""
        try:
            make()
        except Exception as e:  # whatever a foreign program does
            self.failed.append(f"{what}: {type(e).__name__}: {str(e)[:200]}")

    def write(self):
        with open(self.folder / "expected.tsv", "w") as out:
            for name, per_metre, placed, lengths in sorted(self.rows):
                told = ",".join(f"{c}={v:.4f}" for c, v in sorted(lengths.items()))
                out.write(f"{name}\t{per_metre}\t{'placed' if placed else ''}\t{told}\n")


def run(*command, **options):
    done = subprocess.run([str(c) for c in command], stdout=subprocess.PIPE, stderr=subprocess.STDOUT,
                          timeout=300, **options)
    if done.returncode != 0:
        raise RuntimeError(f"{command[0]} ended with {done.returncode}: {done.stdout[-200:]!r}")
    return done.stdout
