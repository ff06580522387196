package org.adumbrate.preflight;

import java.util.OptionalDouble;
import org.adumbrate.geometry.SheetPoint;

/**
 * A figure as it will be drawn.
 *
 * @param key where the sheet file names it
 * @param outline the name of its outline
 * @param floor the floor that it stands on
 * @param foot where it stands
 * @param statureM how tall it is
 * @param heightMm how tall it is drawn
 * @param depthM how far it stands from the eye along the viewing direction
 * @param seenM the same of what the depth pass shows at its foot; infinite where that shows nothing
 */
record CheckedFigure(
        String key,
        String outline,
        String floor,
        SheetPoint foot,
        double statureM,
        double heightMm,
        double depthM,
        OptionalDouble seenM) {}
