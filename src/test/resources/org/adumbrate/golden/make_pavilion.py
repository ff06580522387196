"""Makes the pavilion: a small scene with exact lines, depth and shadow, for the golden images.

    python3 make_pavilion.py        # needs numpy

Writes pavilion.svg, heights.svg (people's height, two of them drawn wrong), pavilion-depth.png (16 bits, NEAR to FAR) and pavilion-shadow.png beside itself. The camera and the sun
are those of the sheet files: x to the right, y away from the eye, z up, in metres.
"""
import struct
import zlib

import numpy as np

WIDTH, HEIGHT = 120.0, 72.0  # mm
FOCAL, PX, PY, EYE = 90.0, 60.0, 26.0, 2.6
NEAR, FAR = 5.0, 25.0
AZIMUTH, ALTITUDE = 232.0, 36.0
TONES = 220, 235, 250  # of lit faces that look along x, y, z
GREY, ORANGE, BLUE, PURPLE = "#404048", "#b07800", "#0060a8", "#963ca0"

# x0, x1, y0, y1, z0, z1, colour
BOXES = [
    (-5.0, 1.0, 14.0, 19.0, 0.0, 4.2, GREY),  # hall
    (-5.0, -0.6, 11.6, 14.0, 0.0, 0.3, GREY),  # its step
    (-5.2, -0.4, 11.5, 14.0, 2.9, 3.1, GREY),  # canopy
    (-4.9, -4.7, 11.7, 11.9, 0.3, 2.9, GREY),  # its posts
    (-2.9, -2.7, 11.7, 11.9, 0.3, 2.9, GREY),
    (-0.9, -0.7, 11.7, 11.9, 0.3, 2.9, GREY),
    (4.2, 4.5, 9.0, 21.0, 0.0, 2.4, GREY),  # garden wall
    (1.4, 3.2, 10.0, 10.5, 0.0, 0.45, BLUE),  # bench
    (-40.0, 40.0, 22.0, 23.0, 0.0, 3.6, PURPLE),  # the houses behind
]
# on the hall's front: x0, x1, z0, z1
OPENINGS = [(-2.3, -1.2, 0.3, 2.5), (-4.4, -3.1, 1.2, 2.5), (-4.4, -3.1, 3.3, 4.0), (-2.3, -1.2, 3.3, 4.0), (-0.3, 0.6, 1.2, 2.6)]

STATURE = 1.65
# where height lines stand: x, y, z, and how much too tall
UPRIGHTS = [(-2, 7, 0, 0), (0.6, 8, 0, 0), (2, 9, 0, 0), (-4, 10, 0, 0), (3.4, 12, 0, 0), (2.5, 16, 0, 0), (1, 8.6, 0, 0.4)]
UPRIGHTS += [(-3.8, 12.4, 0.3, 0), (-1.8, 12.2, 0.3, 0), (-2.3, 13.2, 0.3, 0), (-4.2, 13, 0.3, 0), (-1.3, 13, 0.3, -0.3)]


def hits(origin, direction):
    """The distance along each ray to what it meets first, infinite for the sky, and the axis it meets it across."""
    with np.errstate(divide="ignore", invalid="ignore"):
        floor = -origin[2] / direction[2]
        first = np.where((direction[2] < 0) & (floor > 1e-6), floor, np.inf)
        across = np.full(first.shape, 2)
        for box in BOXES:
            enter, leave = np.full(first.shape, -np.inf), np.full(first.shape, np.inf)
            last = across
            for axis in range(3):
                a = (box[2 * axis] - origin[axis]) / direction[axis]
                b = (box[2 * axis + 1] - origin[axis]) / direction[axis]
                last = np.where(np.fmin(a, b) > enter, axis, last)
                enter, leave = np.maximum(enter, np.fmin(a, b)), np.minimum(leave, np.fmax(a, b))
            nearer = (enter <= leave) & (enter > 1e-4) & (enter < first)
            first, across = np.where(nearer, enter, first), np.where(nearer, last, across)
    return first, across


def rays(per_mm):
    y, x = np.mgrid[0 : round(HEIGHT * per_mm), 0 : round(WIDTH * per_mm)]
    x, y = (x + 0.5) / per_mm, (y + 0.5) / per_mm
    direction = np.stack([(x - PX) / FOCAL, np.ones_like(x), (PY - y) / FOCAL])
    origin = np.zeros_like(direction)
    origin[2] = EYE
    return origin, direction


def lines():
    """Visible pieces of all edges, in mm, with their colour."""
    edges = []
    for x0, x1, y0, y1, z0, z1, color in BOXES:
        for a in (0, 1):
            for b in (0, 1):
                y, z = (y0, y1)[a], (z0, z1)[b]
                edges.append(((x0, y, z), (x1, y, z), color))
                x = (x0, x1)[a]
                edges.append(((x, y0, z), (x, y1, z), color))
                y = (y0, y1)[b]
                edges.append(((x, y, z0), (x, y, z1), color))
    for x0, x1, z0, z1 in OPENINGS:
        corners = [(x0, 14.0, z0), (x1, 14.0, z0), (x1, 14.0, z1), (x0, 14.0, z1)]
        edges += [(corners[k], corners[(k + 1) % 4], GREY) for k in range(4)]
    for x in range(-8, 9, 2):
        edges.append(((x, 5.2, 0), (x, 22, 0), ORANGE))
    for y in range(6, 23, 2):
        edges.append(((-9, y, 0), (9, y, 0), ORANGE))
    pieces = set()
    for p, q, color in edges:
        t = np.linspace(0, 1, 2001)
        point = np.array(p)[:, None] * (1 - t) + np.array(q)[:, None] * t
        origin = np.zeros_like(point)
        origin[2] = EYE
        seen = hits(origin, point - origin)[0] > 1 - 2e-3
        at = np.stack([PX + FOCAL * point[0] / point[1], PY - FOCAL * (point[2] - EYE) / point[1]])
        seen &= (at[0] > 0) & (at[0] < WIDTH) & (at[1] > 0) & (at[1] < HEIGHT)
        steps = np.flatnonzero(np.diff(np.concatenate([[0], seen.astype(int), [0]])))
        for start, end in zip(steps[::2], steps[1::2] - 1):
            if end - start > 20:
                ends = sorted([tuple(np.round(at[:, start], 2)), tuple(np.round(at[:, end], 2))])
                pieces.add((color, *ends[0], *ends[1]))
    return sorted(pieces)


def png(name, levels):
    """Writes grey levels of 8 or 16 bits, each row as the difference to the one above."""
    big = levels.astype(levels.dtype.newbyteorder(">")).view(np.uint8).reshape(levels.shape[0], -1)
    above = np.vstack([np.zeros((1, big.shape[1]), np.uint8), big[:-1]])
    rows = np.hstack([np.full((len(big), 1), 2, np.uint8), big - above])
    parts = [
        (b"IHDR", struct.pack(">IIBBBBB", levels.shape[1], levels.shape[0], 8 * levels.itemsize, 0, 0, 0, 0)),
        (b"IDAT", zlib.compress(rows.tobytes(), 9)),
        (b"IEND", b""),
    ]
    with open(name, "wb") as out:
        out.write(b"\x89PNG\r\n\x1a\n")
        for kind, data in parts:
            out.write(struct.pack(">I", len(data)) + kind + data + struct.pack(">I", zlib.crc32(kind + data)))


def main():
    with open("pavilion.svg", "w", encoding="ascii") as out:
        out.write("<svg xmlns='http://www.w3.org/2000/svg' width='120mm' height='72mm' viewBox='0 0 120 72' fill='none'>\n")
        for color in (ORANGE, PURPLE, BLUE, GREY):
            data = "".join("M%g %gL%g %g" % piece[1:] for piece in lines() if piece[0] == color)
            out.write("<path stroke='%s' d='%s'/>\n" % (color, data))
        out.write("</svg>\n")
    with open("heights.svg", "w", encoding="ascii") as out:
        out.write("<svg xmlns='http://www.w3.org/2000/svg' width='120mm' height='72mm' viewBox='0 0 120 72' fill='none'>\n")
        for x, y, z, more in UPRIGHTS:
            feet, head = (PY - FOCAL * (up - EYE) / y for up in (z, z + STATURE + more))
            out.write("<path stroke='#e60028' d='M%.2f %.2fV%.2f'/>\n" % (PX + FOCAL * x / y, feet, head))
        out.write("</svg>\n")
    origin, direction = rays(10)
    depth = np.minimum(hits(origin, direction)[0], FAR)
    levels = np.round((depth - NEAR) / (FAR - NEAR) * 65535).astype(np.uint16)
    png("pavilion-depth.png", levels)
    origin, direction = rays(20)
    depth, across = hits(origin, direction)
    sky = ~np.isfinite(depth) | (depth > 60)
    point = origin + direction * np.where(sky, 1, depth * (1 - 1e-5))
    up, around = np.radians(ALTITUDE), np.radians(AZIMUTH)
    sun = [np.sin(around) * np.cos(up), np.cos(around) * np.cos(up), np.sin(up)]
    dark = np.isfinite(hits(point, np.array(sun)[:, None, None] * np.ones_like(point))[0]) & ~sky
    light = np.where(dark, 90, np.where(sky, 250, np.choose(across, TONES))).reshape(360, 4, 600, 4).mean(axis=(1, 3))
    png("pavilion-shadow.png", np.round(light).astype(np.uint8))


main()
