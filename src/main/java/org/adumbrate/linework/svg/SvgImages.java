package org.adumbrate.linework.svg;

import java.awt.geom.AffineTransform;
import java.util.Base64;
import java.util.Locale;
import java.util.Optional;
import org.adumbrate.geometry.PagePoint;
import org.adumbrate.geometry.VectorPath;
import org.adumbrate.linework.page.PathTracer;
import org.w3c.dom.Element;

/** Pictures in an SVG (SVG 1.1, 5.7): where they lie, and whether anything is seen through them, as far as their heads tell. */
final class SvgImages {
    private static final String BASE_64 = ";base64,";

    /** Of a picture's text; the head of a JPEG may hold a profile and a small picture before it states its size. */
    private static final int LONGEST_HEAD = 1 << 20;

    private SvgImages() {}

    /** How large a picture is, in pixels, and whether each of them is solid. */
    private record Head(int width, int height, boolean solid) {}

    /** Whether it lies in the file and no pixel of it can be seen through. */
    static boolean isSolid(Element image, SvgDocument document) {
        return head(image, document).map(Head::solid).orElse(false);
    }

    /** The part of its rectangle that a picture fills. */
    static VectorPath<PagePoint> outline(Element image, SvgDocument document, SvgScene scene) {
        double x = SvgShapes.across(image, "x", scene);
        double y = SvgShapes.down(image, "y", scene);
        double width = SvgShapes.across(image, "width", scene);
        double height = SvgShapes.down(image, "height", scene);
        Optional<Head> head = head(image, document);
        PathTracer pen = new PathTracer();
        pen.drawThrough(scene.toPage());
        if (width > 0 && height > 0 && head.isPresent()) {
            SvgViewBox whole =
                    new SvgViewBox(0, 0, head.get().width(), head.get().height());
            AffineTransform into = whole.into(width, height, image.getAttribute("preserveAspectRatio"));
            double left = Math.max(0, into.getTranslateX());
            double top = Math.max(0, into.getTranslateY());
            double right = Math.min(width, into.getTranslateX() + into.getScaleX() * whole.width());
            double bottom = Math.min(height, into.getTranslateY() + into.getScaleY() * whole.height());
            pen.rectangle(x + left, y + top, right - left, bottom - top);
        } else {
            pen.rectangle(x, y, width, height);
        }
        return pen.take();
    }

    private static Optional<Head> head(Element image, SvgDocument document) {
        String address = document.reference(image).strip();
        int comma = address.indexOf(BASE_64);
        if (comma < 0 || !address.startsWith("data:image/")) {
            return Optional.empty();
        }
        try {
            int from = comma + BASE_64.length();
            int to = Math.min(address.length(), from + LONGEST_HEAD);
            byte[] data = Base64.getMimeDecoder().decode(wholeGroups(address.substring(from, to)));
            String kind = address.substring(0, comma).toLowerCase(Locale.ROOT);
            return kind.contains("png") ? png(data) : kind.contains("jp") ? jpeg(data) : Optional.empty();
        } catch (IllegalArgumentException | ArrayIndexOutOfBoundsException e) {
            return Optional.empty();
        }
    }

    /** Four signs are three bytes; what is cut off in between cannot be decoded. */
    private static String wholeGroups(String text) {
        String signs = text.replaceAll("\\s", "");
        return signs.substring(0, signs.length() / 4 * 4);
    }

    /** The header of a PNG (ISO/IEC 15948, 11.2.2), and whether it goes on with the transparency of single colours. */
    private static Optional<Head> png(byte[] data) {
        int colorType = data[25];
        boolean alpha = colorType == 4 || colorType == 6;
        for (int at = 8; at + 8 < data.length && !isChunk(data, at, "IDAT"); at += 12 + number(data, at, 4)) {
            alpha |= isChunk(data, at, "tRNS");
        }
        return Optional.of(new Head(number(data, 16, 4), number(data, 20, 4), !alpha));
    }

    private static boolean isChunk(byte[] data, int at, String name) {
        for (int k = 0; k < 4; k++) {
            if (data[at + 4 + k] != name.charAt(k)) {
                return false;
            }
        }
        return true;
    }

    /** The frame header of a JPEG (ITU-T T.81, B.2.2), found from marker to marker. */
    private static Optional<Head> jpeg(byte[] data) {
        int at = 2;
        while ((data[at] & 0xff) == 0xff) {
            int marker = data[at + 1] & 0xff;
            boolean frame = marker >= 0xc0 && marker <= 0xcf && marker != 0xc4 && marker != 0xc8 && marker != 0xcc;
            if (frame) {
                return Optional.of(new Head(number(data, at + 7, 2), number(data, at + 5, 2), /* solid= */ true));
            }
            at += 2 + number(data, at + 2, 2);
        }
        return Optional.empty();
    }

    private static int number(byte[] data, int at, int bytes) {
        int number = 0;
        for (int k = 0; k < bytes; k++) {
            number = (number << 8) | (data[at + k] & 0xff);
        }
        return number;
    }
}
