package org.adumbrate.linework.svg;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.ParserConfigurationException;
import org.adumbrate.fault.InputFault;
import org.adumbrate.linework.clip.TooIntricateException;
import org.adumbrate.linework.page.LibraryWords;
import org.adumbrate.linework.svg.css.CssLength;
import org.adumbrate.linework.svg.css.CssPage;
import org.adumbrate.linework.svg.css.CssStyles;
import org.w3c.dom.Document;
import org.w3c.dom.DocumentType;
import org.w3c.dom.Element;
import org.w3c.dom.Entity;
import org.w3c.dom.NamedNodeMap;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;
import org.xml.sax.ErrorHandler;
import org.xml.sax.SAXException;
import org.xml.sax.SAXParseException;

/** An SVG file as elements. Nothing outside the file is ever opened. */
final class SvgDocument {
    private static final String SVG = "http://www.w3.org/2000/svg";
    private static final String XLINK = "http://www.w3.org/1999/xlink";
    private static final String REMEDY = "export it again as plain SVG";

    /** Some seconds' worth; a line takes some 60, and an element as much again whatever it says. */
    private static final long MOST_READ = 100_000_000;

    private static final int ELEMENT = 50;

    /** Names in a list for people. */
    private static final int FEW = 5;

    private final Element root;
    private final Map<String, Element> byId = new HashMap<>();
    private final SvgCascade cascade;
    private final int sheetsOutside;
    private final Set<String> circles = new LinkedHashSet<>();
    private long read;

    private SvgDocument(Element root) {
        this.root = root;
        CssStyles styles = new CssStyles(page(root), SvgProperties::isSound);
        NodeList all = root.getElementsByTagNameNS("*", "*");
        for (int k = 0; k < all.getLength(); k++) {
            Element element = (Element) all.item(k);
            String id = element.getAttribute("id");
            if (!id.isEmpty()) {
                byId.putIfAbsent(id, element);
            }
            if (isSvg(element) && element.getLocalName().equals("style") && isCss(element)) {
                styles.add(element.getTextContent(), element.getAttribute("media"));
            }
        }
        cascade = new SvgCascade(styles);
        sheetsOutside = sheetsOutside(root);
    }

    private static boolean isCss(Element style) {
        String type = style.getAttribute("type").strip();
        return type.isEmpty() || type.equalsIgnoreCase("text/css");
    }

    /** What media queries are asked of: the page as far as it states its size, and otherwise its viewBox. */
    private static CssPage page(Element root) {
        Optional<SvgViewBox> box = SvgViewBox.parse(root.getAttribute("viewBox"));
        return new CssPage(
                side(root, "width").or(() -> box.map(SvgViewBox::width)).orElse(0.0),
                side(root, "height").or(() -> box.map(SvgViewBox::height)).orElse(0.0));
    }

    private static Optional<Double> side(Element root, String attribute) {
        return CssLength.parse(root.getAttribute(attribute))
                .filter(length -> !length.isPercentage())
                .map(length -> length.user(CssLength.Basis.NONE))
                .filter(px -> px > 0);
    }

    /** Style sheets that the file asks for before its first element (xml-stylesheet, 2nd edition). */
    private static int sheetsOutside(Element root) {
        int count = 0;
        for (Node node = root.getPreviousSibling(); node != null; node = node.getPreviousSibling()) {
            count += node.getNodeType() == Node.PROCESSING_INSTRUCTION_NODE
                            && node.getNodeName().equals("xml-stylesheet")
                    ? 1
                    : 0;
        }
        return count;
    }

    /** @throws InputFault if the file is not well formed, is not SVG, or refers to entities outside itself */
    static SvgDocument read(Path file) throws InputFault {
        SvgLimits.check(file);
        try (InputStream in = SvgFile.open(file)) {
            return read(file, in);
        } catch (InputFault e) {
            throw e;
        } catch (IOException e) {
            throw new InputFault(
                    file, "cannot be read (" + LibraryWords.of(e) + ")", "check the name and the folder", e);
        }
    }

    /**
     * Reads from a stream.
     *
     * @param file what the stream is called in complaints
     * @throws InputFault as {@link #read(Path)}
     */
    static SvgDocument read(Path file, InputStream in) throws InputFault {
        try {
            DocumentBuilder builder = SvgParsers.keeping();
            builder.setErrorHandler(new Strict());
            Document document = builder.parse(in);
            if (declaresOutsideEntity(document.getDoctype())) {
                throw new InputFault(file, "refers to entities outside itself, which are not fetched", REMEDY);
            }
            Element root = document.getDocumentElement();
            if (!isSvg(root) || !root.getLocalName().equals("svg")) {
                throw new InputFault(
                        file, "is XML, but its root is <" + root.getNodeName() + "> and not <svg>", REMEDY);
            }
            return new SvgDocument(root);
        } catch (InputFault e) {
            throw e;
        } catch (TooIntricateException e) {
            throw new InputFault(file, e.getMessage(), "export fewer objects at a time", e);
        } catch (SAXParseException e) {
            String place = "line " + e.getLineNumber() + ", column " + e.getColumnNumber();
            throw new InputFault(file, "is not well-formed XML (" + place + ": " + LibraryWords.of(e) + ")", REMEDY, e);
        } catch (IOException | SAXException | ParserConfigurationException | RuntimeException e) {
            throw new InputFault(file, "cannot be read as SVG (" + LibraryWords.of(e) + ")", REMEDY, e);
        }
    }

    private static boolean declaresOutsideEntity(DocumentType type) {
        NamedNodeMap entities = type == null ? null : type.getEntities();
        for (int k = 0; entities != null && k < entities.getLength(); k++) {
            if (((Entity) entities.item(k)).getSystemId() != null) {
                return true;
            }
        }
        return false;
    }

    Element root() {
        return root;
    }

    SvgCascade cascade() {
        return cascade;
    }

    /** How many style sheets it refers to that lie elsewhere, and are not fetched. */
    int sheetsOutside() {
        return sheetsOutside + cascade.styles().imports();
    }

    /** Remembers an element that is used within itself. */
    void usedWithinItself(Element element) {
        circles.add(element.getAttribute("id"));
    }

    /** What there is to say of elements that are used within themselves; empty if there are none. */
    Optional<String> circles() {
        return circles.isEmpty()
                ? Optional.empty()
                : Optional.of("what uses itself is not drawn within itself, as in browsers: "
                        + circles.stream().limit(FEW).map(id -> "#" + id).collect(Collectors.joining(", "))
                        + (circles.size() > FEW ? " and " + (circles.size() - FEW) + " more" : ""));
    }

    /** The element that an id names. */
    Optional<Element> element(String id) {
        return Optional.ofNullable(byId.get(id));
    }

    /** The element of this document that another one refers to. */
    Optional<Element> referredTo(Element element) {
        String reference = reference(element);
        return reference.startsWith("#") ? element(reference.substring(1)) : Optional.empty();
    }

    /** What an element refers to, as it stands; blank if it says nothing. */
    String reference(Element element) {
        String plain = element.getAttribute("href");
        return plain.isEmpty() ? element.getAttributeNS(XLINK, "href") : plain;
    }

    /**
     * Counts an element as read once more, with all that it says of itself: one that is used again and again is read as often.
     *
     * @throws TooIntricateException if more was read by now than any drawing holds
     */
    void read(Element element) {
        read(element, 1);
    }

    /** As above, of one whose shape costs as much as so many. */
    void read(Element element, int times) {
        NamedNodeMap attributes = element.getAttributes();
        read += (long) times * ELEMENT;
        for (int k = 0; k < attributes.getLength(); k++) {
            read += (long) times * attributes.item(k).getNodeValue().length();
        }
        if (read > MOST_READ) {
            throw new TooIntricateException("takes more than " + MOST_READ + " characters to draw");
        }
    }

    /** The next element of SVG from a node on, among its siblings; null if there is none. */
    static Element nextElement(Node from) {
        for (Node node = from; node != null; node = node.getNextSibling()) {
            if (node instanceof Element element && isSvg(element)) {
                return element;
            }
        }
        return null;
    }

    /** True for elements of SVG, which files that forget the namespace mean as well. */
    private static boolean isSvg(Element element) {
        return element.getNamespaceURI() == null || element.getNamespaceURI().equals(SVG);
    }

    /** Reports to nobody, and stops at the first error. */
    private static final class Strict implements ErrorHandler {
        @Override
        public void warning(SAXParseException e) {
            // nothing that would change the drawing
        }

        @Override
        public void error(SAXParseException e) {
            // validity is of no interest
        }

        @Override
        public void fatalError(SAXParseException e) throws SAXException {
            throw e;
        }
    }
}
