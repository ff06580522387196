package org.adumbrate.drawing;

import java.util.List;
import java.util.Locale;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;
import org.adumbrate.geometry.LineCap;
import org.adumbrate.geometry.LineJoin;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.VectorPath;

/** Writes paint as SVG: how it looks apart from its paths, so that a group can look as one. */
final class SvgPaint {
    /** Exact to a tenth of a micrometre. */
    static final int DECIMALS = 4;

    private SvgPaint() {}

    /** Writes, as attributes of the element that is open, how a paint looks. */
    static void look(Paint paint, XMLStreamWriter xml) throws XMLStreamException {
        if (paint.pen().isPresent()) {
            xml.writeAttribute("fill", "none");
            pen(paint.pen().get(), xml);
        } else {
            xml.writeAttribute("fill", paint.color().toString());
            if (paint.opacity() < 1) {
                xml.writeAttribute("fill-opacity", number(paint.opacity()));
            }
        }
    }

    private static void pen(Pen pen, XMLStreamWriter xml) throws XMLStreamException {
        xml.writeAttribute("stroke", pen.ink().toString());
        xml.writeAttribute("stroke-width", number(pen.widthMm()));
        String cap = pen.cap() == LineCap.PROJECTING ? "square" : pen.cap().name();
        xml.writeAttribute("stroke-linecap", cap.toLowerCase(Locale.ROOT));
        xml.writeAttribute("stroke-linejoin", pen.join().name().toLowerCase(Locale.ROOT));
        if (pen.join() == LineJoin.MITER) {
            // where PDF stops pointing corners too (ISO 32000-1, table 52); SVG would at 4
            xml.writeAttribute("stroke-miterlimit", "10");
        }
        if (!pen.dash().isNone()) {
            List<String> lengths =
                    pen.dash().lengthsMm().stream().map(SvgPaint::number).toList();
            xml.writeAttribute("stroke-dasharray", String.join(" ", lengths));
            xml.writeAttribute("stroke-dashoffset", number(pen.dash().phaseMm()));
        }
    }

    /** Writes a path for each line, and one for all of a fill. */
    static void paths(Paint paint, XMLStreamWriter xml) throws XMLStreamException {
        StringBuilder fill = new StringBuilder();
        for (VectorPath<SheetPoint> path : paint.paths()) {
            if (paint.isFill()) {
                fill.append(SvgLine.data(path));
            } else {
                path(SvgLine.data(path), xml);
            }
        }
        if (paint.isFill()) {
            path(fill.toString(), xml);
        }
    }

    private static void path(String data, XMLStreamWriter xml) throws XMLStreamException {
        xml.writeEmptyElement("path");
        xml.writeAttribute("d", data);
        xml.writeCharacters("\n");
    }

    static String number(double value) {
        return CompactNumber.of(value, DECIMALS);
    }
}
