"""Makes the TIFF samples; run in this folder with Python 3 and NumPy, and with tiffcp and tiffset of libtiff 4.5.

The values are those of the formulas in Pattern.java. A plain file is written here, tag by tag; libtiff then recodes it.
"""

import os
import struct
import subprocess

import numpy as np

WIDTH, HEIGHT = 13, 9
BLACK_IS_ZERO, WHITE_IS_ZERO, RGB, PALETTE, SEPARATED = 1, 0, 2, 3, 5


def grid(channels):
    y, x, c = np.mgrid[0:HEIGHT, 0:WIDTH, 0:channels]
    return x, y, c


def code8(channels):
    x, y, c = grid(channels)
    return ((x * 37 + y * 59 + c * 83 + 11) % 256).astype(np.uint8)


def code16(channels):
    x, y, c = grid(channels)
    return ((x * 9377 + y * 15013 + c * 21001 + 257) % 65536).astype(np.uint16)


def real(channels, kind):
    x, y, c = (a.astype(np.float32) for a in grid(channels))
    f = np.float32
    return (x * f(0.31) + y * f(0.17) + c * f(0.07) - f(0.25)).astype(kind)


def packed(bits):
    """Grey of fewer than 8 bits, each row from a byte of its own."""
    rows = code8(1)[..., 0] >> (8 - bits)
    planes = np.stack([(rows >> (bits - 1 - b)) & 1 for b in range(bits)], axis=-1)
    return np.packbits(planes.reshape(HEIGHT, -1).astype(np.uint8), axis=1)


def write(name, samples, photometric, bits, channels, kind=1, extra=None, colours=None, planar=False, more=()):
    """No compression, little-endian; one strip, or one strip a channel."""
    data = (np.moveaxis(samples, -1, 0) if planar else samples).tobytes()
    strips = channels if planar else 1
    size = len(data) // strips
    tags = [(256, 3, [WIDTH]), (257, 3, [HEIGHT]), (258, 3, [bits] * channels), (259, 3, [1]),
            (262, 3, [photometric]), (273, 4, [8 + i * size for i in range(strips)]), (277, 3, [channels]), (278, 3, [HEIGHT]), (279, 4, [size] * strips),
            (284, 3, [2 if planar else 1]), (339, 3, [kind] * channels), *more]
    if extra is not None:
        tags.append((338, 3, [extra]))
    if colours is not None:
        tags.append((320, 3, colours))
    body, at = b"", 8 + len(data) + len(data) % 2
    entries = b""
    after = at + 2 + 12 * len(tags) + 4
    for tag, kind_, values in sorted(tags):
        form = {3: "H", 4: "I", 5: "II", 7: "B"}[kind_]
        flat = [v for value in values for v in (value if isinstance(value, tuple) else (value,))]
        value = struct.pack("<" + ("".join(form for _ in values)), *flat)
        if len(value) > 4:
            entries += struct.pack("<HHII", tag, kind_, len(values), after + len(body))
            body += value + b"\0" * (len(value) % 2)
        else:
            entries += struct.pack("<HHI", tag, kind_, len(values)) + value.ljust(4, b"\0")
    with open(name, "wb") as out:
        out.write(struct.pack("<2sHI", b"II", 42, at) + data + b"\0" * (len(data) % 2))
        out.write(struct.pack("<H", len(tags)) + entries + b"\0\0\0\0" + body)


def recode(name, source, *options):
    subprocess.run(["tiffcp", *options, source, name], check=True)


write("grey8.tif", code8(1), BLACK_IS_ZERO, 8, 1,
      more=[(282, 5, [(236, 2)]), (283, 5, [(236, 2)]), (296, 3, [3]), (274, 3, [6])])
write("white-is-zero8.tif", 255 - code8(1), WHITE_IS_ZERO, 8, 1)
write("white-is-zero16.tif", 65535 - code16(1), WHITE_IS_ZERO, 16, 1)
write("grey16.tif", code16(1), BLACK_IS_ZERO, 16, 1)
write("grey-alpha8.tif", code8(2), BLACK_IS_ZERO, 8, 2, extra=2)
write("rgb8.tif", code8(3), RGB, 8, 3)
write("rgb16.tif", code16(3), RGB, 16, 3)
write("rgb16-planar.tif", code16(3), RGB, 16, 3, planar=True)
write("rgba8-straight.tif", code8(4), RGB, 8, 4, extra=2)
write("rgba16-straight.tif", code16(4), RGB, 16, 4, extra=2)
write("rgba8-unspecified.tif", code8(4), RGB, 8, 4, extra=0)
write("inks8.tif", code8(4), SEPARATED, 8, 4)
write("inks16.tif", code16(4), SEPARATED, 16, 4)
write("float32-grey.tif", real(1, np.float32), BLACK_IS_ZERO, 32, 1, kind=3)
write("float32-rgb.tif", real(3, np.float32), RGB, 32, 3, kind=3)
write("float16-grey.tif", real(1, np.float16), BLACK_IS_ZERO, 16, 1, kind=3)
write("float16-rgb.tif", real(3, np.float16), RGB, 16, 3, kind=3)
write("float64-grey.tif", real(1, np.float64), BLACK_IS_ZERO, 64, 1, kind=3)
write("uint32-grey.tif", code16(1).astype(np.uint32) * 65537, BLACK_IS_ZERO, 32, 1)
for bits in (10, 12):
    rows = code16(1)[..., 0] >> (16 - bits)
    planes = np.stack([(rows >> (bits - 1 - b)) & 1 for b in range(bits)], axis=-1)
    write(f"grey{bits}.tif", np.packbits(planes.reshape(HEIGHT, -1).astype(np.uint8), axis=1), BLACK_IS_ZERO, bits, 1)
for bits in (1, 2, 4):
    write(f"grey{bits}.tif", packed(bits), BLACK_IS_ZERO, bits, 1)
write("white-is-zero1.tif", ~packed(1), WHITE_IS_ZERO, 1, 1)

# Entry i has the 16-bit pattern's colour of column i; pixels name entries by the 8-bit pattern.
columns = np.arange(256)
table = [int(v) for c in range(3) for v in (columns * 9377 + c * 21001 + 257) % 65536]
write("palette8.tif", code8(1), PALETTE, 8, 1, colours=table)
columns = np.arange(16)
table = [int(v) for c in range(3) for v in (columns * 9377 + c * 21001 + 257) % 65536]
write("palette4.tif", packed(4), PALETTE, 4, 1, colours=table)
table = [int(v) for c in range(3) for v in columns * 4369]
write("palette4-greys.tif", packed(4), PALETTE, 4, 1, colours=table)

# Associated alpha: the colour times alpha, rounded; alpha is at least 64 so that it can be undone to 1/64.
colour, alpha = code8(4)[..., :3].astype(float), np.maximum(64, code8(4)[..., 3:]).astype(float)
write("rgba8-associated.tif", np.concatenate([(colour * alpha / 255).round(), alpha], axis=-1).astype(np.uint8),
      RGB, 8, 4, extra=1)

recode("rgb8-strips-lzw.tif", "rgb8.tif", "-r", "4", "-c", "lzw:2")
recode("rgb8-strips-deflate.tif", "rgb8.tif", "-r", "2", "-c", "zip:2")
recode("rgb8-packbits.tif", "rgb8.tif", "-r", "3", "-c", "packbits")
recode("rgb8-big-endian-lzw.tif", "rgb8.tif", "-B", "-c", "lzw")
recode("rgb8-tiles-deflate.tif", "rgb8.tif", "-t", "-w", "16", "-l", "16", "-c", "zip:2")
recode("rgb8-planar-lzw.tif", "rgb8.tif", "-p", "separate", "-r", "4", "-c", "lzw:2")
recode("rgb8-planar-tiles.tif", "rgb8.tif", "-p", "separate", "-t", "-w", "16", "-l", "16", "-c", "zip")
recode("rgb8-big.tif", "rgb8.tif", "-8", "-c", "lzw")
recode("rgb8-big-be-tiles.tif", "rgb8.tif", "-8", "-B", "-t", "-w", "16", "-l", "16")
recode("rgb16-big-endian-lzw.tif", "rgb16.tif", "-B", "-r", "4", "-c", "lzw:2")
recode("rgb16-tiles-deflate.tif", "rgb16.tif", "-t", "-w", "16", "-l", "16", "-c", "zip:2")
recode("grey16-packbits.tif", "grey16.tif", "-r", "4", "-c", "packbits")
recode("float32-rgb-deflate3.tif", "float32-rgb.tif", "-r", "4", "-c", "zip:3")
recode("float32-grey-tiles-lzw3-be.tif", "float32-grey.tif", "-B", "-t", "-w", "16", "-l", "16", "-c", "lzw:3")
recode("float16-rgb-deflate3.tif", "float16-rgb.tif", "-r", "4", "-c", "zip:3")
recode("float16-grey-be.tif", "float16-grey.tif", "-B", "-c", "zip")
recode("grey4-tiles.tif", "grey4.tif", "-t", "-w", "16", "-l", "16", "-c", "zip")
recode("grey1-g4.tif", "white-is-zero1.tif", "-c", "g4")
recode("grey1-g3.tif", "white-is-zero1.tif", "-r", "4", "-c", "g3")

# Two flat squares, as in the JPEG samples.
squares = np.concatenate([np.full((16, 16, 3), c, np.uint8) for c in ((200, 80, 40), (30, 120, 220))], axis=1)
WIDTH, HEIGHT = 32, 16
write("squares.tif", squares, RGB, 8, 3)
recode("squares-jpeg.tif", "squares.tif", "-c", "jpeg:98")
recode("squares-jpeg-rgb-tiles.tif", "squares.tif", "-t", "-w", "16", "-l", "16", "-c", "jpeg:r:98")
os.remove("squares.tif")
recode("rgb8-zstd.tif", "rgb8.tif", "-c", "zstd")
