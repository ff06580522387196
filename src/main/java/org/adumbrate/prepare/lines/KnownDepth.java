package org.adumbrate.prepare.lines;

import java.util.List;
import org.adumbrate.figure.depth.DepthMap;
import org.adumbrate.linework.profile.DepthField;

/**
 * A depth pass in metres.
 *
 * @param content by what it is known: the file, where it lies, and its range
 * @param map how far everything is
 */
public record KnownDepth(List<Object> content, DepthMap map) {
    /** The same as a field of depths: nothing is known beyond its edges. */
    DepthField field() {
        return point -> {
            double u = Math.floor(map.toPixels().mapX(point.x(), point.y()));
            double v = Math.floor(map.toPixels().mapY(point.x(), point.y()));
            return map.holds((int) u, (int) v) ? 1 / (double) map.inverse((int) u, (int) v) : Double.NaN;
        };
    }
}
