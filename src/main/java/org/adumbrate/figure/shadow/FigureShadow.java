package org.adumbrate.figure.shadow;

import java.util.Arrays;
import java.util.List;
import org.adumbrate.geometry.Canvas;
import org.adumbrate.geometry.PixelSize;
import org.adumbrate.perspective.SunDirection;
import org.adumbrate.perspective.View;
import org.adumbrate.raster.LightRows;

/**
 * The light that arrives past figures, pixel by pixel of the grid that covers the sheet: the share of the sun's disc that no
 * figure hides from what is seen there, 0 to 1. It is 1 where nothing is seen and on what turns away from the sun; what the
 * building hides is not asked. Computed as it is read, row by row, and the same however the canvas is divided; a row that
 * no shadow can reach costs no more than filling it. Only what lies in the canvas's window may be read.
 */
public final class FigureShadow implements LightRows {
    private final View view;
    private final SunDirection sun;
    private final PixelSize size;
    private final List<CastShadows> shadows;

    /** @param size of the whole grid */
    FigureShadow(View view, SunDirection sun, PixelSize size, List<CastShadows> shadows) {
        this.view = view;
        this.sun = sun;
        this.size = size;
        this.shadows = List.copyOf(shadows);
    }

    /**
     * Prepares the shadows of figures for one canvas; parameters as of {@link SunlitFigures#of}.
     *
     * @param canvas what is read of them
     */
    public static FigureShadow of(View view, SunDirection sun, Canvas canvas, List<Casting> castings) {
        return SunlitFigures.of(view, sun, castings).on(canvas);
    }

    /** The same without any figures. */
    FigureShadow unshaded() {
        return new FigureShadow(view, sun, size, List.of());
    }

    /** All figures whose shadows may reach the window. */
    List<Caster> casters() {
        return shadows.stream().flatMap(cast -> cast.casters().stream()).toList();
    }

    /** True if shadows of the same figures fall alike: on the same things, in the same sun. */
    boolean fallsAlike(FigureShadow other) {
        boolean alike = view.equals(other.view) && sun.equals(other.sun) && shadows.size() == other.shadows.size();
        for (int k = 0; alike && k < shadows.size(); k++) {
            alike = shadows.get(k).facets() == other.shadows.get(k).facets();
        }
        return alike;
    }

    @Override
    public PixelSize size() {
        return size;
    }

    @Override
    public int channels() {
        return 1;
    }

    @Override
    public void read(int x, int y, int width, int height, float[] light) {
        Arrays.fill(light, 0, width * height, 1f);
        for (CastShadows cast : shadows) {
            cast.darken(x, y, width, height, light);
        }
    }

    @Override
    public void releaseAbove(int row) {
        // Nothing is kept.
    }

    @Override
    public void close() {
        // Nothing is open.
    }
}
