package org.adumbrate.proof.picture;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.Base64;
import java.util.Optional;
import org.adumbrate.drawing.InkedTile;
import org.adumbrate.geometry.Canvas;
import org.adumbrate.underlay.HeldLight;
import org.adumbrate.underlay.RegionMask;

/** The arrays that a page composes a picture of, as bytes: shares in 16 bits, little end first; ink as its channels and alpha. */
final class Packed {
    private static final int MOST = 65535;

    private Packed() {}

    /**
     * Light, 0 to a most; one channel where it is grey.
     *
     * @param most what 65535 stands for
     */
    static byte[] light(HeldLight light, float most) {
        float scale = MOST / most;
        try {
            int channels = channels(light);
            int step = light.channels() / channels;
            byte[] shorts = shorts(light.window().size().count() * channels);
            ByteBuffer bytes = writing(shorts);
            light.eachRow(row -> put(bytes, row, step, scale));
            return shorts;
        } catch (IOException e) {
            throw new UncheckedIOException("what is held is in memory", e);
        }
    }

    /** The channels that are handed out: one where all are alike. */
    static int channels(HeldLight light) throws IOException {
        return light.isGrey() ? 1 : light.channels();
    }

    /** The share of each pixel that a pass counts for; nothing where it is all of it everywhere. */
    static Optional<byte[]> shares(HeldLight light, Optional<RegionMask> mask, Canvas canvas) throws IOException {
        byte[] shorts = shorts(light.window().size().count());
        ByteBuffer bytes = writing(shorts);
        return light.eachShare(mask, canvas, row -> put(bytes, row, 1, MOST)) ? Optional.of(shorts) : Optional.empty();
    }

    private static byte[] shorts(long count) {
        return new byte[Math.toIntExact(2 * count)];
    }

    private static ByteBuffer writing(byte[] shorts) {
        return ByteBuffer.wrap(shorts).order(ByteOrder.LITTLE_ENDIAN);
    }

    private static void put(ByteBuffer bytes, float[] row, int step, float scale) {
        for (int k = 0; k < row.length; k += step) {
            bytes.putShort((short) (int) (Math.max(0, Math.min(MOST, row[k] * scale)) + 0.5f));
        }
    }

    /**
     * A tile of ink.
     *
     * @param channels of the drawing: 1 or 3
     */
    static byte[] tile(InkedTile tile, int channels) {
        long pixels = tile.box().size().count();
        ByteBuffer bytes = ByteBuffer.allocate(Math.toIntExact((channels + 1) * pixels));
        tile.putTo(bytes, channels);
        return bytes.array();
    }

    /** Numbers in 32 bits, little end first, in Base64 (RFC 4648). */
    static String floats(float[] values) {
        ByteBuffer bytes = ByteBuffer.allocate(4 * values.length).order(ByteOrder.LITTLE_ENDIAN);
        bytes.asFloatBuffer().put(values);
        return Base64.getEncoder().encodeToString(bytes.array());
    }
}
