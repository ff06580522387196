package org.adumbrate.raster.decode.png;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.zip.CRC32;
import java.util.zip.Deflater;

/** Builds PNG files byte by byte, with every choice open; independent of what is under test. */
public final class PngBytes {
    private final ByteArrayOutputStream out = new ByteArrayOutputStream();

    public PngBytes() {
        out.writeBytes(new byte[] {(byte) 137, 80, 78, 71, 13, 10, 26, 10});
    }

    public PngBytes header(int width, int height, int depth, int colourType, int interlace) {
        return chunk(
                "IHDR",
                ByteBuffer.allocate(13)
                        .putInt(width)
                        .putInt(height)
                        .put((byte) depth)
                        .put((byte) colourType)
                        .put((byte) 0)
                        .put((byte) 0)
                        .put((byte) interlace)
                        .array());
    }

    public PngBytes chunk(String type, byte[] body) {
        byte[] word = type.getBytes(StandardCharsets.US_ASCII);
        CRC32 crc = new CRC32();
        crc.update(word);
        crc.update(body);
        out.writeBytes(ByteBuffer.allocate(4).putInt(body.length).array());
        out.writeBytes(word);
        out.writeBytes(body);
        out.writeBytes(ByteBuffer.allocate(4).putInt((int) crc.getValue()).array());
        return this;
    }

    public PngBytes ints(String type, int... values) {
        ByteBuffer body = ByteBuffer.allocate(4 * values.length);
        for (int value : values) {
            body.putInt(value);
        }
        return chunk(type, body.array());
    }

    /** Compressed data, in as many IDAT chunks as asked for. */
    public PngBytes data(byte[] filtered, int chunks) {
        byte[] packed = deflate(filtered);
        for (int i = 0; i < chunks; i++) {
            int from = packed.length * i / chunks;
            int to = packed.length * (i + 1) / chunks;
            chunk("IDAT", Arrays.copyOfRange(packed, from, to));
        }
        return this;
    }

    public byte[] end() {
        chunk("IEND", new byte[0]);
        return out.toByteArray();
    }

    static byte[] deflate(byte[] bytes) {
        Deflater deflater = new Deflater();
        deflater.setInput(bytes);
        deflater.finish();
        ByteArrayOutputStream packed = new ByteArrayOutputStream();
        byte[] buffer = new byte[4096];
        while (!deflater.finished()) {
            packed.write(buffer, 0, deflater.deflate(buffer));
        }
        deflater.end();
        return packed.toByteArray();
    }

    /** Rows of samples packed to their depth, each behind its filter's number and filtered by it. */
    public static byte[] rows(int width, int height, int depth, int channels, Formula codes, int... filters) {
        int rowBytes = (width * depth * channels + 7) / 8;
        int step = Math.max(1, depth * channels / 8);
        byte[] above = new byte[rowBytes];
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        for (int y = 0; y < height; y++) {
            byte[] row = new byte[rowBytes];
            for (int i = 0; i < width * channels; i++) {
                int code = codes.code(i / channels, y, i % channels);
                for (int bit = 0; bit < depth; bit++) {
                    int place = i * depth + bit;
                    row[place / 8] |= (byte) ((code >> (depth - 1 - bit) & 1) << (7 - place % 8));
                }
            }
            int filter = filters[y % filters.length];
            out.write(filter);
            for (int i = 0; i < rowBytes; i++) {
                int a = i < step ? 0 : row[i - step] & 0xff;
                int b = above[i] & 0xff;
                int c = i < step ? 0 : above[i - step] & 0xff;
                out.write(row[i] - predict(filter, a, b, c));
            }
            above = row;
        }
        return out.toByteArray();
    }

    private static int predict(int filter, int a, int b, int c) {
        int p = a + b - c;
        return switch (filter) {
            case 1 -> a;
            case 2 -> b;
            case 3 -> (a + b) / 2;
            case 4 ->
                Math.abs(p - a) <= Math.abs(p - b) && Math.abs(p - a) <= Math.abs(p - c)
                        ? a
                        : Math.abs(p - b) <= Math.abs(p - c) ? b : c;
            default -> 0;
        };
    }

    /** The code of a channel of a pixel. */
    @FunctionalInterface
    public interface Formula {
        int code(int x, int y, int channel);
    }
}
