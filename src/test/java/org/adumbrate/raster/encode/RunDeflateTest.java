package org.adumbrate.raster.encode;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.util.Random;
import java.util.zip.DataFormatException;
import java.util.zip.Inflater;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/** What we deflate is inflated by zlib, which is the reference of RFC 1951. */
class RunDeflateTest {
    private static byte[] inflated(byte[] stream, int length) throws DataFormatException {
        Inflater inflater = new Inflater(true);
        inflater.setInput(stream);
        byte[] out = new byte[length + 1];
        int got = 0;
        while (!inflater.finished()) {
            int more = inflater.inflate(out, got, out.length - got);
            assertThat(more > 0 || inflater.finished()).as("the stream goes on").isTrue();
            got += more;
        }
        inflater.end();
        return java.util.Arrays.copyOf(out, got);
    }

    private static byte[] made(int length, int spread, int runs, long seed) {
        Random random = new Random(seed);
        byte[] data = new byte[length];
        for (int at = 0; at < length; ) {
            byte value = (byte) (int) Math.round(random.nextGaussian() * spread);
            int run = random.nextInt(100) < runs ? 1 + random.nextInt(1000) : 1;
            for (int k = 0; k < run && at < length; k++) {
                data[at++] = value;
            }
        }
        return data;
    }

    @Property(tries = 60, seed = "1")
    void whatGoesInComesOut(
            @ForAll @IntRange(max = 200_000) int length,
            @ForAll @IntRange(max = 300) int spread,
            @ForAll @IntRange(max = 100) int runs,
            @ForAll long seed)
            throws DataFormatException {
        byte[] data = made(length, spread, runs, seed);
        assertThat(inflated(new RunDeflate().compress(data, length, true), length))
                .isEqualTo(data);
    }

    @Property(tries = 20, seed = "1")
    void piecesJoinAtByteEdges(@ForAll @IntRange(min = 1, max = 5000) int length, @ForAll long seed)
            throws DataFormatException {
        byte[] first = made(length, 4, 30, seed);
        byte[] second = made(length, 90, 5, seed + 1);
        RunDeflate deflate = new RunDeflate();
        ByteArrayOutputStream joined = new ByteArrayOutputStream();
        joined.writeBytes(deflate.compress(first, length, false));
        joined.writeBytes(deflate.compress(second, length, true));
        byte[] both = new byte[2 * length];
        System.arraycopy(first, 0, both, 0, length);
        System.arraycopy(second, 0, both, length, length);
        assertThat(inflated(joined.toByteArray(), 2 * length)).isEqualTo(both);
    }

    /** Frequencies like Fibonacci's numbers make Huffman's longest codes: they must be cut to 15 bits. */
    @Test
    void codesStayWithinTheirLimit() throws DataFormatException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        int a = 1;
        int b = 1;
        for (int symbol = 0; symbol < 22; symbol++) {
            for (int k = 0; k < a; k++) {
                out.write(2 * symbol);
                out.write(101 + k % 2);
            }
            int next = a + b;
            a = b;
            b = next;
        }
        byte[] data = java.util.Arrays.copyOf(out.toByteArray(), 1 << 16);
        assertThat(inflated(new RunDeflate().compress(data, data.length, true), data.length))
                .isEqualTo(data);
    }

    @Test
    void nothingIsAStreamToo() throws DataFormatException {
        assertThat(inflated(new RunDeflate().compress(new byte[0], 0, true), 0)).isEmpty();
    }
}
