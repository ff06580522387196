package org.adumbrate.drawing;

import org.adumbrate.geometry.Dash;
import org.adumbrate.geometry.LineCap;
import org.adumbrate.geometry.LineJoin;
import org.adumbrate.geometry.Srgb;

/**
 * What a line is drawn with.
 *
 * @param widthMm its width on the sheet in mm, above zero
 * @param ink its colour
 * @param dash its dashes, which start anew with every run of a path
 * @param cap how it ends
 * @param join how its pieces meet
 */
public record Pen(double widthMm, Srgb ink, Dash dash, LineCap cap, LineJoin join) {
    /** @throws IllegalArgumentException if the width is not a number above zero */
    public Pen {
        if (!(widthMm > 0 && Double.isFinite(widthMm))) {
            throw new IllegalArgumentException("a pen needs a width above zero, not " + widthMm);
        }
        dash = dash.phaseMm() < 0 ? within(dash) : dash;
    }

    /** The same dashes with a phase that is not below zero, as not every viewer knows what to make of one that is. */
    private static Dash within(Dash dash) {
        double period =
                2 * dash.lengthsMm().stream().mapToDouble(Double::doubleValue).sum();
        return dash.isNone() ? Dash.NONE : new Dash(dash.lengthsMm(), dash.phaseMm() % period + period);
    }

    /** An unbroken line with round ends and corners, so that pieces of one line meet without a notch. */
    public static Pen round(double widthMm, Srgb ink) {
        return new Pen(widthMm, ink, Dash.NONE, LineCap.ROUND, LineJoin.ROUND);
    }

    /** The same pen with a share of its width. */
    public Pen scaled(double share) {
        return new Pen(widthMm * share, ink, dash, cap, join);
    }
}
