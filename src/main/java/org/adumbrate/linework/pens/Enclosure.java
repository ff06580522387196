package org.adumbrate.linework.pens;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.adumbrate.geometry.Affine;
import org.adumbrate.geometry.PagePoint;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.Space;
import org.adumbrate.geometry.Srgb;
import org.adumbrate.geometry.VectorPath;
import org.adumbrate.linework.LineSheet;
import org.adumbrate.linework.Stroke;
import org.adumbrate.linework.region.ClosedRegions;
import org.adumbrate.linework.region.LinesWithin;

/** Whether the lines of a colour enclose something in which no other line shows, as the outline of a section cut does. */
final class Enclosure {
    private static final Affine<PagePoint, SheetPoint> AS_IT_IS = Affine.identity(Space.PAGE, Space.SHEET);

    /** Exports leave gaps up to this between pieces, in mm. */
    private static final double GAP_MM = 0.5;

    /** Of its strokes so many may end nowhere. */
    private static final double LOOSE_SHARE = 0.1;

    /** Of the other lines so much may lie within: strays. */
    private static final double STRAY_SHARE = 0.02;

    /** What encloses less of the sheet may be anything. */
    private static final double LEAST_SHARE = 0.02;

    private Enclosure() {}

    /** The share of the sheet that a colour encloses; nothing if that is little, or open, or other lines show there. */
    static OptionalDouble shareOf(ColorLook look) {
        LineSheet sheet = look.sheets().get(0);
        Set<Srgb> colors = new HashSet<>(look.colors());
        List<VectorPath<SheetPoint>> own = new ArrayList<>();
        List<VectorPath<SheetPoint>> others = new ArrayList<>();
        for (Stroke stroke : sheet.strokes()) {
            (colors.contains(stroke.color()) ? own : others).add(stroke.path().transform(AS_IT_IS));
        }
        double othersMm = others.stream().mapToDouble(VectorPath::length).sum();
        if (othersMm < look.lengthMm()) {
            return OptionalDouble.empty();
        }
        ClosedRegions.Closed closed = ClosedRegions.of(own, sheet.page(), GAP_MM);
        double share =
                closed.region().area() / (sheet.page().widthMm() * sheet.page().heightMm());
        if (share < LEAST_SHARE || closed.looseEnds().size() > LOOSE_SHARE * look.strokes()) {
            return OptionalDouble.empty();
        }
        Optional<LinesWithin> within = LinesWithin.of(closed.region(), others);
        return within.isPresent() && within.get().lengthMm() > STRAY_SHARE * othersMm
                ? OptionalDouble.empty()
                : OptionalDouble.of(share);
    }
}
