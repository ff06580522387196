package org.adumbrate.hostile;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.Arrays;
import java.util.Random;

/** Changes to bytes of which nothing is known. */
enum ByteMutation {
    FLIP_BITS {
        @Override
        byte[] apply(byte[] file, Random random) {
            byte[] changed = file.clone();
            for (int n = random.nextInt(8); n >= 0; n--) {
                changed[place(file, random)] ^= (byte) (1 << random.nextInt(8));
            }
            return changed;
        }
    },

    SET_BYTES {
        @Override
        byte[] apply(byte[] file, Random random) {
            byte[] changed = file.clone();
            for (int n = random.nextInt(4); n >= 0; n--) {
                changed[place(file, random)] = (byte) (random.nextBoolean() ? number(random) : random.nextInt(256));
            }
            return changed;
        }
    },

    /** What may be a length, an offset or a size becomes another. */
    SET_NUMBER {
        @Override
        byte[] apply(byte[] file, Random random) {
            byte[] changed = Arrays.copyOf(file, Math.max(file.length, 8));
            ByteBuffer data = ByteBuffer.wrap(changed)
                    .order(random.nextBoolean() ? ByteOrder.BIG_ENDIAN : ByteOrder.LITTLE_ENDIAN);
            int at = Math.min(place(file, random), changed.length - 4);
            if (random.nextBoolean()) {
                data.putInt(at, number(random));
            } else {
                data.putShort(at, (short) number(random));
            }
            return changed;
        }
    },

    TRUNCATE {
        @Override
        byte[] apply(byte[] file, Random random) {
            return Arrays.copyOf(file, random.nextInt(file.length + 1));
        }
    },

    INSERT {
        @Override
        byte[] apply(byte[] file, Random random) {
            byte[] block = new byte[1 + random.nextInt(random.nextBoolean() ? 8 : 3000)];
            if (random.nextBoolean()) {
                random.nextBytes(block);
            } else {
                Arrays.fill(block, (byte) number(random));
            }
            int at = place(file, random);
            return spliced(file, at, block, at);
        }
    },

    REMOVE {
        @Override
        byte[] apply(byte[] file, Random random) {
            int from = place(file, random);
            return spliced(file, from, new byte[0], from + random.nextInt(Math.min(64, file.length - from) + 1));
        }
    },

    REPEAT {
        @Override
        byte[] apply(byte[] file, Random random) {
            int from = place(file, random);
            int length = Math.min(1 + random.nextInt(200), file.length - from);
            byte[] block = Arrays.copyOfRange(file, from, from + length);
            byte[] changed = file;
            for (int n = random.nextInt(20); n >= 0; n--) {
                changed = spliced(changed, from, block, from);
            }
            return changed;
        }
    };

    private static final int[] NUMBERS = {
        0,
        1,
        2,
        3,
        4,
        8,
        0x7f,
        0x80,
        0xff,
        0x100,
        0x7fff,
        0x8000,
        0xffff,
        0x10000,
        65500,
        100_000,
        0x7fffffff,
        0x80000000,
        -1,
        -2,
        0x40000000,
        0x00ffffff,
        0x01000000
    };

    abstract byte[] apply(byte[] file, Random random);

    /** A number at which something may turn over. */
    static int number(Random random) {
        return NUMBERS[random.nextInt(NUMBERS.length)];
    }

    /** A place in a file that is not empty, in half of all cases near its beginning. */
    static int place(byte[] file, Random random) {
        return random.nextInt(random.nextBoolean() ? Math.min(file.length, 100) : file.length);
    }

    /** The file with a stretch of it replaced. */
    static byte[] spliced(byte[] file, int from, byte[] block, int to) {
        byte[] changed = Arrays.copyOf(file, from + block.length + file.length - to);
        System.arraycopy(block, 0, changed, from, block.length);
        System.arraycopy(file, to, changed, from + block.length, file.length - to);
        return changed;
    }
}
