package org.adumbrate.prepare.picture;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.adumbrate.geometry.Canvas;
import org.adumbrate.geometry.PixelBox;
import org.adumbrate.geometry.PixelSize;
import org.adumbrate.prepare.PreparedSheet;
import org.adumbrate.prepare.memory.Part;
import org.adumbrate.prepare.memory.Run;
import org.adumbrate.prepare.passes.FigureLight;
import org.adumbrate.prepare.passes.PassPixels;
import org.adumbrate.prepare.passes.PassSet;
import org.adumbrate.prepare.passes.PreparedPass;
import org.adumbrate.raster.LightSink;
import org.adumbrate.underlay.Blend;
import org.adumbrate.underlay.HeldLight;
import org.adumbrate.underlay.Underlay;

/**
 * What lies under the lines in a window of a sheet, by the held light of its passes. Never changed.
 *
 * @param canvas what is seen
 * @param passes the passes, and the light past figures
 * @param channels those of the blended passes: 1 or 3
 * @param shadowTone the light of the building's full shadow, 0 where it is not known
 */
public record HeldUnderlay(Canvas canvas, List<HeldPass> passes, int channels, double shadowTone) {
    private static final int THREADS = Runtime.getRuntime().availableProcessors();

    /** Pixels of the exact grid for one of the coarser, across and down. */
    private static final int COARSENESS = 4;

    /** Copies the list. */
    public HeldUnderlay {
        passes = List.copyOf(passes);
    }

    /** A window of a sheet, exact. */
    public static HeldUnderlay of(PreparedSheet sheet, Canvas canvas, Run run) throws IOException {
        return of(sheet.passes(), canvas, run, false);
    }

    static HeldUnderlay of(PassSet set, Canvas canvas, Run run, boolean coarse) throws IOException {
        List<HeldPass> passes = new ArrayList<>();
        for (PreparedPass pass : set.prepared()) {
            passes.add(held(pass, canvas, run));
        }
        if (set.figureLight().isPresent()) {
            FigureLight figures = set.figureLight().get();
            passes.add(held(figures, set, coarse ? coarser(figures, canvas, run) : canvas, run));
        }
        return new HeldUnderlay(canvas, passes, set.channels(), set.shadowTone());
    }

    private static HeldPass held(PreparedPass pass, Canvas canvas, Run run) throws IOException {
        List<Object> content = List.of(pass.pixels().content(), pass.placement().passToSheet(), canvas);
        HeldLight light = run.of(Part.PASS_LIGHT, HeldLight.class, content, () -> {
            try (PassPixels.Rows rows = pass.rows(canvas, HeldLight.STRIP_ROWS, THREADS)) {
                return HeldLight.of(pass.placed(rows).on(canvas).light(), canvas, THREADS, run::step);
            }
        });
        String key = pass.request().key();
        return new HeldPass(
                key, key + ".opacity", content, canvas, pass.request().role(), light, pass.look());
    }

    private static HeldPass held(FigureLight figures, PassSet set, Canvas canvas, Run run) throws IOException {
        List<Object> content = lightContent(figures, canvas);
        HeldLight light = run.of(
                Part.PASS_LIGHT,
                HeldLight.class,
                content,
                () -> HeldLight.of(
                        PassSet.covering(canvas, figures.held(canvas, run)).light(), canvas, THREADS, run::step));
        return new HeldPass(
                "figures", "passes.shadow.opacity", content, canvas, PassSet.FIGURES_ROLE, light, set.figureLook());
    }

    private static List<Object> lightContent(FigureLight figures, Canvas canvas) {
        return List.of(figures.content(), canvas);
    }

    /** A coarser grid for the same part of the sheet, unless the exact one takes no time. */
    private static Canvas coarser(FigureLight figures, Canvas canvas, Run run) {
        PixelSize whole = canvas.whole();
        // both are asked for, so that both stay held: how the light was made is needed as soon as somebody moves
        boolean isNear = figures.isNearlyHeld(canvas, run);
        boolean isHeld = run.find(Part.PASS_LIGHT, HeldLight.class, lightContent(figures, canvas))
                .isPresent();
        if (isNear || isHeld || whole.width() < 2 * COARSENESS || whole.height() < 2 * COARSENESS) {
            return canvas;
        }
        PixelSize fewer = new PixelSize(whole.width() / COARSENESS, whole.height() / COARSENESS);
        double across = fewer.width() / (double) whole.width();
        double down = fewer.height() / (double) whole.height();
        PixelBox window = canvas.window();
        int left = Math.max(0, (int) (window.left() * across) - 1);
        int top = Math.max(0, (int) (window.top() * down) - 1);
        int right = Math.min(fewer.width(), (int) Math.ceil(window.right() * across) + 1);
        int bottom = Math.min(fewer.height(), (int) Math.ceil(window.bottom() * down) + 1);
        return new Canvas(canvas.sheet(), fewer, new PixelBox(left, top, right - left, bottom - top));
    }

    /** True if every part of it is held on its own canvas. */
    public boolean isExact() {
        return passes.stream().allMatch(pass -> pass.canvas().equals(canvas));
    }

    /**
     * Blends it into what takes it; it must be exact.
     *
     * @param sinks take it; finishing them is left to the caller
     * @param stripRows rows of a strip
     */
    public void blend(List<? extends LightSink> sinks, int stripRows) throws IOException {
        Blend blend = new Blend(canvas, passes.stream().map(HeldPass::shown).toList(), channels, shadowTone);
        Underlay.render(blend, sinks, stripRows, THREADS, share -> {});
    }
}
