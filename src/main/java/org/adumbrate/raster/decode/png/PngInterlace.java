package org.adumbrate.raster.decode.png;

import java.io.IOException;
import org.adumbrate.raster.SampleSink;
import org.adumbrate.raster.Samples;

/** The seven passes of an interlaced PNG (ISO/IEC 15948, clause 8.2); no pixel comes twice. */
record PngInterlace(PngHeader header, PngScanlines rows, PngPixels pixels) {
    private static final int[] FIRST_X = {0, 4, 0, 2, 0, 1, 0};
    private static final int[] FIRST_Y = {0, 0, 4, 0, 2, 0, 1};
    private static final int[] STEP_X = {8, 8, 4, 4, 2, 2, 1};
    private static final int[] STEP_Y = {8, 8, 8, 4, 4, 2, 2};

    void decode(SampleSink sink) throws IOException {
        for (int pass = 0; pass < STEP_X.length; pass++) {
            int columns = count(header.size().width(), FIRST_X[pass], STEP_X[pass]);
            if (columns > 0) {
                rows.begin();
                decode(pass, columns, sink);
            }
        }
    }

    private static int count(int side, int first, int step) {
        return Math.max(0, (side - first + step - 1) / step);
    }

    private void decode(int pass, int columns, SampleSink sink) throws IOException {
        int rowBytes = (int) header.rowBytes(columns);
        int channels = pixels.layout().channels();
        for (int y = FIRST_Y[pass]; y < header.size().height(); y += STEP_Y[pass]) {
            Samples samples = pixels.unpack(rows.next(rowBytes, y), columns);
            if (STEP_X[pass] == 1) {
                sink.put(0, y, columns, samples, pixels.offset());
                continue;
            }
            for (int i = 0; i < columns; i++) {
                sink.put(FIRST_X[pass] + i * STEP_X[pass], y, 1, samples, pixels.offset() + i * channels);
            }
        }
    }
}
