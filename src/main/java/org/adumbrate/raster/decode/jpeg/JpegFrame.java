package org.adumbrate.raster.decode.jpeg;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.util.Arrays;
import java.util.List;
import org.adumbrate.raster.decode.source.SourceFile;

/**
 * The frame header of a JPEG (ISO/IEC 10918-1, B.2.2).
 *
 * @param progressive whether its scans refine the whole picture
 * @param width in pixels
 * @param height in pixels, 0 if it is told at the end only
 * @param components their identifiers, in order
 * @param shares the samples of each component, for each pixel
 */
public record JpegFrame(boolean progressive, int width, int height, List<Integer> components, List<Double> shares) {
    private static final int SOF0 = 0xc0;
    private static final int SOF2 = 0xc2;
    private static final int SOF15 = 0xcf;
    private static final int DHT = 0xc4;
    private static final int JPG = 0xc8;
    private static final int DAC = 0xcc;

    /**
     * What the decoder may keep outside the heap. It keeps all coefficients where a picture comes in several scans: 16 bits a
     * sample, which for A0 at 300 px an inch in full colour is 840 MB.
     */
    private static final long MOST_COEFFICIENT_BYTES = 1L << 30;

    /** Writers make some ten scans. */
    private static final int MOST_SCANS = 500;

    /** Every scan goes over every pixel: 30 scans of an A0 sheet at 300 px an inch. */
    private static final long MOST_SCANNED_PIXELS = 1L << 32;

    /** Whether a marker begins a frame header, of whatever process. */
    public static boolean isFrame(int marker) {
        return marker >= SOF0 && marker <= SOF15 && marker != DHT && marker != JPG && marker != DAC;
    }

    /** Reads the body of a frame header, if the process is one that is read: Huffman-coded, 8 bits. */
    public static JpegFrame read(SourceFile file, int marker, byte[] body) throws IOException {
        if (marker > SOF2) {
            throw file.unsupported(marker == 0xc3 ? "lossless JPEG" : "arithmetic-coded or hierarchical JPEG");
        }
        if (body.length < 6 || body.length < 6 + 3 * (body[5] & 0xff)) {
            throw file.damaged("its frame header is cut short");
        }
        if (body[0] != 8) {
            throw file.unsupported("JPEG of " + body[0] + " bits");
        }
        ByteBuffer data = ByteBuffer.wrap(body);
        int[] components = new int[body[5] & 0xff];
        double[] shares = new double[components.length];
        int most = 1;
        for (int i = 0; i < components.length; i++) {
            components[i] = body[6 + 3 * i] & 0xff;
            int samples = (body[7 + 3 * i] >> 4 & 15) * (body[7 + 3 * i] & 15);
            shares[i] = samples;
            most = Math.max(most, samples);
        }
        for (int i = 0; i < shares.length; i++) {
            shares[i] /= most;
        }
        return new JpegFrame(
                marker == SOF2,
                data.getShort(3) & 0xffff,
                data.getShort(1) & 0xffff,
                Arrays.stream(components).boxed().toList(),
                Arrays.stream(shares).boxed().toList());
    }

    /** For a picture in several scans: holds what the decoder must keep of it against what it may. */
    public void requireKeepable(SourceFile file) throws IOException {
        double samples = 0;
        for (double share : shares) {
            samples += share * width * height;
        }
        long bytes = (long) (2 * samples);
        if (bytes > MOST_COEFFICIENT_BYTES) {
            throw file.tooMuch(
                    "is a progressive JPEG of " + width + " x " + height + " px, of which " + (bytes >> 20)
                            + " MB must be kept, more than " + (MOST_COEFFICIENT_BYTES >> 20),
                    "save it as a plain (baseline) JPEG or as PNG");
        }
    }

    /** Holds a number of scans against what any writer makes, and against the time that they take. */
    void requireScannable(SourceFile file, int scans) throws IOException {
        long pixels = (long) width * height;
        if (scans > MOST_SCANS || scans * pixels > MOST_SCANNED_PIXELS) {
            throw file.tooMuch(
                    "refines its " + width + " x " + height + " px in " + scans + " scans, more than are read",
                    "save it as a plain (baseline) JPEG or as PNG");
        }
    }
}
