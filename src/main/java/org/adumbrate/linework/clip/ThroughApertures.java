package org.adumbrate.linework.clip;

import java.util.Arrays;
import java.util.List;
import org.adumbrate.geometry.PathPiece;

/** What is seen of a path through several apertures, one behind the other. */
record ThroughApertures(List<Aperture> apertures) implements PathCutter.Sight {
    private static final double SHORTEST = 1e-12;

    @Override
    public double[] visible(PathPiece piece) {
        Splits splits = new Splits();
        apertures.forEach(aperture -> aperture.crossings(piece, splits));
        double[] places = splits.inOrder();
        double[] parts = new double[places.length];
        int count = 0;
        boolean down = false;
        for (int k = 1; k < places.length; k++) {
            boolean point = places[k] - places[k - 1] < SHORTEST;
            boolean visible = point ? down : visible(piece, (places[k - 1] + places[k]) / 2);
            if (visible != down) {
                parts[count++] = places[k - 1];
            }
            down = visible;
        }
        if (down) {
            parts[count++] = 1;
        }
        return Arrays.copyOf(parts, count);
    }

    private boolean visible(PathPiece piece, double t) {
        double px = piece.xAt(t);
        double py = piece.yAt(t);
        for (Aperture aperture : apertures) {
            if (!aperture.holds(px, py)) {
                return false;
            }
        }
        return true;
    }
}
