package org.adumbrate.figure.shadow;

import java.util.ArrayList;
import java.util.List;
import org.adumbrate.geometry.Affine;
import org.adumbrate.geometry.PixelSize;
import org.adumbrate.geometry.RasterPoint;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.perspective.SunDirection;
import org.adumbrate.perspective.View;

/** The shadows of one {@link Casting}: which pixels of a row each figure's may touch, and what arrives there. */
final class CastShadows {
    private static final int PIECE = 16;

    private final FacetSource facets;
    private final SunView view;
    private final Affine<RasterPoint, SheetPoint> toSheet;
    private final List<Caster> casters;

    private CastShadows(
            FacetSource facets, SunView view, Affine<RasterPoint, SheetPoint> toSheet, List<Caster> casters) {
        this.facets = facets;
        this.view = view;
        this.toSheet = toSheet;
        this.casters = casters;
    }

    static CastShadows of(
            Casting casting, View view, SunDirection sun, Affine<RasterPoint, SheetPoint> toSheet, PixelSize canvas) {
        FacetSource facets = FacetSource.of(casting.receiver(), view);
        SunFrame frame = SunFrame.of(sun);
        List<Caster> casters = casting.figures().parallelStream()
                .map(figure -> Caster.of(figure, frame, view, facets, toSheet.inverse(), canvas))
                .toList();
        return new CastShadows(facets, new SunView(view, frame), toSheet, casters);
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

    /** Goes by pieces of a row, always the same whatever part of it is wanted; most of them no shadow reaches. */
    private static void darkenRow(int from, int end, PixelShade shade, float[] light, int offset) {
        int first = Math.max(from, shade.first());
        int last = Math.min(end, shade.end());
        for (int piece = Math.floorDiv(first, PIECE) * PIECE; piece < last; piece += PIECE) {
            if (shade.turnTo(piece, PIECE)) {
                for (int x = Math.max(from, piece); x < Math.min(end, piece + PIECE); x++) {
                    light[offset + x] = Math.min(light[offset + x], shade.light(x));
                }
            }
        }
    }
}
