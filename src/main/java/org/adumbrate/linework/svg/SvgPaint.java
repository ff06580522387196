package org.adumbrate.linework.svg;

import org.adumbrate.linework.svg.css.CssColor;

/**
 * What an area or a stroke is painted with, references followed.
 *
 * @param kind what kind of paint it is
 * @param color its colour; of a gradient the first that is seen
 * @param solid whether nothing is seen through it
 */
record SvgPaint(Kind kind, CssColor color, boolean solid) {
    static final SvgPaint NONE = new SvgPaint(Kind.NONE, CssColor.BLACK, /* solid= */ false);

    /** The kinds of paint. */
    enum Kind {
        /** Nothing is painted. */
        NONE,
        /** Nothing is painted, as what it refers to is not there. */
        BROKEN,
        /** One colour. */
        COLOR,
        /** Colours that change. */
        GRADIENT,
        /** A pattern. */
        PATTERN
    }

    static SvgPaint of(CssColor color) {
        return color.isUnseen() ? NONE : new SvgPaint(Kind.COLOR, color, color.isSolid());
    }

    boolean isNone() {
        return kind == Kind.NONE || kind == Kind.BROKEN;
    }
}
