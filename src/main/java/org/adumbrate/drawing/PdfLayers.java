package org.adumbrate.drawing;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.adumbrate.geometry.SheetSize;

/**
 * What the layers of a PDF show. Each item of a list, such as a figure, is a marked-content sequence (ISO 32000-1, 14.6) with
 * the tag {@code Figure} (14.8.4.5: an item of graphical content) and its key path as the property {@code Key}. It is no
 * optional content: viewers list that, and would list hundreds of items beside the layers that are switched on and off.
 */
final class PdfLayers {
    private static final int OPACITY_DECIMALS = 4;

    private final PdfFile pdf;
    private final SheetSize sheet;

    /** What is drawn on, as a form's bounds: {@code width height}. */
    private final String size;

    private final Map<Double, String> opacities = new LinkedHashMap<>();
    private final List<Integer> forms = new ArrayList<>();

    PdfLayers(PdfFile pdf, SheetSize sheet, String size) {
        this.pdf = pdf;
        this.sheet = sheet;
        this.size = size;
    }

    /** Content of a page that can be written while no other object is. */
    interface Content {
        void writeTo(OutputStream out) throws IOException;
    }

    /** What a layer shows; objects that it needs are written at once. */
    Content of(Layer layer) throws IOException {
        List<Content> parts = new ArrayList<>();
        for (PaintedItems painted : PaintedItems.of(layer)) {
            if (painted.opacity() < 1) {
                String form = "q\n" + opacity(painted.opacity()) + "/" + name(form(painted)) + " Do\nQ\n";
                parts.add(out -> out.write(ascii(form)));
            } else {
                parts.add(out -> items(painted, out));
            }
        }
        return out -> {
            for (Content part : parts) {
                part.writeTo(out);
            }
        };
    }

    /** Items that are faded together, as a transparency group (11.6.6), and the number of it. */
    private int form(PaintedItems painted) throws IOException {
        int form = pdf.reserve();
        forms.add(form);
        String entries = "/Type/XObject/Subtype/Form/BBox[0 0 " + size
                + "]/Group<</S/Transparency/CS/DeviceRGB/I true>>/Resources<<>>";
        try (OutputStream out = pdf.openCompressed(form, entries)) {
            items(painted, out);
        }
        return form;
    }

    private void items(PaintedItems painted, OutputStream out) throws IOException {
        for (PaintedItems.Item item : painted.items()) {
            if (item.isOfAList()) {
                out.write(ascii("/Figure<</Key" + PdfText.of(item.key()) + ">>BDC\n"));
            }
            for (Paint paint : item.paints()) {
                out.write(ascii("q\n" + opacity(paint.opacity())));
                PdfPaint.write(paint, sheet, out);
                out.write(ascii("Q\n"));
            }
            if (item.isOfAList()) {
                out.write(ascii("EMC\n"));
            }
        }
    }

    /** The operation that sets how much is covered. */
    private String opacity(double opacity) {
        return opacity == 1 ? "" : "/" + opacities.computeIfAbsent(opacity, made -> "O" + opacities.size()) + " gs\n";
    }

    /** Whether anything shines through. */
    boolean areTransparent() {
        return !opacities.isEmpty();
    }

    /** The page's resources of graphics states. */
    String states() {
        String states = opacities.entrySet().stream()
                .map(state ->
                        "/" + state.getValue() + "<</ca " + CompactNumber.of(state.getKey(), OPACITY_DECIMALS) + ">>")
                .collect(Collectors.joining());
        return states.isEmpty() ? "" : "/ExtGState<<" + states + ">>";
    }

    /** The page's resources of external objects, to stand among others. */
    String objects() {
        return forms.stream()
                .map(form -> "/" + name(form) + " " + PdfFile.reference(form))
                .collect(Collectors.joining());
    }

    private static String name(int form) {
        return "F" + form;
    }

    private static byte[] ascii(String text) {
        return text.getBytes(StandardCharsets.US_ASCII);
    }
}
