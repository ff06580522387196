package org.adumbrate.linework.pdf;

import java.util.Optional;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDResources;

/**
 * The colour that areas are filled with, as it is stated; what it looks like is worked out where something is filled, which in most
 * line sheets is nothing.
 *
 * @param space the name of its colour space
 * @param components its components; none for the space's first colour
 * @param pattern the name of its pattern, if it is one
 * @param resources where names are looked up
 */
record PdfFillColor(COSName space, float[] components, Optional<COSName> pattern, PDResources resources) {
    /** What everything is filled with at first. */
    static final PdfFillColor BLACK = in(COSName.DEVICEGRAY, new PDResources());

    /** The first colour of a space. */
    static PdfFillColor in(COSName space, PDResources resources) {
        return new PdfFillColor(space, new float[0], Optional.empty(), resources);
    }

    /** Another colour of the same space. */
    PdfFillColor with(PdfOperands operands, PDResources at) {
        Optional<COSName> name = operands.endWithName()
                ? Optional.of((COSName) operands.values().get(operands.values().size() - 1))
                : Optional.empty();
        // a name is looked up where the colour is set, a space where the space was
        return new PdfFillColor(space, operands.components(), name, name.isPresent() ? at : resources);
    }
}
