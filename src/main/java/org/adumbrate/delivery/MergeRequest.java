package org.adumbrate.delivery;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.adumbrate.geometry.SheetSize;
import org.adumbrate.output.FileClaims;
import org.adumbrate.prepare.passes.PassRequest;

/**
 * A merge of passes without a sheet file.
 *
 * @param lines the line sheet that the passes are placed by; by their ratio alone if there is none
 * @param size the sheet's size; the page of the lines if absent
 * @param dpi pixels per inch
 * @param passes what is merged, at least one
 * @param picture what is written
 */
public record MergeRequest(
        Optional<Path> lines, Optional<SheetSize> size, double dpi, List<PassRequest> passes, PictureRequest picture) {

    /** The files that it reads and writes. */
    public FileClaims claims() {
        FileClaims claims = new FileClaims();
        lines.ifPresent(claims::reads);
        passes.forEach(pass -> claims.reads(pass.file()));
        return claims.writes(picture.file(), "--output");
    }
}
