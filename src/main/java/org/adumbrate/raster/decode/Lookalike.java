package org.adumbrate.raster.decode;

import java.nio.charset.StandardCharsets;
import java.util.Locale;

/** What a file that is not read looks like, so that the fault can say it. */
enum Lookalike {
    WEBP("a WebP picture", "52 49 46 46 .. .. .. .. 57 45 42 50"),
    PFM("a floating-point PNM picture", "50 46 0A | 50 66 0A"),
    GIF("a GIF picture", "47 49 46 38"),
    EXR("an OpenEXR picture", "76 2F 31 01"),
    PSD("a layered picture (8BPS)", "38 42 50 53"),
    JPEG_2000("a JPEG 2000 picture", "00 00 00 0C 6A 50 20 20 | FF 4F FF 51"),
    JPEG_XL("a JPEG XL picture", "FF 0A | 00 00 00 0C 4A 58 4C 20"),
    HEIF("a HEIF or AVIF picture", ".. .. .. .. 66 74 79 70"),
    PDF("a PDF", "25 50 44 46"),
    POSTSCRIPT("PostScript", "25 21 50 53"),
    ZIP("a ZIP archive", "50 4B 03 04"),
    GZIP("a gzip archive", "1F 8B");

    private final String words;
    private final String magic;

    Lookalike(String words, String magic) {
        this.words = words;
        this.magic = magic;
    }

    /** Describes a file by its first bytes, such as {@code "a PDF"}. */
    static String describe(byte[] head) {
        for (Lookalike kind : values()) {
            if (Magic.matches(kind.magic, head)) {
                return kind.words;
            }
        }
        return isText(head) ? describeText(head) : "no format known here";
    }

    private static boolean isText(byte[] head) {
        for (byte b : head) {
            if (b >= 0 && b < ' ' && b != '\t' && b != '\n' && b != '\r' && b != '\f') {
                return false;
            }
        }
        return true;
    }

    private static String describeText(byte[] head) {
        String text = new String(head, StandardCharsets.UTF_8).toLowerCase(Locale.ROOT);
        if (text.contains("<svg")) {
            return "an SVG drawing";
        }
        if (text.contains("<html") || text.contains("<!doctype html")) {
            return "a web page";
        }
        return text.stripLeading().startsWith("<") ? "an XML file" : "text";
    }
}
