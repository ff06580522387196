package org.adumbrate.figure.shadow;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.adumbrate.geometry.Canvas;
import org.adumbrate.perspective.SunDirection;
import org.adumbrate.perspective.View;

/**
 * Figures in the sun and what their shadows fall on, made ready once for canvases of any scale and window. Never changed, and safe for
 * use by several threads.
 */
public final class SunlitFigures {
    private final View view;
    private final SunDirection sun;
    private final List<Lit> lit;

    /** A casting made ready. */
    private record Lit(Casting casting, FacetSource facets, List<SunFigure> figures) {}

    private SunlitFigures(View view, SunDirection sun, List<Lit> lit) {
        this.view = view;
        this.sun = sun;
        this.lit = lit;
    }

    /**
     * Makes figures ready.
     *
     * @param view how the sheet shows the model
     * @param sun where it stands; below the horizon it casts no shadows
     * @param castings figures and what their shadows fall on; where several fall on one place the darkest counts
     */
    public static SunlitFigures of(View view, SunDirection sun, List<Casting> castings) {
        return new SunlitFigures(view, sun, List.of()).with(castings);
    }

    /** The same view and sun with other figures; those that are among these already, and what shadows fall on, are not made again. */
    public SunlitFigures with(List<Casting> castings) {
        if (!(sun.z() > 0)) {
            return new SunlitFigures(view, sun, List.of());
        }
        return new SunlitFigures(view, sun, castings.stream().map(this::ready).toList());
    }

    private Lit ready(Casting casting) {
        Optional<Lit> before = lit.stream()
                .filter(known -> known.casting.receiver().equals(casting.receiver()))
                .findFirst();
        FacetSource facets = before.map(Lit::facets).orElseGet(() -> FacetSource.of(casting.receiver(), view));
        Map<StandingSolid, SunFigure> known = new HashMap<>();
        before.ifPresent(same -> same.figures.forEach(figure -> known.put(figure.figure(), figure)));
        SunFrame frame = SunFrame.of(sun);
        List<SunFigure> figures = casting.figures().parallelStream()
                .map(figure -> known.containsKey(figure) ? known.get(figure) : SunFigure.of(figure, frame, facets))
                .toList();
        return new Lit(casting, facets, figures);
    }

    /** The light past them on a canvas; only what reaches its window is made ready. */
    public FigureShadow on(Canvas canvas) {
        SunFrame frame = SunFrame.of(sun);
        return new FigureShadow(
                view,
                sun,
                canvas.whole(),
                lit.stream()
                        .map(known ->
                                new CastShadows(known.facets, new SunView(view, frame), canvas, casters(known, canvas)))
                        .toList());
    }

    private List<Caster> casters(Lit known, Canvas canvas) {
        return known.figures.stream()
                .map(figure -> Caster.of(figure, view, known.facets.leastDepth(), canvas))
                .flatMap(Optional::stream)
                .toList();
    }
}
