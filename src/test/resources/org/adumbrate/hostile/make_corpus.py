"""Makes the hand-made part of the corpus: files that mean harm, or that went wrong in ways that have happened.

    python3 make_corpus.py       # writes corpus/<format>/made-*; needs what make_seeds.py needs

A file whose name ends in .gz is unpacked before it is read, once for each .gz: it is large, and says little.
"""
import gzip
import io
import math
import pathlib
import shutil
import struct
import subprocess
import zlib

from make_seeds import OBJECTS, PROFILES, WHITE, PRIMARIES, chunk, curve, parametric, pdf, picture, png, profile, rows, xyz

HERE = pathlib.Path(__file__).parent
SEEDS = HERE / "seeds"
CORPUS = HERE / "corpus"
LARGE = 3000


def put(name, data):
    kind, rest = name.split("/")
    path = CORPUS / kind / ("made-" + rest)
    path.parent.mkdir(parents=True, exist_ok=True)
    data = data.encode() if isinstance(data, str) else data
    while len(data) > LARGE:
        packed = io.BytesIO()
        with gzip.GzipFile("", "wb", 9, packed, 0) as out:
            out.write(data)
        if len(packed.getvalue()) > 0.8 * len(data):
            break
        path, data = path.with_name(path.name + ".gz"), packed.getvalue()
    path.write_bytes(data)


def seed(name):
    return (SEEDS / name).read_bytes()


def deflated(total, byte=b"\0", level=9):
    """So many equal bytes, compressed without holding them."""
    maker, out = zlib.compressobj(level), b""
    block = byte * (1 << 20)
    while total > 0:
        out += maker.compress(block[:min(total, len(block))])
        total -= len(block)
    return out + maker.flush()


for old in CORPUS.glob("*/made-*"):
    old.unlink()

# ---------------------------------------------------------------- PNG
SIGN = b"\x89PNG\r\n\x1a\n"


def ihdr(width, height, depth=8, kind=2, *rest):
    return chunk(b"IHDR", struct.pack(">IIBBBBB", width, height, depth, kind, *(rest or (0, 0, 0))))


IEND = chunk(b"IEND", b"")
FEW = chunk(b"IDAT", zlib.compress(bytes(100)))
put("png/claims-65535.png", SIGN + ihdr(65535, 65535) + FEW + IEND)
put("png/claims-2-31.png", SIGN + ihdr(0x7fffffff, 0x7fffffff) + FEW + IEND)
put("png/claims-2-32.png", SIGN + ihdr(0xffffffff, 1) + FEW + IEND)
put("png/claims-100000-row.png", SIGN + ihdr(100000, 20000, 16, 6) + FEW + IEND)
put("png/no-size.png", SIGN + ihdr(0, 0) + FEW + IEND)
put("png/bomb-grey.png", SIGN + ihdr(16000, 16000, 1, 0) + chunk(b"IDAT", deflated(2001 * 16000)) + IEND)
put("png/bomb-behind-the-picture.png", SIGN + ihdr(4, 4) + chunk(b"IDAT", deflated(200 << 20)) + IEND)
put("png/bomb-profile.png", SIGN + ihdr(4, 4) + chunk(b"iCCP", b"x\0\0" + deflated(100 << 20)) + chunk(b"IDAT", zlib.compress(bytes(52))) + IEND)
put("png/bomb-profiles.png", SIGN + ihdr(4, 4) + chunk(b"iCCP", b"x\0\0" + deflated(15 << 20)) * 60 + chunk(b"IDAT", zlib.compress(bytes(52))) + IEND)
put("png/bomb-text.png", SIGN + ihdr(4, 4) + chunk(b"zTXt", b"x\0\0" + deflated(100 << 20)) + chunk(b"IDAT", zlib.compress(bytes(52))) + IEND)
put("png/bomb-interlaced.png", SIGN + ihdr(8000, 8000, 1, 0, 0, 0, 1) + chunk(b"IDAT", deflated(1000 * 8000 + 30000)) + IEND)
put("png/palette-index-beyond.png", png(8, 2, 8, 3, b"\0\0\1\2\3\4\5\6\xff" * 2, chunk(b"PLTE", bytes(9))))
put("png/palette-missing.png", png(8, 2, 8, 3, b"\0" + bytes(8) + b"\0" + bytes(8)))
put("png/palette-of-257.png", png(4, 1, 8, 3, bytes(5), chunk(b"PLTE", bytes(771))))
put("png/palette-of-7-bytes.png", png(4, 1, 8, 3, bytes(5), chunk(b"PLTE", bytes(7))))
put("png/transparency-longer-than-palette.png", png(4, 1, 8, 3, bytes(5), chunk(b"PLTE", bytes(9)), chunk(b"tRNS", bytes(256))))
put("png/transparency-of-one-byte.png", png(4, 1, 8, 2, bytes(13), chunk(b"tRNS", b"\0")))
put("png/depth-3.png", png(4, 1, 3, 0, bytes(5)))
put("png/colour-type-5.png", png(4, 1, 8, 5, bytes(5)))
put("png/filter-9.png", png(4, 1, 8, 0, b"\x09" + bytes(4)))
put("png/chunk-of-2-31.png", SIGN + ihdr(4, 4) + struct.pack(">I", 0x7fffffff) + b"IDAT" + bytes(20))
put("png/chunk-of-minus-1.png", SIGN + ihdr(4, 4) + struct.pack(">I", 0xffffffff) + b"tEXt" + bytes(20))
put("png/chunk-without-name.png", SIGN + ihdr(4, 4) + struct.pack(">I", 4) + b"\0\1\2\3" + bytes(8))
put("png/two-headers.png", SIGN + ihdr(4, 4) * 2 + FEW + IEND)
put("png/no-data.png", SIGN + ihdr(4, 4) + IEND)
put("png/header-last.png", SIGN + FEW + ihdr(4, 4) + IEND)
put("png/wrong-checksum.png", seed("png/rgb.png")[:-20] + b"\1\2\3\4" + seed("png/rgb.png")[-16:])
put("png/a-hundred-thousand-empty-chunks.png", SIGN + ihdr(4, 4) + chunk(b"IDAT", b"") * 100000 + chunk(b"IDAT", zlib.compress(bytes(52))) + IEND)
put("png/a-hundred-thousand-texts.png", SIGN + ihdr(4, 4) + chunk(b"tEXt", b"") * 100000 + chunk(b"IDAT", zlib.compress(bytes(52))) + IEND)
put("png/gamma-zero-and-chromaticities-equal.png", png(4, 1, 8, 2, bytes(13), chunk(b"gAMA", bytes(4)), chunk(b"cHRM", bytes(32))))
put("png/gamma-huge.png", png(4, 1, 8, 2, b"\0" + bytes(range(100, 112)), chunk(b"gAMA", b"\xff" * 4), chunk(b"cHRM", b"\xff" * 32)))
put("png/gamma-tiny.png", png(4, 1, 8, 2, b"\0" + bytes(range(100, 112)), chunk(b"gAMA", struct.pack(">I", 1))))
put("png/resolution-zero.png", png(4, 1, 8, 2, bytes(13), chunk(b"pHYs", bytes(8) + b"\1")))
put("png/preset-dictionary.png", SIGN + ihdr(4, 4) + chunk(b"IDAT", b"\x78\xbb\0\0\0\1" + bytes(30)) + IEND)
put("png/text-follows.png", seed("png/rgb.png") + b"<script>" * 20)
put("png/sign-only.png", SIGN)

# ---------------------------------------------------------------- JPEG
BASE = seed("jpeg/baseline.jpg")
PROG = seed("jpeg/progressive.jpg")
SOF = BASE.index(b"\xff\xc0")
SOF2 = PROG.index(b"\xff\xc2")
SOS = BASE.index(b"\xff\xda")


def seg(marker, body):
    return bytes([0xff, marker]) + struct.pack(">H", len(body) + 2) + body


def sized(data, at, width, height):
    return data[:at + 5] + struct.pack(">HH", height, width) + data[at + 9:]


put("jpeg/claims-65500.jpg", sized(BASE, SOF, 65500, 65500))
put("jpeg/claims-65500-progressive.jpg", sized(PROG, SOF2, 65500, 65500))
put("jpeg/claims-8000-in-few-bytes.jpg", sized(BASE, SOF, 8000, 8000))
put("jpeg/no-width.jpg", sized(BASE, SOF, 0, 24))
put("jpeg/height-told-at-the-end.jpg", sized(BASE, SOF, 40, 0)[:-2] + seg(0xdc, struct.pack(">H", 24)) + b"\xff\xd9")
put("jpeg/height-told-anew.jpg", BASE[:-2] + seg(0xdc, struct.pack(">H", 60000)) + b"\xff\xd9")
put("jpeg/no-components.jpg", BASE[:SOF] + seg(0xc0, b"\x08\0\x18\0\x28\0") + BASE[SOS:])
put("jpeg/two-components.jpg", BASE[:SOF] + seg(0xc0, b"\x08\0\x18\0\x28\2\1\x11\0\2\x11\0") + BASE[SOF + 19:])
put("jpeg/two-hundred-components.jpg", BASE[:SOF] + seg(0xc0, b"\x08\0\x18\0\x28\xc8" + b"\1\x11\0" * 200) + BASE[SOF + 19:])
put("jpeg/sampling-zero.jpg", BASE[:SOF + 11] + b"\0" + BASE[SOF + 12:])
put("jpeg/sampling-15.jpg", BASE[:SOF + 11] + b"\xff" + BASE[SOF + 12:])
put("jpeg/twelve-bits.jpg", BASE[:SOF + 4] + b"\x0c" + BASE[SOF + 5:])
put("jpeg/arithmetic.jpg", BASE[:SOF + 1] + b"\xc9" + BASE[SOF + 2:])
put("jpeg/lossless.jpg", BASE[:SOF + 1] + b"\xc3" + BASE[SOF + 2:])
put("jpeg/no-tables.jpg", BASE[:2] + BASE[SOF:SOF + 19] + BASE[SOS:])
put("jpeg/table-99.jpg", BASE[:SOF + 12] + b"\x63" + BASE[SOF + 13:])
put("jpeg/code-lengths-overflow.jpg", BASE[:SOS] + seg(0xc4, b"\0" + b"\xff" * 16 + bytes(300)) + BASE[SOS:])
put("jpeg/code-lengths-empty.jpg", BASE[:SOS] + seg(0xc4, b"\0" + bytes(16)) + seg(0xc4, b"\x10" + bytes(16)) + BASE[SOS:])
put("jpeg/segment-of-length-0.jpg", BASE[:2] + b"\xff\xe0\0\0" + BASE[2:])
put("jpeg/segment-beyond-the-end.jpg", BASE[:2] + b"\xff\xe1\xff\xff" + BASE[2:100])
put("jpeg/two-frames.jpg", BASE[:SOS] + BASE[SOF:SOF + 19] + BASE[SOS:])
put("jpeg/ten-thousand-tables.jpg", BASE[:2] + seg(0xdb, b"\0" + bytes(range(1, 65))) * 16000 + BASE[2:])
put("jpeg/scan-of-no-component.jpg", BASE[:SOS + 4] + b"\0" + BASE[SOS + 5:])
put("jpeg/scan-of-unknown-component.jpg", BASE[:SOS + 5] + b"\x77" + BASE[SOS + 6:])
put("jpeg/scan-without-data.jpg", BASE[:SOS + 14] + b"\xff\xd9")
put("jpeg/only-markers.jpg", b"\xff\xd8" + b"\xff" * 5000)
put("jpeg/restart-every-0-then-1.jpg", BASE[:SOS] + seg(0xdd, b"\0\1") + BASE[SOS:])
put("jpeg/thousand-scans.jpg", PROG[:-2] + PROG[PROG.rindex(b"\xff\xda"):-2] * 1000 + b"\xff\xd9")


def many_scans(width, height, scans):
    """A progressive grey picture: its first scan, and then refinements that say nothing, over all of its blocks at once."""
    blocks = ((width + 7) // 8) * ((height + 7) // 8)
    head = b"\xff\xd8" + seg(0xdb, b"\0" + b"\1" * 64) + seg(0xc2, struct.pack(">BHHB", 8, height, width, 1) + b"\1\x11\0")
    head += seg(0xc4, b"\0" + b"\1" + bytes(15) + b"\0")  # difference 0: code 0
    # end of bands: of 2^14 blocks and 14 more bits, code 0
    head += seg(0xc4, b"\x10" + b"\1" + bytes(15) + b"\xe0")
    data = head + seg(0xda, b"\1\1\0\0\0\0") + bytes((blocks + 7) // 8)
    body = bytes((15 * -(-blocks // 16384) + 7) // 8)
    scan = seg(0xda, b"\1\1\0\1\x3f\0") + body
    return data + scan * scans + b"\xff\xd9"


put("jpeg/many-scans-of-many-pixels.jpg", many_scans(16384, 16384, 400))
put("jpeg/progressive-of-a-thousand-megapixels.jpg", many_scans(32760, 32760, 1))
put("jpeg/exif-cut.jpg", BASE[:2] + seg(0xe1, b"Exif\0\0II*\0\xff\xff\xff\x7f") + BASE[2:])
put("jpeg/profile-part-2-of-9.jpg", BASE[:2] + seg(0xe2, b"ICC_PROFILE\0\x02\x09" + PROFILES["matrix.icc"]) + BASE[2:])
put("jpeg/end-only.jpg", b"\xff\xd8\xff\xd9")


# ---------------------------------------------------------------- TIFF
def tiff(fields, data=b"", order="<", next_directory=0, at=8):
    """A classic TIFF; the data follow the directory, and {data} stands for where they are."""
    start = at + 2 + 12 * len(fields) + 4
    out = (b"II*\0" if order == "<" else b"MM\0*") + struct.pack(order + "I", at) + bytes(at - 8)
    out += struct.pack(order + "H", len(fields))
    for tag, kind, count, value in fields:
        value = start if value is None else value
        if isinstance(value, bytes):
            out += struct.pack(order + "HHI", tag, kind, count) + value.ljust(4, b"\0")
        elif kind == 3 and count == 1:
            out += struct.pack(order + "HHIHH", tag, kind, count, value, 0)
        else:
            out += struct.pack(order + "HHII", tag, kind, count, value)
    return out + struct.pack(order + "I", next_directory) + data


def plain(width, height, compression=1, photometric=1, bits=8, samples=1, rows_per_strip=None, count=None, **more):
    data = more.pop("data", bytes(200))
    fields = {256: (4, 1, width), 257: (4, 1, height), 258: (3, 1, bits), 259: (3, 1, compression), 262: (3, 1, photometric),
              273: (4, 1, None), 277: (3, 1, samples), 278: (4, 1, rows_per_strip or height), 279: (4, 1, count or len(data))}
    for tag, field in more.items():
        if field is None:
            fields.pop(int(tag[1:]))
        else:
            fields[int(tag[1:])] = field
    return tiff([(tag, *fields[tag]) for tag in sorted(fields)], data)


put("tiff/claims-65535.tif", plain(65535, 65535))
put("tiff/claims-2-31.tif", plain(0x7fffffff, 0x7fffffff))
put("tiff/no-size.tif", plain(0, 0))
put("tiff/directory-loops.tif", tiff([(256, 4, 1, 4), (257, 4, 1, 4)], next_directory=8))
put("tiff/directory-beyond-the-file.tif", b"II*\0\xff\xff\xff\x7f" + bytes(20))
put("tiff/directory-in-the-head.tif", b"II*\0\0\0\0\0" + bytes(20))
put("tiff/directory-of-65535-fields.tif", b"II*\0\x08\0\0\0\xff\xff" + bytes(2000))
put("tiff/big-directory-of-2-63-fields.tif", b"II+\0\x08\0\0\0" + struct.pack("<QQ", 16, 1 << 63) + bytes(100))
put("tiff/big-offset-of-minus-1.tif", b"II+\0\x08\0\0\0" + b"\xff" * 8 + bytes(100))
put("tiff/tile-of-no-width.tif", plain(16, 16, t322=(4, 1, 0), t323=(4, 1, 16), t324=(4, 1, None), t325=(4, 1, 200)))
put("tiff/tile-of-2-31.tif", plain(16, 16, t322=(4, 1, 0x7fffffff), t323=(4, 1, 0x7fffffff), t324=(4, 1, None), t325=(4, 1, 200)))
put("tiff/tile-of-100000.tif", plain(16, 16, 8, data=zlib.compress(bytes(3000)), t322=(4, 1, 100000), t323=(4, 1, 100000), t324=(4, 1, None), t325=(4, 1, 30)))
put("tiff/tile-of-1-px.tif", plain(100, 100, t322=(4, 1, 1), t323=(4, 1, 1), t324=(4, 1, None), t325=(4, 1, 1)))
put("tiff/strip-beyond-the-file.tif", plain(16, 16, t273=(4, 1, 1 << 30)))
put("tiff/strip-of-2-31-bytes.tif", plain(16, 16, count=0x7fffffff))
put("tiff/strip-of-0-bytes.tif", plain(16, 16, t279=(4, 1, 0)))
put("tiff/strips-fewer-than-rows.tif", plain(16, 100, rows_per_strip=1))
put("tiff/rows-per-strip-0.tif", plain(16, 12, t278=(4, 1, 0)))
put("tiff/no-strips.tif", plain(16, 12, t273=None, t279=None))
put("tiff/samples-65535.tif", plain(16, 12, t277=(3, 1, 65535)))
put("tiff/bits-0.tif", plain(16, 12, bits=0))
put("tiff/bits-255.tif", plain(16, 12, bits=255))
put("tiff/counts-2-32.tif", plain(16, 12, t258=(3, 0xffffffff, 8)))
put("tiff/type-0.tif", plain(16, 12, t256=(0, 1, 16)))
put("tiff/type-99.tif", plain(16, 12, t256=(99, 1, 16)))
put("tiff/width-is-a-text.tif", plain(16, 12, t256=(2, 4, b"16\0\0")))
put("tiff/width-is-a-fraction.tif", plain(16, 12, t256=(5, 1, None)))
put("tiff/compression-zstd.tif", plain(16, 12, 50000))
put("tiff/compression-12345.tif", plain(16, 12, 12345))
put("tiff/predictor-9.tif", plain(16, 12, 8, data=zlib.compress(bytes(192)), t317=(3, 1, 9)))
put("tiff/predictor-3-of-bytes.tif", plain(16, 12, 8, data=zlib.compress(bytes(192)), t317=(3, 1, 3)))
put("tiff/palette-missing.tif", plain(16, 12, photometric=3))
put("tiff/palette-short.tif", plain(16, 12, photometric=3, t320=(3, 4, None)))
put("tiff/bomb-deflate.tif", plain(16000, 16000, 8, bits=1, data=deflated(2000 * 16000)))
put("tiff/bomb-deflate-behind.tif", plain(16, 12, 8, data=deflated(200 << 20)))
put("tiff/bomb-packbits.tif", plain(16384, 16384, 32773, data=b"\x81\0" * 3000))
put("tiff/bomb-lzw.tif", plain(20000, 20000, 5, data=b"\x80\x0b\x60\x50" * 26000))
put("tiff/bomb-fax.tif", plain(40000, 40000, 4, 0, 1, data=b"\xff" * 5000))
put("tiff/bomb-fax-3.tif", plain(100000, 2000, 3, 0, 1, data=b"\0\x01" * 700))
put("tiff/fax-noise.tif", plain(1000, 1000, 4, 0, 1, data=bytes((k * 73 + k // 7) % 256 for k in range(4000))))
put("tiff/jpeg-of-another-size.tif", plain(40, 24, 7, 6, 8, 3, data=sized(BASE, SOF, 65500, 30000), t258=(3, 1, 8)))
put("tiff/jpeg-progressive-of-another-size.tif", plain(40, 24, 7, 6, 8, 3, data=sized(PROG, SOF2, 65500, 65500), t258=(3, 1, 8)))
put("tiff/jpeg-that-is-none.tif", plain(40, 24, 7, 6, 8, 3, data=b"\xff\xd8" + bytes(300), t258=(3, 1, 8)))
put("tiff/jpeg-many-scans.tif", plain(16384, 16384, 7, 1, 8, 1, data=many_scans(16384, 16384, 100)))
put("tiff/planar-huge.tif", plain(60000, 9000, 8, 2, 16, 4, data=zlib.compress(bytes(5000)) * 500, t284=(3, 1, 2)))
put("tiff/floats-of-24-bits.tif", plain(16, 12, bits=24, t339=(3, 1, 3)))
put("tiff/profile-beyond-the-file.tif", plain(16, 12, t34675=(7, 1 << 30, 200)))
put("tiff/profile-is-a-number.tif", plain(16, 12, t34675=(4, 1, 200)))
put("tiff/resolution-0-0.tif", plain(16, 12, t282=(5, 1, None), t283=(5, 1, None)))
put("tiff/orientation-99.tif", plain(16, 12, t274=(3, 1, 99)))
put("tiff/fields-twice.tif", tiff([(256, 4, 1, 16), (256, 4, 1, 1 << 30)] * 50))
put("tiff/head-only.tif", b"MM\0*")

# ---------------------------------------------------------------- BMP


def bmp(width, height, bits=24, method=0, colours=0, head=40, at=54, data=bytes(300)):
    return (b"BM" + struct.pack("<IHHI", 54 + len(data), 0, 0, at)
            + struct.pack("<IiiHHIIiiII", head, width, height, 1, bits, method, len(data), 2835, 2835, colours & 0xffffffff, 0) + data)


put("bmp/negative-width.bmp", bmp(-9, 9))
put("bmp/height-2-31.bmp", bmp(9, -2147483648))
put("bmp/claims-65535.bmp", bmp(65535, 65535))
put("bmp/claims-65535-runs.bmp", bmp(65535, 65535, 8, 1))
put("bmp/runs-without-end.bmp", bmp(1000, 30, 8, 1, data=bytes(1024) + b"\xff\x07" * 2000, at=1078))
put("bmp/runs-beyond-the-row.bmp", bmp(9, 9, 8, 1, data=bytes(1024) + b"\xff\x07\0\2\xff\xff\xff\x07\0\1", at=1078))
put("bmp/runs-move-beyond.bmp", bmp(9, 9, 8, 1, data=bytes(1024) + b"\0\2\xff\xff" * 200, at=1078))
put("bmp/runs-4.bmp", bmp(9, 9, 4, 2, data=bytes(64) + b"\0\xff" + bytes(300), at=118, colours=16))
put("bmp/no-size.bmp", bmp(0, 0))
put("bmp/bits-0.bmp", bmp(9, 9, 0))
put("bmp/bits-5.bmp", bmp(9, 9, 5))
put("bmp/bits-64.bmp", bmp(9, 9, 64))
put("bmp/colours-2-31.bmp", bmp(9, 9, 8, colours=0x7fffffff))
put("bmp/colours-minus-1.bmp", bmp(9, 9, 8, colours=-1))
put("bmp/palette-index-beyond.bmp", bmp(9, 9, 8, colours=2, data=bytes(8) + b"\xff" * 300, at=62))
put("bmp/head-of-4-bytes.bmp", bmp(9, 9, head=4))
put("bmp/head-of-2-31-bytes.bmp", bmp(9, 9, head=0x7fffffff))
put("bmp/pixels-within-the-head.bmp", bmp(9, 9, at=2))
put("bmp/pixels-beyond-the-file.bmp", bmp(9, 9, at=0x7fffffff))
put("bmp/method-99.bmp", bmp(9, 9, method=99))
put("bmp/masks-missing.bmp", bmp(9, 9, 32, 3, data=bytes(400)))
put("bmp/head-only.bmp", b"BM")

# ---------------------------------------------------------------- PNM
put("pnm/maxval-0.pgm", b"P5 4 4 0\n" + bytes(16))
put("pnm/maxval-65536.pgm", b"P5 4 4 65536\n" + bytes(64))
put("pnm/maxval-999999999999.pgm", b"P5 4 4 999999999999\n" + bytes(64))
put("pnm/maxval-negative.pgm", b"P5 4 4 -255\n" + bytes(64))
put("pnm/sample-above-maxval.pgm", b"P5 4 4 3\n" + b"\xff" * 16)
put("pnm/text-sample-above-maxval.pgm", b"P2 4 1 3\n1 2 99999999999 4\n")
put("pnm/text-sample-negative.pgm", b"P2 4 1 3\n1 -2 3 1\n")
put("pnm/text-sample-is-no-number.pgm", b"P2 4 1 255\n1 two 3 1\n")
put("pnm/text-ends-early.ppm", b"P3 400 100 255\n1 2 3\n")
put("pnm/claims-65535.ppm", b"P6 65535 65535 255\n" + bytes(100))
put("pnm/claims-2-31.pbm", b"P4 2147483647 2147483647\n" + bytes(100))
put("pnm/claims-2-40.pbm", b"P4 1099511627776 1\n" + bytes(100))
put("pnm/negative.ppm", b"P6 -4 -4 255\n" + bytes(100))
put("pnm/no-size.ppm", b"P6\n")
put("pnm/size-is-no-number.ppm", b"P6 four 4 255\n" + bytes(100))
put("pnm/comment-without-end.ppm", b"P6 #" + b"x" * 15000)
put("pnm/blanks-without-end.ppm", b"P6" + b" " * 15000)
put("pnm/digits-without-end.ppm", b"P6 " + b"1" * 15000)
put("pnm/comment-in-the-size.ppm", b"P6 4#\n4 255\n" + bytes(48))
put("pnm/map-depth-0.pam", b"P7\nWIDTH 4\nHEIGHT 4\nDEPTH 0\nMAXVAL 255\nTUPLTYPE RGB\nENDHDR\n" + bytes(48))
put("pnm/map-depth-9999.pam", b"P7\nWIDTH 4\nHEIGHT 4\nDEPTH 9999\nMAXVAL 255\nTUPLTYPE RGB\nENDHDR\n" + bytes(48))
put("pnm/map-without-end.pam", b"P7\nWIDTH 4\nHEIGHT 4\nDEPTH 3\nMAXVAL 255\nTUPLTYPE RGB\n")
put("pnm/map-of-nothing.pam", b"P7\nENDHDR\n")
put("pnm/map-keys-thousandfold.pam", b"P7\n" + b"WIDTH 4\n" * 1500 + b"ENDHDR\n")
put("pnm/map-of-unknown-kind.pam", b"P7\nWIDTH 4\nHEIGHT 4\nDEPTH 3\nMAXVAL 255\nTUPLTYPE NONSENSE\nENDHDR\n" + bytes(48))
put("pnm/map-claims-2-31.pam", b"P7\nWIDTH 2147483647\nHEIGHT 2147483647\nDEPTH 4\nMAXVAL 65535\nTUPLTYPE RGB_ALPHA\nENDHDR\n")

# ---------------------------------------------------------------- HDR
HDR = b"#?RADIANCE\nFORMAT=32-bit_rle_rgbe\n\n"
put("hdr/claims-2-31.hdr", HDR + b"-Y 999999999 +X 999999999\n" + bytes(64))
put("hdr/claims-65535.hdr", HDR + b"-Y 65535 +X 32767\n" + bytes(64))
put("hdr/size-negative.hdr", HDR + b"-Y -4 +X -4\n" + bytes(64))
put("hdr/size-in-2000-digits.hdr", HDR + b"-Y " + b"9" * 2000 + b" +X 4\n" + bytes(64))
put("hdr/size-with-escapes.hdr", HDR + b"-Y 4 \x1b[31m\x07\r+X 4\n" + bytes(64))
put("hdr/rows-upward.hdr", HDR + b"+Y 4 +X 4\n" + bytes(64))
put("hdr/runs-without-end.hdr", HDR + b"-Y 2000 +X 32767\n" + (b"\2\2\x7f\xff" + b"\xff\x40" * 300) * 30)
put("hdr/old-runs-without-end.hdr", HDR + b"-Y 1000 +X 99999\n" + b"\x80\x80\x80\x80" + b"\1\1\1\xff" * 2000)
put("hdr/old-runs-bomb.hdr", HDR + b"-Y 20000 +X 100000\n" + (b"\x80\x80\x80\x80" + b"\1\1\1\x9f" + b"\1\1\1\x86" + b"\1\1\1\1") * 20000)
put("hdr/old-run-first.hdr", HDR + b"-Y 4 +X 4\n" + b"\1\1\1\4" * 8)
put("hdr/runs-of-0.hdr", HDR + b"-Y 4 +X 9\n" + (b"\2\2\0\x09" + b"\0" * 40) * 4)
put("hdr/row-of-another-width.hdr", HDR + b"-Y 4 +X 9\n" + b"\2\2\0\x63" + bytes(400))
put("hdr/exponents-at-their-ends.hdr", HDR + b"-Y 1 +X 4\n" + b"\xff\xff\xff\xff\xff\xff\xff\0\0\0\0\xff\1\2\3\4")
put("hdr/no-size.hdr", HDR)
put("hdr/head-without-end.hdr", b"#?RADIANCE\n" + b"VIEW= -vtv\n" * 1500)
put("hdr/xyz.hdr", b"#?RADIANCE\nFORMAT=32-bit_rle_xyze\n\n-Y 4 +X 4\n" + bytes(64))

# ---------------------------------------------------------------- profiles, within pictures


def tagged(data, kind=2, samples=3):
    return png(4, 2, 8, kind, (b"\0" + bytes(range(60, 60 + 4 * samples))) * 2, chunk(b"iCCP", b"p\0\0" + zlib.compress(data)))


M = PROFILES["matrix.icc"]


def retagged(data, index, offset=None, size=None, tag=None):
    at = 132 + 12 * index
    old = struct.unpack(">4sII", data[at:at + 12])
    return data[:at] + struct.pack(">4sII", tag or old[0], old[1] if offset is None else offset, old[2] if size is None else size) + data[at + 12:]


put("icc/tag-beyond.png", tagged(retagged(M, 4, offset=1 << 30)))
put("icc/tag-of-2-31.png", tagged(retagged(M, 4, size=0x7fffffff)))
put("icc/tag-of-minus-1.png", tagged(retagged(M, 4, offset=0xffffffff, size=0xffffffff)))
put("icc/tag-in-the-head.png", tagged(retagged(M, 4, offset=0, size=128)))
put("icc/tags-overlap.png", tagged(retagged(retagged(M, 4, offset=200, size=100), 5, offset=210, size=100)))
put("icc/tags-2-31.png", tagged(M[:128] + struct.pack(">I", 0x7fffffff) + M[132:]))
put("icc/tags-none.png", tagged(M[:128] + struct.pack(">I", 0) + M[132:]))
put("icc/curve-of-2-31.png", tagged(profile(b"RGB ", b"XYZ ", WHITE, *PRIMARIES, *((t, b"curv\0\0\0\0\x7f\xff\xff\xff" + bytes(8)) for t in (b"rTRC", b"gTRC", b"bTRC")))))
put("icc/curve-of-minus-1.png", tagged(profile(b"RGB ", b"XYZ ", WHITE, *PRIMARIES, *((t, b"curv\0\0\0\0\xff\xff\xff\xff" + bytes(8)) for t in (b"rTRC", b"gTRC", b"bTRC")))))
put("icc/curve-falls.png", tagged(profile(b"RGB ", b"XYZ ", WHITE, *PRIMARIES, *((t, curve(65535, 0)) for t in (b"rTRC", b"gTRC", b"bTRC")))))
put("icc/power-0.png", tagged(profile(b"RGB ", b"XYZ ", WHITE, *PRIMARIES, *((t, curve(0)) for t in (b"rTRC", b"gTRC", b"bTRC")))))
put("icc/parametric-divides-by-0.png", tagged(profile(b"RGB ", b"XYZ ", WHITE, *PRIMARIES, *((t, parametric(1, 2.2, 0, 1)) for t in (b"rTRC", b"gTRC", b"bTRC")))))
put("icc/parametric-huge.png", tagged(profile(b"RGB ", b"XYZ ", WHITE, *PRIMARIES, *((t, parametric(4, 32767, 32767, 32767, 32767, -32768, 32767, 32767)) for t in (b"rTRC", b"gTRC", b"bTRC")))))
put("icc/parametric-negative-power.png", tagged(profile(b"RGB ", b"XYZ ", WHITE, *PRIMARIES, *((t, parametric(0, -32768)) for t in (b"rTRC", b"gTRC", b"bTRC")))))
put("icc/parametric-kind-9.png", tagged(profile(b"RGB ", b"XYZ ", WHITE, *PRIMARIES, *((t, parametric(9, 1)) for t in (b"rTRC", b"gTRC", b"bTRC")))))
put("icc/primaries-zero.png", tagged(profile(b"RGB ", b"XYZ ", WHITE, *((t, xyz(0, 0, 0)) for t in (b"rXYZ", b"gXYZ", b"bXYZ")), *((t, curve(0x0233)) for t in (b"rTRC", b"gTRC", b"bTRC")))))
put("icc/primaries-huge.png", tagged(profile(b"RGB ", b"XYZ ", WHITE, *((t, xyz(32767, -32768, 32767)) for t in (b"rXYZ", b"gXYZ", b"bXYZ")), *((t, curve(0x0233)) for t in (b"rTRC", b"gTRC", b"bTRC")))))
put("icc/space-with-escapes.png", tagged(M[:16] + b"\x1b[\n\x07" + M[20:]))
put("icc/grey-for-colour.png", tagged(PROFILES["grey.icc"]))
put("icc/grey-lab.png", tagged(PROFILES["grey.icc"].replace(b"GRAYXYZ ", b"GRAYLab "), 0, 1))
put("icc/inks-for-colour.png", tagged(PROFILES["press.icc"]))
T = PROFILES["table.icc"]
LUT = T.index(b"mft2")
put("icc/table-of-15-channels.png", tagged(T[:LUT + 8] + b"\x0f" + T[LUT + 9:]))
put("icc/table-of-no-points.png", tagged(T[:LUT + 10] + b"\0" + T[LUT + 11:]))
put("icc/table-of-255-points.png", tagged(T[:LUT + 10] + b"\xff" + T[LUT + 11:]))
put("icc/table-of-65535-entries.png", tagged(T[:LUT + 48] + b"\xff\xff\xff\xff" + T[LUT + 52:]))
put("icc/table-of-unknown-kind.png", tagged(T[:LUT] + b"what" + T[LUT + 4:]))
put("icc/table-cut.png", tagged(T[:LUT + 60]))
put("icc/table-elements-beyond.png", tagged(profile(b"RGB ", b"Lab ", WHITE, (b"A2B0", b"mAB \0\0\0\0\3\3\0\0" + b"\x7f\xff\xff\xff" * 5 + bytes(40)))))
put("icc/table-elements-itself.png", tagged(profile(b"RGB ", b"Lab ", WHITE, (b"A2B0", b"mAB \0\0\0\0\3\3\0\0" + bytes(20) + bytes(40)))))
put("icc/multi-process-huge.png", tagged(profile(b"RGB ", b"Lab ", WHITE, (b"D2B0", b"mpet\0\0\0\0\0\3\0\3\xff\xff\xff\xff" + bytes(40)), (b"A2B0", b"mpet\0\0\0\0\0\3\0\3\xff\xff\xff\xff" + bytes(40)))))
put("icc/of-128-bytes.png", tagged(M[:128]))
put("icc/text.png", tagged(b"not a profile"))
put("icc/broken-stream.png", png(4, 2, 8, 2, bytes(26), chunk(b"iCCP", b"p\0\0" + bytes(40))))
put("icc/name-without-end.png", png(4, 2, 8, 2, bytes(26), chunk(b"iCCP", b"p" * 400)))
put("icc/in-255-parts.jpg", BASE[:2] + b"".join(seg(0xe2, b"ICC_PROFILE\0" + bytes([k, 255]) + M[:40]) for k in range(255)) + BASE[2:])

# ---------------------------------------------------------------- Exif blocks, within pictures


def shown(block):
    return png(4, 2, 8, 2, bytes(26), chunk(b"eXIf", block))


put("exif/directory-beyond.png", shown(b"II*\0\xff\xff\xff\xff"))
put("exif/directory-itself.png", shown(b"II*\0\0\0\0\0"))
put("exif/fields-65535.png", shown(b"II*\0\x08\0\0\0\xff\xff" + bytes(100)))
put("exif/count-2-32.png", shown(b"II*\0\x08\0\0\0\1\0\x12\1\3\0\xff\xff\xff\xff" + bytes(20)))
put("exif/orientation-is-a-fraction.png", shown(b"MM\0*\0\0\0\x08\0\1\1\x12\0\5\0\0\0\1\0\0\0\0" + bytes(20)))
put("exif/resolution-0-0.png", shown(b"MM\0*\0\0\0\x08\0\1\1\x1a\0\5\0\0\0\1\0\0\0\x1a" + bytes(20)))
put("exif/empty.png", shown(b""))
put("exif/text.png", shown(b"Exif"))
put("exif/big.png", shown(b"II+\0\x08\0\0\0" + b"\xff" * 40))

# ---------------------------------------------------------------- PDF


def drawn(content, filters="", resources="", trailer="/Root 1 0 R", page="", extra=None):
    data = content if isinstance(content, bytes) else content.encode("latin-1")
    objects = {
        1: "<< /Type /Catalog /Pages 2 0 R >>",
        2: "<< /Type /Pages /Kids [3 0 R] /Count 1 >>",
        3: "<< /Type /Page /Parent 2 0 R /MediaBox [0 0 200 100] /Contents 4 0 R /Resources << %s >> %s >>" % (resources, page),
        4: (data.decode("latin-1"), filters),
    }
    objects.update(extra or {})
    return pdf(objects, trailer)


def flate(data):
    return zlib.compress(data if isinstance(data, bytes) else data.encode(), 9)


FLATE = "/Filter /FlateDecode"
FORM = "/Type /XObject /Subtype /Form /BBox [0 0 200 100]"
put("pdf/page-tree-loops.pdf", pdf({1: "<< /Type /Catalog /Pages 2 0 R >>", 2: "<< /Type /Pages /Kids [2 0 R] /Count 1 >>"}))
put("pdf/page-tree-loops-far.pdf", pdf({1: "<< /Type /Catalog /Pages 2 0 R >>", 2: "<< /Type /Pages /Kids [3 0 R] /Count 9 >>",
                                        3: "<< /Type /Pages /Kids [2 0 R] /Count 9 /Parent 2 0 R >>"}))
put("pdf/page-tree-is-its-own-parent.pdf", pdf({1: "<< /Type /Catalog /Pages 2 0 R >>", 2: "<< /Type /Pages /Kids [3 0 R] /Count 1 /Parent 2 0 R >>",
                                                3: "<< /Type /Page /Parent 2 0 R >>"}))
put("pdf/page-tree-deep.pdf", pdf({1: "<< /Type /Catalog /Pages 2 0 R >>", **{
    k: "<< /Type /Pages /Kids [%d 0 R] /Count 1 /Parent %d 0 R >>" % (k + 1, k - 1) for k in range(2, 1500)}, 1500: "<< /Type /Page /Parent 1499 0 R >>"}))
put("pdf/pages-2-31.pdf", pdf({1: "<< /Type /Catalog /Pages 2 0 R >>", 2: "<< /Type /Pages /Kids [] /Count 2147483647 >>"}))
put("pdf/pages-minus-1.pdf", pdf({1: "<< /Type /Catalog /Pages 2 0 R >>", 2: "<< /Type /Pages /Kids [] /Count -1 >>"}))
put("pdf/catalog-is-a-number.pdf", pdf({1: "17"}))
put("pdf/catalog-is-itself.pdf", pdf({1: "1 0 R"}))
put("pdf/length-is-itself.pdf", pdf({**OBJECTS, 4: "<< /Length 4 0 R >>\nstream\n0 0 m 9 9 l S\nendstream"}))
put("pdf/length-2-31.pdf", pdf({**OBJECTS, 4: "<< /Length 2147483647 >>\nstream\n0 0 m 9 9 l S\nendstream"}))
put("pdf/length-minus-1.pdf", pdf({**OBJECTS, 4: "<< /Length -1 >>\nstream\n0 0 m 9 9 l S\nendstream"}))
put("pdf/no-table.pdf", pdf(OBJECTS).split(b"xref\n")[0] + b"%%EOF\n")
put("pdf/table-beyond.pdf", pdf(OBJECTS).replace(b"startxref\n", b"startxref\n99999999"))
put("pdf/table-of-2-31.pdf", pdf(OBJECTS).replace(b"xref\n0 14\n", b"xref\n0 2147483647\n"))
put("pdf/table-loops.pdf", pdf(OBJECTS, "/Root 1 0 R /Prev %d" % pdf(OBJECTS).rindex(b"xref\n0")))
put("pdf/no-trailer.pdf", pdf(OBJECTS).replace(b"trailer", b"tr"))
put("pdf/head-and-end.pdf", b"%PDF-1.7\n%%EOF\n")
put("pdf/head-only.pdf", b"%PDF-1.7\n")
put("pdf/noise.pdf", b"%PDF-1.7\n" + bytes((k * 73 + k // 7) % 256 for k in range(3000)) + b"%%EOF\n")
put("pdf/objects-without-end.pdf", b"%PDF-1.7\n" + b"1 0 obj\n" * 60000 + b"%%EOF\n")
put("pdf/objects-ten-thousand.pdf", b"%PDF-1.7\n" + b"".join(b"%d 0 obj\nnull\nendobj\n" % k for k in range(1, 10000)) + b"trailer << /Root 1 0 R >>\n%%EOF\n")
put("pdf/arrays-nested.pdf", pdf({**OBJECTS, 5: "[" * 100000}))
put("pdf/dictionaries-nested.pdf", pdf({**OBJECTS, 5: "<< /A " * 100000}))
put("pdf/javascript.pdf", drawn("0 0 m 9 9 l S", page="/AA << /O << /S /JavaScript /JS (while(true){}) >> >>",
                                extra={1: "<< /Type /Catalog /Pages 2 0 R /OpenAction << /S /JavaScript /JS (while(true){}) >> /Names << /JavaScript << /Names [(a) << /S /JavaScript /JS (app.launchURL('http://example.invalid')) >>] >> >> >>"}))
put("pdf/launches.pdf", drawn("0 0 m 9 9 l S", extra={1: "<< /Type /Catalog /Pages 2 0 R /OpenAction << /S /Launch /F (cmd.exe) >> >>"}))
put("pdf/content-outside.pdf", drawn("", "/F (/etc/passwd) /FFilter /FlateDecode"))
put("pdf/form-draws-itself.pdf", drawn("/F Do", resources="/XObject << /F 5 0 R >>", extra={5: ("0 0 m 9 9 l S /F Do /F Do", FORM + " /Resources << /XObject << /F 5 0 R >> >>")}))
put("pdf/forms-draw-each-other.pdf", drawn("/F Do", resources="/XObject << /F 5 0 R /G 6 0 R >>", extra={5: ("/G Do /G Do", FORM), 6: ("/F Do /F Do", FORM)}))
put("pdf/forms-ten-to-the-tenth.pdf", drawn("/F5 Do", resources="/XObject << %s >>" % " ".join("/F%d %d 0 R" % (k, k) for k in range(5, 16)), extra={
    **{k: (("/F%d Do " % (k + 1)) * 10, FORM) for k in range(5, 15)}, 15: ("0 0 m 9 9 l S", FORM)}))
put("pdf/form-of-blanks-drawn-often.pdf", drawn(flate("/F Do " * 150000), FLATE, "/XObject << /F 5 0 R >>", extra={5: (flate(" " * 500000 + "0 0 m 9 9 l S").decode("latin-1"), FORM + FLATE)}))
put("pdf/form-box-empty-matrix-zero.pdf", drawn("/F Do", resources="/XObject << /F 5 0 R >>", extra={5: ("0 0 m 9 9 l S", "/Type /XObject /Subtype /Form /BBox [0 0 0 0] /Matrix [0 0 0 0 0 0]")}))
put("pdf/saved-a-million-times.pdf", drawn(flate("q " * 1000000), FLATE))
put("pdf/saved-with-clips.pdf", drawn(flate("q 0 0 m 99 0 l 0 99 l W n " * 99000 + "0 0 m 9 9 l S"), FLATE))
put("pdf/clips-without-end.pdf", drawn(flate("0 0 m 99 0 l 0 99 l W n " * 300000 + "0 0 m 9 9 l S"), FLATE))
put("pdf/clip-of-many-edges.pdf", drawn(flate("0 0 m " + "99 0 l 0 99 l 99 99 l 0 0 l " * 40000 + "W n " + "0 50 m 99 50 l S " * 40000), FLATE))
put("pdf/clips-of-many-edges.pdf", drawn(flate(("0 0 m " + "99 0 l 0 99 l 99 99 l 0 0 l " * 40000 + "W n ") * 20 + "0 50 m 99 50 l S "), FLATE))
put("pdf/path-without-end.pdf", drawn(flate("0 0 m " + "1 1 l " * 5000010 + "S"), FLATE))
put("pdf/curves-without-end.pdf", drawn(flate("0 0 m " + "1 1 2 2 3 3 c " * 3000000), FLATE))
put("pdf/strokes-without-end.pdf", drawn(flate("0 0 m 1 1 l S " * 3000000), FLATE))
put("pdf/dashes-without-end.pdf", drawn(flate("[" + "1 " * 5000 + "] 0 d " + "0 0 m 1 1 l S " * 50000), FLATE))
put("pdf/operands-without-end.pdf", drawn(flate("0 " * 30000000), FLATE))
put("pdf/array-without-end.pdf", drawn(flate("[" + "0 " * 10000000), FLATE))
put("pdf/text-without-end.pdf", drawn(flate("(" + "x" * 60000000), FLATE))
put("pdf/content-arrays-nested.pdf", drawn(flate("[" * 1000000), FLATE))
put("pdf/content-dictionaries-nested.pdf", drawn(flate("/OC <<" + "/A <<" * 1000000), FLATE))
put("pdf/bomb.pdf", drawn(deflated(300 << 20, b" "), FLATE))
put("pdf/bomb-twice-packed.pdf", drawn(flate(deflated(1500 << 20, b" ")), "/Filter [/FlateDecode /FlateDecode]"))
put("pdf/bomb-in-digits.pdf", drawn(deflated(600 << 20, b" ").hex() + ">", "/Filter [/AHx /Fl]"))
put("pdf/bomb-runs.pdf", drawn(flate(b"\x81 " * 4000000), "/Filter [/FlateDecode /RunLengthDecode]"))
put("pdf/bomb-objects.pdf", b"%PDF-1.7\n" + b"1 0 obj\n<< /Type /ObjStm /N 1 /First 4 /Filter /FlateDecode /Length 99 >>\nstream\n" + deflated(900 << 20, b" ") + b"\nendstream\nendobj\n"
    + b"".join(b"%d 0 obj\n%s\nendobj\n" % (k, v.encode()) for k, v in ((2, "<< /Type /Catalog /Pages 5 0 R >>"),)) + b"trailer << /Root 2 0 R >>\nstartxref\n0\n%%EOF\n")
put("pdf/predictor-huge.pdf", drawn(flate(b"\2" * 5000), "/Filter /FlateDecode /DecodeParms << /Predictor 15 /Columns 2147483647 /Colors 32 /BitsPerComponent 16 >>"))
put("pdf/predictor-negative.pdf", drawn(flate(b"\2" * 5000), "/Filter /FlateDecode /DecodeParms << /Predictor 15 /Columns -1 /Colors -1 >>"))
put("pdf/filter-unknown.pdf", drawn("0 0 m", "/Filter /NoSuchDecode"))
put("pdf/filter-image.pdf", drawn("0 0 m", "/Filter /DCTDecode"))
put("pdf/filters-thousandfold.pdf", drawn("0 0 m 9 9 l S", "/Filter [" + "/FlateDecode " * 3000 + "]"))
put("pdf/adler-wrong.pdf", drawn(flate("0 0 m 9 9 l S")[:-4] + b"\1\2\3\4", FLATE))
put("pdf/function-samples-2-40.pdf", drawn("/S CS 0.4 SCN 0 0 m 9 9 l S", resources="/ColorSpace << /S [/DeviceN [/A /B] /DeviceRGB 5 0 R] >>", extra={
    5: (" " * 100, "/FunctionType 0 /Domain [0 1 0 1] /Range [0 1 0 1 0 1] /Size [1000000 1000000] /BitsPerSample 8")}))
put("pdf/function-samples-2-28.pdf", drawn("/S CS 0.4 SCN 0 0 m 9 9 l S", resources="/ColorSpace << /S [/DeviceN [/A /B] /DeviceRGB 5 0 R] >>", extra={
    5: (" " * 100, "/FunctionType 0 /Domain [0 1 0 1] /Range [0 1 0 1 0 1] /Size [16000 16000] /BitsPerSample 8")}))
put("pdf/function-program-nested.pdf", drawn("/S CS 0.4 SCN 0 0 m 9 9 l S", resources="/ColorSpace << /S [/Separation /A /DeviceGray 5 0 R] >>", extra={
    5: ("{" * 20000, "/FunctionType 4 /Domain [0 1] /Range [0 1]")}))
put("pdf/function-copies-without-end.pdf", drawn("/S CS 0.4 SCN 0 0 m 9 9 l S", resources="/ColorSpace << /S [/Separation /A /DeviceGray 5 0 R] >>", extra={
    5: ("{ " + "dup 2 index 3 copy 6 copy 12 copy 24 copy 48 copy 96 copy 192 copy 384 copy 768 copy 1536 copy 3072 copy " * 12 + "}", "/FunctionType 4 /Domain [0 1] /Range [0 1]")}))
put("pdf/function-stitches-itself.pdf", drawn("/S CS 0.4 SCN 0 0 m 9 9 l S", resources="/ColorSpace << /S [/Separation /A /DeviceGray 5 0 R] >>", extra={
    5: "<< /FunctionType 3 /Domain [0 1] /Functions [5 0 R 5 0 R] /Bounds [0.5] /Encode [0 1 0 1] >>"}))
put("pdf/colour-space-is-itself.pdf", drawn("/S CS 0.4 SCN 0 0 m 9 9 l S", resources="/ColorSpace << /S 5 0 R >>", extra={5: "[/Separation /A 5 0 R 6 0 R]", 6: "<< /FunctionType 2 /Domain [0 1] /N 1 >>"}))
put("pdf/colour-space-is-its-own-base.pdf", drawn("/S CS 1 SC 0 0 m 9 9 l S", resources="/ColorSpace << /S 5 0 R >>", extra={5: "[/Indexed 5 0 R 255 (abc)]"}))
put("pdf/colour-space-refers-to-itself.pdf", drawn("/S CS 1 SC 0 0 m 9 9 l S", resources="/ColorSpace << /S 5 0 R >>", extra={5: "5 0 R"}))
put("pdf/colours-65535.pdf", drawn("/S CS 1 SC 0 0 m 9 9 l S", resources="/ColorSpace << /S [/Indexed /DeviceRGB 2147483647 (abc)] >>"))
put("pdf/colour-components-many.pdf", drawn("/S CS " + "1 " * 5000 + "SCN 0 0 m 9 9 l S", resources="/ColorSpace << /S [/DeviceN [" + "/A " * 5000 + "] /DeviceRGB 6 0 R] >>", extra={6: "<< /FunctionType 2 /Domain [0 1] /N 1 >>"}))
put("pdf/profile-bomb.pdf", drawn("/S CS 1 1 1 SC 0 0 m 9 9 l S", resources="/ColorSpace << /S [/ICCBased 5 0 R] >>", extra={5: (deflated(900 << 20).decode("latin-1"), "/N 3 " + FLATE)}))
put("pdf/profile-noise.pdf", drawn("/S CS 1 1 1 SC 0 0 m 9 9 l S", resources="/ColorSpace << /S [/ICCBased 5 0 R] >>", extra={5: ("acsp" * 100, "/N 3")}))
put("pdf/profile-of-99-components.pdf", drawn("/S CS 1 1 1 SC 0 0 m 9 9 l S", resources="/ColorSpace << /S [/ICCBased 5 0 R] >>", extra={5: (M.decode("latin-1"), "/N 99")}))
put("pdf/layer-expression-is-itself.pdf", drawn("/OC /M BDC 0 0 m 9 9 l S EMC", resources="/Properties << /M 5 0 R >>", extra={
    1: "<< /Type /Catalog /Pages 2 0 R /OCProperties << /OCGs [7 0 R] /D << >> >> >>", 5: "<< /Type /OCMD /VE 6 0 R >>", 6: "[/And 6 0 R 6 0 R]", 7: "<< /Type /OCG /Name (a) >>"}))
put("pdf/layer-expressions-2-50.pdf", drawn("/OC /M BDC 0 0 m 9 9 l S EMC", resources="/Properties << /M 5 0 R >>", extra={
    1: "<< /Type /Catalog /Pages 2 0 R /OCProperties << /OCGs [60 0 R] /D << >> >> >>", 5: "<< /Type /OCMD /VE 6 0 R >>",
    **{k: "[/And %d 0 R %d 0 R]" % (k + 1, k + 1) for k in range(6, 60)}, 60: "<< /Type /OCG /Name (a) >>"}))
put("pdf/layers-off-by-the-thousand.pdf", drawn(flate("/OC << /Type /OCG >> BDC EMC " * 60000 + "0 0 m 9 9 l S"), FLATE, extra={
    1: "<< /Type /Catalog /Pages 2 0 R /OCProperties << /OCGs [] /D << /OFF [" + "5 0 R " * 60000 + "] >> >> >>", 5: "<< /Type /OCG /Name (a) >>"}))
put("pdf/marked-content-without-end.pdf", drawn(flate("/A BMC " * 1000000 + "0 0 m 9 9 l S"), FLATE))
put("pdf/page-of-no-size.pdf", drawn("0 0 m 9 9 l S", page="/CropBox [0 0 0 0]"))
put("pdf/page-of-10-38-points.pdf", drawn("0 0 m 9 9 l S", page="/CropBox [-1e38 -1e38 1e38 1e38] /MediaBox [-1e38 -1e38 1e38 1e38]"))
put("pdf/page-unit-huge.pdf", drawn("0 0 m 9 9 l S", page="/UserUnit 1e30"))
put("pdf/page-unit-nan.pdf", drawn("0 0 m 9 9 l S", page="/UserUnit /NaN /Rotate 45"))
put("pdf/page-of-a-micron.pdf", drawn("0 0 m 0.0001 0.0001 l S", page="/MediaBox [0 0 0.001 0.001]"))
put("pdf/coordinates-huge.pdf", drawn("3e38 3e38 m -3e38 3e38 l 0 0 l S 0 0 m 3e38 0 0 3e38 -3e38 -3e38 c S 0 0 m 9 9 l S"))
put("pdf/coordinates-overflow.pdf", drawn("1e38 0 0 1e38 0 0 cm " * 20 + "1e38 1e38 m -1e38 1e38 l S"))
put("pdf/matrix-without-inverse.pdf", drawn("0 0 0 0 0 0 cm 0 0 m 9 9 l S"))
put("pdf/width-huge.pdf", drawn("1e38 w [1e38 1e38] 1e38 d 0 0 m 9 9 l S"))
put("pdf/numbers-odd.pdf", drawn("--5 +-3 m 1.2.3 4-5 l S 0x10 1e5 m .. . l S"))
put("pdf/encrypted-by-nobody.pdf", drawn("0 0 m 9 9 l S", trailer="/Root 1 0 R /Encrypt << /Filter /NoSuch /V 99 >> /ID [<00> <00>]"))
put("pdf/encrypted-loosely.pdf", drawn("0 0 m 9 9 l S", trailer="/Root 1 0 R /Encrypt << /Filter /Standard /V 5 /R 6 /Length 256 /O () /U () /P 0 >> /ID [<00> <00>]"))
put("pdf/inline-image-without-end.pdf", drawn("BI /W 99999 /H 99999 ID " + "x" * 5000))
put("pdf/names-of-100000-letters.pdf", drawn(flate("/" + "N" * 100000 + " Do"), FLATE))
put("pdf/name-with-escapes.pdf", drawn("/A#1b#5b31m#0aB Do"))
locked = CORPUS / "pdf" / "made-encrypted.pdf"
plain_pdf = HERE / "locked-from.pdf"
plain_pdf.write_bytes(drawn("0 0 m 9 9 l S"))
subprocess.run(["qpdf", "--static-id", "--allow-weak-crypto", "--encrypt", "user", "owner", "128", "--use-aes=n", "--",
                plain_pdf, locked], check=True)
plain_pdf.unlink()

# ---------------------------------------------------------------- SVG


def svg(inner, attributes="width='90mm' height='90mm' viewBox='0 0 90 90'", before=""):
    return "%s<svg xmlns='http://www.w3.org/2000/svg' xmlns:xlink='http://www.w3.org/1999/xlink' %s>%s</svg>\n" % (before, attributes, inner)


LINE = "<path d='M0 0L9 9' stroke='red'/>"
put("svg/entity-of-a-file.svg", svg("<text>&x;</text>" + LINE, before="<!DOCTYPE svg [<!ENTITY x SYSTEM 'file:///etc/passwd'>]>"))
put("svg/entity-of-the-net.svg", svg("<text>&x;</text>" + LINE, before="<!DOCTYPE svg [<!ENTITY x SYSTEM 'http://example.invalid/x'>]>"))
put("svg/entity-by-parameter.svg", svg(LINE, before="<!DOCTYPE svg [<!ENTITY % p SYSTEM 'http://example.invalid/x'> %p;]>"))
put("svg/entity-in-an-attribute.svg", svg("<path d='&x;' stroke='red'/>", before="<!DOCTYPE svg [<!ENTITY x SYSTEM 'file:///etc/passwd'>]>"))
put("svg/grammar-outside.svg", svg(LINE, before="<!DOCTYPE svg SYSTEM 'http://example.invalid/svg.dtd'>"))
put("svg/billion-laughs.svg", svg("<text>&e9;</text>" + LINE, before="<!DOCTYPE svg [<!ENTITY e0 'lines'>" + "".join("<!ENTITY e%d '%s'>" % (k, ("&e%d;" % (k - 1)) * 10) for k in range(1, 10)) + "]>"))
put("svg/quadratic-laughs.svg", svg("<text>" + "&e;" * 9000 + "</text>" + LINE, before="<!DOCTYPE svg [<!ENTITY e '" + "x" * 20000 + "'>]>"))
put("svg/laughs-by-parameter.svg", svg(LINE, before="<!DOCTYPE svg [<!ENTITY % a 'x'>" + "".join("<!ENTITY %% a%d '%%a;%%a;'>" % k for k in range(30)) + "]>"))
put("svg/entity-is-itself.svg", svg("<text>&a;</text>" + LINE, before="<!DOCTYPE svg [<!ENTITY a '&b;'><!ENTITY b '&a;'>]>"))
put("svg/use-is-itself.svg", svg("<g id='a'>" + LINE + "<use href='#a'/></g>"))
put("svg/use-uses-itself.svg", svg("<use id='a' href='#a'/>" + LINE))
put("svg/uses-in-a-ring.svg", svg("<g id='a'><use href='#b'/></g><g id='b'><use href='#c'/></g><g id='c'><use href='#a'/></g>" + LINE))
put("svg/uses-ten-to-the-tenth.svg", svg("<g id='a0'>" + LINE + "</g>" + "".join("<g id='a%d'>%s</g>" % (k, ("<use href='#a%d'/>" % (k - 1)) * 10) for k in range(1, 10))))
put("svg/uses-of-nothing-ten-to-the-tenth.svg", svg("<g id='a0'/>" + LINE + "<defs>" + "".join("<g id='a%d'>%s</g>" % (k, ("<use href='#a%d'/>" % (k - 1)) * 10) for k in range(1, 10)) + "</defs><use href='#a9'/>"))
put("svg/uses-of-a-long-path.svg", svg(LINE + "<defs><path id='p' stroke='red' d='" + "M0 0" * 250000 + "'/></defs>" + "<use href='#p'/>" * 20000))
put("svg/uses-of-a-long-fill.svg", svg(LINE + "<defs><path id='p' d='M0 0" + "L1 1" * 250000 + "'/></defs>" + "<use href='#p'/>" * 20000))
put("svg/symbol-holds-itself.svg", svg("<symbol id='s' viewBox='0 0 9 9'>" + LINE + "<use href='#s'/></symbol><use href='#s'/>"))
put("svg/use-of-the-root.svg", svg(LINE + "<use href='#r'/>", "id='r' width='9mm' height='9mm'"))
put("svg/use-of-a-file.svg", svg(LINE + "<use href='file:///etc/passwd#a'/><use xlink:href='http://example.invalid/#a'/><image href='http://example.invalid/x.png' width='9' height='9'/>"))
put("svg/style-fetches.svg", svg("<style>@import url(http://example.invalid/x.css); @font-face { src: url(file:///etc/passwd) } path { stroke: url(http://example.invalid/#x) red; fill: url(data:text/plain,x) }</style>" + LINE))
put("svg/style-sheet-outside.svg", svg(LINE, before="<?xml-stylesheet href='http://example.invalid/x.css' type='text/css'?>"))
put("svg/script.svg", svg("<script>while (true) {}</script>" + LINE.replace("/>", " onload='alert(1)'/>"), "width='9mm' height='9mm' onload='while(true){}'"))
put("svg/groups-nested.svg", svg("<g>" * 100000 + LINE + "</g>" * 100000))
put("svg/groups-nested-unclosed.svg", svg("<g>" * 500000)[:-7])
put("svg/groups-nested-600.svg", svg("<g>" * 600 + LINE + "</g>" * 600))
put("svg/unknown-nested.svg", svg("<x>" * 100000 + "</x>" * 100000 + LINE))
put("svg/style-in-nested.svg", svg("<style>" + "<x>" * 100000 + "</x>" * 100000 + "</style>" + LINE))
put("svg/elements-three-million.svg", svg("<g/>" * 3000001 + LINE))
put("svg/attributes-without-end.svg", svg("<path d='M0 0L9 9' stroke='red' " + " ".join("a%d='1'" % k for k in range(11000)) + "/>"))
put("svg/attribute-of-50-mb.svg", svg("<path id='" + "x" * 50000000 + "' d='M0 0L9 9' stroke='red'/>"))
put("svg/text-of-100-mb.svg", svg("<text>" + "x" * 100000000 + "</text>" + LINE))
put("svg/comment-of-100-mb.svg", svg("<!--" + "x" * 100000000 + "-->" + LINE))
put("svg/path-of-a-million.svg", svg("<path stroke='red' d='M0 0" + "L1 1" * 1000000 + "'/>"))
put("svg/path-of-twenty-million.svg", svg("<path stroke='red' d='M0 0" + "h1" * 20000000 + "'/>"))
put("svg/arcs-a-million.svg", svg("<path stroke='red' d='M0 0" + "a1 1 0 1 1 0 1e-9" * 1000000 + "'/>"))
put("svg/number-of-a-million-digits.svg", svg("<path stroke='red' d='M" + "1" * 1000000 + " 0L9 9'/>" + LINE))
put("svg/numbers-of-many-digits.svg", svg("<path stroke='red' d='M0 0" + ("L0." + "1" * 5000 + " 1") * 2000 + "'/>" + LINE))
put("svg/coordinates-huge.svg", svg("<path stroke='red' d='M1e308 1e308L-1e308 1e308C1e308 0 0 1e308 9 9'/>" + LINE))
put("svg/coordinates-large.svg", svg("<path stroke='red' d='M1e150 1e150L-1e150 1e150C1e150 0 0 1e150 9 9 A 1e150 1e-150 9 1 1 5 5'/>" + LINE))
put("svg/arc-of-radius-huge.svg", svg("<path stroke='red' d='M0 0A1e300 1e300 0 0 1 9 9A1e-300 1e-300 0 0 1 0 0A1e-300 1e300 45 1 0 3 3'/>" + LINE))
put("svg/transform-without-inverse.svg", svg("<g transform='scale(0)'>" + LINE + "</g><g transform='matrix(1 1 1 1 0 0)'>" + LINE + "</g>"))
put("svg/transform-huge.svg", svg("<g transform='" + "scale(1e300)" * 50 + "'>" + LINE + "</g>"))
put("svg/transform-of-100000-steps.svg", svg("<g transform='" + "rotate(1)" * 100000 + "'>" + LINE + "</g>"))
put("svg/view-box-nan.svg", svg(LINE, "viewBox='NaN NaN NaN NaN'"))
put("svg/view-box-zero.svg", svg(LINE, "viewBox='0 0 0 0'"))
put("svg/view-box-huge.svg", svg(LINE, "viewBox='0 0 1e300 1e300'"))
put("svg/view-box-tiny.svg", svg(LINE, "viewBox='0 0 1e-300 1e-300'"))
put("svg/size-infinite.svg", svg(LINE, "width='1e400mm' height='9mm'"))
put("svg/size-huge.svg", svg(LINE, "width='1e300mm' height='1e300mm'"))
put("svg/size-negative.svg", svg(LINE, "width='-9mm' height='-9mm'"))
put("svg/size-of-a-kilometre.svg", svg(LINE, "width='1000000mm' height='1000001mm'"))
put("svg/size-of-a-nanometre.svg", svg("<path d='M0 0L1e-6 1e-6' stroke='red'/>", "width='0.000001mm' height='0.000001mm'"))
put("svg/dash-of-100000.svg", svg("<g stroke-dasharray='" + "1 " * 100000 + "'>" + LINE * 3000 + "</g>"))
put("svg/dash-of-65.svg", svg("<g stroke-dasharray='" + "1 " * 65 + "'>" + LINE + "</g>"))
put("svg/lines-a-hundred-thousand.svg", svg("<line x1='0' y1='0' x2='9' y2='9' stroke='red'/>" * 100000))
put("svg/dash-nan.svg", svg("<path d='M0 0L9 9' stroke='red' stroke-dasharray='NaN 1e308 1e308' stroke-width='1e308'/>" + LINE))
put("svg/dash-endless.svg", svg("<path d='M0 0L9 9' stroke='red' stroke-dasharray='1e200 1e308' transform='scale(1e200)'/>" + LINE))
put("svg/clip-is-itself.svg", svg("<clipPath id='c' clip-path='url(#c)'><path d='M0 0L90 0 0 90z' clip-path='url(#c)'/><use href='#c'/></clipPath><g clip-path='url(#c)'>" + LINE + "</g>"))
put("svg/clip-of-many-shapes.svg", svg("<clipPath id='c'>" + "<path d='M0 0L90 0 0 90z'/>" * 3000 + "</clipPath>" + "<g clip-path='url(#c)'>" + LINE + "</g>" * 1 + ("<path clip-path='url(#c)' d='M0 0L80 80' stroke='red'/>") * 3000))
put("svg/clip-of-many-edges.svg", svg("<clipPath id='c'><path d='M0 0" + "L90 0 0 90 90 90 0 0" * 40000 + "z'/></clipPath>" + "<path clip-path='url(#c)' d='M0 40L80 40' stroke='red'/>" * 1000))
put("svg/clips-nested.svg", svg("<clipPath id='c'><path d='M0 0L90 0 0 90z'/></clipPath>" + "<g clip-path='url(#c)'>" * 450 + LINE * 3000 + "</g>" * 450))
put("svg/rules-a-hundred-thousand.svg", svg("<style>" + "path{stroke:red}" * 100000 + "</style>" + LINE * 3000))
put("svg/selector-nested.svg", svg("<style>" + "g " * 60 + "x{stroke:red} " + "g " * 60 + "path{stroke:red}</style>" + "<g>" * 300 + "<path d='M0 0L9 9'/>" * 100 + "<x/>" * 100 + "</g>" * 300 + LINE))
put("svg/selector-hopeless.svg", svg("<style>nosuch " + "g " * 12 + "path{stroke:red}</style>" + "<g>" * 300 + LINE * 50 + "</g>" * 300))
put("svg/selector-of-100000-marks.svg", svg("<style>path" + ".a" * 100000 + "{stroke:red}</style>" + LINE))
put("svg/style-of-comments.svg", svg("<style>" + "/* " * 500000 + "</style>" + LINE))
put("svg/style-of-openings.svg", svg("<style>" + "a{" * 500000 + "</style>" + LINE))
put("svg/style-of-blanks.svg", svg("<style>path{stroke:red" + " " * 500000 + "x}</style><path style='stroke:red" + " " * 500000 + "x' d='M0 0L9 9'/>" + LINE))
put("svg/style-of-commas.svg", svg("<style>" + "a," * 500000 + "path{stroke:red}</style>" + LINE))
put("svg/style-of-colons.svg", svg("<style>path{" + "stroke:red;" * 300000 + "}</style>" + LINE))
put("svg/classes-a-hundred-thousand.svg", svg("<style>.a{stroke:red}</style>" + ("<path class='" + "a " * 100000 + "' d='M0 0L9 9'/>") * 20))
put("svg/colour-odd.svg", svg("<path d='M0 0L9 9' stroke='rgb(1e999,-5,NaN)'/><path d='M0 0L9 9' stroke='#12'/><path d='M0 0L9 9' stroke='#zzzzzz'/>" + LINE))
put("svg/encoding-unknown.svg", svg(LINE, before="<?xml version='1.0' encoding='no-such'?>"))
put("svg/encoding-utf-7.svg", svg(LINE, before="<?xml version='1.0' encoding='UTF-7'?>"))
put("svg/encoding-ebcdic.svg", svg(LINE, before="<?xml version='1.0' encoding='cp037'?>"))
put("svg/encoding-false.svg", svg(LINE, before="<?xml version='1.0' encoding='UTF-16'?>"))
put("svg/utf-16.svg", ("\ufeff" + svg(LINE)).encode("utf-16-le"))
put("svg/utf-8-broken.svg", svg("<text>\u00e9</text>" + LINE).encode().replace(b"\xc3\xa9", b"\xc3"))
put("svg/nul.svg", svg("<text>\0</text>" + LINE))
put("svg/ends-in-its-doctype.svg", "<?xml version='1.0'?><!-- ' --><!DOCTYPE svg [<!ENTITY a \"x'>]><svg/>")
put("svg/ends-in-its-doctype-early.svg", "<!DOCTYPE svg")
put("svg/ends-in-a-comment-of-its-doctype.svg", "<!DOCTYPE svg [<!-- ]><svg/>")
put("svg/ends-in-its-doctype-of-16-bits.svg", "<!DOCTYPE svg [<!ENTITY a 'x>]><svg/>".encode("utf-16"))
put("svg/version-9.svg", svg(LINE, before="<?xml version='9.0'?>"))
put("svg/ids-twice.svg", svg("<g id='a'/><g id='a'>" + LINE + "</g><use href='#a'/>"))
put("svg/prefix-undeclared.svg", svg("<q:g>" + LINE + "</q:g>"))
put("svg/root-with-escapes.svg", "<\u009bhtml/>")
put("svg/opening-only.svg", "<")
put("svg/marks-only.svg", "\ufeff")

# ---------------------------------------------------------------- outlines


def outline(shapes, attributes="viewBox='-50 -100 100 100'"):
    return svg(shapes, attributes)


def star(points):
    turn = 2 * math.pi * (points // 2) / points
    return "M" + "L".join("%d %d" % (40 * math.cos(turn * k), 40 * math.sin(turn * k) - 50) for k in range(points)) + "z"


def scattered(count, piece):
    return "".join("M%d %d%s" % (k * 7919 % 80 - 40, k * 104729 % 90 - 95, piece) for k in range(count))


BODY = "<path d='M-5 0L5 0 5 -50 -5 -50z'/>"
put("outline/star-of-301.svg", outline("<path d='%s'/>" % star(301)))
put("outline/star-of-1501.svg", outline("<path d='%s'/>" % star(1501)))
put("outline/star-by-the-other-rule.svg", outline("<path fill-rule='evenodd' d='%s'/>" % star(1501)))
put("outline/pieces-thirty-thousand.svg", outline("<path d='%s'/>" % scattered(30000, "h1v1z")))
put("outline/pieces-by-the-other-rule.svg", outline("<path fill-rule='evenodd' d='%s'/>" % scattered(30000, "h1v1z")))
put("outline/apart-by-the-other-rule.svg", outline("<path fill-rule='evenodd' d='%s'/>" % "".join("M%d %dh1v1z" % (k % 120 * 2, -(k // 120) * 2) for k in range(8000))))
put("outline/apart.svg", outline("<path d='%s'/>" % "".join("M%d %dh1v1z" % (k % 120 * 2, -(k // 120) * 2) for k in range(8000))))
put("outline/shapes-apart.svg", outline("".join("<path d='M%d %dh1v1z'/>" % (k % 120 * 2, -(k // 120) * 2) for k in range(8000))))
put("outline/all-in-one-place.svg", outline("<path d='%s'/>" % ("M0 0h9v-9z" * 33000)))
put("outline/all-in-one-place-by-the-other-rule.svg", outline("<path fill-rule='evenodd' d='%s'/>" % ("M0 0h9v-9z" * 33000)))
put("outline/curly.svg", outline("<path d='M-40 -50%sL40 -9 -40 -9z'/>" % ("h9v-9h-8v9" * 6000)))
put("outline/nested.svg", outline("<path fill-rule='evenodd' d='%s'/>" % "".join("M%.3f 0h%.3fv-99h-%.3fz" % (-40 + k * 0.001, 80 - k * 0.002, 80 - k * 0.002) for k in range(5000))))
put("outline/curves-huge.svg", outline("<path d='M0 0C1e9 0 0 -1e9 9 -9z'/>" + BODY))
put("outline/coordinates-huge.svg", outline("<path d='M0 0L1e300 0 0 -1e300z'/>"))
put("outline/coordinates-tiny.svg", outline("<path d='M0 0L1e-300 0 0 -1e-300z'/>"))
put("outline/flat.svg", outline("<path d='M-9 0L9 0 0 0z'/>"))
put("outline/a-line.svg", outline("<path d='M0 0L9 -9' stroke='red'/>"))
put("outline/strokes-open.svg", outline("<path fill='none' stroke='red' d='M0 0L9 -9 3 -9'/>"))
put("outline/nothing.svg", outline(""))
put("outline/arcs-of-a-hundred-thousand.svg", outline("<path d='M0 0%s'/>" % ("a9 9 0 1 1 0 1e-9" * 25000)))
put("outline/use-is-itself.svg", outline("<g id='a'>" + BODY + "<use href='#a'/></g>"))
put("outline/entity-of-a-file.svg", outline("<text>&x;</text>" + BODY).replace("<svg", "<!DOCTYPE svg [<!ENTITY x SYSTEM 'file:///etc/passwd'>]><svg", 1))
put("outline/groups-nested.svg", outline("<g>" * 100000 + BODY + "</g>" * 100000))
put("outline/script.svg", outline("<script>while (true) {}</script>" + BODY))
put("outline/transform-without-inverse.svg", outline("<g transform='scale(0)'>" + BODY + "</g>"))
put("outline/text.svg", "a person, walking")

# ---------------------------------------------------------------- sheet files
SHEET = "size: A3 landscape\nlines: lines.pdf\ndeliver: { drawing: out/drawing.pdf }\n"
put("sheet/aliases-bomb.sheet.yaml", "a: &a [x, x, x, x, x, x, x, x, x]\n" + "".join("%s: &%s [%s]\n" % (b, b, ", ".join(["*" + a] * 9)) for a, b in zip("abcdefgh", "bcdefghi")) + SHEET)
put("sheet/aliases-bomb-of-mappings.sheet.yaml", "a: &a { k: x }\n" + "".join("%s: &%s { %s }\n" % (b, b, ", ".join("k%d: *%s" % (k, a) for k in range(9))) for a, b in zip("abcdefgh", "bcdefghi")) + SHEET)
put("sheet/alias-is-itself.sheet.yaml", "pens: &a { x: *a }\n" + SHEET)
put("sheet/merge-is-itself.sheet.yaml", "pens: &a { <<: *a }\n" + SHEET)
put("sheet/merges-chained.sheet.yaml", "".join("a%d: &a%d { <<: [%s] }\n" % (k, k, ", ".join("*a%d" % j for j in range(max(0, k - 20), k))) for k in range(40)) + SHEET)
put("sheet/brackets-nested.sheet.yaml", SHEET + "pens: " + "[" * 100000)
put("sheet/braces-nested.sheet.yaml", SHEET + "pens: " + "{a: " * 100000)
put("sheet/dashes-nested.sheet.yaml", SHEET + "pens:\n  " + "- " * 100000)
put("sheet/questions-nested.sheet.yaml", SHEET + "? " * 100000)
put("sheet/indentation-nested.sheet.yaml", SHEET + "".join(" " * k + "a:\n" for k in range(1, 1200)))
put("sheet/key-of-10-mb.sheet.yaml", "k" * 10_000_000 + ": 1\n" + SHEET)
put("sheet/key-of-1-mb.sheet.yaml", "k" * 1_000_000 + ": 1\n" + SHEET)
put("sheet/key-in-quotes-of-1-mb.sheet.yaml", "\"" + "k" * 1_000_000 + "\": 1\n" + SHEET)
put("sheet/value-of-1-mb.sheet.yaml", SHEET + "resolution: " + "9" * 1_000_000 + "\n")
put("sheet/text-of-1-mb.sheet.yaml", SHEET + "title: |\n" + "  x\n" * 250_000)
put("sheet/comment-of-1-mb.sheet.yaml", SHEET + "#" * 1_000_000 + "\n")
put("sheet/blanks-of-1-mb.sheet.yaml", SHEET + "resolution:" + " " * 1_000_000 + "300\n")
put("sheet/lines-of-1-mb.sheet.yaml", SHEET + "\n" * 1_000_000)
put("sheet/keys-eight-thousand.sheet.yaml", SHEET + "".join("k%d: 1\n" % k for k in range(8_000)))
put("sheet/keys-twice-a-hundred-thousand.sheet.yaml", SHEET + "resolution: 300\n" * 60_000)
put("sheet/keys-near-by.sheet.yaml", SHEET + "".join("resolutin%d: 1\n" % k for k in range(4_000)))
put("sheet/pens-four-thousand.sheet.yaml", SHEET + "pens:\n" + "".join("  p%d: { color: '#%06x' }\n" % (k, k) for k in range(4_000)))
put("sheet/pens-of-one-colour.sheet.yaml", SHEET + "pens:\n" + "".join("  p%d: { color: '#000000' }\n" % k for k in range(3_000)))
put("sheet/figures-twenty-thousand.sheet.yaml", SHEET + "floors: { yard: 0 m }\nfigures:\n" + "- { outline: walking, foot: [1, 2], floor: yrad }\n" * 20_000)
put("sheet/polygon-of-100000.sheet.yaml", SHEET + "regions: { a: { outline: [" + "[1, 2]," * 100_000 + "] } }\n")
put("sheet/keys-twice.sheet.yaml", SHEET + SHEET)
put("sheet/tabs.sheet.yaml", "pens:\n\ta: { color: red }\n" + SHEET)
put("sheet/nul.sheet.yaml", SHEET + "title: a\0b\n")
put("sheet/noise.sheet.yaml", bytes((k * 73 + k // 7) % 256 for k in range(3000)))
put("sheet/zeros.sheet.yaml", bytes(3000))
put("sheet/mark-twice.sheet.yaml", "\ufeff\ufeff" + SHEET)
put("sheet/mark-within.sheet.yaml", SHEET + "\ufefftitle: x\n")
put("sheet/utf-16.sheet.yaml", SHEET.encode("utf-16"))
put("sheet/utf-8-broken.sheet.yaml", SHEET.encode() + b"title: \xc3\x28\n")
put("sheet/surrogates.sheet.yaml", SHEET.encode() + b"title: \xed\xa0\x80\n")
put("sheet/escapes-broken.sheet.yaml", SHEET + "title: \"\\x\"\n")
put("sheet/escape-beyond.sheet.yaml", SHEET + "title: \"\\UFFFFFFFF\"\n")
put("sheet/escapes-of-a-terminal.sheet.yaml", SHEET + "\"\\e[31m\\a\\r\": 1\n")
put("sheet/tag-of-a-class.sheet.yaml", "size: !!javax.script.ScriptEngineManager [!!java.net.URLClassLoader [[!!java.net.URL [\"http://example.invalid/\"]]]]\n" + SHEET)
put("sheet/tag-binary.sheet.yaml", SHEET + "title: !!binary aGVsbG8=\n")
put("sheet/documents-many.sheet.yaml", ("---\n" + SHEET) * 200)
put("sheet/directives-many.sheet.yaml", "%YAML 1.2\n" * 500 + "---\n" + SHEET)
put("sheet/tag-directives-many.sheet.yaml", "".join("%%TAG !a%d! tag:x,2000:\n" % k for k in range(500)) + "---\n" + SHEET)
put("sheet/numbers-odd.sheet.yaml", "size: 1e999 x NaN in\nresolution: .inf\nlines: lines.pdf\ndeliver: { drawing: out/drawing.pdf }\n")
put("sheet/size-huge.sheet.yaml", "size: 999999999999999999 x 999999999999999999 m\n" + SHEET.split("\n", 1)[1])
put("sheet/resolution-huge.sheet.yaml", SHEET + "resolution: 999999999999999999999999\n")
put("sheet/paths-odd.sheet.yaml", "size: A3\nlines: \"a\\0b.pdf\"\ndeliver: { drawing: \"../../../../../../etc/passwd\" }\n")
put("sheet/path-of-10000-letters.sheet.yaml", "size: A3\nlines: " + "x" * 10_000 + ".pdf\ndeliver: { drawing: out/" + "y/" * 2_000 + "d.pdf }\n")
put("sheet/path-of-a-device.sheet.yaml", "size: A3\nlines: /dev/zero\ndeliver: { drawing: /dev/null }\n")
put("sheet/list.sheet.yaml", "- a\n- b\n")
put("sheet/word.sheet.yaml", "sheet\n")
put("sheet/nothing.sheet.yaml", "")
put("sheet/anchor-of-1-mb.sheet.yaml", "title: &" + "a" * 900_000 + " x\n" + SHEET)
put("sheet/quotes-never-closed.sheet.yaml", SHEET + "title: \"" + "x\n" * 4000)
put("sheet/flow-without-end.sheet.yaml", SHEET + "pens: {" + "a, " * 100_000)
