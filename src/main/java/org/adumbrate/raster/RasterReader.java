package org.adumbrate.raster;

import java.io.Closeable;
import java.io.IOException;
import org.adumbrate.fault.InputFault;

/** Reads one raster file. Not safe for use by several threads at once. */
public interface RasterReader extends Closeable {
    /** What the file says of itself. */
    RasterInfo info();

    /**
     * Decodes the whole raster into a sink, on the calling thread. May be called again, and then starts over.
     *
     * @throws InputFault if the file is damaged or ends early
     * @throws IOException if it cannot be read
     */
    void decode(SampleSink sink) throws IOException;
}
