package org.adumbrate.start;

import java.util.Locale;

/** What a raster seems to be. */
enum PassKind {
    /** Sun and shadow. */
    SHADOW("shadow"),
    /** Ambient occlusion. */
    OCCLUSION("occlusion"),
    /** Distance from the eye. */
    DEPTH("depth"),
    /** Something else, or one cannot tell. */
    UNKNOWN("unknown");

    /**
     * A render of hard shadows has at least this share of what is unlit in one tone, and one of soft shade not; a depth render
     * of a section has it too, for the cut face is at one distance.
     */
    private static final double ONE_DARK = 0.35;

    /** Planes in a depth render are smooth to this; see {@link ToneLook#rough}. */
    private static final double SMOOTH = 0.8;

    private static final double HARDLY_SOFT = 0.02;
    private static final double ALL_LIT = 0.99;

    private final String word;

    PassKind(String word) {
        this.word = word;
    }

    String word() {
        return word;
    }

    /**
     * A kind and why.
     *
     * @param kind what it seems to be
     * @param reason why; a clause
     */
    record Guess(PassKind kind, String reason) {}

    /**
     * Tells what a raster is by its tones.
     *
     * @param colors whether it has colours
     * @param growing whether its tones grow with the distance of height lines
     */
    static Guess of(ToneLook look, boolean colors, boolean growing) {
        if (look.lit() > ALL_LIT) {
            return new Guess(UNKNOWN, "it has hardly more than one tone");
        }
        if (growing) {
            return new Guess(DEPTH, "it brightens with the distance of the height lines");
        }
        boolean isSmooth = look.rough() < SMOOTH && look.soft() > HARDLY_SOFT;
        if (!colors && isSmooth && look.oneDark() >= ONE_DARK) {
            return new Guess(DEPTH, "its tones change evenly over whole surfaces, and the nearest is the darkest");
        }
        if (look.oneDark() >= ONE_DARK) {
            return new Guess(
                    SHADOW,
                    percent("%.0f %% of it is lit, and %.0f %% of the rest has one tone", look.lit(), look.oneDark()));
        }
        if (colors) {
            return new Guess(UNKNOWN, "it shows many colours, as materials do");
        }
        if (look.lit() > 0.2 && look.soft() > HARDLY_SOFT) {
            return new Guess(
                    OCCLUSION, percent("%.0f %% of it is white, and the rest in soft gradients", look.lit(), 0));
        }
        return new Guess(UNKNOWN, "it is neither two-toned nor softly shaded");
    }

    private static String percent(String format, double one, double other) {
        return String.format(Locale.ROOT, format, 100 * one, 100 * other);
    }
}
