package org.adumbrate.linework;

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
        AREA("filled area"),
        /** An area in white: paper, or a cover of what lies behind. */
        WHITE_AREA("white area"),
        /** An area in one colour, whose outline is taken as a line. */
        OUTLINED_AREA("filled area within an outline"),
        /** An area in white, whose outline is taken as a line. */
        OUTLINED_WHITE_AREA("white area within an outline"),
        /** A gradient or pattern that fills an area. */
        SHADING("gradient or pattern"),
        /** A picture. */
        IMAGE("image"),
        /** A run of text. */
        TEXT("text"),
        /** A stroke without one colour. */
        UNCOLORED_STROKE("stroke in a gradient or pattern"),
        /** Anything else. */
        OTHER("other mark");

        private final String word;

        Kind(String word) {
            this.word = word;
        }

        /** Whether nothing of it is taken as a line. */
        boolean isWhollyLeftOut() {
            return this != OUTLINED_AREA && this != OUTLINED_WHITE_AREA;
        }

        /** Whether it shows on white paper. */
        public boolean shows() {
            return this != WHITE_AREA && this != OUTLINED_WHITE_AREA;
        }

        /** What a person calls one of it. */
        public String word() {
            return word;
        }
    }
}
