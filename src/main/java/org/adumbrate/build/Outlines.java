package org.adumbrate.build;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import org.adumbrate.fault.InputFault;
import org.adumbrate.figure.outline.FigureOutline;
import org.adumbrate.figure.outline.OutlineFiles;
import org.adumbrate.figure.outline.ShippedOutlines;
import org.adumbrate.sheetfile.Outline;
import org.adumbrate.sheetfile.complaint.SheetFileFault;
import org.adumbrate.sheetfile.reading.SheetFile;

/** The outlines that a sheet file names; each is read once. */
final class Outlines {
    private final SheetFile file;
    private final Map<String, FigureOutline> shipped = new HashMap<>();
    private final Map<Path, FigureOutline> drawn = new HashMap<>();

    Outlines(SheetFile file) {
        this.file = file;
    }

    /**
     * An outline.
     *
     * @param keyPath where the sheet file names it
     * @throws SheetFileFault if none of its name comes with the program
     * @throws InputFault if its file cannot be used
     */
    FigureOutline of(Outline asked, String keyPath) throws SheetFileFault, InputFault {
        if (asked instanceof Outline.Drawn named) {
            if (!drawn.containsKey(named.file())) {
                drawn.put(named.file(), OutlineFiles.read(named.file()));
            }
            return drawn.get(named.file());
        }
        String name = ((Outline.Shipped) asked).name();
        if (!shipped.containsKey(name)) {
            shipped.put(
                    name,
                    ShippedOutlines.named(name)
                            .orElseThrow(() -> new SheetFileFault(java.util.List.of(
                                    file.unknown(keyPath, "outline", name, ShippedOutlines.names())))));
        }
        return shipped.get(name);
    }
}
