package org.adumbrate.hostile;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.zip.Deflater;

/** Sound pictures around a colour profile or an Exif block. */
final class Envelope {
    private static final int JPEG_PART = 60_000;
    private static final String[] SUFFIXES = {".png", ".jpg", ".tif"};

    private Envelope() {}

    /** The ending of the name of an envelope of a number. */
    static String suffix(int number) {
        return SUFFIXES[number % SUFFIXES.length];
    }

    /** The envelope of a number. */
    static byte[] around(Format format, byte[] content, int number) {
        return switch (suffix(number)) {
            case ".png" -> png(format, content, number);
            case ".jpg" -> jpeg(format, content, number);
            default -> format == Format.EXIF ? content : tiff(content);
        };
    }

    private static byte[] png(Format format, byte[] content, int number) {
        List<byte[]> chunks = new ArrayList<>(Parts.PNG_CHUNKS.split(seed(Format.PNG, number)));
        chunks.removeIf(chunk -> chunk[1] == 'C' && chunk[2] == 'C');
        String head = format == Format.ICC ? "iCCPp\0\0" : "eXIf";
        chunks.add(2, joined(head, format == Format.ICC ? deflated(content) : content));
        return Parts.PNG_CHUNKS.join(chunks);
    }

    private static byte[] jpeg(Format format, byte[] content, int number) {
        byte[] jpeg = seed(Format.JPEG, number);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.write(jpeg, 0, 2);
        int parts = 1 + content.length / JPEG_PART;
        for (int k = 0; k < parts; k++) {
            byte[] part = Arrays.copyOfRange(content, k * JPEG_PART, Math.min(content.length, (k + 1) * JPEG_PART));
            String head = format == Format.ICC ? "ICC_PROFILE\0" + (char) (k + 1) + (char) parts : "Exif\0\0";
            byte[] body = joined(head, part);
            out.write(0xff);
            out.write(format == Format.ICC ? 0xe2 : 0xe1);
            out.write((body.length + 2) >> 8);
            out.write(body.length + 2);
            out.writeBytes(body);
        }
        out.write(jpeg, 2, jpeg.length - 2);
        return out.toByteArray();
    }

    /** Three pixels of one strip, and the profile behind them. */
    private static byte[] tiff(byte[] profile) {
        int[][] fields = {
            {256, 3}, {257, 1}, {258, 8}, {259, 1}, {262, 2}, {273, 142}, {277, 3}, {278, 1}, {279, 9}, {34675, 151}
        };
        ByteBuffer out = ByteBuffer.allocate(151 + profile.length).order(ByteOrder.LITTLE_ENDIAN);
        out.put("II*\0".getBytes(StandardCharsets.ISO_8859_1)).putInt(8).putShort((short) fields.length);
        for (int[] field : fields) {
            boolean isProfile = field[0] == 34675;
            out.putShort((short) field[0]).putShort((short) (isProfile ? 7 : 4));
            out.putInt(isProfile ? profile.length : 1).putInt(field[1]);
        }
        return out.position(151).put(profile).array();
    }

    /** A sound file, always the same of a number; those of inks come too, for their profiles. */
    private static byte[] seed(Format format, int number) {
        List<byte[]> files = Seeds.of(format).files();
        return files.get(number / SUFFIXES.length % files.size());
    }

    private static byte[] joined(String head, byte[] body) {
        byte[] start = head.getBytes(StandardCharsets.ISO_8859_1);
        return ByteBuffer.allocate(start.length + body.length)
                .put(start)
                .put(body)
                .array();
    }

    private static byte[] deflated(byte[] plain) {
        Deflater deflater = new Deflater();
        deflater.setInput(plain);
        deflater.finish();
        byte[] packed = new byte[plain.length + plain.length / 100 + 100];
        int length = deflater.deflate(packed);
        deflater.end();
        return Arrays.copyOf(packed, length);
    }
}
