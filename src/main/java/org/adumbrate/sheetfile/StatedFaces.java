package org.adumbrate.sheetfile;

import java.util.List;
import java.util.Optional;
import org.adumbrate.geometry.Length;
import org.adumbrate.geometry.SheetPoint;

/** Faces of the drawing, each named by a point in it: what lines bound, and what follows them when the model changes. */
public interface StatedFaces {
    /** What {@link #of()} calls the cut's outline, which no pen draws. */
    String CUT = "cut";

    /** The gap where none is stated. */
    Length USUAL_GAP = Length.ofMillimetres(1);

    /** A point in each of them. */
    List<SheetPoint> faces();

    /** The lines that bound them: names of pens, or {@link #CUT}; all that are drawn where empty. */
    List<String> of();

    /** Openings between these lines that are closed, up to this width. */
    Length gap();

    /** How much they covered when they were chosen, if that was noted. */
    Optional<SquareMillimetres> area();
}
