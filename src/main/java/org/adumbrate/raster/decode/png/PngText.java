package org.adumbrate.raster.decode.png;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.zip.DataFormatException;
import java.util.zip.Inflater;
import org.adumbrate.raster.decode.metadata.ExifBlock;
import org.adumbrate.raster.decode.source.SourceFile;

/**
 * A textual chunk of a PNG (3rd edition, 11.3.3: tEXt, zTXt, iTXt): a keyword and bytes of text, unpacked.
 *
 * @param keyword what it is about
 * @param text its text, in Latin-1 or UTF-8, of which only ASCII matters here
 */
record PngText(String keyword, String text) {
    private static final int LONGEST = 1 << 22;
    private static final String XMP = "XML:com.adobe.xmp";

    /** An Exif block written in hexadecimal digits, as writers did before there was a chunk for it. */
    private static final Pattern RAW_PROFILE = Pattern.compile("Raw profile type (?:exif|APP1)");

    /** XMP specification part 2 (Exif schema for TIFF properties): as an attribute or an element. */
    private static final Pattern ORIENTATION =
            Pattern.compile("tiff:Orientation(?:\\s*=\\s*[\"']|\\s*>\\s*)([1-8])\\s*[\"'<]");

    /** Whether a chunk is one of these. */
    static boolean isText(String type) {
        return type.equals("tEXt") || type.equals("zTXt") || type.equals("iTXt");
    }

    /** Reads a body; none if it is broken, which harms no picture. */
    static Optional<PngText> read(String type, byte[] body) {
        int end = zero(body, 0);
        if (end < 0) {
            return Optional.empty();
        }
        String keyword = new String(body, 0, end, StandardCharsets.ISO_8859_1);
        int at = end + 1;
        boolean packed = type.equals("zTXt");
        if (packed) {
            at++;
        } else if (type.equals("iTXt")) {
            packed = at < body.length && body[at] == 1;
            int language = zero(body, at + 2);
            int translated = language < 0 ? -1 : zero(body, language + 1);
            if (translated < 0) {
                return Optional.empty();
            }
            at = translated + 1;
        }
        byte[] rest = Arrays.copyOfRange(body, Math.min(at, body.length), body.length);
        byte[] text = packed ? inflated(rest) : rest;
        return Optional.of(new PngText(keyword, new String(text, StandardCharsets.ISO_8859_1)));
    }

    private static int zero(byte[] body, int from) {
        for (int i = from; i < body.length; i++) {
            if (body[i] == 0) {
                return i;
            }
        }
        return -1;
    }

    private static byte[] inflated(byte[] packed) {
        Inflater inflater = new Inflater();
        try {
            inflater.setInput(packed);
            byte[] out = new byte[1 << 12];
            int length = 0;
            for (int count = 1; count > 0 && length < LONGEST; length += count) {
                out = length == out.length ? Arrays.copyOf(out, 2 * length) : out;
                count = inflater.inflate(out, length, out.length - length);
            }
            return Arrays.copyOf(out, length);
        } catch (DataFormatException e) {
            return new byte[0];
        } finally {
            inflater.end();
        }
    }

    /** The number of Exif's orientation that XMP states; 0 if this is no XMP or states none. */
    int orientation() {
        Matcher matcher = ORIENTATION.matcher(keyword.equals(XMP) ? text : "");
        return matcher.find() ? matcher.group(1).charAt(0) - '0' : 0;
    }

    /** The Exif block in it, if there is one: a name, the number of bytes, and these as digits, each on lines of their own. */
    Optional<ExifBlock> exif(SourceFile file) throws IOException {
        if (!RAW_PROFILE.matcher(keyword).matches()) {
            return Optional.empty();
        }
        String[] words = text.strip().split("\\s+", 3);
        String digits = words.length < 3 ? "" : words[2].replaceAll("\\s+", "");
        try {
            byte[] bytes = HexFormat.of().parseHex(digits);
            String head = new String(bytes, 0, Math.min(6, bytes.length), StandardCharsets.ISO_8859_1);
            int from = head.equals("Exif\0\0") ? head.length() : 0;
            return Optional.of(ExifBlock.read(file, Arrays.copyOfRange(bytes, from, bytes.length)));
        } catch (IllegalArgumentException e) {
            return Optional.empty();
        }
    }
}
