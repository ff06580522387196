"""Files by Python's drawing libraries: cairo, reportlab, matplotlib, Qt."""
from scene import MM, cmyk, grey, hexadecimal


def with_cairo(book):
    import cairo
    scene = book.scene

    def lines(context, flip=True, per_color=False):
        if flip:
            context.translate(0, scene.height)
            context.scale(1, -1)
        context.set_line_width(0.5)
        if per_color:
            for rgb, pieces in scene.by_color().items():
                context.set_source_rgb(*rgb)
                for a, b in pieces:
                    context.move_to(*a)
                    context.line_to(*b)
                context.stroke()
            return
        for rgb, a, b in scene.strokes:
            context.set_source_rgb(*rgb)
            context.move_to(*a)
            context.line_to(*b)
            context.stroke()

    def pdf(name, draw, scale=1.0, version=None, per_metre=0.1, placed=False):
        surface = cairo.PDFSurface(str(book.path(name)), scene.width * scale, scene.height * scale)
        if version is not None:
            surface.restrict_to_version(version)
        context = cairo.Context(surface)
        context.scale(scale, scale)
        draw(context)
        surface.finish()
        book.add(name, scale, per_metre, placed=placed)

    def grouped(context):
        context.push_group()
        lines(context)
        context.pop_group_to_source()
        context.paint()

    def clipped(context):
        context.rectangle(0, 0, scene.width, scene.height)
        context.clip()
        context.arc(scene.width / 2, scene.height / 2, scene.width, 0, 6.283185307)
        context.clip()
        lines(context)

    def nested(context):
        context.save()
        context.scale(MM, MM)
        context.save()
        context.translate(10, 20)
        context.scale(1 / MM, 1 / MM)
        context.translate(-10 * MM, -20 * MM)
        lines(context)
        context.restore()
        context.restore()

    def faded(context):
        context.push_group()
        lines(context)
        context.pop_group_to_source()
        context.paint_with_alpha(0.5)

    def papered(context):
        context.set_source_rgb(1, 1, 1)
        context.paint()
        lines(context)

    pdf("cairo-plain.pdf", lines, placed=True)
    pdf("cairo-per-colour.pdf", lambda c: lines(c, per_color=True))
    pdf("cairo-1.4.pdf", lines, version=cairo.PDFVersion.VERSION_1_4)
    pdf("cairo-half.pdf", lines, scale=0.5, placed=True)
    pdf("cairo-triple.pdf", lines, scale=3)
    pdf("cairo-group.pdf", grouped)
    pdf("cairo-faded-group.pdf", faded)
    pdf("cairo-clip.pdf", clipped)
    pdf("cairo-nested.pdf", nested)
    pdf("cairo-paper.pdf", papered)

    def svg(name, draw, unit=None):
        surface = cairo.SVGSurface(str(book.path(name)), scene.width, scene.height)
        if unit is not None:
            surface.set_document_unit(unit)
        draw(cairo.Context(surface))
        surface.finish()
        # of cairo's SVG surfaces the user unit is that of the document, whatever the page is stated in
        scale = {None: 1, cairo.SVGUnit.MM: 1 / MM, cairo.SVGUnit.PX: 0.75}[unit]
        book.add(name, scale, 0.2)

    svg("cairo-plain.svg", lines)
    svg("cairo-per-colour.svg", lambda c: lines(c, per_color=True))
    svg("cairo-mm.svg", lines, cairo.SVGUnit.MM)
    svg("cairo-px.svg", lines, cairo.SVGUnit.PX)
    svg("cairo-group.svg", grouped)
    for name, eps in (("cairo.ps", False), ("cairo.eps", True)):
        surface = cairo.PSSurface(str(book.path(name)), scene.width, scene.height)
        surface.set_eps(eps)
        lines(cairo.Context(surface))
        surface.finish()


def with_reportlab(book):
    from reportlab.lib.colors import CMYKColor, CMYKColorSep, PCMYKColor
    from reportlab.pdfgen import canvas
    scene = book.scene

    def pdf(name, draw=None, color=lambda c, rgb: c.setStrokeColorRGB(*rgb), scale=1.0, size=1.0, finish=None,
            seen=hexadecimal, placed=False, **options):
        sheet = canvas.Canvas(str(book.path(name)), pagesize=(scene.width * size, scene.height * size), **options)
        if scale != 1:
            sheet.scale(scale, scale)
        sheet.setLineWidth(0.5 / scale)

        def lines():
            for rgb, a, b in scene.strokes:
                color(sheet, rgb)
                sheet.line(*(v * size / scale for v in a + b))
        (draw or (lambda s, inner: inner()))(sheet, lines)
        if finish:
            finish(sheet)
        sheet.showPage()
        sheet.save()
        book.add(name, size, color=seen, placed=placed)

    def as_form(sheet, lines):
        sheet.beginForm("drawing", 0, 0, scene.width, scene.height)
        lines()
        sheet.endForm()
        sheet.doForm("drawing")

    def saved(sheet, lines):
        for _ in range(20):
            sheet.saveState()
            sheet.translate(1, 1)
        sheet.translate(-20, -20)
        lines()
        for _ in range(20):
            sheet.restoreState()

    def dark(rgb):
        return hexadecimal(rgb)

    def grey_name(rgb):
        return hexadecimal((round(grey(rgb), 6),) * 3)

    pdf("reportlab-plain.pdf", placed=True)
    pdf("reportlab-raw.pdf", pageCompression=0)
    pdf("reportlab-mm.pdf", scale=1 / MM)
    pdf("reportlab-double.pdf", size=2)
    pdf("reportlab-cmyk.pdf", color=lambda c, rgb: c.setStrokeColor(CMYKColor(*cmyk(rgb))), seen=dark, placed=True)
    pdf("reportlab-percent.pdf", color=lambda c, rgb: c.setStrokeColor(PCMYKColor(*(100 * v for v in cmyk(rgb)))))
    pdf("reportlab-separation.pdf", color=lambda c, rgb: c.setStrokeColor(
        CMYKColorSep(*cmyk(rgb), spotName="Ink " + hexadecimal(rgb)[1:])))
    pdf("reportlab-grey.pdf", color=lambda c, rgb: c.setStrokeGray(round(grey(rgb), 6)), seen=grey_name)
    pdf("reportlab-form.pdf", as_form)
    pdf("reportlab-saved.pdf", saved)
    pdf("reportlab-encrypted.pdf", encrypt="")

    def two_pages(sheet, lines):
        sheet.drawString(100, 100, "A cover without a line")
        sheet.showPage()
        sheet.setLineWidth(0.5)
        lines()
    pdf("reportlab-cover.pdf", two_pages)

    def blank_first(sheet, lines):
        sheet._code.append(" ")
        sheet.showPage()
        sheet.setLineWidth(0.5)
        lines()
    pdf("reportlab-blank-first.pdf", blank_first)


def with_matplotlib(book):
    import matplotlib
    matplotlib.use("Agg")
    matplotlib.rcParams.update({"path.simplify": False, "path.snap": False, "svg.fonttype": "none"})
    import matplotlib.pyplot as plot
    from matplotlib.collections import LineCollection
    scene = book.scene

    def figure():
        fig = plot.figure(figsize=(scene.width / 72, scene.height / 72))
        axes = fig.add_axes([0, 0, 1, 1])
        axes.set_xlim(0, scene.width)
        axes.set_ylim(0, scene.height)
        axes.axis("off")
        return fig, axes

    def collections(axes):
        for rgb, pieces in scene.by_color().items():
            axes.add_collection(LineCollection(pieces, colors=[rgb], linewidths=0.5))

    def plots(axes):
        for rgb, a, b in scene.strokes:
            axes.plot((a[0], b[0]), (a[1], b[1]), color=rgb, linewidth=0.5, snap=False)

    def save(name, draw, per_metre=0.1, face="none", placed=False):
        fig, axes = figure()
        draw(axes)
        fig.savefig(book.path(name), facecolor=face)
        plot.close(fig)
        book.add(name, 1, per_metre, placed=placed)

    save("matplotlib-collections.pdf", collections, placed=True)
    save("matplotlib-collections.svg", collections, 0.2)
    save("matplotlib-paper.pdf", collections, face="white")
    save("matplotlib-plots.pdf", plots)
    save("matplotlib-plots.svg", plots, 0.2)
    fig, axes = figure()
    collections(axes)
    fig.savefig(book.path("matplotlib.eps"), facecolor="none")
    plot.close(fig)


def with_qt(book):
    import os
    os.environ["QT_QPA_PLATFORM"] = "offscreen"
    from PyQt5.QtCore import QMarginsF, QPointF, QRectF, QSize, QSizeF
    from PyQt5.QtGui import QColor, QGuiApplication, QPageLayout, QPageSize, QPainter, QPdfWriter, QPen
    from PyQt5.QtSvg import QSvgGenerator
    scene = book.scene
    app = QGuiApplication([])

    def lines(painter, dots):
        painter.scale(dots / 72, dots / 72)
        for rgb, a, b in scene.strokes:
            painter.setPen(QPen(QColor.fromRgbF(*rgb), 0.5))
            painter.drawLine(QPointF(a[0], scene.height - a[1]), QPointF(b[0], scene.height - b[1]))

    def pdf(name, dots, around=lambda painter, draw: draw(), placed=False):
        writer = QPdfWriter(str(book.path(name)))
        writer.setPageSize(QPageSize(QSizeF(scene.width * MM, scene.height * MM), QPageSize.Millimeter))
        writer.setPageMargins(QMarginsF(0, 0, 0, 0))
        writer.setResolution(dots)
        painter = QPainter(writer)
        around(painter, lambda: lines(painter, dots))
        painter.end()
        book.add(name, placed=placed)

    def clipped(painter, draw):
        painter.setClipRect(QRectF(0, 0, 1e5, 1e5))
        painter.save()
        draw()
        painter.restore()

    pdf("qt-72.pdf", 72)
    pdf("qt-1200.pdf", 1200, placed=True)
    pdf("qt-600.pdf", 600)
    pdf("qt-clip.pdf", 300, clipped)
    for name, dots in (("qt-72.svg", 72), ("qt-300.svg", 300)):
        generator = QSvgGenerator()
        generator.setFileName(str(book.path(name)))
        generator.setResolution(dots)
        generator.setSize(QSize(round(scene.width * dots / 72), round(scene.height * dots / 72)))
        generator.setViewBox(QRectF(0, 0, round(scene.width * dots / 72), round(scene.height * dots / 72)))
        painter = QPainter(generator)
        lines(painter, dots)
        painter.end()
        book.add(name, 1, 0.2)
    del app
