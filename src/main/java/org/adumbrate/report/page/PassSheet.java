package org.adumbrate.report.page;

import java.util.Optional;
import org.adumbrate.registration.Placement;

/**
 * A pass as it lies under the lines.
 *
 * @param name its file, or what it was computed from
 * @param shows what it tells, in words
 * @param picture the pass alone, laid onto the sheet
 * @param placement where it lies; nothing for one that was computed on the sheet itself
 * @param inset the place where lines and pass disagree most, enlarged; nothing where that is not known
 */
public record PassSheet(
        String name, String shows, Picture picture, Optional<Placement> placement, Optional<Picture> inset) {}
