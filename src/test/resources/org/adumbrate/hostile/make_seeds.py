"""Makes the small sound files that the mutations of the hostile-input tests start from.

    python3 make_seeds.py        # writes seeds/; needs Pillow, numpy and qpdf
"""
import io
import pathlib
import struct
import subprocess
import zlib

from PIL import Image

HERE = pathlib.Path(__file__).parent
SEEDS = HERE / "seeds"

def put(name, data):
    path = SEEDS / name
    path.parent.mkdir(parents=True, exist_ok=True)
    path.write_bytes(data if isinstance(data, bytes) else data.encode())

def chunk(kind, body):
    return struct.pack(">I", len(body)) + kind + body + struct.pack(">I", zlib.crc32(kind + body))

def png(width, height, depth, kind, rows, *before, interlace=0, parts=1):
    packed = zlib.compress(rows)
    cut = [packed[len(packed) * i // parts:len(packed) * (i + 1) // parts] for i in range(parts)]
    head = struct.pack(">IIBBBBB", width, height, depth, kind, 0, 0, interlace)
    return (b"\x89PNG\r\n\x1a\n" + chunk(b"IHDR", head) + b"".join(before)
            + b"".join(chunk(b"IDAT", c) for c in cut) + chunk(b"IEND", b""))

def rows(row_bytes, height, *filters):
    return b"".join(bytes([filters[y % len(filters)]]) + bytes((x * 37 + y * 59) % 256 for x in range(row_bytes))
                    for y in range(height))

# --- colour profiles (ICC.1:2022, clause 7)
def profile(space, connection, *elements, kind=b"mntr"):
    at = 128 + 4 + 12 * len(elements)
    table, body = struct.pack(">I", len(elements)), b""
    for tag, data in elements:
        table += tag + struct.pack(">II", at + len(body), len(data))
        body += data + bytes(-len(data) % 4)
    head = struct.pack(">I4sI4s4s4s", at + len(body), b"\0\0\0\0", 0x02400000, kind, space, connection)
    head = head.ljust(36, b"\0") + b"acsp"
    head = head.ljust(68, b"\0") + struct.pack(">iii", 63190, 65536, 54061)
    return head.ljust(128, b"\0") + table + body

def xyz(x, y, z):
    return b"XYZ \0\0\0\0" + struct.pack(">iii", *(round(v * 65536) for v in (x, y, z)))

def curve(*values):
    return b"curv\0\0\0\0" + struct.pack(">I%dH" % len(values), len(values), *values)

def parametric(kind, *values):
    return b"para\0\0\0\0" + struct.pack(">HH%di" % len(values), kind, 0, *(round(v * 65536) for v in values))

def lut16(channels):
    points = 3 ** channels
    data = b"mft2\0\0\0\0" + bytes([channels, 3, 3, 0]) + struct.pack(">9i", *[65536, 0, 0, 0, 65536, 0, 0, 0, 65536])
    data += struct.pack(">HH", 2, 2) + struct.pack(">HH", 0, 65535) * channels
    for p in range(points):
        ink = sum(p // 3 ** c % 3 for c in range(channels)) / (2 * channels)
        data += struct.pack(">HHH", round(65280 * ((1 - ink) if channels == 4 else ink)), 32768, 32768)
    return data + struct.pack(">HH", 0, 65535) * 3

PRIMARIES = [(b"rXYZ", xyz(0.436, 0.222, 0.014)), (b"gXYZ", xyz(0.385, 0.717, 0.097)), (b"bXYZ", xyz(0.143, 0.061, 0.714))]
WHITE = (b"wtpt", xyz(0.9642, 1, 0.8249))
SAMPLED = curve(*(round(65535 * (i / 31) ** 2.2) for i in range(32)))
SRGB_LIKE = parametric(3, 2.4, 1 / 1.055, 0.055 / 1.055, 1 / 12.92, 0.04045)
PROFILES = {
    "matrix.icc": profile(b"RGB ", b"XYZ ", WHITE, *PRIMARIES, (b"rTRC", SAMPLED), (b"gTRC", curve(0x0233)),
                          (b"bTRC", SRGB_LIKE)),
    "grey.icc": profile(b"GRAY", b"XYZ ", WHITE, (b"kTRC", SAMPLED)),
    "table.icc": profile(b"RGB ", b"Lab ", WHITE, (b"A2B0", lut16(3))),
    "press.icc": profile(b"CMYK", b"Lab ", WHITE, (b"A2B0", lut16(4)), kind=b"prtr"),
}
for name, data in PROFILES.items():
    put("icc/" + name, data)

# --- Exif blocks (JEITA CP-3451)
for name, order, mark in (("little", "<", b"II*\0"), ("big", ">", b"MM\0*")):
    entries = [(0x0112, 3, 1, struct.pack(order + "HH", 6, 0)), (0x011A, 5, 1, struct.pack(order + "I", 62)),
               (0x011B, 5, 1, struct.pack(order + "I", 70)), (0x0128, 3, 1, struct.pack(order + "HH", 2, 0))]
    block = mark + struct.pack(order + "IH", 8, len(entries))
    block += b"".join(struct.pack(order + "HHI", t, k, n) + v for t, k, n, v in entries) + bytes(4)
    put("exif/" + name + ".exif", block + struct.pack(order + "IIII", 300, 1, 300, 1))

# --- PNG
put("png/rgb.png", png(13, 9, 8, 2, rows(39, 9, 0, 1, 2, 3, 4), chunk(b"pHYs", struct.pack(">IIB", 11811, 11811, 1)), parts=2))
put("png/palette.png", png(13, 9, 4, 3, rows(7, 9, 0).replace(b"\xff", b"\x11"), chunk(b"PLTE", bytes(range(48))),
                           chunk(b"tRNS", b"\x80\xff")))
put("png/grey-interlaced.png", png(8, 8, 16, 0, rows(2, 1, 0) + rows(2, 1, 0) + rows(4, 1, 0) + rows(4, 2, 0)
                                   + rows(8, 2, 1) + rows(8, 4, 2) + rows(16, 4, 4), interlace=1))
put("png/alpha.png", png(5, 4, 8, 6, rows(20, 4, 4), chunk(b"gAMA", struct.pack(">I", 45455)),
                         chunk(b"cHRM", struct.pack(">8I", 31270, 32900, 64000, 33000, 30000, 60000, 15000, 6000))))
put("png/profile.png", png(5, 4, 8, 2, rows(15, 4, 0), chunk(b"iCCP", b"p\0\0" + zlib.compress(PROFILES["matrix.icc"])),
                           chunk(b"tRNS", struct.pack(">HHH", 1, 2, 3)), chunk(b"tEXt", b"Title\0kiln")))

# --- JPEG
picture = Image.frombytes("RGB", (40, 24), bytes((x * 5 + y * 3 + c * 60) % 256 for y in range(24) for x in range(40) for c in range(3)))
for name, image, options in (("baseline", picture, {}), ("progressive", picture, {"progressive": True}),
                             ("grey", picture.convert("L"), {}), ("ink", picture.convert("CMYK"), {}),
                             ("profile", picture, {"icc_profile": PROFILES["matrix.icc"], "dpi": (300, 300)})):
    out = io.BytesIO()
    image.save(out, "JPEG", quality=70, **options)
    put("jpeg/" + name + ".jpg", out.getvalue())

# --- BMP, PNM, HDR
small = picture.resize((13, 9))
for name, image in (("rgb24", small), ("palette8", small.quantize(16)), ("one-bit", small.convert("1")), ("rgba", small.convert("RGBA"))):
    out = io.BytesIO()
    image.save(out, "BMP", dpi=(300, 300))
    put("bmp/" + name + ".bmp", out.getvalue())
runs = b"\x04\x07\x00\x05abcde\x00" + b"\x09\x0b\x00\x00" + b"\x0d\x03\x00\x00" + b"\x00\x02\x02\x01\x03\x05\x00\x01"
put("bmp/runs8.bmp", b"BM" + struct.pack("<IHHI", 54 + 64 + len(runs), 0, 0, 54 + 64)
    + struct.pack("<IiiHHIIiiII", 40, 13, 5, 1, 8, 1, len(runs), 2835, 2835, 16, 0) + bytes(range(64)) + runs)
body = small.tobytes()
put("pnm/p6.ppm", b"P6\n# lines\n13 9\n255\n" + body)
put("pnm/p5-wide.pgm", b"P5 13 9 65535\n" + body[:234])
put("pnm/p4.pbm", b"P4 13 9\n" + body[:18])
put("pnm/p3.ppm", b"P3 3 2 255\n" + b" ".join(str(v).encode() for v in range(18)) + b"\n")
put("pnm/p2.pgm", b"P2 3 2 15\n" + b" ".join(str(v).encode() for v in range(6)) + b"\n")
put("pnm/p1.pbm", b"P1 3 2\n1 0 1\n0 1 0\n")
put("pnm/rgba.pam", b"P7\nWIDTH 13\nHEIGHT 9\nDEPTH 4\nMAXVAL 255\nTUPLTYPE RGB_ALPHA\nENDHDR\n" + small.convert("RGBA").tobytes())
flat = b"".join(bytes([(i * 7) % 255 + 1, (i * 5) % 256, (i * 3) % 256, 128 + i % 3]) for i in range(5 * 4))
put("hdr/flat.hdr", b"#?RADIANCE\nFORMAT=32-bit_rle_rgbe\n\n-Y 4 +X 5\n" + flat)
split = b"".join(b"\x02\x02\x00\x0c" + b"".join(b"\x86" + bytes([40 + 9 * c + y]) + b"\x06" + bytes(range(60, 66)) for c in range(4))
                 for y in range(5))
put("hdr/split.hdr", b"#?RADIANCE\nSOFTWARE=test\nFORMAT=32-bit_rle_rgbe\nEXPOSURE=1\n\n-Y 5 +X 12\n" + split)
old = b"\x10\x20\x30\x81\x01\x01\x01\x04" * 3
put("hdr/old.hdr", b"#?RADIANCE\nFORMAT=32-bit_rle_rgbe\n\n-Y 3 +X 5\n" + old)

# --- TIFF, beside the decoders' own samples
for name, options in (("deflate", {"compression": "tiff_adobe_deflate"}), ("jpeg", {"compression": "jpeg"}),
                      ("profile", {"compression": "tiff_lzw", "icc_profile": PROFILES["matrix.icc"], "dpi": (300, 300)})):
    out = io.BytesIO()
    small.save(out, "TIFF", **options)
    put("tiff/" + name + ".tif", out.getvalue())

# --- PDF
CONTENT = """q 1 0 0 1 10 10 cm 0.7 w [3 2] 1 d 1 J 1 j 10 10 m 90 60 l S
1 0 0 RG 5 5 80 40 re S 0 0 1 0 K 10 90 m 20 10 60 10 90 90 c 95 5 99 9 v 4 4 8 8 y h s Q
q 10 10 60 60 re W n /G1 gs /S1 CS 0.4 SCN 0 0 m 99 99 l S
/C2 CS 0.1 0.2 0.3 SC 0 50 m 99 50 l S /I3 CS 1 sc 1 SC 0 55 m 99 55 l S Q
q 20 20 m 80 20 l 50 80 l h W* n /OC /L1 BDC 0 30 m 99 70 l S EMC /OC /M1 BDC 0 40 m 99 40 l B EMC Q
/F1 Do /P0 CS /P1 SCN 0 0 m 1 1 l S BT /T1 9 Tf (kiln) Tj ET
BI /W 2 /H 2 /BPC 8 /CS /G ID abcd EI
/S4 CS 0.2 SCN 3 3 m 60 3 l S"""
FORM = "q 0.5 0 0 0.5 0 0 cm 0 0 m 50 50 l S Q /F2 Do"
OBJECTS = {
    1: "<< /Type /Catalog /Pages 2 0 R /OpenAction << /S /JavaScript /JS (app.alert(1)) >> /OCProperties << /OCGs [11 0 R 12 0 R] "
       "/D << /OFF [12 0 R] /Order [11 0 R 12 0 R] >> >> >>",
    2: "<< /Type /Pages /Kids [3 0 R] /Count 1 /MediaBox [0 0 200 100] >>",
    3: "<< /Type /Page /Parent 2 0 R /CropBox [0 0 190 95] /Rotate 90 /UserUnit 1.5 /Contents [4 0 R] /Resources 5 0 R /Annots "
       "[<< /Subtype /Link /Rect [0 0 9 9] /A << /S /URI /URI (http://example.invalid/) >> >>] >>",
    4: CONTENT,
    5: "<< /XObject << /F1 6 0 R >> /ExtGState << /G1 << /LW 2 /CA 0.5 /D [[4 1] 0] /LC 1 /LJ 2 >> >> /ColorSpace << "
       "/S1 [/Separation /Cut /DeviceRGB 8 0 R] /C2 [/ICCBased 9 0 R] /I3 [/Indexed /DeviceRGB 1 <ff000000ff00>] "
       "/S4 [/DeviceN [/Spot] /DeviceCMYK 10 0 R] /P0 /Pattern >> /Properties << /L1 11 0 R /M1 13 0 R >> /Pattern << >> >>",
    6: (FORM, "/Type /XObject /Subtype /Form /BBox [0 0 100 100] /Matrix [1 0 0 1 5 5] /OC 11 0 R /Resources << /XObject << /F2 7 0 R >> >>"),
    7: ("0 0 m 9 9 l S", "/Type /XObject /Subtype /Form /BBox [0 0 50 50]"),
    8: "<< /FunctionType 2 /Domain [0 1] /C0 [1 1 1] /C1 [0.8 0 0] /N 1 >>",
    9: (PROFILES["matrix.icc"].decode("latin-1"), "/N 3 /Alternate /DeviceRGB"),
    10: ("{ dup 0.5 mul exch 0 exch dup 0 exch pop }", "/FunctionType 4 /Domain [0 1] /Range [0 1 0 1 0 1 0 1]"),
    11: "<< /Type /OCG /Name (lines) >>",
    12: "<< /Type /OCG /Name (hidden) >>",
    13: "<< /Type /OCMD /OCGs [11 0 R 12 0 R] /P /AnyOn /VE [/And 11 0 R [/Not 12 0 R]] >>",
}

def pdf(objects, trailer="/Root 1 0 R"):
    out, at = b"%PDF-1.7\n", {}
    for number, value in objects.items():
        at[number] = len(out)
        if number == 4 and isinstance(value, str):
            value = (value, "")
        if isinstance(value, tuple):
            data = value[0].encode("latin-1")
            text = b"<< /Length %d %s >>\nstream\n" % (len(data), value[1].encode()) + data + b"\nendstream"
        else:
            text = value.encode("latin-1")
        out += b"%d 0 obj\n" % number + text + b"\nendobj\n"
    xref = len(out)
    out += b"xref\n0 %d\n0000000000 65535 f \n" % (len(objects) + 1)
    out += b"".join(b"%010d 00000 n \n" % at[n] for n in objects)
    return out + b"trailer\n<< /Size %d %s >>\nstartxref\n%d\n%%%%EOF\n" % (len(objects) + 1, trailer.encode(), xref)

put("pdf/plain.pdf", pdf(OBJECTS))
for name, options in (("packed", ["--object-streams=generate"]), ("deflated", ["--object-streams=disable", "--recompress-flate"])):
    (SEEDS / "pdf" / (name + ".pdf")).unlink(missing_ok=True)
    subprocess.run(["qpdf", "--deterministic-id", *options, SEEDS / "pdf/plain.pdf", SEEDS / ("pdf/%s.pdf" % name)], check=False)

# --- SVG
put("svg/drawn.svg", """<?xml version="1.0" encoding="UTF-8"?>
<!DOCTYPE svg PUBLIC "-//W3C//DTD SVG 1.1//EN" "http://www.w3.org/Graphics/SVG/1.1/DTD/svg11.dtd" [
<!ENTITY ns "http://www.w3.org/2000/svg">
]>
<svg xmlns="&ns;" xmlns:xlink="http://www.w3.org/1999/xlink" width="200mm" height="100mm" viewBox="0 0 200 100">
<style type="text/css">/* pens */ @import url(none.css); .a, g .b > path { stroke: #c80000; stroke-width: 0.35 } #p { stroke: rgb(10%, 20%, 30%) !important }</style>
<defs>
<clipPath id="c"><rect x="10" y="10" width="80" height="60" rx="4"/><path d="M0 0L50 90 90 0z" clip-rule="evenodd"/></clipPath>
<symbol id="s" viewBox="0 0 10 10"><path class="a" d="M0 0L10 10M10 0 0 10"/></symbol>
</defs>
<g id="building" transform="translate(5 5) rotate(10, 20, 20) scale(1.1)" stroke="blue" fill="none">
<title>Building</title>
<path id="p" d="M10 10 h20 v10 l-5,5 c1 2 3 4 5 6 s3 4 5 6 q1 2 3 4 t5 6 a5 3 20 0 1 8 8 z m1 1e1 L.5.5-3"/>
<g class="b"><path d="M0 0C10 0 10 10 0 10"/></g>
<line x1="0" y1="0" x2="50%" y2="2in" stroke-dasharray="3 1.5, 10%" stroke-dashoffset="1"/>
<polyline points="0,0 10,5 20,0"/><polygon points="0 0 9 0 9 9"/><circle cx="20" cy="20" r="9"/><ellipse cx="3" cy="3" rx="2" ry="1"/>
</g>
<g clip-path="url(#c)"><rect width="100" height="50" stroke="black" stroke-linecap="round" stroke-linejoin="bevel"/></g>
<use xlink:href="#s" x="50" y="50" width="20" height="20"/><use href="#p" transform="matrix(1 0 0 1 9 9)"/>
<svg x="10" y="10" width="50" height="50" viewBox="0 0 5 5" preserveAspectRatio="xMinYMax slice"><path d="M0 0L5 5" stroke="green" vector-effect="non-scaling-stroke"/></svg>
<switch><g requiredExtensions="x"/><g><path d="M0 0L9 9" style="stroke:currentColor;color:teal"/></g></switch>
<text x="3" y="3">kiln</text><image href="none.png" width="9" height="9"/>
</svg>
""")
put("svg/small.svg", """<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 9 9"><path d="M1 1L8 8" stroke="#f00"/></svg>
""")
