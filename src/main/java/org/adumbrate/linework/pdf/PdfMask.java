package org.adumbrate.linework.pdf;

import java.util.List;
import java.util.Optional;
import org.adumbrate.geometry.PagePoint;
import org.adumbrate.linework.clip.Clip;
import org.adumbrate.linework.clip.ClipShape;

/**
 * What a soft mask (ISO 32000-1, 11.6.5.3) lets be seen.
 *
 * @param shown where something shows: in any of these shapes, in none at all if there are none; everywhere if empty
 * @param half whether it may show in part only
 */
record PdfMask(Optional<List<ClipShape<PagePoint>>> shown, boolean half) {
    /** Hides nothing. */
    static final PdfMask NONE = new PdfMask(Optional.empty(), false);

    /** As much may show as anybody's guess: everything is taken. */
    static final PdfMask UNKNOWN = new PdfMask(Optional.empty(), true);

    /** Whether it hides nothing, and surely. */
    boolean isNone() {
        return shown.isEmpty() && !half;
    }

    /** What is left of a clip. */
    Clip<PagePoint> of(Clip<PagePoint> clip) {
        if (shown.isEmpty()) {
            return clip;
        }
        return shown.get().isEmpty() ? Clip.rectangle(0, 0, -1, -1) : clip.withinAny(shown.get());
    }
}
