package org.adumbrate.prepare.lines;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.SheetSize;
import org.adumbrate.linework.region.PointedFaces;
import org.adumbrate.linework.region.PointedFaces.Spot;
import org.adumbrate.prepare.finding.Finding;
import org.adumbrate.sheetfile.StatedFaces;

/**
 * Whether points still lie in faces like those that they were chosen in. Where the sheet file notes how much these covered, like means about
 * as much as that. Where it does not, a face is unlike any that one chooses if no line closes it, if it has two of the points, or if
 * one lies on a line.
 */
final class FaceFindings {
    /** Lines move when a model changes; a face that lost or gained a line has another size altogether. */
    private static final double LIKE = 1.5;

    /** A face that runs off the sheet and takes up more of it than that is what is left where no line closes anything. */
    private static final double MOST_OF_SHEET = 0.5;

    private final String key;
    private final StatedFaces asked;
    private final PointedFaces found;
    private final SheetSize sheet;
    private final List<Finding> findings = new ArrayList<>();

    private FaceFindings(String key, StatedFaces asked, PointedFaces found, SheetSize sheet) {
        this.key = key;
        this.asked = asked;
        this.found = found;
        this.sheet = sheet;
    }

    /** @param key the key path of what names the faces */
    static List<Finding> of(String key, StatedFaces asked, PointedFaces found, SheetSize sheet) {
        FaceFindings all = new FaceFindings(key, asked, found, sheet);
        all.onLines();
        all.twice();
        if (asked.area().isPresent()) {
            all.unlike(asked.area().get().mm2());
        } else {
            all.open();
        }
        return all.findings;
    }

    /** A point as it stands in a sheet file. */
    static String told(SheetPoint point) {
        return "[" + number(point.x()) + ", " + number(point.y()) + "]";
    }

    private static String number(double mm) {
        return String.format(Locale.ROOT, "%.2f", mm).replaceFirst("\\.?0+$", "");
    }

    private void add(Finding.Severity severity, int k, String text) {
        SheetPoint point = asked.faces().get(k);
        findings.add(new Finding(severity, point(k), point(k) + ": " + told(point) + " " + text, List.of(point)));
    }

    private String point(int k) {
        return key + ".faces[" + k + "]";
    }

    private void onLines() {
        for (int k = 0; k < found.spots().size(); k++) {
            if (found.spots().get(k).onLine()) {
                add(Finding.Severity.WARNING, k, "lies on a line; move it into the face that is meant");
            }
        }
    }

    private void twice() {
        Map<Integer, Integer> first = new HashMap<>();
        for (int k = 0; k < found.spots().size(); k++) {
            Spot spot = found.spots().get(k);
            Integer other = spot.onLine() ? null : first.putIfAbsent(spot.face(), k);
            if (other != null) {
                add(
                        Finding.Severity.WARNING,
                        k,
                        "lies in the face of " + told(asked.faces().get(other))
                                + ": no line parts them any more, or one of the two can go; move it, leave it out, or widen"
                                + " 'gap'");
            }
        }
    }

    private void unlike(double chosenMm2) {
        double now = found.region().area();
        if (now > LIKE * chosenMm2 || now < chosenMm2 / LIKE) {
            findings.add(new Finding(
                    Finding.Severity.WARNING,
                    key + ".area",
                    key + ": its faces cover " + area(now) + " and covered " + area(chosenMm2)
                            + " when they were chosen; see whether its points still lie where they should, then write area: "
                            + area(now),
                    asked.faces()));
        }
    }

    private void open() {
        for (int k = 0; k < found.spots().size(); k++) {
            Spot spot = found.spots().get(k);
            if (spot.edgeMm() > 0) {
                double share = spot.areaMm2() / (sheet.widthMm() * sheet.heightMm());
                Optional<String> most = Optional.of("covers " + Math.round(100 * share) + " % of the sheet and ")
                        .filter(text -> share > MOST_OF_SHEET);
                add(
                        most.isPresent() ? Finding.Severity.WARNING : Finding.Severity.NOTE,
                        k,
                        "lies in a face that " + most.orElse("")
                                + "runs off the sheet; widen 'gap' or move the point where lines should close it, or write area: "
                                + area(found.region().area()) + " where it is meant so");
            }
        }
    }

    private static String area(double mm2) {
        return String.format(Locale.ROOT, mm2 < 10 ? "%.2f mm2" : "%.0f mm2", mm2);
    }
}
