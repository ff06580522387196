package org.adumbrate.drawing;

import java.awt.AlphaComposite;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Base64;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Element;
import org.w3c.dom.NamedNodeMap;
import org.w3c.dom.Node;
import org.xml.sax.SAXException;

/**
 * Draws an SVG as SVG 1.1 says, as far as our own drawings go: groups whose attributes are inherited, paths filled by the
 * nonzero rule or stroked, pictures. It shares no code with what writes them, and fails on what it does not know.
 */
public final class SvgPicture {
    private static final Set<String> INHERITED = Set.of(
            "fill",
            "fill-opacity",
            "stroke",
            "stroke-width",
            "stroke-linecap",
            "stroke-linejoin",
            "stroke-miterlimit",
            "stroke-dasharray",
            "stroke-dashoffset");

    private final Element root;
    private final Path folder;

    private SvgPicture(Element root, Path folder) {
        this.root = root;
        this.folder = folder;
    }

    /** Reads a file. */
    public static SvgPicture of(Path file) throws IOException {
        try {
            Element root = DocumentBuilderFactory.newInstance()
                    .newDocumentBuilder()
                    .parse(file.toFile())
                    .getDocumentElement();
            return new SvgPicture(root, file.toAbsolutePath().getParent());
        } catch (ParserConfigurationException | SAXException e) {
            throw new IOException(e);
        }
    }

    /** The titles of all groups that hold no other titled ones but those of items, in drawing order, each once. */
    public Set<String> layers() {
        Set<String> layers = new LinkedHashSet<>();
        var titles = root.getElementsByTagName("title");
        for (int k = 0; k < titles.getLength(); k++) {
            Element group = (Element) titles.item(k).getParentNode();
            var inside = group.getElementsByTagName("title");
            boolean parted = IntStream.range(1, inside.getLength()).anyMatch(in -> !isItem(inside.item(in)));
            if (!parted && !isItem(titles.item(k))) {
                layers.add(titles.item(k).getTextContent());
            }
        }
        return layers;
    }

    /** A key path such as {@code figures[3]}, which no layer has for a name. */
    private static boolean isItem(Node title) {
        return title.getTextContent().endsWith("]");
    }

    /** The whole over white paper, so many pixels for a user unit. */
    public BufferedImage drawn(double pxPerUnit) throws IOException {
        return drawn(pxPerUnit, "");
    }

    /** The same without the groups of a title. */
    public BufferedImage drawn(double pxPerUnit, String without) throws IOException {
        double[] box = Arrays.stream(root.getAttribute("viewBox").split(" "))
                .mapToDouble(Double::parseDouble)
                .toArray();
        int width = (int) Math.round(box[2] * pxPerUnit);
        int height = (int) Math.round(box[3] * pxPerUnit);
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = image.createGraphics();
        graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        graphics.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        graphics.setColor(Color.WHITE);
        graphics.fillRect(0, 0, width, height);
        graphics.clipRect(0, 0, width, height);
        graphics.scale(pxPerUnit, pxPerUnit);
        children(root, Map.of(), without, graphics);
        graphics.dispose();
        return image;
    }

    private void children(Element of, Map<String, String> look, String without, Graphics2D to) throws IOException {
        for (Node node = of.getFirstChild(); node != null; node = node.getNextSibling()) {
            if (node instanceof Element element) {
                draw(element, inherited(element, look), without, to);
            }
        }
    }

    private void draw(Element element, Map<String, String> look, String without, Graphics2D to) throws IOException {
        if (element.getAttribute("display").equals("none")
                || (!without.isEmpty() && title(element).equals(without))) {
            return;
        }
        switch (element.getTagName()) {
            case "g" -> group(element, look, without, to);
            case "path" -> path(SvgPathData.shape(element.getAttribute("d")), look, to);
            case "image" -> image(element, to);
            case "title" -> {}
            default -> throw new AssertionError("unknown: " + element.getTagName());
        }
    }

    /** A group with an opacity of its own is drawn apart and then laid over what is there, as a whole. */
    private void group(Element element, Map<String, String> look, String without, Graphics2D to) throws IOException {
        if (element.getAttribute("opacity").isEmpty()) {
            children(element, look, without, to);
            return;
        }
        Rectangle all = to.getClipBounds();
        AffineTransform before = to.getTransform();
        Rectangle size = before.createTransformedShape(all).getBounds();
        BufferedImage apart = new BufferedImage(size.width, size.height, BufferedImage.TYPE_INT_ARGB_PRE);
        Graphics2D graphics = apart.createGraphics();
        graphics.setRenderingHints(to.getRenderingHints());
        graphics.setTransform(to.getTransform());
        children(element, look, without, graphics);
        graphics.dispose();
        to.setTransform(new AffineTransform());
        float opacity = Float.parseFloat(element.getAttribute("opacity"));
        to.setComposite(AlphaComposite.getInstance(AlphaComposite.SRC_OVER, opacity));
        to.drawImage(apart, 0, 0, null);
        to.setComposite(AlphaComposite.SrcOver);
        to.setTransform(before);
    }

    private static String title(Element element) {
        for (Node node = element.getFirstChild(); node != null; node = node.getNextSibling()) {
            if (node.getNodeName().equals("title")) {
                return node.getTextContent();
            }
        }
        return "";
    }

    private static Map<String, String> inherited(Element element, Map<String, String> look) {
        Map<String, String> all = new HashMap<>(look);
        NamedNodeMap attributes = element.getAttributes();
        for (int k = 0; k < attributes.getLength(); k++) {
            if (INHERITED.contains(attributes.item(k).getNodeName())) {
                all.put(attributes.item(k).getNodeName(), attributes.item(k).getNodeValue());
            }
        }
        return all;
    }

    private static void path(java.awt.geom.Path2D shape, Map<String, String> look, Graphics2D to) {
        String fill = look.getOrDefault("fill", "#000000");
        if (!fill.equals("none")) {
            float opacity = Float.parseFloat(look.getOrDefault("fill-opacity", "1"));
            to.setComposite(AlphaComposite.getInstance(AlphaComposite.SRC_OVER, opacity));
            to.setColor(Color.decode(fill));
            to.fill(shape);
            to.setComposite(AlphaComposite.SrcOver);
        }
        if (look.containsKey("stroke")) {
            to.setColor(Color.decode(look.get("stroke")));
            to.setStroke(stroke(look));
            to.draw(shape);
        }
    }

    private static BasicStroke stroke(Map<String, String> look) {
        int cap =
                switch (look.getOrDefault("stroke-linecap", "butt")) {
                    case "butt" -> BasicStroke.CAP_BUTT;
                    case "round" -> BasicStroke.CAP_ROUND;
                    case "square" -> BasicStroke.CAP_SQUARE;
                    default -> throw new AssertionError(look);
                };
        int join =
                switch (look.getOrDefault("stroke-linejoin", "miter")) {
                    case "miter" -> BasicStroke.JOIN_MITER;
                    case "round" -> BasicStroke.JOIN_ROUND;
                    case "bevel" -> BasicStroke.JOIN_BEVEL;
                    default -> throw new AssertionError(look);
                };
        return new BasicStroke(
                number(look, "stroke-width", "1"),
                cap,
                join,
                number(look, "stroke-miterlimit", "4"),
                dash(look.getOrDefault("stroke-dasharray", "none")),
                number(look, "stroke-dashoffset", "0"));
    }

    private static float number(Map<String, String> look, String name, String otherwise) {
        return Float.parseFloat(look.getOrDefault(name, otherwise));
    }

    private static float[] dash(String text) {
        if (text.equals("none")) {
            return null;
        }
        String[] words = text.split(" ");
        float[] lengths = new float[words.length];
        for (int k = 0; k < lengths.length; k++) {
            lengths[k] = Float.parseFloat(words[k]);
        }
        return lengths;
    }

    private void image(Element element, Graphics2D to) throws IOException {
        String href = element.getAttribute("xlink:href");
        BufferedImage picture = href.startsWith("data:image/png;base64,")
                ? ImageIO.read(new ByteArrayInputStream(
                        Base64.getDecoder().decode(href.substring("data:image/png;base64,".length()))))
                : ImageIO.read(folder.resolve(href).toFile());
        double across = Double.parseDouble(element.getAttribute("width")) / picture.getWidth();
        double down = Double.parseDouble(element.getAttribute("height")) / picture.getHeight();
        to.drawImage(stored(picture), new AffineTransform(across, 0, 0, down, 0, 0), null);
    }

    /** The levels as they are stored, past any profile. */
    private static BufferedImage stored(BufferedImage picture) {
        BufferedImage plain = new BufferedImage(picture.getWidth(), picture.getHeight(), BufferedImage.TYPE_INT_RGB);
        int last = picture.getRaster().getNumBands() - 1;
        for (int y = 0; y < plain.getHeight(); y++) {
            for (int x = 0; x < plain.getWidth(); x++) {
                for (int band = 0; band < 3; band++) {
                    int level = picture.getRaster().getSample(x, y, Math.min(band, last));
                    plain.getRaster().setSample(x, y, band, level);
                }
            }
        }
        return plain;
    }
}
