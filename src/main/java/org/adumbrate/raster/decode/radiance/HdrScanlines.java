package org.adumbrate.raster.decode.radiance;

import java.io.IOException;
import java.io.InputStream;
import java.util.Arrays;
import org.adumbrate.fault.InputFault;
import org.adumbrate.geometry.PixelSize;
import org.adumbrate.raster.decode.source.SourceFile;

/** The rows of a Radiance picture: flat, in runs of pixels, or in runs of each of the four bytes apart. */
final class HdrScanlines {
    private static final int SHORTEST_SPLIT = 8;
    private static final int LONGEST_SPLIT = 0x7fff;

    /** Of the exponent: its bias, and the 8 bits of the mantissas. */
    private static final int BIAS = 128 + 8;

    private final SourceFile file;
    private final InputStream in;
    private final PixelSize size;
    private final byte[][] planes;
    private int row;

    HdrScanlines(SourceFile file, InputStream in, PixelSize size) {
        this.file = file;
        this.in = in;
        this.size = size;
        this.planes = new byte[4][size.width()];
    }

    /** The next row: red, green and blue of each pixel. */
    void next(float[] rgb) throws IOException {
        int[] first = {read(), read(), read(), read()};
        int width = size.width();
        boolean mayBeSplit = width >= SHORTEST_SPLIT && width <= LONGEST_SPLIT;
        if (mayBeSplit && first[0] == 2 && first[1] == 2 && first[2] < 128) {
            if ((first[2] << 8 | first[3]) != width) {
                throw file.damaged("its row " + row + " states another width");
            }
            for (byte[] plane : planes) {
                readRuns(plane);
            }
        } else {
            readPixels(first);
        }
        for (int x = 0; x < width; x++) {
            float scale = planes[3][x] == 0 ? 0 : (float) Math.scalb(1.0, (planes[3][x] & 0xff) - BIAS);
            for (int c = 0; c < 3; c++) {
                rgb[3 * x + c] = (planes[c][x] & 0xff) * scale;
            }
        }
        row++;
    }

    private void readRuns(byte[] plane) throws IOException {
        int at = 0;
        while (at < plane.length) {
            int count = read();
            boolean run = count > 128;
            count -= run ? 128 : 0;
            if (count == 0 || count > plane.length - at) {
                throw file.damaged("a run of its row " + row + " is " + count + " long");
            }
            if (run) {
                Arrays.fill(plane, at, at + count, (byte) read());
            } else if (in.readNBytes(plane, at, count) < count) {
                throw endsEarly();
            }
            at += count;
        }
    }

    /** A pixel of 1, 1, 1, n repeats the one before n times, and 256 times as often for each such pixel that follows. */
    private void readPixels(int[] first) throws IOException {
        int[] pixel = first;
        int shift = 0;
        int at = 0;
        while (true) {
            if (at > 0 && pixel[0] == 1 && pixel[1] == 1 && pixel[2] == 1) {
                long count = (long) pixel[3] << Math.min(shift, 32);
                if (count > size.width() - at) {
                    throw file.damaged("a run of its row " + row + " is " + count + " long");
                }
                for (byte[] plane : planes) {
                    Arrays.fill(plane, at, at + (int) count, plane[at - 1]);
                }
                at += (int) count;
                shift += 8;
            } else {
                for (int c = 0; c < planes.length; c++) {
                    planes[c][at] = (byte) pixel[c];
                }
                at++;
                shift = 0;
            }
            if (at == size.width()) {
                return;
            }
            pixel = new int[] {read(), read(), read(), read()};
        }
    }

    private int read() throws IOException {
        int value = in.read();
        if (value < 0) {
            throw endsEarly();
        }
        return value;
    }

    private InputFault endsEarly() {
        return file.endsEarly("after row " + row + " of " + size.height());
    }
}
