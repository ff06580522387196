package org.adumbrate.perspective;

import org.adumbrate.geometry.SheetPoint;

/**
 * An upright of known height as it is drawn.
 *
 * @param foot where it stands
 * @param head its upper end, above the foot on the sheet
 */
public record HeightLine(SheetPoint foot, SheetPoint head) {
    /** @throws IllegalArgumentException if the head is not above the foot, or a number is not finite */
    public HeightLine {
        if (!(foot.y() > head.y() && Double.isFinite(foot.x() + foot.y() + head.x() + head.y()))) {
            throw new IllegalArgumentException("a height line needs its head above its foot");
        }
    }

    /** Where it is across the sheet at some height, in mm; on its continuation beyond its ends. */
    double xAt(double y) {
        double share = (foot.y() - y) / heightMm();
        return foot.x() + share * (head.x() - foot.x());
    }

    /** True if both ends of another lie on it or its continuation. */
    boolean passesThrough(HeightLine other) {
        return Math.abs(xAt(other.foot.y()) - other.foot.x()) <= Gap.ACROSS_MM
                && Math.abs(xAt(other.head.y()) - other.head.x()) <= Gap.ACROSS_MM;
    }

    /** How tall it is drawn, in mm of the sheet; above zero. */
    public double heightMm() {
        return foot.y() - head.y();
    }
}
