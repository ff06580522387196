package org.adumbrate.raster.decode.library;

import org.adumbrate.raster.SampleSink;
import org.adumbrate.raster.Samples;

/**
 * Passes samples on, and remembers an exception that the sink throws: it travels through the library that calls, and must
 * come out as what it is and not as a fault of the file.
 */
public final class GuardedSink implements SampleSink {
    private final SampleSink sink;
    private RuntimeException thrown;

    /** @param sink what takes the samples */
    public GuardedSink(SampleSink sink) {
        this.sink = sink;
    }

    @Override
    public void put(int x, int y, int pixels, Samples samples, int offset) {
        try {
            sink.put(x, y, pixels, samples, offset);
        } catch (RuntimeException e) {
            thrown = e;
            throw e;
        }
    }

    /** Throws the sink's own exception again, if there was one. */
    public void rethrow() {
        if (thrown != null) {
            throw thrown;
        }
    }
}
