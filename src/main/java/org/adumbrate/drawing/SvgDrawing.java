package org.adumbrate.drawing;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;
import org.adumbrate.fault.InputFault;
import org.adumbrate.fault.OutputFault;
import org.adumbrate.geometry.LineCap;
import org.adumbrate.geometry.LineJoin;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.SheetSize;
import org.adumbrate.geometry.VectorPath;
import org.adumbrate.output.OutputFile;

/**
 * The drawing as an SVG at the sheet's true size, a user unit being a millimetre: an underlay, if there is one, then
 * groups of lines in the order in which they are given, each a {@code g} with its name as id and title. Equal drawings
 * give equal bytes.
 */
public final class SvgDrawing {
    private static final String SVG = "http://www.w3.org/2000/svg";
    private static final String XLINK = "http://www.w3.org/1999/xlink";

    /** Exact to a tenth of a micrometre. */
    private static final int DECIMALS = 4;

    private final OutputStream out;
    private final XMLStreamWriter xml;
    private final Set<String> ids = new HashSet<>();

    private SvgDrawing(OutputStream out) throws XMLStreamException {
        this.out = out;
        this.xml = XMLOutputFactory.newDefaultFactory().createXMLStreamWriter(out, StandardCharsets.UTF_8.name());
    }

    /**
     * Writes a drawing.
     *
     * @param file where it is to stand; what stands there is replaced once the new one is whole
     * @param sheet its size
     * @param underlay what lies below the lines
     * @param groups the lines
     * @throws InputFault if the picture is to be embedded and cannot be read
     * @throws OutputFault if the file cannot be written
     */
    public static void write(Path file, SheetSize sheet, Optional<UnderlayPicture> underlay, List<LineGroup> groups)
            throws IOException {
        try (OutputFile aside = OutputFile.begin(file)) {
            SvgDrawing drawing = new SvgDrawing(aside.stream());
            drawing.begin(sheet);
            if (underlay.isPresent()) {
                drawing.underlay(underlay.get(), sheet, file);
            }
            for (LineGroup group : groups) {
                drawing.lines(group);
            }
            drawing.end();
            aside.commit();
        } catch (XMLStreamException e) {
            // the XML writer wraps what the file says
            throw e.getCause() instanceof IOException cause ? cause : new IOException(e);
        }
    }

    private void begin(SheetSize sheet) throws XMLStreamException {
        String width = number(sheet.widthMm());
        String height = number(sheet.heightMm());
        xml.writeStartDocument(StandardCharsets.UTF_8.name(), "1.0");
        newLine();
        xml.writeStartElement("svg");
        xml.writeDefaultNamespace(SVG);
        xml.writeNamespace("xlink", XLINK);
        xml.writeAttribute("version", "1.1");
        xml.writeAttribute("width", width + "mm");
        xml.writeAttribute("height", height + "mm");
        xml.writeAttribute("viewBox", "0 0 " + width + " " + height);
        newLine();
    }

    private void underlay(UnderlayPicture picture, SheetSize sheet, Path file) throws XMLStreamException, IOException {
        beginGroup(PdfDrawing.UNDERLAY);
        title(PdfDrawing.UNDERLAY);
        xml.writeEmptyElement("image");
        xml.writeAttribute("width", number(sheet.widthMm()));
        xml.writeAttribute("height", number(sheet.heightMm()));
        xml.writeAttribute("preserveAspectRatio", "none");
        if (picture.embedded()) {
            // the XML writer wants a value whole; it leaves the tag open until the next event, so that a long one can
            // be
            // let past it piece by piece
            xml.flush();
            out.write(" xlink:href=\"".getBytes(StandardCharsets.US_ASCII));
            picture.writeTo(out);
            out.write('"');
        } else {
            xml.writeAttribute("xlink:href", picture.seenFrom(file));
        }
        newLine();
        xml.writeEndElement();
        newLine();
    }

    private void lines(LineGroup group) throws XMLStreamException {
        Pen pen = group.pen();
        beginGroup(group.name());
        xml.writeAttribute("fill", "none");
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
                    pen.dash().lengthsMm().stream().map(SvgDrawing::number).toList();
            xml.writeAttribute("stroke-dasharray", String.join(" ", lengths));
            xml.writeAttribute("stroke-dashoffset", number(pen.dash().phaseMm()));
        }
        title(group.name());
        for (VectorPath<SheetPoint> path : group.paths()) {
            if (!path.isEmpty()) {
                xml.writeEmptyElement("path");
                xml.writeAttribute("d", SvgLine.data(path));
                newLine();
            }
        }
        xml.writeEndElement();
        newLine();
    }

    private void end() throws XMLStreamException {
        xml.writeEndElement();
        newLine();
        xml.writeEndDocument();
        xml.close();
    }

    /** Opens a group; its id is its name, with hyphens for spaces, and a number if the name occurs again. */
    private void beginGroup(String name) throws XMLStreamException {
        String wish = name.strip().replaceAll("\\s+", "-");
        String id = wish;
        for (int k = 2; !ids.add(id); k++) {
            id = wish + "-" + k;
        }
        xml.writeStartElement("g");
        xml.writeAttribute("id", id);
    }

    private void title(String name) throws XMLStreamException {
        newLine();
        xml.writeStartElement("title");
        xml.writeCharacters(name);
        xml.writeEndElement();
        newLine();
    }

    private void newLine() throws XMLStreamException {
        xml.writeCharacters("\n");
    }

    private static String number(double mm) {
        return CompactNumber.of(mm, DECIMALS);
    }
}
