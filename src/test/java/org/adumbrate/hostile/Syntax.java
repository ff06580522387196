package org.adumbrate.hostile;

import java.util.List;

/**
 * How a file is built, as far as mutations go by it.
 *
 */
@SuppressWarnings("ImmutableEnumChecker") // its lists are never changed
enum Syntax {
    /** Nothing is known but bytes. */
    BYTES(Parts.NONE, List.of(), List.of()),
    /** A head in words, and bytes. */
    LINES(
            Parts.LINES,
            List.of("P1", "P6", "P7\n", "MAXVAL 0\n", "DEPTH 5\n", "#", "-Y", "+X 9", "\n\n", "FORMAT=", "ENDHDR\n"),
            List.of()),
    PNG(Parts.PNG_CHUNKS, List.of("IDAT", "PLTE", "tRNS", "iCCP", "IEND", "eXIf", "fdAT", "acTL"), List.of()),
    JPEG(
            Parts.JPEG_SEGMENTS,
            List.of(
                    "\u00ff\u00da",
                    "\u00ff\u00c0",
                    "\u00ff\u00c2",
                    "\u00ff\u00c4",
                    "\u00ff\u00d9",
                    "\u00ff\u00dc",
                    "\u00ff\u00d0"),
            List.of()),
    TIFF(Parts.TIFF_FIELDS, List.of("II*\0", "MM\0*", "II+\0"), List.of()),
    PDF(
            Parts.LINES,
            List.of(
                    "q ",
                    "Q ",
                    "W n ",
                    "S ",
                    "/F1 Do ",
                    "1 0 R",
                    "5 0 R",
                    "6 0 R",
                    "13 0 R",
                    "obj",
                    "endobj",
                    "stream\n",
                    "endstream",
                    "xref\n",
                    "trailer",
                    "<<",
                    ">>",
                    "[",
                    "]",
                    "/Kids",
                    "/Parent 3 0 R",
                    "/Length 99999999",
                    "/Filter /FlateDecode",
                    "/Filter [/ASCIIHexDecode /LZWDecode]",
                    "/Prev 0",
                    "/Encrypt << /Filter /Standard >>",
                    "null",
                    "(",
                    "<",
                    "%",
                    "BI ",
                    "EI "),
            List.of("[", "<<", "(", "q ", "/OC /L1 BDC ", "0 0 9 9 re W n ", "<< /Kids [")),
    SVG(
            Parts.LINES,
            List.of(
                    "<g>",
                    "</g>",
                    "<use href=\"#building\"/>",
                    "clip-path=\"url(#c)\" ",
                    "&lt;",
                    "&#0;",
                    "&nope;",
                    "<!DOCTYPE svg SYSTEM \"http://example.invalid/x.dtd\">",
                    "<![CDATA[",
                    "]]>",
                    "<!--",
                    "<?x",
                    "NaN",
                    "1e999",
                    "%",
                    "px",
                    "\"",
                    "url(#c)",
                    "scale(0)",
                    "scale(1e300)",
                    "M0 0",
                    "a1 1 0 1 1 0 0",
                    "inherit",
                    "\u0000"),
            List.of("<g>", "<svg>", "<clipPath>", "<a><g>", "M0 0", "{", "/*")),
    YAML(
            Parts.LINES,
            List.of(
                    ":",
                    "- ",
                    "? ",
                    "&a ",
                    "*a",
                    "<<: *a",
                    "!!binary ",
                    "!x ",
                    "|",
                    ">",
                    "%YAML 9.9\n",
                    "---\n",
                    "...\n",
                    "#",
                    "\"",
                    "'",
                    "{",
                    "}",
                    "[",
                    "]",
                    "\t",
                    "\u0000",
                    "~",
                    ".nan",
                    ".inf",
                    "1e999",
                    "0x7fffffff",
                    "1_000",
                    "\\U"),
            List.of("[", "{", "- ", "{a: ", "? ", " "));

    private final Parts parts;
    private final List<String> words;
    private final List<String> openers;

    Syntax(Parts parts, List<String> words, List<String> openers) {
        this.parts = parts;
        this.words = words;
        this.openers = openers;
    }

    /** How it falls into parts. */
    Parts parts() {
        return parts;
    }

    /** Words that mean something in it; each character is a byte. */
    List<String> words() {
        return words;
    }

    /** What opens a level of nesting in it; none for a format that has none. */
    List<String> openers() {
        return openers;
    }

    /** True for a format in whose files numbers are written out. */
    boolean isText() {
        return this == LINES || !openers.isEmpty();
    }
}
