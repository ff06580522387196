package org.adumbrate.prepare.lines;

import java.io.IOException;
import java.util.List;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.VectorPath;
import org.adumbrate.linework.cleanup.CleanUp;
import org.adumbrate.linework.cleanup.CleanUpCounts;
import org.adumbrate.linework.cleanup.CleanUpSettings;
import org.adumbrate.linework.cleanup.Cleaned;
import org.adumbrate.prepare.memory.Part;
import org.adumbrate.prepare.memory.Run;

/**
 * The lines of a pen, cleaned for the size that they are printed at.
 *
 * @param content by what they are known: not by how they are drawn
 * @param cleaned the lines, and what was cleaned
 */
record CleanLines(List<Object> content, Cleaned cleaned) {
    static CleanLines of(LineSet lines, CleanUpSettings settings, Run run) throws IOException {
        List<Object> content = List.of(lines.content(), settings);
        return new CleanLines(
                content, run.of(Part.CLEANED_PENS, Cleaned.class, content, () -> CleanUp.run(lines.paths(), settings)));
    }

    List<VectorPath<SheetPoint>> paths() {
        return cleaned.paths();
    }

    CleanUpCounts counts() {
        return cleaned.counts();
    }
}
