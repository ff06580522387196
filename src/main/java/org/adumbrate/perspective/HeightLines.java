package org.adumbrate.perspective;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.adumbrate.fault.Refusal;
import org.adumbrate.geometry.Affine;
import org.adumbrate.geometry.PagePoint;
import org.adumbrate.geometry.PathPiece;
import org.adumbrate.geometry.PieceVisitor;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.Srgb;
import org.adumbrate.geometry.VectorPath;
import org.adumbrate.linework.Stroke;

/**
 * Picks height lines out of a line sheet: the uprights of one colour. Exporters break lines into pieces, repeat them in whole
 * or in part, and leave crumbs; pieces that meet end to end are joined, repeats and crumbs dropped. Pieces with gaps between
 * them stay pieces: which of them are one line, the floors tell ({@link HeightFit}).
 */
public final class HeightLines {
    /** Exporters shift a colour by a level or two. */
    private static final int COLOR_TOLERANCE = 4;

    /** An upright leans by this many mm at most, and by this share of its height. */
    private static final double LEAN_MM = 0.3;

    private static final double LEAN_SHARE = 0.02;

    /** Shorter than this, in mm, is a crumb: no figure is drawn so small. */
    static final double CRUMB_MM = 1;

    /** Pieces meet or overlap to this many mm along their line. */
    private static final double ALONG_MM = Gap.OVERLAP_MM;

    /** More pieces than this are no height lines. */
    private static final int MOST_PIECES = 20_000;

    private HeightLines() {}

    /**
     * The uprights of a colour.
     *
     * @param strokes of a line sheet
     * @param color their stroke colour; four levels off are allowed
     * @param toSheet where the page lies on the sheet
     * @return the lines from left to right; empty if there are none
     * @throws Refusal if there are far too many to be height lines
     */
    public static List<HeightLine> of(List<Stroke> strokes, Srgb color, Affine<PagePoint, SheetPoint> toSheet)
            throws Refusal {
        Pieces pieces = new Pieces();
        for (Stroke stroke : strokes) {
            if (stroke.color().distanceTo(color) <= COLOR_TOLERANCE) {
                stroke.path().transform(toSheet).pieces(pieces);
            }
        }
        if (pieces.found.size() > MOST_PIECES) {
            throw new Refusal(Lack.ofFewness(pieces.found.size()));
        }
        List<HeightLine> joined = withoutCrumbs(joined(withoutRepeats(pieces.found)));
        joined.sort(Comparator.comparingDouble((HeightLine line) -> line.foot().x())
                .thenComparingDouble(line -> line.foot().y()));
        return joined;
    }

    /**
     * What else a line sheet shows.
     *
     * @return the paths of all strokes that are not of the height lines' colour
     */
    public static List<VectorPath<SheetPoint>> others(
            List<Stroke> strokes, Srgb color, Affine<PagePoint, SheetPoint> toSheet) {
        return strokes.stream()
                .filter(stroke -> stroke.color().distanceTo(color) > COLOR_TOLERANCE)
                .map(stroke -> stroke.path().transform(toSheet))
                .toList();
    }

    /** Drops every piece that lies on a longer one, or on an equal one before it. */
    private static List<HeightLine> withoutRepeats(List<HeightLine> pieces) {
        List<HeightLine> sorted = new ArrayList<>(pieces);
        sorted.sort(Comparator.comparingDouble(HeightLine::heightMm).reversed());
        SideBySide kept = new SideBySide();
        for (HeightLine piece : sorted) {
            boolean isRepeat = kept.near(piece).stream().anyMatch(longer -> liesOn(piece, longer));
            if (!isRepeat) {
                kept.add(piece);
            }
        }
        return kept.all();
    }

    private static boolean liesOn(HeightLine piece, HeightLine longer) {
        double foot = piece.foot().y();
        double head = piece.head().y();
        return foot <= longer.foot().y() + ALONG_MM
                && head >= longer.head().y() - ALONG_MM
                && longer.passesThrough(piece);
    }

    /** Joins pieces that meet end to end, from the top down. */
    private static List<HeightLine> joined(List<HeightLine> pieces) {
        List<HeightLine> fromTheTop = new ArrayList<>(pieces);
        fromTheTop.sort(
                Comparator.comparingDouble((HeightLine piece) -> piece.foot().y()));
        SideBySide lines = new SideBySide();
        for (HeightLine piece : fromTheTop) {
            List<HeightLine> above = lines.near(piece).stream()
                    .filter(line -> meets(line, piece))
                    .toList();
            if (above.isEmpty()) {
                lines.add(piece);
            } else {
                lines.remove(above.get(0));
                lines.add(new HeightLine(piece.foot(), above.get(0).head()));
            }
        }
        return new ArrayList<>(lines.all());
    }

    /** A crumb in line with a longer piece may be the foot or the head of a line that is hidden between. */
    private static List<HeightLine> withoutCrumbs(List<HeightLine> lines) {
        SideBySide longer = new SideBySide();
        lines.stream().filter(line -> line.heightMm() >= CRUMB_MM).forEach(longer::add);
        List<HeightLine> kept = new ArrayList<>(lines);
        kept.removeIf(line -> line.heightMm() < CRUMB_MM
                && longer.near(line).stream().noneMatch(other -> Column.isBeside(line, other)));
        return kept;
    }

    private static boolean meets(HeightLine above, HeightLine below) {
        return Math.abs(above.foot().y() - below.head().y()) <= ALONG_MM
                && Math.abs(above.foot().x() - below.head().x()) <= Gap.ACROSS_MM;
    }

    static boolean isUpright(HeightLine line) {
        return isUpright(line.foot().x() - line.head().x(), line.heightMm());
    }

    private static boolean isUpright(double lean, double height) {
        return Math.abs(lean) <= LEAN_MM + LEAN_SHARE * height;
    }

    /** Collects the straight, upright pieces of paths. */
    private static final class Pieces implements PieceVisitor {
        private final List<HeightLine> found = new ArrayList<>();

        @Override
        public void piece(PathPiece piece) {
            double height = Math.abs(piece.y3() - piece.y0());
            if (piece.straight() && height > 0 && isUpright(piece.x3() - piece.x0(), height)) {
                SheetPoint from = new SheetPoint(piece.x0(), piece.y0());
                SheetPoint to = new SheetPoint(piece.x3(), piece.y3());
                found.add(to.y() > from.y() ? new HeightLine(to, from) : new HeightLine(from, to));
            }
        }
    }
}
