package org.adumbrate.figure.shadow;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.adumbrate.geometry.Canvas;
import org.adumbrate.geometry.PixelBox;
import org.adumbrate.geometry.PixelSize;
import org.adumbrate.raster.Halt;
import org.adumbrate.raster.LightRows;
import org.adumbrate.raster.OrderedStrips;

/**
 * The light past figures on the window of a canvas, computed once and held. Where figures come, go or move, only the parts of rows that their
 * shadows may touch before or after are computed again; the result is the same, bit for bit, as when all of it is. Never changed.
 */
public final class HeldShadow implements LightRows {
    private static final int STRIP_ROWS = 16;

    /** So many figures' shadows are computed at once. */
    private static final int NEAR = 3;

    private final FigureShadow shadow;
    private final Canvas canvas;
    private final float[][] rows;

    private HeldShadow(FigureShadow shadow, Canvas canvas, float[][] rows) {
        this.shadow = shadow;
        this.canvas = canvas;
        this.rows = rows;
    }

    /**
     * Computes all of it.
     *
     * @param shadow on the same canvas
     * @param halt ends the work
     */
    public static HeldShadow of(FigureShadow shadow, Canvas canvas, int threads, Halt halt) throws IOException {
        float[][] lit = new float[canvas.window().height()][];
        float[] bare = new float[canvas.window().width()];
        Arrays.fill(bare, 1);
        Arrays.fill(lit, bare);
        return new HeldShadow(shadow.unshaded(), canvas, lit).recomputed(shadow, shadow.casters(), threads, halt);
    }

    /** The same canvas with other figures, or another sun. */
    public HeldShadow with(FigureShadow other, int threads, Halt halt) throws IOException {
        if (!shadow.fallsAlike(other)) {
            return of(other, canvas, threads, halt);
        }
        List<Caster> touching = new ArrayList<>(missing(shadow.casters(), other.casters()));
        touching.addAll(missing(other.casters(), shadow.casters()));
        return recomputed(other, touching, threads, halt);
    }

    /** True if another shadow differs by some figures at most. */
    public boolean isNear(FigureShadow other) {
        return shadow.fallsAlike(other)
                && missing(other.casters(), shadow.casters()).size() <= NEAR;
    }

    private static List<Caster> missing(List<Caster> from, List<Caster> among) {
        Set<SunSilhouette> there = Collections.newSetFromMap(new IdentityHashMap<>());
        among.forEach(caster -> there.add(caster.silhouette()));
        return from.stream()
                .filter(caster -> !there.contains(caster.silhouette()))
                .toList();
    }

    private HeldShadow recomputed(FigureShadow other, List<Caster> touching, int threads, Halt halt)
            throws IOException {
        float[][] next = rows.clone();
        int strips = (rows.length + STRIP_ROWS - 1) / STRIP_ROWS;
        OrderedStrips.<Object, Boolean>run(
                strips,
                threads,
                () -> other,
                (same, strip) -> {
                    halt.check();
                    int end = Math.min(rows.length, (strip + 1) * STRIP_ROWS);
                    for (int k = strip * STRIP_ROWS; k < end; k++) {
                        next[k] = row(k, other, touching);
                    }
                    return true;
                },
                (strip, done) -> {});
        return new HeldShadow(other, canvas, next);
    }

    private float[] row(int k, FigureShadow other, List<Caster> touching) {
        PixelBox window = canvas.window();
        int y = window.top() + k;
        int from = Integer.MAX_VALUE;
        int to = Integer.MIN_VALUE;
        for (Caster caster : touching) {
            Optional<RowReach> reach = caster.reach(y);
            if (reach.isPresent()) {
                from = Math.min(
                        from,
                        CastShadows.pieceAt(
                                (int) Math.max(window.left(), reach.get().from()) - 1));
                to = Math.max(to, (int) Math.min(window.right(), reach.get().to()) + CastShadows.PIECE + 1);
            }
        }
        from = Math.max(from, window.left());
        to = Math.min(to, window.right());
        if (from >= to) {
            return rows[k];
        }
        float[] light = new float[to - from];
        other.read(from, y, light.length, 1, light);
        float[] row = rows[k].clone();
        System.arraycopy(light, 0, row, from - window.left(), light.length);
        return row;
    }

    @Override
    public PixelSize size() {
        return canvas.whole();
    }

    @Override
    public int channels() {
        return 1;
    }

    @Override
    public void read(int x, int y, int width, int height, float[] light) {
        PixelBox window = canvas.window();
        for (int k = 0; k < height; k++) {
            System.arraycopy(rows[y + k - window.top()], x - window.left(), light, k * width, width);
        }
    }

    @Override
    public void releaseAbove(int row) {
        // All of it stays.
    }

    @Override
    public void close() {
        // Nothing is open.
    }
}
