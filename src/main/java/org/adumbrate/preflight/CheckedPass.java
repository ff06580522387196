package org.adumbrate.preflight;

import java.nio.file.Path;
import org.adumbrate.registration.Placement;

/**
 * A pass as it will be printed.
 *
 * @param key where the sheet file names it
 * @param file the raster
 * @param placement where it lies
 */
record CheckedPass(String key, Path file, Placement placement) {
    /** Pixels per inch on the sheet. */
    public double ppi() {
        return 25.4 / placement.passToSheet().meanScale();
    }
}
