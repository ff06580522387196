"""Files by programs of their own: R, TikZ, gnuplot, a browser, LibreOffice, Inkscape, librsvg, and libraries for Node."""
import json
import os
import shutil
from pathlib import Path

from scene import MM, cmyk, grey, hexadecimal, run

HERE = Path(__file__).parent


def drawing(scene, width="%.4fpt", ink=hexadecimal, around=("", ""), paper=""):
    """An SVG of the scene, y down, in points."""
    rows = []
    for rgb, (ax, ay), (bx, by) in scene.strokes:
        rows.append(f'<path d="M{ax:.4f} {scene.height - ay:.4f}L{bx:.4f} {scene.height - by:.4f}" '
                    f'stroke="{ink(rgb)}"/>')
    return (f'<svg xmlns="http://www.w3.org/2000/svg" width="{width % scene.width}" height="{width % scene.height}" '
            f'viewBox="0 0 {scene.width} {scene.height}">{paper}<g fill="none" stroke-width="0.5">{around[0]}'
            + "\n".join(rows) + f"{around[1]}</g></svg>")


def with_r(book):
    scene = book.scene
    table = book.path("r-lines.csv")
    with open(table, "w") as out:
        for rgb, a, b in scene.strokes:
            out.write(",".join([hexadecimal(rgb)] + ["%.4f" % v for v in a + b]) + "\n")
    run("Rscript", HERE / "lines.R", table, book.folder, scene.width, scene.height)
    table.unlink()
    book.add("r-pdf.pdf", placed=True)
    book.add("r-raw.pdf")
    book.add("r-cairo.pdf")
    book.add("r-cmyk.pdf")
    book.add("r-grey.pdf", color=lambda rgb: hexadecimal((round(r_grey(rgb), 3),) * 3))
    book.add("r-svg.svg", 1, 0.2)
    run("ps2pdf", "-dEPSCrop", book.path("r.eps"), book.path("r-ghostscript.pdf"))
    book.add("r-ghostscript.pdf", 1, 0.2)


def r_grey(rgb):
    """As R's own pdf device has it."""
    return 0.213 * rgb[0] + 0.715 * rgb[1] + 0.072 * rgb[2]


def with_tikz(book):
    scene = book.scene
    work = book.path("tikz")
    work.mkdir(exist_ok=True)

    def document(name, engine, model, before="", after="", scale=1.0):
        def stated(rgb):
            values = {"rgb": rgb, "cmyk": cmyk(rgb), "gray": (grey(rgb),)}[model]
            return "%s:%s" % (model, ",".join("%.5f" % v for v in values))
        names, rows = {}, []
        for rgb, a, b in scene.strokes:
            names.setdefault(rgb, "c" + "abcdefghijklmnopqrstuvwxyz"[len(names)])
            rows.append(r"\draw[%s] (%.4fbp,%.4fbp)--(%.4fbp,%.4fbp);" % (names[rgb], *a, *b))
        colors = "".join(r"\definecolor{%s}{%s}{%s}" % (n, *stated(rgb).split(":")) for rgb, n in names.items())
        width, height = scene.width * scale, scene.height * scale
        text = (r"\documentclass{article}\usepackage[%s]{xcolor}\usepackage{tikz}" % model
                + r"\usepackage[paperwidth=%.4fbp,paperheight=%.4fbp,margin=0pt]{geometry}" % (width, height)
                + r"\pagestyle{empty}\parindent0pt\begin{document}" + colors
                + r"\begin{tikzpicture}[remember picture,overlay,shift={(current page.south west)},line width=0.5bp]"
                + before + "\n".join(rows) + after + r"\end{tikzpicture}\end{document}")
        (work / (name + ".tex")).write_text(text)
        for _ in range(2):  # the second run knows where the page lies
            run(engine, "-interaction=batchmode", name + ".tex", cwd=work)
        shutil.copy(work / (name + ".pdf"), book.path(name + ".pdf"))

    document("tikz-pdflatex", "pdflatex", "rgb")
    book.add("tikz-pdflatex.pdf", 1, 0.2, placed=True)
    document("tikz-lualatex", "lualatex", "rgb")
    book.add("tikz-lualatex.pdf", 1, 0.2)
    document("tikz-cmyk", "pdflatex", "cmyk")
    book.add("tikz-cmyk.pdf", 1, 0.2)
    document("tikz-clip", "pdflatex", "rgb", r"\clip (0,0) rectangle (%.4fbp,%.4fbp);" % (scene.width, scene.height))
    book.add("tikz-clip.pdf", 1, 0.2)
    document("tikz-scope", "pdflatex", "rgb", r"\begin{scope}[scale=0.5,transform shape]", r"\end{scope}")
    book.add("tikz-scope.pdf", 0.5, 0.3)
    shutil.rmtree(work)


def with_gnuplot(book):
    scene = book.scene
    colors = scene.by_color()
    data, plots = [], []
    for k, (rgb, pieces) in enumerate(colors.items()):
        plots.append(f"$d{k} using 1:2 with lines lw 0.5 lc rgb '{hexadecimal(rgb)}' notitle")
        data.append(f"$d{k} << EOD\n" + "".join("%.4f %.4f\n%.4f %.4f\n\n" % (*a, *b) for a, b in pieces) + "EOD\n")
    inches = f"{scene.width / 72}in,{scene.height / 72}in"
    for name, terminal in (("gnuplot.pdf", f"pdfcairo size {inches}"),
                           ("gnuplot.svg", f"svg size {scene.width:.0f},{scene.height:.0f}"),
                           ("gnuplot.eps", f"postscript eps color size {inches}")):
        script = ("".join(data) + f"set terminal {terminal}\nset output '{book.path(name)}'\n"
                  "unset border\nunset tics\nset lmargin 0\nset rmargin 0\nset tmargin 0\nset bmargin 0\n"
                  f"set xrange [0:{scene.width}]\nset yrange [0:{scene.height}]\nplot " + ", ".join(plots) + "\n")
        (book.path("gnuplot.gp")).write_text(script)
        run("gnuplot", book.path("gnuplot.gp"))
    book.path("gnuplot.gp").unlink()
    # it counts in twentieths of a point, and in hundredths of a pixel
    book.add("gnuplot.pdf", 1, 5)
    book.add("gnuplot.svg", 0.75, 5)


def with_browser(book):
    scene = book.scene
    folder = book.path("browser")
    folder.mkdir(exist_ok=True)
    page = f"@page{{size:{scene.width}pt {scene.height}pt;margin:0}}body{{margin:0}}svg{{display:block}}"

    def printed(name, body, scale=1.0, per_metre=0.2, placed=False):
        source = folder / (name + ".html")
        source.write_text(f"<!doctype html><style>{page}</style>{body}")
        run("chromium", "--headless", "--no-sandbox", "--disable-gpu", "--no-pdf-header-footer",
            f"--print-to-pdf={book.path(name + '.pdf')}", source.as_uri())
        book.add(name + ".pdf", scale, per_metre, placed=placed)

    printed("browser-inline", drawing(scene), placed=True)
    printed("browser-half", drawing(scene).replace(
        f'width="{scene.width:.4f}pt" height="{scene.height:.4f}pt"',
        f'width="{scene.width / 2:.4f}pt" height="{scene.height / 2:.4f}pt"'), 0.5)
    printed("browser-group", drawing(scene, around=('<g opacity="0.5">', "</g>")))
    printed("browser-paper", drawing(scene, paper='<rect width="100%" height="100%" fill="white"/>'))
    (folder / "lines.svg").write_text(drawing(scene))
    printed("browser-image", f'<img src="lines.svg" style="display:block;width:{scene.width}pt">')
    shutil.rmtree(folder)


def with_office(book):
    scene = book.scene
    work = book.path("office")
    work.mkdir(exist_ok=True)
    (work / "office.svg").write_text(drawing(scene))
    home = f"-env:UserInstallation={(work / 'home').as_uri()}"
    run("soffice", home, "--headless", "--convert-to", "odg", "--outdir", work, work / "office.svg")
    run("soffice", home, "--headless", "--convert-to", "pdf", "--outdir", work, work / "office.odg")
    shutil.copy(work / "office.pdf", book.path("office-drawing.pdf"))
    run("soffice", home, "--headless", "--convert-to", "svg", "--outdir", work / "out", work / "office.odg")
    shutil.copy(work / "out/office.svg", book.path("office-drawing.svg"))
    shutil.rmtree(work)
    # ends are whole hundredths of a millimetre, and most lines are as short as a millimetre or two
    book.add("office-drawing.pdf", 1, 5)
    book.add("office-drawing.svg", 1, 5)


def with_inkscape(book):
    scene = book.scene
    source = book.path("inkscape-source.svg")
    source.write_text(drawing(scene))

    def export(name, *options):
        run("inkscape", source, "--export-filename", book.path(name), *options)
    export("inkscape.pdf")
    book.add("inkscape.pdf", placed=True)
    export("inkscape-1.4.pdf", "--export-pdf-version=1.4")
    book.add("inkscape-1.4.pdf")
    export("inkscape-plain.svg", "--export-plain-svg")
    book.add("inkscape-plain.svg", 1, 0.2)
    export("inkscape.eps")
    run("ps2pdf", "-dEPSCrop", book.path("inkscape.eps"), book.path("inkscape-ghostscript.pdf"))
    book.add("inkscape-ghostscript.pdf", 1, 0.2)
    source.unlink()


def with_librsvg(book):
    scene = book.scene
    source = book.path("librsvg-source.svg")
    source.write_text(drawing(scene, around=('<g opacity="0.6"><g transform="rotate(0)">', "</g></g>")))
    for kind in ("pdf", "svg"):
        run("rsvg-convert", "-f", kind, "-o", book.path("librsvg." + kind), source)
    book.add("librsvg.pdf")
    book.add("librsvg.svg", 1, 0.2)
    source.unlink()


def with_node(book):
    """Needs the packages pdf-lib, jspdf and pdfkit where Node looks for them: NODE_PATH, or a folder above the book's."""
    scene = book.scene
    source = book.path("node-lines.json")
    source.write_text(json.dumps({"width": scene.width, "height": scene.height, "strokes": scene.strokes}))
    for name in ("pdf-lib", "jspdf", "pdfkit"):
        book.attempt(name, lambda name=name: run("node", HERE / (name + ".cjs"), source, book.folder, env=dict(os.environ)))
    source.unlink()
    for name in ("pdf-lib-plain", "pdf-lib-table", "pdf-lib-form", "pdf-lib-turned", "pdf-lib-paths", "pdf-lib-copied"):
        book.add(name + ".pdf", 1, 0.1, placed=name == "pdf-lib-plain")
    book.add("pdf-lib-cmyk.pdf")
    # it writes as many digits as are asked for, in its own unit
    for name in ("jspdf-mm", "jspdf-pt", "jspdf-packed", "jspdf-across"):
        book.add(name + ".pdf", 1, 0.2, placed=name == "jspdf-mm")
    book.add("jspdf-cmyk.pdf", 1, 0.2)
    for name in ("pdfkit-plain", "pdfkit-raw", "pdfkit-scaled"):
        book.add(name + ".pdf", placed=name == "pdfkit-plain")
    book.add("pdfkit-cmyk.pdf")
