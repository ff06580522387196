package org.adumbrate.start;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.adumbrate.geometry.Affine;
import org.adumbrate.geometry.RasterPoint;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.perspective.HeightLine;
import org.adumbrate.raster.GreyImage;
import org.adumbrate.registration.PassImage;

/** Whether a picture brightens with distance: what is drawn smaller stands farther off. */
final class Distance {
    private static final int FEWEST = 5;

    /** Spearman's rank correlation from which on distance explains the tones. */
    private static final double SURE = 0.9;

    /** Tones nearer to each other than this are one. */
    private static final float ONE_TONE = 0.0005f;

    private record Reading(double distance, float light) {}

    private Distance() {}

    static boolean grows(PassImage image, Affine<SheetPoint, RasterPoint> toPass, List<HeightLine> lines) {
        List<Reading> readings = new ArrayList<>();
        GreyImage grey = image.grey();
        for (HeightLine line : lines) {
            RasterPoint at = toPass.apply(line.foot());
            int x = (int) Math.floor(at.x() / image.reduction());
            int y = (int) Math.floor(at.y() / image.reduction());
            if (x >= 0 && y >= 0 && x < grey.size().width() && y < grey.size().height()) {
                readings.add(new Reading(1 / line.heightMm(), grey.at(x, y)));
            }
        }
        return readings.size() >= FEWEST && correlation(readings) >= SURE;
    }

    private static double correlation(List<Reading> readings) {
        double n = readings.size();
        double distances = 0;
        double tones = 0;
        double both = 0;
        for (Reading one : readings) {
            double distance = rank(readings, one, Comparator.comparingDouble(Reading::distance));
            double tone = rank(readings, one, Distance::compareTones);
            distances += distance * distance;
            tones += tone * tone;
            both += distance * tone;
        }
        return n > 0 && distances > 0 && tones > 0 ? both / Math.sqrt(distances * tones) : 0;
    }

    /** How many come before less how many come after. */
    private static double rank(List<Reading> readings, Reading one, Comparator<Reading> order) {
        return readings.stream()
                .mapToDouble(other -> Integer.signum(order.compare(one, other)))
                .sum();
    }

    private static int compareTones(Reading one, Reading other) {
        return Math.abs(one.light() - other.light()) < ONE_TONE ? 0 : Float.compare(one.light(), other.light());
    }
}
