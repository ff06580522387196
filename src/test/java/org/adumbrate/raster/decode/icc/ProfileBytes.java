package org.adumbrate.raster.decode.icc;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import org.adumbrate.raster.decode.Pattern;

/** Builds colour profiles byte by byte (ICC.1:2022, clause 7). */
public final class ProfileBytes {
    private final String space;
    private String connection = "XYZ ";
    private String deviceClass = "mntr";
    private final Map<String, byte[]> elements = new LinkedHashMap<>();

    /** @param space four letters, such as {@code "RGB "} */
    public ProfileBytes(String space) {
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

    public ProfileBytes xyz(String tag, double x, double y, double z) {
        return element(
                tag,
                ByteBuffer.allocate(20)
                        .put(ascii("XYZ "))
                        .putInt(8, fixed(x))
                        .putInt(12, fixed(y))
                        .putInt(16, fixed(z)));
    }

    /** curveType. */
    public ProfileBytes curve(String tag, int... values) {
        ByteBuffer data =
                ByteBuffer.allocate(12 + 2 * values.length).put(ascii("curv")).putInt(8, values.length);
        for (int i = 0; i < values.length; i++) {
            data.putShort(12 + 2 * i, (short) values[i]);
        }
        return element(tag, data);
    }

    /** parametricCurveType. */
    public ProfileBytes parametric(String tag, int kind, double... parameters) {
        ByteBuffer data = ByteBuffer.allocate(12 + 4 * parameters.length)
                .put(ascii("para"))
                .putShort(8, (short) kind);
        for (int i = 0; i < parameters.length; i++) {
            data.putInt(12 + 4 * i, fixed(parameters[i]));
        }
        return element(tag, data);
    }

    /**
     * lut16Type (10.10) of lightness alone, with three points along each channel, and L*a*b* as version 2 encodes it: 0 to
     * 100 is 0 to 65280, no colour is 32768.
     */
    public ProfileBytes lightness(String tag, int channels, Lightness lightness) {
        connection = "Lab ";
        deviceClass = channels == 4 ? "prtr" : "mntr";
        int points = (int) Math.round(Math.pow(3, channels));
        ByteBuffer data = ByteBuffer.allocate(52 + 4 * channels + 6 * points + 12)
                .put(ascii("mft2"))
                .put(8, (byte) channels)
                .put(9, (byte) 3)
                .put(10, (byte) 3);
        for (int i = 0; i < 9; i += 4) {
            data.putInt(12 + 4 * i, 65536);
        }
        data.putShort(48, (short) 2).putShort(50, (short) 2).position(52);
        for (int c = 0; c < channels; c++) {
            data.putShort((short) 0).putShort((short) -1);
        }
        for (int point = 0; point < points; point++) {
            double[] device = new double[channels];
            for (int c = channels - 1, rest = point; c >= 0; c--, rest /= 3) {
                device[c] = rest % 3 / 2.0;
            }
            data.putShort((short) Math.round(lightness.of(device) * 652.8));
            data.putShort((short) 32768).putShort((short) 32768);
        }
        for (int c = 0; c < 3; c++) {
            data.putShort((short) 0).putShort((short) -1);
        }
        return element(tag, data);
    }

    /** L* of a device colour. */
    @FunctionalInterface
    public interface Lightness {
        double of(double[] device);
    }

    private ProfileBytes element(String tag, ByteBuffer data) {
        byte[] bytes = new byte[data.capacity()];
        data.get(0, bytes);
        elements.put(tag, bytes);
        return this;
    }

    /** The whole profile. */
    public byte[] build() {
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
                .put(ascii(deviceClass + space + connection))
                .position(36)
                .put(ascii("acsp"));
        all.putInt(68, fixed(0.9642)).putInt(72, fixed(1)).putInt(76, fixed(0.8249));
        return all.position(128).put(table.array()).put(body.toByteArray()).array();
    }

    /** Colorants and 2.2 curves of Adobe RGB (1998), as that specification's ICC profile states them. */
    public static ProfileBytes adobeRgb() {
        return new ProfileBytes("RGB ")
                .xyz("rXYZ", 0.60974, 0.31111, 0.01947)
                .xyz("gXYZ", 0.20528, 0.62567, 0.06087)
                .xyz("bXYZ", 0.14919, 0.06322, 0.74457)
                .curve("rTRC", 0x0233)
                .curve("gTRC", 0x0233)
                .curve("bTRC", 0x0233);
    }

    /** sRGB with a curve sampled at 1024 points, as the profile most often embedded has it. */
    public static ProfileBytes srgb() {
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
