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
            Casting casting,
            View view,
            SunDirection sun,
            Affine<RasterPoint, SheetPoint> toSheet,
            PixelSize canvas) {
        FacetSource facets = FacetSource.of(casting.receiver(), view);
        SunFrame frame = SunFrame.of(sun);
        List<Caster> casters = casting.figures().parallelStream()
                .map(figure -> Caster.of(figure, frame, view, facets, toSheet.inverse(), canvas))
                .toList();
        return new CastShadows(facets, new SunView(view, frame), toSheet, casters);
    }

    /** Darkens a rectangle of light, row by row, where it is lighter. */
    void darken(int x, int y, int width, int height, float[] light) {
        Span span = new Span();
        PixelShade shade = null;
        for (int row = y; row < y + height; row++) {
            List<Stretch> stretches = new ArrayList<>();
            for (Caster caster : casters) {
                Stretch stretch = caster.stretch(row, x, x + width, span);
                if (stretch != null) {
                    stretches.add(stretch);
                }
            }
            if (!stretches.isEmpty()) {
                shade = shade == null ? new PixelShade(facets, view, toSheet) : shade;
                darkenRow(row, stretches, shade, light, (row - y) * width - x);
            }
        }
    }

    /** What a caster's shadow may touch of a row: columns from the first to the one after the last. */
    record Stretch(Caster caster, int from, int to) {}

    /** Goes from one column where a stretch begins or ends to the next. */
    private static void darkenRow(int row, List<Stretch> stretches, PixelShade shade, float[] light, int offset) {
        int[] bounds = stretches.stream()
                .flatMapToInt(stretch -> java.util.stream.IntStream.of(stretch.from, stretch.to))
                .sorted()
                .distinct()
                .toArray();
        for (int k = 0; k + 1 < bounds.length; k++) {
            int from = bounds[k];
            int to = bounds[k + 1];
            List<Caster> over = stretches.stream()
                    .filter(stretch -> stretch.from <= from && to <= stretch.to)
                    .map(Stretch::caster)
                    .toList();
            if (!over.isEmpty()) {
                shade.turnTo(over);
                for (int x = from; x < to; x++) {
                    light[offset + x] = Math.min(light[offset + x], (float) shade.light(x, row));
                }
            }
        }
    }
}
