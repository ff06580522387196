package org.adumbrate.raster;

/** Thrown by a {@link SampleSink} to end a decoding whose result is no longer wanted. */
public final class DecodingStopped extends RuntimeException {
    private static final long serialVersionUID = 1L;

    /** Without a stack trace: it is a signal, not a failure. */
    public DecodingStopped() {
        super("decoding stopped", null, false, false);
    }
}
