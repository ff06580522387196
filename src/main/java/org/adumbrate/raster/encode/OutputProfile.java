package org.adumbrate.raster.encode;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.adumbrate.raster.SrgbCurve;

/**
 * The colour profiles that our pictures carry (ICC.1:2001-04, version 2.4, display class): sRGB for three channels, a grey
 * with the sRGB curve for one, and either with samples in proportion to light. Made here from the numbers of the standard, so that the bytes are the same everywhere.
 */
public final class OutputProfile {
    private static final int CURVE_POINTS = 1024;
    private static final int FIXED_ONE = 65536;

    /** D50, the white of the profile connection space, as ICC.1 gives it. */
    private static final double[] D50 = {0.9642, 1, 0.8249};

    /** The sRGB primaries adapted to D50 by the linear Bradford transform (ICC.1, annex E): red, green, blue. */
    private static final double[][] PRIMARIES = {
        {0.43606567, 0.22248840, 0.01391602}, {0.38514709, 0.71687317, 0.09707642}, {0.14306641, 0.06060791, 0.71409607}
    };

    private final List<String> names = new ArrayList<>();
    private final List<byte[]> tags = new ArrayList<>();

    private OutputProfile() {}

    /** The profile of a picture with 1 or 3 channels, its samples by the sRGB curve. */
    public static byte[] of(int channels) {
        return of(channels, Transfer.SRGB);
    }

    /** The profile of a picture with 1 or 3 channels. */
    public static byte[] of(int channels, Transfer transfer) {
        OutputProfile profile = new OutputProfile();
        profile.tag("desc", description(name(channels, transfer)));
        byte[] curve = transfer == Transfer.LINEAR ? straight() : curve();
        profile.tag("cprt", text("No copyright, use freely"));
        profile.tag("wtpt", xyz(D50));
        if (channels == 1) {
            profile.tag("kTRC", curve);
        } else {
            String[] colors = {"r", "g", "b"};
            for (int k = 0; k < 3; k++) {
                profile.tag(colors[k] + "XYZ", xyz(PRIMARIES[k]));
            }
            for (String color : colors) {
                profile.tag(color + "TRC", curve);
            }
        }
        return profile.bytes(channels == 1 ? "GRAY" : "RGB ");
    }

    private void tag(String name, byte[] data) {
        names.add(name);
        tags.add(data);
    }

    private byte[] bytes(String space) {
        ByteBuffer table = ByteBuffer.allocate(4 + 12 * names.size()).putInt(names.size());
        ByteArrayOutputStream data = new ByteArrayOutputStream();
        int start = 128 + table.capacity();
        byte[] previous = null;
        int at = 0;
        for (int k = 0; k < names.size(); k++) {
            if (tags.get(k) != previous) {
                at = start + data.size();
                data.writeBytes(tags.get(k));
                previous = tags.get(k);
            }
            table.put(ascii(names.get(k))).putInt(at).putInt(previous.length);
        }
        int size = start + data.size();
        ByteBuffer profile = ByteBuffer.allocate(size)
                .putInt(size)
                .putInt(0)
                .putInt(0x02400000)
                .put(ascii("mntr"))
                .put(ascii(space))
                .put(ascii("XYZ "));
        short[] firstOfJanuary2026 = {2026, 1, 1, 0, 0, 0};
        for (short part : firstOfJanuary2026) {
            profile.putShort(part);
        }
        profile.put(ascii("acsp")).position(68);
        for (double part : D50) {
            profile.putInt(fixed(part));
        }
        return profile.position(128).put(table.array()).put(data.toByteArray()).array();
    }

    private static byte[] xyz(double[] value) {
        ByteBuffer tag = ByteBuffer.allocate(20).put(ascii("XYZ ")).putInt(0);
        for (double part : value) {
            tag.putInt(fixed(part));
        }
        return tag.array();
    }

    private static byte[] curve() {
        ByteBuffer tag = ByteBuffer.allocate(12 + 2 * CURVE_POINTS)
                .put(ascii("curv"))
                .putInt(0)
                .putInt(CURVE_POINTS);
        for (int k = 0; k < CURVE_POINTS; k++) {
            tag.putShort((short) Math.round(SrgbCurve.decode(k / (CURVE_POINTS - 1.0)) * 65535));
        }
        return tag.array();
    }

    /** A curve of no points is straight. */
    private static byte[] straight() {
        return ByteBuffer.allocate(12).put(ascii("curv")).array();
    }

    private static String name(int channels, Transfer transfer) {
        if (transfer == Transfer.LINEAR) {
            return channels == 1 ? "Grey, linear light" : "sRGB primaries, linear light";
        }
        return channels == 1 ? "Grey, sRGB curve" : "sRGB IEC 61966-2-1";
    }

    private static byte[] text(String text) {
        int length = (8 + text.length() + 1 + 3) / 4 * 4;
        return ByteBuffer.allocate(length)
                .put(ascii("text"))
                .putInt(0)
                .put(ascii(text))
                .array();
    }

    /** The version 2 description: the text, then empty Unicode and script parts. */
    private static byte[] description(String text) {
        int length = (12 + text.length() + 1 + 78 + 3) / 4 * 4;
        return ByteBuffer.allocate(length)
                .put(ascii("desc"))
                .putInt(0)
                .putInt(text.length() + 1)
                .put(ascii(text))
                .array();
    }

    private static int fixed(double value) {
        return (int) Math.round(value * FIXED_ONE);
    }

    private static byte[] ascii(String text) {
        return text.getBytes(StandardCharsets.US_ASCII);
    }
}
