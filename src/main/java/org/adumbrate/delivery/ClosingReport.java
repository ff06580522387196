package org.adumbrate.delivery;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.adumbrate.prepare.PreparedSheet;
import org.adumbrate.prepare.finding.Finding;
import org.adumbrate.prepare.memory.Run;

/** An account of a delivery, written when all else is. What it shows is the report's matter. */
public interface ClosingReport {
    /**
     * Writes it.
     *
     * @param outputs what was written before
     * @param findings what was found
     */
    Output write(Path file, List<Output> outputs, List<Finding> findings) throws IOException;

    /** Begins the report of a sheet that is built at a resolution. */
    interface Maker {
        /** Begins it. */
        ClosingReport of(PreparedSheet sheet, double dpi, Run run);
    }
}
