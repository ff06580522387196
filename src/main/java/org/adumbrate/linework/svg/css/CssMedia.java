package org.adumbrate.linework.svg.css;

/**
 * Where rules hold (Media Queries 4): on a screen, as browsers show a file, or on paper.
 *
 * @param screen whether on a screen
 * @param print whether on paper
 */
record CssMedia(boolean screen, boolean print) {
    static final CssMedia ALL = new CssMedia(/* screen= */ true, /* print= */ true);

    /** Where both this and another hold, as where one stands within the other. */
    CssMedia and(CssMedia other) {
        return new CssMedia(screen && other.screen, print && other.print);
    }

    boolean isNowhere() {
        return !screen && !print;
    }

    /** Whether a file shows otherwise on paper than on a screen. */
    boolean tellsApart() {
        return screen != print;
    }
}
