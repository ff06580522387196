"""Files that tools make of other files: Ghostscript, MuPDF, poppler, qpdf; and files that came to some harm on the way."""
import re

from scene import hexadecimal, run


def with_ghostscript(book):
    source = book.path("cairo-plain.pdf")

    def written(name, *options, color=hexadecimal, device="pdfwrite", placed=False):
        run("gs", "-q", "-dNOPAUSE", "-dBATCH", "-sDEVICE=" + device, *options, "-o", book.path(name), source)
        book.add(name, 1, 0.2, color=color, placed=placed)

    written("ghostscript.pdf", placed=True)
    written("ghostscript-1.3.pdf", "-dCompatibilityLevel=1.3")
    written("ghostscript-1.7.pdf", "-dCompatibilityLevel=1.7")
    written("ghostscript-raw.pdf", "-dCompressPages=false")
    written("ghostscript-linear.pdf", "-dFastWebView=true")
    written("ghostscript-rgb.pdf", "-sColorConversionStrategy=RGB")
    written("ghostscript-icc.pdf", "-sColorConversionStrategy=UseDeviceIndependentColor")
    for kind in ("ps", "eps"):
        book.attempt("cairo." + kind, lambda kind=kind: run(
            "ps2pdf", "-dEPSCrop", book.path("cairo." + kind), book.path(f"ghostscript-{kind}.pdf")))
        book.add(f"ghostscript-{kind}.pdf", 1, 0.2)
    book.attempt("matplotlib.eps", lambda: run(
        "ps2pdf", "-dEPSCrop", book.path("matplotlib.eps"), book.path("ghostscript-matplotlib.pdf")))
    book.add("ghostscript-matplotlib.pdf", 1, 0.3)


def with_mupdf(book):
    source = book.path("reportlab-plain.pdf")
    for name, options in (("mupdf-clean.pdf", ()), ("mupdf-garbage.pdf", ("-ggg",)), ("mupdf-raw.pdf", ("-d",)),
                          ("mupdf-packed.pdf", ("-z", "-gg")), ("mupdf-tidy.pdf", ("-s",)),
                          ("mupdf-ascii.pdf", ("-a", "-d")), ("mupdf-linear.pdf", ("-l",))):
        book.attempt(name, lambda name=name, options=options: run("mutool", "clean", *options, source, book.path(name)))
        book.add(name)
    run("mutool", "draw", "-q", "-F", "svg", "-o", book.path("mupdf-page%d.svg"), source)
    book.add("mupdf-page1.svg", 1, 0.2)
    run("mutool", "convert", "-F", "pdf", "-o", book.path("mupdf-convert.pdf"), source)
    book.add("mupdf-convert.pdf", 1, 0.2)


def with_poppler(book):
    source = book.path("reportlab-plain.pdf")
    for kind in ("pdf", "svg", "ps"):
        run("pdftocairo", "-" + kind, source, book.path("poppler." + kind))
    book.add("poppler.pdf", 1, 0.2)
    book.add("poppler.svg", 1, 0.2)
    run("ps2pdf", "-dEPSCrop", book.path("poppler.ps"), book.path("poppler-ghostscript.pdf"))
    book.add("poppler-ghostscript.pdf", 1, 0.2)


def with_qpdf(book):
    for source in ("cairo-plain", "reportlab-form"):
        for name, options in (("linear", ("--linearize",)), ("objects", ("--object-streams=generate",)),
                              ("table", ("--object-streams=disable",)), ("qdf", ("--qdf",)),
                              ("joined", ("--coalesce-contents",)), ("rc4", ("--allow-weak-crypto", "--encrypt", "", "o", "128", "--")),
                              ("aes", ("--encrypt", "", "o", "256", "--"))):
            run("qpdf", *options, book.path(source + ".pdf"), book.path(f"qpdf-{source}-{name}.pdf"))
            book.add(f"qpdf-{source}-{name}.pdf")
    plain = book.path("cairo-plain.pdf")
    run("qpdf", plain, "--rotate=+90", "--", book.path("qpdf-turned.pdf"))
    book.add("qpdf-turned.pdf")
    run("qpdf", plain, "--flatten-rotation", "--rotate=+270", "--", book.path("qpdf-turned-flat.pdf"))
    book.add("qpdf-turned-flat.pdf")


def with_mishaps(book):
    """What mail, copying and careless programs do to files that others still open."""
    plain = book.path("qpdf-cairo-plain-table.pdf").read_bytes()
    raw = book.path("reportlab-raw.pdf").read_bytes()

    def write(name, data):
        book.path(name).write_bytes(data)
        book.add(name)

    for mark in (b"%%EOF", b"startxref", b"trailer", b"xref\n0"):
        name = re.sub(rb"[^a-z]", b"", mark.lower()).decode()
        write(f"mishap-without-{name}.pdf", plain[:plain.rindex(mark)])
    write("mishap-padded.pdf", plain + b"\0" * 5000)
    write("mishap-mail.pdf", b"From the desk\r\n\r\n" + plain)
    write("mishap-xref-off.pdf", re.sub(rb"startxref\n\d+", b"startxref\n17", plain))
    at = raw.index(b" l S", raw.index(b"stream")) + 4
    for name, nonsense in (("operator", b" frobnicate"), ("operands", b" 0.5 cm"), ("form", b" /Missing Do"),
                           ("name", b" /Missing gs"), ("array", b" [1 2 "), ("bracket", b" ) ")):
        # not a byte more: the table's places stay right
        write(f"mishap-{name}.pdf", replaced(raw, at, nonsense))


def replaced(data, at, nonsense):
    """Puts something behind a stroke and takes as many blanks away elsewhere, or mends the stream's length."""
    start = data.rindex(b"/Length ", 0, at)
    end = re.compile(rb"/Length (\d+)").match(data, start)
    length = b"/Length %d" % (int(end.group(1)) + len(nonsense))
    return data[:start] + length + data[end.end():at] + nonsense + data[at:]
