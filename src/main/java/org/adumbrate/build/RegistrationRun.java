package org.adumbrate.build;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.adumbrate.fault.Refusal;
import org.adumbrate.geometry.SheetSize;
import org.adumbrate.linework.LineSheet;
import org.adumbrate.linework.LineSheets;
import org.adumbrate.linework.PageFit;
import org.adumbrate.registration.LinePattern;
import org.adumbrate.registration.Placement;
import org.adumbrate.underlay.PassLook;
import org.adumbrate.underlay.PassRole;

/**
 * Passes placed on a line sheet, and nothing else done with them.
 *
 * @param lines the line sheet
 * @param sheet its size
 * @param placements where the passes lie, in the order asked for; refused ones too
 */
public record RegistrationRun(Path lines, SheetSize sheet, List<PassPlacement> placements) {
    /** Places passes on the page of a line sheet. */
    public static RegistrationRun of(Path lines, List<Path> passes) throws IOException, Refusal {
        LineSheet read = LineSheets.read(lines);
        LaidLines laid = LaidLines.of(read, read.page(), PageFit.SAME_RATIO);
        LinePattern pattern = laid.pattern();
        List<PassPlacement> placements = new ArrayList<>();
        for (Path pass : passes) {
            PassRequest request = new PassRequest(PassRole.SHADOW, pass, PassLook.plain(1), false, Optional.empty());
            try (PassSource source = PassSource.open(request, PassSource.allowance(1))) {
                Placement placement = PreparedPass.place(source, laid.sheet(), Optional.of(pattern));
                placements.add(new PassPlacement(pass, placement));
            }
        }
        return new RegistrationRun(lines, laid.sheet(), List.copyOf(placements));
    }
}
