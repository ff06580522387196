package org.adumbrate.report.page;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.adumbrate.fault.OutputFault;
import org.adumbrate.geometry.SheetSize;
import org.adumbrate.output.OutputFile;

/**
 * What the report of a build shows. Equal reports give equal bytes.
 *
 * @param title the sheet's name
 * @param sheet its printed size
 * @param dpi the resolution that it is built at
 * @param picture the whole sheet
 * @param drawing everything that is drawn, on bare paper
 * @param passes the passes under the lines
 * @param perspective the camera and what it was told by; nothing where neither is known
 * @param sun the sun, where one is stated and seen in a view
 * @param legend what the sheet is drawn with
 * @param remarks the findings
 * @param files what was written beside the report
 */
public record Report(
        String title,
        SheetSize sheet,
        double dpi,
        Picture picture,
        Picture drawing,
        List<PassSheet> passes,
        Optional<Perspective> perspective,
        Optional<Sunlight> sun,
        List<LegendEntry> legend,
        List<Remark> remarks,
        List<WrittenFile> files) {
    /** Copies the lists. */
    public Report {
        passes = List.copyOf(passes);
        legend = List.copyOf(legend);
        remarks = List.copyOf(remarks);
        files = List.copyOf(files);
    }

    /**
     * Writes the report as one HTML page; what stood there is replaced once the page is whole.
     *
     * @return its length in bytes
     * @throws OutputFault if it cannot be written
     * @throws IOException if a picture cannot be read
     */
    public long write(Path file) throws IOException {
        try (OutputFile aside = OutputFile.begin(file)) {
            new Page(this, new Html(aside.stream())).write();
            return aside.commit();
        }
    }

    /** How many remarks have a weight. */
    long count(Remark.Weight weight) {
        return remarks.stream().filter(remark -> remark.weight() == weight).count();
    }
}
