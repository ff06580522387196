"""Makes the JPEG and HDR samples; run in this folder with Python 3, Pillow 9.4, OpenCV 4.6 and NumPy."""

import cv2
import numpy as np
from PIL import Image

INKS = ((127, 85, 110, 20), (0, 84, 35, 129))


def blocks(colours):
    """One flat square of 16 x 16 pixels a colour, side by side."""
    squares = [np.full((16, 16, len(c)), c, np.uint8) for c in colours]
    return np.concatenate(squares, axis=1)


def save_inks(stored, name):
    """Pillow stores four channels as 255 less what it is given, and writes an Adobe segment of transform 0."""
    Image.fromarray(255 - stored, "CMYK").save(name, quality=98)


def ycc(rgb):
    """The YCbCr of JFIF."""
    r, g, b = (rgb[..., i].astype(float) for i in range(3))
    y = 0.299 * r + 0.587 * g + 0.114 * b
    return np.stack([y, 128 + (b - y) / 1.772, 128 + (r - y) / 1.402], axis=-1).round().clip(0, 255)


def patch(name, change):
    data = bytearray(open(name, "rb").read())
    at = data.find(b"\xff\xee\x00\x0eAdobe")
    open(name, "wb").write(change(data, at))


inks = blocks(INKS)
save_inks(255 - inks, "inks-adobe.jpg")

save_inks(inks, "inks-plain.jpg")
patch("inks-plain.jpg", lambda data, at: data[:at] + data[at + 16:])

save_inks(np.concatenate([ycc(inks[..., :3]), 255 - inks[..., 3:]], axis=-1).astype(np.uint8), "inks-ycck.jpg")
patch("inks-ycck.jpg", lambda data, at: data[:at + 15] + b"\x02" + data[at + 16:])

# Components named R, G and B, neither JFIF nor Adobe segment: as JFIF these values would be another colour.
rgb = blocks(((200, 80, 40), (30, 120, 220)))
planes = Image.merge("YCbCr", [Image.fromarray(np.ascontiguousarray(rgb[..., i])) for i in range(3)])
planes.save("letters-rgb.jpg", quality=98, subsampling=0)
data = bytearray(open("letters-rgb.jpg", "rb").read())
data = data[:2] + data[20:]  # The JFIF segment is 18 bytes long.
for marker, first, step in ((b"\xff\xc0", 10, 3), (b"\xff\xda", 5, 2)):
    at = data.find(marker)
    for i, letter in enumerate(b"RGB"):
        data[at + first + i * step] = letter
open("letters-rgb.jpg", "wb").write(data)

# Radiance by OpenCV 4.6, which writes runs: the values of Pattern.real, made positive.
y, x, c = (a.astype(np.float32) for a in np.mgrid[0:9, 0:40, 0:3])
light = x * np.float32(0.31) + y * np.float32(0.17) + c * np.float32(0.07) + np.float32(0.25)
cv2.imwrite("opencv.hdr", light[..., ::-1].copy())
