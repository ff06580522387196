package org.adumbrate.hostile;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.zip.CRC32;

/** How a file falls into parts, so that a mutation meets them whole and keeps what binds them. */
enum Parts {
    /** One part. */
    NONE {
        @Override
        List<byte[]> split(byte[] file) {
            return List.of(file);
        }
    },

    /** Lines, each with its end. */
    LINES {
        @Override
        List<byte[]> split(byte[] file) {
            List<byte[]> parts = new ArrayList<>();
            int from = 0;
            for (int k = 0; k < file.length; k++) {
                if (file[k] == '\n') {
                    parts.add(Arrays.copyOfRange(file, from, k + 1));
                    from = k + 1;
                }
            }
            parts.add(Arrays.copyOfRange(file, from, file.length));
            return parts;
        }
    },

    /** Chunks of a PNG, from the second part on: name and body; length and checksum are made anew. */
    PNG_CHUNKS {
        @Override
        List<byte[]> split(byte[] file) {
            List<byte[]> parts = new ArrayList<>();
            parts.add(Arrays.copyOf(file, 8));
            ByteBuffer data = ByteBuffer.wrap(file).position(8);
            while (data.remaining() >= 12) {
                int length = data.getInt();
                if (length < 0 || length > data.remaining() - 8) {
                    break;
                }
                byte[] chunk = new byte[4 + length];
                data.get(chunk).getInt();
                parts.add(chunk);
            }
            return parts;
        }

        @Override
        byte[] join(List<byte[]> parts) {
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            for (byte[] part : parts) {
                if (part.length < 4 || part[0] == (byte) 0x89) {
                    out.writeBytes(part);
                    continue;
                }
                CRC32 crc = new CRC32();
                crc.update(part);
                out.writeBytes(ByteBuffer.allocate(4).putInt(part.length - 4).array());
                out.writeBytes(part);
                out.writeBytes(
                        ByteBuffer.allocate(4).putInt((int) crc.getValue()).array());
            }
            return out.toByteArray();
        }
    },

    /** Segments of a JPEG, and the coded data after each. */
    JPEG_SEGMENTS {
        @Override
        List<byte[]> split(byte[] file) {
            List<byte[]> parts = new ArrayList<>();
            int from = 0;
            for (int k = 1; k + 1 < file.length; k++) {
                boolean marker = file[k] == (byte) 0xff && file[k + 1] != 0 && file[k + 1] != (byte) 0xff;
                if (marker) {
                    parts.add(Arrays.copyOfRange(file, from, k));
                    from = k;
                }
            }
            parts.add(Arrays.copyOfRange(file, from, file.length));
            return parts;
        }
    },

    /** The fields of a classic TIFF's first directory, one a part, between what stands before and after them. */
    TIFF_FIELDS {
        @Override
        List<byte[]> split(byte[] file) {
            ByteOrder order = file[0] == 'I' ? ByteOrder.LITTLE_ENDIAN : ByteOrder.BIG_ENDIAN;
            ByteBuffer data = ByteBuffer.wrap(file).order(order);
            int directory = data.getInt(4);
            if (data.getShort(2) != 42 || directory < 8 || directory > file.length - 2) {
                return List.of(file);
            }
            List<byte[]> parts = new ArrayList<>();
            int at = directory + 2;
            parts.add(Arrays.copyOf(file, at));
            for (int k = data.getShort(directory); k > 0 && at + 12 <= file.length; k--, at += 12) {
                parts.add(Arrays.copyOfRange(file, at, at + 12));
            }
            parts.add(Arrays.copyOfRange(file, at, file.length));
            return parts;
        }
    };

    /** The parts of a sound file. */
    abstract List<byte[]> split(byte[] file);

    /** The file of some parts. */
    byte[] join(List<byte[]> parts) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        parts.forEach(out::writeBytes);
        return out.toByteArray();
    }
}
