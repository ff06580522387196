package org.adumbrate.drawing;

import java.io.StringWriter;
import java.util.List;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;
import org.adumbrate.geometry.SheetSize;

/** Marks as an SVG that stands in a page of HTML. */
public final class InlineSvg {
    private InlineSvg() {}

    /**
     * The marks at true size.
     *
     * @param size how large the SVG is; what reaches beyond is cut off
     */
    public static String of(SheetSize size, List<Mark> marks) {
        StringWriter text = new StringWriter();
        try {
            XMLStreamWriter xml = XMLOutputFactory.newDefaultFactory().createXMLStreamWriter(text);
            String width = CompactNumber.of(size.widthMm(), SvgPaint.DECIMALS);
            String height = CompactNumber.of(size.heightMm(), SvgPaint.DECIMALS);
            xml.writeStartElement("svg");
            xml.writeAttribute("width", width + "mm");
            xml.writeAttribute("height", height + "mm");
            xml.writeAttribute("viewBox", "0 0 " + width + " " + height);
            xml.writeAttribute("aria-hidden", "true");
            for (Paint paint : Paint.of(Layer.of("marks", marks))) {
                xml.writeStartElement("g");
                SvgPaint.look(paint, xml);
                SvgPaint.paths(paint, xml);
                xml.writeEndElement();
            }
            xml.writeEndElement();
            xml.close();
        } catch (XMLStreamException e) {
            throw new IllegalStateException("text in memory cannot fail to be written", e);
        }
        return text.toString();
    }
}
