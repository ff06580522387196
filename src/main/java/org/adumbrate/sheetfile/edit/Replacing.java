package org.adumbrate.sheetfile.edit;

import org.adumbrate.sheetfile.yaml.TextPart;

/** The splice that puts another text in the place of a value. */
final class Replacing {
    private Replacing() {}

    /**
     * The splice.
     *
     * @param part the value that stands there; an anchor stays
     * @param written the new one, on one line
     */
    static Splice of(Lines lines, TextPart part, String written) {
        String text = lines.text();
        if (part.isNothing()) {
            boolean isSpaced = part.to() < text.length() && Character.isWhitespace(text.charAt(part.to()));
            boolean endsLine = part.to() == text.length() || isSpaced;
            return Splice.in(part.to(), " " + written + (endsLine ? "" : " "));
        }
        int colon = part.content();
        while (colon > 0 && Character.isWhitespace(text.charAt(colon - 1))) {
            colon--;
        }
        boolean isBelow = colon > 0 && lines.start(colon) != lines.start(part.content());
        boolean isKeyed = colon > 0 && text.charAt(colon - 1) == ':';
        return isBelow && isKeyed && part.from() == part.content()
                ? new Splice(colon, part.to(), " " + written)
                : new Splice(part.content(), part.to(), written);
    }
}
