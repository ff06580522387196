"""Files written by hand, byte for byte, in ways that no library above has: as old, small and odd programs write them."""
import zlib

from scene import cmyk, grey, hexadecimal


class Pdf:
    """Objects, a table and a tail."""

    def __init__(self, version="1.7"):
        self.version, self.objects = version, []

    def add(self, body):
        self.objects.append(body if isinstance(body, bytes) else body.encode("latin-1"))
        return len(self.objects)

    def stream(self, data, entries="", packed=True):
        data = data if isinstance(data, bytes) else data.encode("latin-1")
        if packed:
            data, entries = zlib.compress(data), entries + " /Filter /FlateDecode"
        return self.add(b"<< /Length %d %s >>\nstream\n" % (len(data), entries.encode()) + data + b"\nendstream")

    def page(self, box, content, resources="", entries="", first=()):
        """The document of one page, with others before it."""
        pages = len(self.objects) + 1 + len(first) + 1
        kids = [self.add(f"<< /Type /Page /Parent {pages} 0 R {body} >>") for body in first]
        kids.append(self.add(f"<< /Type /Page /Parent {pages} 0 R /MediaBox [{box}] /Contents {content} "
                             f"/Resources << {resources} >> {entries} >>"))
        self.add(f"<< /Type /Pages /Kids [{' '.join(f'{k} 0 R' for k in kids)}] /Count {len(kids)} >>")
        self.root = self.add(f"<< /Type /Catalog /Pages {pages} 0 R >>")
        return self

    def bytes(self):
        out = f"%PDF-{self.version}\n%\xe2\xe3\xcf\xd3\n".encode("latin-1")
        places = []
        for k, body in enumerate(self.objects):
            places.append(len(out))
            out += b"%d 0 obj\n" % (k + 1) + body + b"\nendobj\n"
        table = len(out)
        out += b"xref\n0 %d\n0000000000 65535 f \n" % (len(places) + 1) + b"".join(b"%010d 00000 n \n" % p for p in places)
        return out + b"trailer\n<< /Size %d /Root %d 0 R >>\nstartxref\n%d\n%%%%EOF\n" % (
            len(places) + 1, self.root, table)


def content(scene, color=lambda rgb: "%.5f %.5f %.5f RG" % rgb, at=lambda x, y: (x, y), width=0.5):
    return "\n".join(f"{color(rgb)} {width} w %.4f %.4f m %.4f %.4f l S" % (*at(*a), *at(*b))
                     for rgb, a, b in scene.strokes)


def by_hand(book):
    scene = book.scene
    box = f"0 0 {scene.width} {scene.height}"

    def write(name, pdf, **expected):
        book.path(name).write_bytes(pdf.bytes())
        book.add(name, **expected)

    def plain(name, text, resources="", entries="", page=box, setup=lambda pdf: None, **expected):
        pdf = Pdf()
        setup(pdf)
        write(name, pdf.page(page, f"{pdf.stream(text)} 0 R", resources, entries), **expected)

    colors(book, plain)
    pages(book, plain, box)
    places(book, write, box)

    # one number is cut from the next only by the end of a stream
    pdf = Pdf()
    text = content(scene)
    cuts = [text.index("\n", len(text) * k // 7) for k in range(1, 7)]
    parts = [text[a:b] for a, b in zip([0] + cuts, cuts + [len(text)])]
    streams = [pdf.stream(part) for part in parts] + [pdf.stream(b"", packed=False)]
    streams.append(pdf.add(b"<< /Length 0 /Filter /FlateDecode >>\nstream\n\nendstream"))
    write("hand-streams.pdf", pdf.page(box, "[" + " ".join(f"{s} 0 R" for s in streams) + "]"))

    pdf = Pdf()
    pdf.page(box, f"{pdf.stream(content(scene))} 0 R", first=[f"/MediaBox [{box}]", "/MediaBox [0 0 99 99]"])
    write("hand-empty-pages.pdf", pdf)


def colors(book, plain):
    scene = book.scene

    def grey_name(rgb):
        return hexadecimal((round(grey(rgb), 5),) * 3)

    plain("hand-cmyk.pdf", content(scene, lambda c: "%.5f %.5f %.5f %.5f K" % cmyk(c)))
    plain("hand-cmyk-inks.pdf", content(scene, lambda c: "%.5f %.5f %.5f 0 K" % tuple(1 - v for v in c)))
    plain("hand-grey.pdf", content(scene, lambda c: "%.5f G" % grey(c)), color=grey_name)
    plain("hand-spaces.pdf", content(scene, lambda c: "/DeviceRGB CS %.5f %.5f %.5f SC" % c))
    names = {rgb: k for k, rgb in enumerate(scene.by_color())}
    table = "".join("%02x%02x%02x" % tuple(round(255 * v) for v in rgb) for rgb in names)
    plain("hand-indexed.pdf", content(scene, lambda c: "/I CS %d SC" % names[c]),
          f"/ColorSpace << /I [/Indexed /DeviceRGB {len(names) - 1} <{table}>] >>")
    inks = " ".join("/S%d [/Separation /Ink%d /DeviceRGB << /FunctionType 2 /Domain [0 1] /C0 [1 1 1] /C1 [%.5f %.5f %.5f] /N 1 >>]"
                    % (k, k, *rgb) for rgb, k in names.items())
    plain("hand-separation.pdf", content(scene, lambda c: "/S%d CS 1 SCN" % names[c]), f"/ColorSpace << {inks} >>")

    def n_inks(pdf):
        pdf.stream("{ 0 }", "/FunctionType 4 /Domain [0 1 0 1 0 1] /Range [0 1 0 1 0 1 0 1]")
    plain("hand-devicen.pdf", content(scene, lambda c: "/N CS %.5f %.5f %.5f SCN" % tuple(1 - v for v in c)),
          "/ColorSpace << /N [/DeviceN [/Cyan /Magenta /Yellow] /DeviceCMYK 1 0 R] >>", setup=n_inks)
    plain("hand-default.pdf", content(scene, lambda c: "/DefaultRGB CS %.5f %.5f %.5f SC" % c),
          "/ColorSpace << /DefaultRGB /DeviceRGB >>")
    faint = "/ExtGState << /A << /CA 0.4 /BM /Multiply >> >>"
    plain("hand-faint.pdf", "/A gs\n" + content(scene), faint)
    plain("hand-many-operands.pdf", content(scene, lambda c: "0.1 %.5f %.5f %.5f RG" % c))


def pages(book, plain, box):
    scene = book.scene
    w, h = scene.width, scene.height
    plain("hand-crop.pdf", content(scene, at=lambda x, y: (x + 50, y + 70)),
          entries=f"/CropBox [50 70 {w + 50} {h + 70}]", page=f"0 0 {w + 100} {h + 140}")
    plain("hand-origin.pdf", content(scene, at=lambda x, y: (x - 700, y - 300)), page=f"-700 -300 {w - 700} {h - 300}")
    plain("hand-box-turned.pdf", content(scene), page=f"{w} {h} 0 0")
    plain("hand-turned-90.pdf", content(scene, at=lambda x, y: (h - y, x)), entries="/Rotate 90", page=f"0 0 {h} {w}")
    plain("hand-turned-180.pdf", content(scene, at=lambda x, y: (w - x, h - y)), entries="/Rotate 180")
    plain("hand-turned-270.pdf", content(scene, at=lambda x, y: (y, w - x)), entries="/Rotate -90", page=f"0 0 {h} {w}")
    plain("hand-unit.pdf", content(scene, at=lambda x, y: (x / 4, y / 4), width=0.125), entries="/UserUnit 4",
          page=f"0 0 {w / 4} {h / 4}")
    # as survey plans come: metres of a country's grid, moved back by the matrix
    plain("hand-far-away.pdf", "1 0 0 1 -4500000 -5700000 cm\n" + content(scene, at=lambda x, y: (x + 4.5e6, y + 5.7e6)))
    plain("hand-whole-numbers.pdf", "0.0001 0 0 0.0001 0 0 cm\n" + content(
        scene, at=lambda x, y: (round(x * 1e4), round(y * 1e4)), width=5000).replace(".0000 ", " "))
    plain("hand-mirrored.pdf", f"1 0 0 -1 0 {h} cm\n" + content(scene, at=lambda x, y: (x, h - y)))
    plain("hand-saved.pdf", "q " * 300 + content(scene) + " Q" * 400)
    plain("hand-stray-restores.pdf", content(scene).replace(" S\n", " S Q\n"))
    plain("hand-path-first.pdf", "\n".join("%.4f %.4f m %.4f %.4f l %.5f %.5f %.5f RG 0.5 w S" % (*a, *b, *c)
                                          for c, a, b in scene.strokes))
    plain("hand-curves.pdf", "\n".join("%.5f %.5f %.5f RG %.4f %.4f m %.4f %.4f %.4f %.4f v S" % (*c, *a, *b, *b)
                                      for c, a, b in scene.strokes))
    plain("hand-broken-lines.pdf", "[3 2 1 2] 1 d\n" + content(scene))
    plain("hand-hidden-layer.pdf", content(scene) + "\n/OC /L BDC 0 0 m 999 999 l S EMC",
          "/Properties << /L << /Type /OCMD /VE [/Not [/Or << /Type /OCG /Name (on) >> ]] >> >>")


def places(book, write, box):
    """Strokes that the page's own content does not draw."""
    scene = book.scene
    w, h = scene.width, scene.height

    def within(name, stream, entries, text, resources, page=""):
        pdf = Pdf()
        pdf.stream(stream, entries)
        write(name, pdf.page(box, f"{pdf.stream(text)} 0 R", resources, page))

    form = f"/Type /XObject /Subtype /Form /BBox [{box}] /Resources << >>"
    within("hand-form.pdf", content(scene), form, "/F Do", "/XObject << /F 1 0 R >>")
    within("hand-form-turned.pdf", content(scene, at=lambda x, y: (-y, x)), form.replace(box, f"{-h} 0 0 {w}")
           + " /Matrix [0 -1 1 0 0 0]", "/F Do", "/XObject << /F 1 0 R >>")
    within("hand-group.pdf", content(scene), form + " /Group << /S /Transparency >>", "/F Do", "/XObject << /F 1 0 R >>")
    cell = f"/PatternType 1 /PaintType 1 /TilingType 1 /BBox [{box}] /XStep {w} /YStep {h} /Resources << >>"
    within("hand-tile.pdf", content(scene), cell, f"/Pattern cs /P scn {box} re f", "/Pattern << /P 1 0 R >>")
    within("hand-tiles.pdf", content(scene), cell.replace(f"/XStep {w}", f"/XStep {w + 9}"),
           f"q 0.5 0 0 0.5 7 7 cm /Pattern cs /P scn -100 -100 9999 9999 re f Q", "/Pattern << /P 1 0 R >>")
    pdf = Pdf()
    glyphs, shown = [], []
    for k, (rgb, pieces) in enumerate(scene.by_color().items()):
        lines = " ".join("%.4f %.4f m %.4f %.4f l S" % (*a, *b) for a, b in pieces)
        glyphs.append(pdf.stream(f"{w} 0 {box} d1 0.5 w " + lines))
        shown.append("%.5f %.5f %.5f rg BT /T 1 Tf 0 0 Td (%c) Tj ET" % (*rgb, 97 + k))
    font = pdf.add("<< /Type /Font /Subtype /Type3 /FontMatrix [1 0 0 1 0 0] /FontBBox [%s] /FirstChar 97 /LastChar %d "
                   "/Widths [%s] /Encoding << /Differences [97 %s] >> /CharProcs << %s >> >>" % (
                       box, 96 + len(glyphs), " ".join(str(w) for _ in glyphs),
                       " ".join(f"/g{g}" for g in glyphs), " ".join(f"/g{g} {g} 0 R" for g in glyphs)))
    write("hand-type3.pdf", pdf.page(box, f"{pdf.stream(' '.join(shown))} 0 R", f"/Font << /T {font} 0 R >>"))
    notes(book, write, box)
    masks(book, within, form)


def notes(book, write, box):
    scene = book.scene

    def page(name, notes, text=""):
        pdf = Pdf()
        listed = " ".join(f"{pdf.add(note)} 0 R" for note in notes)
        write(name, pdf.page(box, f"{pdf.stream(text)} 0 R", entries=f"/Annots [{listed}]"), per_metre=0.2)

    frame = f"/Type /Annot /Rect [{box}] /F 4 /BS << /W 0.5 >>"
    page("hand-line-notes.pdf", ["<< %s /Subtype /Line /C [%.5f %.5f %.5f] /L [%.4f %.4f %.4f %.4f] >>" % (frame, *c, *a, *b)
                                 for c, a, b in scene.strokes])
    page("hand-ink-notes.pdf", ["<< %s /Subtype /Ink /C [%.5f %.5f %.5f] /InkList [%s] >>" % (
        frame, *c, " ".join("[%.4f %.4f %.4f %.4f]" % (*a, *b) for a, b in pieces))
        for c, pieces in scene.by_color().items()])
    page("hand-hidden-notes.pdf", [f"<< {frame.replace('/F 4', '/F 2')} /Subtype /Line /C [0 1 0] /L [0 0 99 99] >>"],
         content(scene))
    pdf = Pdf()
    look = pdf.stream(content(scene), f"/Subtype /Form /BBox [{box}] /Resources << >>")
    note = pdf.add(f"<< {frame} /Subtype /Ink /AP << /N {look} 0 R >> >>")
    write("hand-pictured-note.pdf", pdf.page(box, f"{pdf.stream('')} 0 R", entries=f"/Annots [{note} 0 R]"))


def masks(book, within, form):
    scene = book.scene
    text = content(scene)
    mask = "/ExtGState << /M << /SMask << /S /%s /G 1 0 R >> >> /N << /SMask /None >> >>"
    group = form + " /Group << /S /Transparency /CS /DeviceGray >>"
    whole = f"0 0 {scene.width} {scene.height} re f"
    within("hand-mask.pdf", "1 g " + whole, group, "/M gs\n" + text, mask % "Luminosity")
    within("hand-mask-alpha.pdf", "0 g " + whole, group, "/M gs\n" + text, mask % "Alpha")
    within("hand-mask-grey.pdf", "0.4 g " + whole, group, "/M gs\n" + text, mask % "Luminosity")
    within("hand-mask-black.pdf", "0 g " + whole, group, text + "\n/M gs 0 1 0 RG 0 0 m 999 500 l S", mask % "Luminosity")
