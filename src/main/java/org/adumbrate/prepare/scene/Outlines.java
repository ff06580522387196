package org.adumbrate.prepare.scene;

import java.io.IOException;
import java.util.List;
import org.adumbrate.figure.outline.FigureOutline;
import org.adumbrate.figure.outline.OutlineFiles;
import org.adumbrate.figure.outline.ShippedOutlines;
import org.adumbrate.prepare.memory.Part;
import org.adumbrate.prepare.memory.Run;
import org.adumbrate.sheetfile.Outline;
import org.adumbrate.sheetfile.complaint.SheetFileFault;
import org.adumbrate.sheetfile.reading.SheetFile;

/** The outlines that a sheet file names. */
final class Outlines {
    private final SheetFile file;
    private final Run run;

    Outlines(SheetFile file, Run run) {
        this.file = file;
        this.run = run;
    }

    /**
     * An outline.
     *
     * @param keyPath where the sheet file names it
     * @throws SheetFileFault if none of its name comes with the program
     * @throws IOException if its file cannot be used
     */
    KnownOutline of(Outline asked, String keyPath) throws IOException {
        if (asked instanceof Outline.Drawn named) {
            List<Object> content = List.of(named.file(), run.digest(named.file()));
            return new KnownOutline(
                    content,
                    run.of(Part.OUTLINES, FigureOutline.class, content, () -> OutlineFiles.read(named.file())));
        }
        String name = ((Outline.Shipped) asked).name();
        List<Object> content = List.of(name);
        return new KnownOutline(
                content, run.of(Part.OUTLINES, FigureOutline.class, content, () -> ShippedOutlines.named(name)
                        .orElseThrow(() -> new SheetFileFault(
                                List.of(file.unknown(keyPath, "outline", name, ShippedOutlines.names()))))));
    }
}
