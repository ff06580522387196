package org.adumbrate.linework.svg;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import javax.xml.parsers.ParserConfigurationException;
import org.adumbrate.fault.InputFault;
import org.adumbrate.linework.clip.TooIntricateException;
import org.adumbrate.linework.page.LibraryWords;
import org.xml.sax.Attributes;
import org.xml.sax.Locator;
import org.xml.sax.SAXException;
import org.xml.sax.helpers.DefaultHandler;

/** Goes through an SVG file once without keeping it, to see whether it can be kept. */
final class SvgLimits extends DefaultHandler {
    /** Elements and attributes; kept, each takes some 200 bytes. Half a million lines have three million. */
    private static final int MOST_NODES = 3_000_000;

    /** Of text and of attributes. A line takes some 60. */
    private static final long MOST_CHARACTERS = 100_000_000;

    /** Twice what is drawn, so that what is drawn too deep is told as such. */
    private static final int DEEPEST = 1000;

    private int nodes;
    private long characters;
    private int depth;
    private Locator place;
    private final SvgExpansion expansion = new SvgExpansion();

    private SvgLimits() {}

    /**
     * Reads a file to its end, or to where it is not well formed, which is told by whoever reads it next.
     *
     * @throws InputFault if it is too much to be kept, or ends within its head
     */
    static void check(Path file) throws InputFault {
        try (InputStream in = SvgFile.open(file)) {
            if (!SvgDoctype.ends(in)) {
                throw new InputFault(
                        file, "is not well-formed XML (it ends within its DOCTYPE)", "export it again as plain SVG");
            }
        } catch (InputFault e) {
            throw e;
        } catch (IOException e) {
            throw new InputFault(
                    file, "cannot be read (" + LibraryWords.of(e) + ")", "check the name and the folder", e);
        }
        try (InputStream in = SvgFile.open(file)) {
            SvgParsers.passing().parse(in, new SvgLimits());
        } catch (TooIntricateException e) {
            throw new InputFault(file, e.getMessage(), "export fewer objects at a time", e);
        } catch (IOException | SAXException | ParserConfigurationException | RuntimeException e) {
            // told by whoever reads it next
        }
    }

    @Override
    public void startElement(String uri, String name, String qualified, Attributes attributes) {
        nodes += 1 + attributes.getLength();
        depth++;
        for (int k = 0; k < attributes.getLength(); k++) {
            characters += attributes.getValue(k).length();
        }
        if (nodes > MOST_NODES || depth > DEEPEST) {
            throw new TooIntricateException("has more than " + MOST_NODES
                    + " elements and attributes, or elements nested deeper than " + DEEPEST);
        }
        require();
        expansion.begin(name, attributes, place == null ? 0 : place.getLineNumber());
    }

    @Override
    public void endElement(String uri, String name, String qualified) {
        depth--;
        expansion.end();
    }

    @Override
    public void endDocument() {
        expansion.require();
    }

    @Override
    public void setDocumentLocator(Locator locator) {
        place = locator;
    }

    @Override
    public void characters(char[] text, int start, int length) {
        characters += length;
        require();
    }

    private void require() {
        if (characters > MOST_CHARACTERS) {
            throw new TooIntricateException("has more than " + MOST_CHARACTERS + " characters of text and attributes");
        }
    }

    /** Reports to nobody. */
    @Override
    public void fatalError(org.xml.sax.SAXParseException e) throws SAXException {
        throw e;
    }
}
