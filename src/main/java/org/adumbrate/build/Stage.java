package org.adumbrate.build;

import java.util.List;
import java.util.Optional;
import org.adumbrate.geometry.Region;
import org.adumbrate.linework.LineSheet;
import org.adumbrate.linework.cleanup.Cleaned;
import org.adumbrate.registration.LinePattern;
import org.adumbrate.registration.Placement;
import org.adumbrate.underlay.PassTones;

/** What is worth keeping of a build. */
enum Stage {
    LINE_SHEETS("line sheets", true, LineSheet.class),
    SORTED_LINES("sorted lines", true, SortedLines.class),
    /** Made of the lines in no time, and large. */
    PATTERN("pattern", false, LinePattern.class),
    PLACEMENT("placement", true, Placement.class),
    TONES("tones", true, PassTones.class),
    CUT("cut", true, CutDrawing.class),
    REGIONS("regions", true, SheetRegions.class),
    CLEANED_PENS("cleaned pens", true, Cleaned.class),
    DEPTH_OF_PENS("depth of pens", true, Optional.class),
    FADED_PENS("faded pens", true, List.class),
    PROFILE("profile", true, List.class),
    VEILS("veils", true, Region.class),
    UNDERLAY("underlay", true, List.class);

    private final String word;
    private final boolean written;
    private final Class<?> type;

    Stage(String word, boolean written, Class<?> type) {
        this.word = word;
        this.written = written;
        this.type = type;
    }

    /** What it is called in messages. */
    String word() {
        return word;
    }

    /** Whether it is kept for other runs, too. */
    boolean written() {
        return written;
    }

    /** What it makes. */
    Class<?> type() {
        return type;
    }
}
