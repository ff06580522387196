package org.adumbrate.linework.pdf;

import java.util.Optional;
import org.adumbrate.fault.InputFault;
import org.adumbrate.geometry.PagePoint;
import org.adumbrate.geometry.VectorPath;
import org.adumbrate.linework.LeftOut;
import org.adumbrate.linework.clip.Clip;
import org.adumbrate.linework.clip.FillRule;
import org.adumbrate.linework.page.AreaPaint;
import org.adumbrate.linework.page.FillLook;
import org.adumbrate.linework.page.StrokeStyle;

/** What takes the marks that content makes, in the order of painting. */
interface PdfMarks {
    /** Takes a stroked path, less what the clip hides. */
    void stroke(VectorPath<PagePoint> path, Clip<PagePoint> clip, StrokeStyle style, Optional<String> layer)
            throws InputFault;

    /**
     * Takes an area, as far as the clip lets it be seen.
     *
     * @param ink what it is painted with
     */
    void area(VectorPath<PagePoint> path, FillRule rule, Clip<PagePoint> clip, AreaPaint paint, PdfInk ink);

    /**
     * Takes a path that is filled in one colour, which may be a line.
     *
     * @return whether the stroke of its outline is taken, too
     */
    boolean filled(
            VectorPath<PagePoint> path, FillRule rule, Clip<PagePoint> clip, AreaPaint paint, PdfInk ink, FillLook look)
            throws InputFault;

    /** Counts a mark that is not a line and covers no area that is known. */
    void leftOut(LeftOut.Kind kind);

    /** Counts a stroke that a mask lets show in part only. */
    void halfShown();

    /** How many strokes have been taken. */
    int strokes();
}
