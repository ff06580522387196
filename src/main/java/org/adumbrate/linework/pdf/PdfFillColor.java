package org.adumbrate.linework.pdf;

import java.util.Map;
import java.util.Optional;
import org.adumbrate.geometry.Srgb;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDResources;

/**
 * The colour that areas are filled with, as it is stated; what it looks like is worked out where something is filled, which in most
 * line sheets is nothing.
 */
final class PdfFillColor {
    /** What everything is filled with at first. */
    static final PdfFillColor BLACK = in(COSName.DEVICEGRAY, new PDResources());

    private static final int MOST_INKS = 32;

    /** How many components the spaces have that need no resource. */
    private static final Map<COSName, Integer> MOST =
            Map.of(COSName.DEVICEGRAY, 1, COSName.DEVICERGB, 3, COSName.DEVICECMYK, 4);

    private final COSName space;
    private final float[] components;
    private final Optional<COSName> pattern;
    private final PDResources resources;

    private PdfFillColor(COSName space, float[] components, Optional<COSName> pattern, PDResources resources) {
        this.space = space;
        this.components = components;
        this.pattern = pattern;
        this.resources = resources;
    }

    /** The first colour of a space. */
    static PdfFillColor in(COSName space, PDResources resources) {
        return new PdfFillColor(space, new float[0], Optional.empty(), resources);
    }

    /** A colour as it is. */
    static PdfFillColor of(Srgb color) {
        float[] components = {color.red() / 255f, color.green() / 255f, color.blue() / 255f};
        return new PdfFillColor(COSName.DEVICERGB, components, Optional.empty(), new PDResources());
    }

    /** Another colour of the same space. */
    PdfFillColor with(PdfOperands operands, PDResources at) {
        Optional<COSName> name = operands.endWithName()
                ? Optional.of((COSName) operands.values().get(operands.values().size() - 1))
                : Optional.empty();
        // a name is looked up where the colour is set, a space where the space was
        return new PdfFillColor(
                space,
                operands.components(MOST.getOrDefault(space, MOST_INKS)),
                name,
                name.isPresent() ? at : resources);
    }

    /** The name of its colour space. */
    COSName space() {
        return space;
    }

    /** Its components; none for the space's first colour. */
    float[] components() {
        return components.clone();
    }

    /** The name of its pattern, if it is one. */
    Optional<COSName> pattern() {
        return pattern;
    }

    /** Where names are looked up. */
    PDResources resources() {
        return resources;
    }
}
