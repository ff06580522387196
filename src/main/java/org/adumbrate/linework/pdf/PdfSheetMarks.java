package org.adumbrate.linework.pdf;

import java.util.Optional;
import org.adumbrate.fault.InputFault;
import org.adumbrate.geometry.PagePoint;
import org.adumbrate.geometry.VectorPath;
import org.adumbrate.linework.LeftOut;
import org.adumbrate.linework.ReadingNote;
import org.adumbrate.linework.clip.Clip;
import org.adumbrate.linework.clip.FillRule;
import org.adumbrate.linework.page.AreaPaint;
import org.adumbrate.linework.page.FillLook;
import org.adumbrate.linework.page.StrokeCollector;
import org.adumbrate.linework.page.StrokeStyle;

/** Marks that go onto a sheet. */
final class PdfSheetMarks implements PdfMarks {
    private final StrokeCollector found;
    private int halfShown;

    PdfSheetMarks(StrokeCollector found) {
        this.found = found;
    }

    @Override
    public void stroke(VectorPath<PagePoint> path, Clip<PagePoint> clip, StrokeStyle style, Optional<String> layer)
            throws InputFault {
        found.stroke(path, clip, style, layer);
    }

    @Override
    public void area(VectorPath<PagePoint> path, FillRule rule, Clip<PagePoint> clip, AreaPaint paint, PdfInk ink) {
        found.area(path, rule, clip, paint);
    }

    @Override
    public boolean filled(
            VectorPath<PagePoint> path, FillRule rule, Clip<PagePoint> clip, AreaPaint paint, PdfInk ink, FillLook look)
            throws InputFault {
        return found.filled(path, rule, clip, paint, look);
    }

    @Override
    public void leftOut(LeftOut.Kind kind) {
        found.leftOut(kind);
    }

    @Override
    public void halfShown() {
        halfShown++;
    }

    @Override
    public int strokes() {
        return found.strokes();
    }

    /** What there is to say of strokes that masks let show in part. */
    Optional<ReadingNote> halfShownRemark() {
        return halfShown == 0
                ? Optional.empty()
                : Optional.of(new ReadingNote(
                        ReadingNote.Kind.HALF_SHOWN,
                        (halfShown == 1 ? "1 stroke lies" : halfShown + " strokes lie")
                                + " under a soft mask that lets a part show, and "
                                + (halfShown == 1 ? "is" : "are") + " drawn in full"));
    }
}
