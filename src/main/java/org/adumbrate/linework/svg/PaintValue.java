package org.adumbrate.linework.svg;

import java.util.Locale;
import java.util.Optional;
import org.adumbrate.linework.svg.css.CssColor;

/**
 * What an area or a stroke is to be painted with (SVG 2, 13.2).
 *
 * @param kind what kind of paint it is
 * @param color its colour, black if it has none of its own
 * @param server where the gradient or pattern stands, as it is written; empty if there is none
 * @param fallback what takes its place if there is none there
 */
record PaintValue(Kind kind, CssColor color, String server, Optional<PaintValue> fallback) {
    /** No paint at all. */
    static final PaintValue NONE = plain(Kind.NONE);

    /** The kinds of paint. */
    enum Kind {
        /** Nothing is painted. */
        NONE,
        /** One colour. */
        COLOR,
        /** The colour that the property {@code color} names. */
        CURRENT,
        /** What the shape is filled with that a marker or symbol is drawn for (SVG 2, 13.2). */
        CONTEXT_FILL,
        /** What that shape is stroked with. */
        CONTEXT_STROKE,
        /** A gradient or a pattern. */
        SERVER
    }

    private static PaintValue plain(Kind kind) {
        return new PaintValue(kind, CssColor.BLACK, "", Optional.empty());
    }

    /** A paint in one colour; none if nothing of it is seen. */
    static PaintValue of(CssColor color) {
        return color.isUnseen() ? NONE : new PaintValue(Kind.COLOR, color, "", Optional.empty());
    }

    /** Reads a paint; empty if it is none, and then CSS ignores the whole declaration. */
    static Optional<PaintValue> parse(String text) {
        Optional<SvgReference> reference = SvgReference.parse(text);
        if (reference.isPresent()) {
            String rest = reference.get().rest();
            Optional<PaintValue> fallback = rest.isEmpty() ? Optional.empty() : parse(rest);
            boolean sound = rest.isEmpty() || fallback.isPresent();
            return sound
                    ? Optional.of(new PaintValue(
                            Kind.SERVER, CssColor.BLACK, reference.get().address(), fallback))
                    : Optional.empty();
        }
        return switch (text.strip().toLowerCase(Locale.ROOT)) {
            case "none" -> Optional.of(NONE);
            case "currentcolor" -> Optional.of(plain(Kind.CURRENT));
            case "context-fill" -> Optional.of(plain(Kind.CONTEXT_FILL));
            case "context-stroke" -> Optional.of(plain(Kind.CONTEXT_STROKE));
            default -> CssColor.parse(text).map(PaintValue::of);
        };
    }
}
