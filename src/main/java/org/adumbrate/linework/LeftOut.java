package org.adumbrate.linework;

import java.util.Locale;

/**
 * What a file paints and what is not taken as lines, of one kind.
 *
 * @param kind what it is
 * @param count how often it is painted
 * @param areaMm2 how much it covers of the page, in mm²; what lies over each other counts each time; 0 where that is not known
 */
public record LeftOut(Kind kind, int count, double areaMm2) {
    /** The kinds of marks that are no lines. */
    public enum Kind {
        /** An area in one colour. */
        AREA("filled area", "filled areas"),
        /** An area in white: paper, or a cover of what lies behind. */
        WHITE_AREA("white area", "white areas"),
        /** An area in one colour, whose outline is taken as a line. */
        OUTLINED_AREA("filled area within an outline", "filled areas within an outline"),
        /** An area in white, whose outline is taken as a line. */
        OUTLINED_WHITE_AREA("white area within an outline", "white areas within an outline"),
        /** A gradient or pattern that fills an area. */
        SHADING("gradient or pattern", "gradients or patterns"),
        /** A picture. */
        IMAGE("image", "images"),
        /** A run of text. */
        TEXT("text", "texts"),
        /** A stroke without one colour. */
        UNCOLORED_STROKE("stroke in a gradient or pattern", "strokes in a gradient or pattern"),
        /** A stroke of which a soft mask lets nothing show. */
        MASKED_STROKE("stroke that a mask hides", "strokes that a mask hides"),
        /** A note on the page that is no drawn line. */
        ANNOTATION("annotation", "annotations"),
        /** A stroke in a gradient, which is taken in the first of its colours. */
        GRADIENT_STROKE(
                "stroke in a gradient, taken in its first colour",
                "strokes in gradients, taken in their first colours"),
        /** A stroke that is seen through, which is taken as if it were not. */
        FAINT_STROKE("stroke that is seen through, taken as solid", "strokes that are seen through, taken as solid"),
        /** A stroke whose pen a transform makes an ellipse, which is taken in the width that it has on average. */
        DISTORTED_STROKE(
                "stroke that is wider one way than another, taken in its mean width",
                "strokes that are wider one way than another, taken in their mean widths"),
        /** A reference to another file. */
        OUTSIDE("reference to another file", "references to other files"),
        /** A mask or clip that shows in part, or that cannot be followed. */
        MASK("mask that is not followed to the letter", "masks that are not followed to the letter"),
        /** A filter, or a way of blending or an order of painting that changes lines. */
        EFFECT(
                "filter, blend mode or order of painting that is not followed",
                "filters, blend modes or orders of painting that are not followed"),
        /** A rule of a style sheet that is not understood. */
        STYLE("style rule that is not understood", "style rules that are not understood"),
        /** A length in a unit that depends on a window or a font, as if it were not stated. */
        UNIT(
                "length in a unit that depends on a window or a font, taken as not stated",
                "lengths in units that depend on a window or a font, taken as not stated"),
        /** A rule of a style sheet that holds on a screen or in print alone; the file is read as on a screen. */
        MEDIUM("style rule for a screen or for print alone", "style rules for a screen or for print alone"),
        /** Anything else. */
        OTHER("other mark", "other marks");

        private final String one;
        private final String many;

        Kind(String one, String many) {
            this.one = one;
            this.many = many;
        }

        /** Such as {@code white-area}, for machines. */
        public String word() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }

        /** Whether nothing of it is taken as a line. */
        boolean isWhollyLeftOut() {
            return this != OUTLINED_AREA && this != OUTLINED_WHITE_AREA && !isTakenOtherwise();
        }

        /** Whether it is no mark, but says that lines may look otherwise in the file. */
        public boolean isTakenOtherwise() {
            return switch (this) {
                case GRADIENT_STROKE, FAINT_STROKE, DISTORTED_STROKE, MASK, EFFECT, STYLE, UNIT, MEDIUM -> true;
                default -> false;
            };
        }

        /** Whether it shows on white paper. */
        public boolean shows() {
            return this != WHITE_AREA && this != OUTLINED_WHITE_AREA && this != MASKED_STROKE;
        }
    }

    /** For people, such as {@code 12 filled areas (340 mm²)}. */
    public String told() {
        String marks = count + " " + (count == 1 ? kind.one : kind.many);
        return areaMm2 < 0.5 ? marks : String.format(Locale.ROOT, "%s (%.0f mm²)", marks, areaMm2);
    }
}
