package org.adumbrate.figure.shadow;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.adumbrate.geometry.Canvas;
import org.adumbrate.perspective.SunDirection;
import org.adumbrate.perspective.View;
import org.adumbrate.raster.Halt;
import org.adumbrate.raster.OrderedStrips;

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
        try {
            return of(view, sun, castings, Halt.NEVER);
        } catch (IOException impossible) {
            throw new UncheckedIOException("nothing halts it, and nothing is read", impossible);
        }
    }

    /**
     * As {@link #of(View, SunDirection, List)}.
     *
     * @param halt ends the work
     */
    public static SunlitFigures of(View view, SunDirection sun, List<Casting> castings, Halt halt) throws IOException {
        return new SunlitFigures(view, sun, List.of()).with(sun, castings, halt);
    }

    /**
     * The same view with other figures or another sun. What shadows fall on is not made ready again, nor are figures that are among these in
     * the same sun.
     *
     * @param halt ends the work
     */
    public SunlitFigures with(SunDirection other, List<Casting> castings, Halt halt) throws IOException {
        List<Lit> ready = new ArrayList<>();
        if (other.z() > 0) {
            for (Casting casting : castings) {
                ready.add(ready(other, casting, halt));
            }
        }
        return new SunlitFigures(view, other, ready);
    }

    private Lit ready(SunDirection other, Casting casting, Halt halt) throws IOException {
        Optional<Lit> before = lit.stream()
                .filter(known -> known.casting.receiver().equals(casting.receiver()))
                .findFirst();
        halt.check();
        FacetSource facets = before.map(Lit::facets).orElseGet(() -> FacetSource.of(casting.receiver(), view));
        Map<StandingSolid, SunFigure> known = new HashMap<>();
        if (other.equals(sun)) {
            before.ifPresent(same -> same.figures.forEach(figure -> known.put(figure.figure(), figure)));
        }
        SunFrame frame = SunFrame.of(other);
        List<SunFigure> figures = new ArrayList<>();
        OrderedStrips.<Object, SunFigure>run(
                casting.figures().size(),
                Runtime.getRuntime().availableProcessors(),
                () -> frame,
                (same, k) -> {
                    halt.check();
                    StandingSolid figure = casting.figures().get(k);
                    return known.containsKey(figure) ? known.get(figure) : SunFigure.of(figure, frame, facets);
                },
                (k, figure) -> figures.add(figure));
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
