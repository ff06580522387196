package org.adumbrate.registration;

import org.adumbrate.geometry.Affine;
import org.adumbrate.geometry.Length;
import org.adumbrate.geometry.PixelSize;
import org.adumbrate.geometry.RasterPoint;
import org.adumbrate.geometry.SheetPoint;

/**
 * Where a pass lies on the sheet, how sure that is and how far off it may be.
 *
 * @param pass the size of the pass
 * @param status whether it may be used
 * @param explains what makes the pass differ from the sheet
 * @param passToSheet from continuous pixels of the pass to mm of the sheet; of a refused pass the best attempt, which must
 *     not be used for anything but a picture of why
 * @param residualPx the median distance across the lines between a line and the edge found for it, in pixels of the
 *     pass; NaN if no edge was found
 * @param residualMm the same on the sheet
 * @param uncertaintyPx standard deviation of the placement at the worst point of the sheet that the pass covers, in pixels
 *     of the pass; 0 where the pass fits its frame exactly, infinite if nothing could be fitted
 * @param confidence how probable it is that the pass belongs here, 0 to 1
 * @param worst where on the sheet lines and pass disagree most; the sheet's middle if they nowhere do
 * @param message one line in plain words
 */
public record Placement(
        PixelSize pass,
        Status status,
        Explanation explains,
        Affine<RasterPoint, SheetPoint> passToSheet,
        double residualPx,
        double residualMm,
        double uncertaintyPx,
        double confidence,
        SheetPoint worst,
        String message) {

    /** Whether a placement may be used. */
    public enum Status {
        /** The pass belongs to the sheet and lies where the placement says. */
        ALIGNED("aligned"),
        /** The pass does not belong to the sheet, or it cannot be told that it does. */
        REFUSED("refused");

        private final String word;

        Status(String word) {
            this.word = word;
        }

        /** The word for it in messages and in machine-readable results. */
        public String word() {
            return word;
        }
    }

    /** True if the placement may be used. */
    public boolean aligned() {
        return status == Status.ALIGNED;
    }

    /** How many pixels of the pass there are to an inch of the sheet. */
    public double ppi() {
        return Length.MM_PER_INCH / passToSheet.meanScale();
    }
}
