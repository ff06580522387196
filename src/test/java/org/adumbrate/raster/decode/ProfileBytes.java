package org.adumbrate.raster.decode;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;

/** Builds colour profiles byte by byte (ICC.1:2022, clause 7). */
final class ProfileBytes {
    private final String space;
    private final Map<String, byte[]> elements = new LinkedHashMap<>();

    /** @param space four letters, such as {@code "RGB "} */
    ProfileBytes(String space) {
        this.space = space;
        xyz("wtpt", 0.9642, 1, 0.8249);
        element("cprt", ByteBuffer.allocate(16).put(ascii("text")).position(8).put(ascii("none")));
        element(
                "desc",
                ByteBuffer.allocate(96)
                        .put(ascii("desc"))
                        .putInt(8, 2)
                        .position(12)
                        .put(ascii("x")));
    }

    ProfileBytes xyz(String tag, double x, double y, double z) {
        return element(
                tag,
                ByteBuffer.allocate(20)
                        .put(ascii("XYZ "))
                        .putInt(8, fixed(x))
                        .putInt(12, fixed(y))
                        .putInt(16, fixed(z)));
    }

    /** curveType. */
    ProfileBytes curve(String tag, int... values) {
        ByteBuffer data =
                ByteBuffer.allocate(12 + 2 * values.length).put(ascii("curv")).putInt(8, values.length);
        for (int i = 0; i < values.length; i++) {
            data.putShort(12 + 2 * i, (short) values[i]);
        }
        return element(tag, data);
    }

    /** parametricCurveType. */
    ProfileBytes parametric(String tag, int kind, double... parameters) {
        ByteBuffer data = ByteBuffer.allocate(12 + 4 * parameters.length)
                .put(ascii("para"))
                .putShort(8, (short) kind);
        for (int i = 0; i < parameters.length; i++) {
            data.putInt(12 + 4 * i, fixed(parameters[i]));
        }
        return element(tag, data);
    }

    private ProfileBytes element(String tag, ByteBuffer data) {
        byte[] bytes = new byte[data.capacity()];
        data.get(0, bytes);
        elements.put(tag, bytes);
        return this;
    }

    /** The whole profile. */
    byte[] build() {
        int at = 128 + 4 + 12 * elements.size();
        ByteBuffer table = ByteBuffer.allocate(at - 128).putInt(elements.size());
        ByteArrayOutputStream body = new ByteArrayOutputStream();
        for (Map.Entry<String, byte[]> element : elements.entrySet()) {
            byte[] data = element.getValue();
            table.put(ascii(element.getKey())).putInt(at + body.size()).putInt(data.length);
            body.writeBytes(data);
            body.writeBytes(new byte[(4 - data.length % 4) % 4]);
        }
        ByteBuffer all = ByteBuffer.allocate(at + body.size())
                .putInt(at + body.size())
                .putInt(8, 0x02400000)
                .position(12)
                .put(ascii("mntr" + space + "XYZ "))
                .position(36)
                .put(ascii("acsp"));
        all.putInt(68, fixed(0.9642)).putInt(72, fixed(1)).putInt(76, fixed(0.8249));
        return all.position(128).put(table.array()).put(body.toByteArray()).array();
    }

    /** Colorants and 2.2 curves of Adobe RGB (1998), as that specification's ICC profile states them. */
    static ProfileBytes adobeRgb() {
        return new ProfileBytes("RGB ")
                .xyz("rXYZ", 0.60974, 0.31111, 0.01947)
                .xyz("gXYZ", 0.20528, 0.62567, 0.06087)
                .xyz("bXYZ", 0.14919, 0.06322, 0.74457)
                .curve("rTRC", 0x0233)
                .curve("gTRC", 0x0233)
                .curve("bTRC", 0x0233);
    }

    /** sRGB with a curve sampled at 1024 points, as the profile most often embedded has it. */
    static ProfileBytes srgb() {
        int[] points = new int[1024];
        for (int i = 0; i < points.length; i++) {
            points[i] = (int) Math.round(Pattern.srgb(i / 1023.0) * 65535);
        }
        return new ProfileBytes("RGB ")
                .xyz("rXYZ", 0.43607, 0.22249, 0.01392)
                .xyz("gXYZ", 0.38515, 0.71687, 0.09708)
                .xyz("bXYZ", 0.14307, 0.06061, 0.71410)
                .curve("rTRC", points)
                .curve("gTRC", points)
                .curve("bTRC", points);
    }

    private static int fixed(double value) {
        return (int) Math.round(value * 65536);
    }

    private static byte[] ascii(String text) {
        return text.getBytes(StandardCharsets.US_ASCII);
    }
}
