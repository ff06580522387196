package org.adumbrate.figure.shadow;

import java.util.ArrayList;
import java.util.List;
import org.adumbrate.geometry.Affine;
import org.adumbrate.geometry.Canvas;
import org.adumbrate.geometry.RasterPoint;
import org.adumbrate.geometry.SheetPoint;

/** The shadows of one {@link Casting}: which pixels of a row each figure's may touch, and what arrives there. */
final class CastShadows {
    /** Columns that are looked at together. */
    static final int PIECE = 16;

    private final FacetSource facets;
    private final SunView view;
    private final Affine<RasterPoint, SheetPoint> toSheet;
    private final List<Caster> casters;

    /** @param casters those whose shadows may reach the canvas's window */
    CastShadows(FacetSource facets, SunView view, Canvas canvas, List<Caster> casters) {
        this.facets = facets;
        this.view = view;
        this.toSheet = canvas.toSheet();
        this.casters = casters;
    }

    List<Caster> casters() {
        return casters;
    }

    /** What they fall on. */
    FacetSource facets() {
        return facets;
    }

    /** Darkens a rectangle of light where it is lighter. */
    void darken(int x, int y, int width, int height, float[] light) {
        PixelShade shade = null;
        List<RowReach> reaches = new ArrayList<>();
        for (int row = y; row < y + height; row++) {
            reaches.clear();
            for (Caster caster : casters) {
                caster.reach(row).ifPresent(reaches::add);
            }
            if (!reaches.isEmpty()) {
                shade = shade == null ? new PixelShade(facets, view, toSheet) : shade;
                shade.turnTo(row, reaches);
                darkenRow(x, x + width, shade, light, (row - y) * width - x);
            }
        }
    }

    /** Where the piece begins that a column lies in. */
    static int pieceAt(int column) {
        return Math.floorDiv(column, PIECE) * PIECE;
    }

    /** Goes by pieces of a row, always the same whatever part of it is wanted; most of them no shadow reaches. */
    private static void darkenRow(int from, int end, PixelShade shade, float[] light, int offset) {
        int first = Math.max(from, shade.first());
        int last = Math.min(end, shade.end());
        for (int piece = pieceAt(first); piece < last; piece += PIECE) {
            if (shade.turnTo(piece, PIECE)) {
                for (int x = Math.max(from, piece); x < Math.min(end, piece + PIECE); x++) {
                    light[offset + x] = Math.min(light[offset + x], shade.light(x));
                }
            }
        }
    }
}
