package org.adumbrate.raster.decode.icc;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;
import org.adumbrate.raster.decode.light.Curve;

/**
 * The tags of a colour profile (ICC.1:2022, clause 7; older versions share this layout): a 128-byte header, a table of
 * signature, offset and size, and the elements.
 */
final class IccProfile {
    private static final int HEADER = 128;
    private static final int TABLE_ROW = 12;
    private static final int MOST_TAGS = 1000;

    private final byte[] bytes;
    private final Map<String, ByteBuffer> elements = new HashMap<>();

    /** @throws MalformedProfileException if the bytes are no profile, or shorter than they say */
    IccProfile(byte[] bytes) throws MalformedProfileException {
        this.bytes = bytes;
        if (bytes.length < HEADER + 4 || !word(36).equals("acsp")) {
            throw new MalformedProfileException("it has no profile header");
        }
        ByteBuffer all = ByteBuffer.wrap(bytes);
        int tags = all.getInt(HEADER);
        if (tags < 0 || tags > MOST_TAGS || HEADER + 4 + tags * TABLE_ROW > bytes.length) {
            throw new MalformedProfileException("its tag table is longer than itself");
        }
        for (int i = 0; i < tags; i++) {
            int row = HEADER + 4 + i * TABLE_ROW;
            elements.put(word(row), element(all.getInt(row + 4), all.getInt(row + 8)));
        }
    }

    private ByteBuffer element(int offset, int size) throws MalformedProfileException {
        if (offset < 0 || size < 8 || (long) offset + size > bytes.length) {
            throw new MalformedProfileException("a tag points outside it");
        }
        return ByteBuffer.wrap(bytes, offset, size).slice();
    }

    /** Four letters; what a signature cannot hold (7.1.1) must not get into messages. */
    private String word(int at) {
        return new String(bytes, at, 4, StandardCharsets.ISO_8859_1).replaceAll("[^ -~]", "?");
    }

    /** The whole profile, not copied. */
    byte[] bytes() {
        return bytes;
    }

    /** The colour space of its device side, as four letters such as {@code "RGB "}. */
    String deviceSpace() {
        return word(16);
    }

    /** The space it connects to: {@code "XYZ "} or {@code "Lab "}. */
    String connectionSpace() {
        return word(20);
    }

    /** Whether there is such a tag. */
    boolean has(String tag) {
        return elements.containsKey(tag);
    }

    /** The element of a tag, from its type signature on; at least 8 bytes. */
    ByteBuffer element(String tag) throws MalformedProfileException {
        ByteBuffer found = elements.get(tag);
        if (found == null) {
            throw new MalformedProfileException("it lacks the tag " + tag);
        }
        return found.duplicate();
    }

    /** The first colour of an XYZType element (clause 10.31). */
    double[] xyz(String tag) throws MalformedProfileException {
        ByteBuffer data = element(tag);
        if (data.limit() < 20 || data.getInt(0) != 0x58595A20) {
            throw new MalformedProfileException("its tag " + tag + " holds no colour");
        }
        return new double[] {data.getInt(8) / 65536.0, data.getInt(12) / 65536.0, data.getInt(16) / 65536.0};
    }

    /** The curve of a tag (clauses 10.6 and 10.18). */
    Curve curve(String tag) throws MalformedProfileException {
        return IccCurves.read(tag, element(tag));
    }
}
