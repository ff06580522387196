package org.adumbrate.drawing;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;
import org.adumbrate.fault.InputFault;
import org.adumbrate.fault.OutputFault;
import org.adumbrate.geometry.SheetSize;
import org.adumbrate.output.OutputFile;

/**
 * The drawing as an SVG at the sheet's true size, a user unit being a millimetre: an underlay, if there is one, then
 * layers in the order in which they are given, each a {@code g} with its name as id and title. Equal drawings give equal
 * bytes.
 *
 * <p>Layers that are kept together and follow each other share a {@code g} around them. Where others are drawn between
 * them it is closed and opened again: the same title, the id with a number, such as {@code cut} and {@code cut-2}, as an
 * SVG has no other way to draw in order. A layer that is not shown has {@code display="none"}.
 *
 * <p>Each item of a list, such as a figure, is a {@code g} in its layer with its key path as title. Its id is the key path
 * with underscores, {@code figures_3} for {@code figures[3]}: brackets do not stand in an XML name, dots must be escaped in style
 * sheets, and no name of a sheet file, of which layers have theirs, has an underscore.
 */
public final class SvgDrawing {
    private static final String SVG = "http://www.w3.org/2000/svg";
    private static final String XLINK = "http://www.w3.org/1999/xlink";

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
     * @param underlay what lies below the layers
     * @param layers what is drawn
     * @throws InputFault if the picture is to be embedded and cannot be read
     * @throws OutputFault if the file cannot be written
     */
    public static void write(Path file, SheetSize sheet, Optional<UnderlayPicture> underlay, List<Layer> layers)
            throws IOException {
        try (OutputFile aside = OutputFile.begin(file)) {
            SvgDrawing drawing = new SvgDrawing(aside.stream());
            drawing.begin(sheet);
            if (underlay.isPresent()) {
                drawing.underlay(underlay.get(), sheet, file);
            }
            drawing.layers(layers);
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
        beginGroup(DrawingOrder.UNDERLAY);
        title(DrawingOrder.UNDERLAY);
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
        endGroup();
    }

    private void layers(List<Layer> layers) throws XMLStreamException {
        Optional<String> open = Optional.empty();
        for (Layer layer : layers) {
            if (!layer.within().equals(open)) {
                if (open.isPresent()) {
                    endGroup();
                }
                open = layer.within();
                if (open.isPresent()) {
                    beginGroup(open.get());
                    title(open.get());
                }
            }
            layer(layer);
        }
        if (open.isPresent()) {
            endGroup();
        }
    }

    private void layer(Layer layer) throws XMLStreamException {
        beginGroup(layer.name());
        if (!layer.shown()) {
            xml.writeAttribute("display", "none");
        }
        List<PaintedItems> all = PaintedItems.of(layer);
        if (all.stream().flatMap(some -> some.items().stream()).noneMatch(PaintedItems.Item::isOfAList)) {
            paints(layer.name(), Paint.of(layer));
        } else {
            title(layer.name());
            for (PaintedItems painted : all) {
                items(painted);
            }
        }
        endGroup();
    }

    private void items(PaintedItems painted) throws XMLStreamException {
        if (painted.opacity() < 1) {
            xml.writeStartElement("g");
            xml.writeAttribute("opacity", SvgPaint.number(painted.opacity()));
            newLine();
        }
        for (PaintedItems.Item item : painted.items()) {
            if (item.isOfAList()) {
                beginGroup(item.key().replaceAll("[.\\[]", "_").replace("]", ""));
                paints(item.key(), item.paints());
                endGroup();
            } else {
                apart(item.paints());
            }
        }
        if (painted.opacity() < 1) {
            endGroup();
        }
    }

    /** The title of the group that is open and what is painted in it; one paint alone is how the whole group looks. */
    private void paints(String title, List<Paint> paints) throws XMLStreamException {
        if (paints.size() == 1) {
            SvgPaint.look(paints.get(0), xml);
        }
        title(title);
        if (paints.size() == 1) {
            SvgPaint.paths(paints.get(0), xml);
        } else {
            apart(paints);
        }
    }

    private void apart(List<Paint> paints) throws XMLStreamException {
        for (Paint paint : paints) {
            xml.writeStartElement("g");
            SvgPaint.look(paint, xml);
            newLine();
            SvgPaint.paths(paint, xml);
            endGroup();
        }
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

    private void endGroup() throws XMLStreamException {
        xml.writeEndElement();
        newLine();
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
        return CompactNumber.of(mm, SvgPaint.DECIMALS);
    }
}
