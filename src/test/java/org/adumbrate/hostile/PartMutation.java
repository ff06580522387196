package org.adumbrate.hostile;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.zip.DataFormatException;
import java.util.zip.Deflater;
import java.util.zip.Inflater;

/** Changes to the parts that a file is built of. */
enum PartMutation {
    DUPLICATE {
        @Override
        void apply(List<byte[]> parts, List<byte[]> others, Random random) {
            byte[] part = any(parts, random);
            parts.addAll(random.nextInt(parts.size()), Collections.nCopies(1 << random.nextInt(8), part));
        }
    },

    REMOVE {
        @Override
        void apply(List<byte[]> parts, List<byte[]> others, Random random) {
            parts.remove(random.nextInt(parts.size()));
        }
    },

    SWAP {
        @Override
        void apply(List<byte[]> parts, List<byte[]> others, Random random) {
            Collections.swap(parts, random.nextInt(parts.size()), random.nextInt(parts.size()));
        }
    },

    /** Some parts of another file. */
    GRAFT {
        @Override
        void apply(List<byte[]> parts, List<byte[]> others, Random random) {
            for (int n = random.nextInt(3); n >= 0; n--) {
                parts.add(random.nextInt(parts.size() + 1), any(others, random));
            }
        }
    },

    /** Bytes of one part change, and what binds the parts is kept. */
    CHANGE {
        @Override
        void apply(List<byte[]> parts, List<byte[]> others, Random random) {
            int at = random.nextInt(parts.size());
            if (parts.get(at).length > 4) {
                parts.set(at, changed(parts.get(at), 4, random));
            }
        }
    },

    /** Compressed data change, and are compressed again. */
    CHANGE_WITHIN {
        @Override
        void apply(List<byte[]> parts, List<byte[]> others, Random random) {
            int at = random.nextInt(parts.size());
            byte[] part = parts.get(at);
            for (int from = 0; from + 2 < part.length; from++) {
                if (part[from] == 0x78) {
                    byte[] plain = inflated(part, from);
                    if (plain.length > 0) {
                        byte[] packed = deflated(changed(plain, 0, random));
                        parts.set(at, ByteMutation.spliced(part, from, packed, part.length));
                        return;
                    }
                }
            }
        }
    };

    private static final int MOST_PLAIN = 1 << 20;

    abstract void apply(List<byte[]> parts, List<byte[]> others, Random random);

    /** The file so changed. */
    byte[] apply(byte[] file, byte[] other, Parts syntax, Random random) {
        List<byte[]> parts = new ArrayList<>(syntax.split(file));
        apply(parts, syntax.split(other), random);
        return syntax.join(parts);
    }

    private static byte[] any(List<byte[]> parts, Random random) {
        return parts.get(random.nextInt(parts.size()));
    }

    private static byte[] changed(byte[] part, int from, Random random) {
        ByteMutation[] ways = ByteMutation.values();
        byte[] body = ways[random.nextInt(ways.length)].apply(Arrays.copyOfRange(part, from, part.length), random);
        return ByteMutation.spliced(part, from, body, part.length);
    }

    private static byte[] inflated(byte[] part, int from) {
        Inflater inflater = new Inflater();
        try {
            inflater.setInput(part, from, part.length - from);
            byte[] plain = new byte[MOST_PLAIN];
            return Arrays.copyOf(plain, inflater.inflate(plain));
        } catch (DataFormatException e) {
            return new byte[0];
        } finally {
            inflater.end();
        }
    }

    private static byte[] deflated(byte[] plain) {
        Deflater deflater = new Deflater();
        deflater.setInput(plain);
        deflater.finish();
        byte[] packed = new byte[plain.length + 100];
        int length = deflater.deflate(packed);
        deflater.end();
        return Arrays.copyOf(packed, length);
    }
}
