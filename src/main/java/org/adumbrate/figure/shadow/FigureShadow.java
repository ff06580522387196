package org.adumbrate.figure.shadow;

import java.util.Arrays;
import java.util.List;
import org.adumbrate.geometry.Affine;
import org.adumbrate.geometry.PixelSize;
import org.adumbrate.geometry.RasterPoint;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.SheetSize;
import org.adumbrate.geometry.Space;
import org.adumbrate.perspective.SunDirection;
import org.adumbrate.perspective.View;
import org.adumbrate.raster.LightRows;

/**
 * The light that arrives past figures, pixel by pixel of a canvas that covers the sheet: the share of the sun's disc that no
 * figure hides from what is seen there, 0 to 1. It is 1 where nothing is seen and on what turns away from the sun; what the
 * building hides is not asked. Computed as it is read, row by row, and the same however the canvas is divided; a row that
 * no shadow can reach costs no more than filling it.
 */
public final class FigureShadow implements LightRows {
    private final PixelSize size;
    private final List<CastShadows> shadows;

    private FigureShadow(PixelSize size, List<CastShadows> shadows) {
        this.size = size;
        this.shadows = shadows;
    }

    /**
     * Prepares the shadows of figures.
     *
     * @param view how the sheet shows the model
     * @param sun where it stands; below the horizon it casts no shadows
     * @param sheet the sheet's printed size
     * @param canvas the raster that covers it
     * @param castings figures and what their shadows fall on; where several fall on one place the darkest counts
     */
    public static FigureShadow of(
            View view, SunDirection sun, SheetSize sheet, PixelSize canvas, List<Casting> castings) {
        Affine<RasterPoint, SheetPoint> toSheet = Affine.scaling(
                Space.RASTER, Space.SHEET, sheet.widthMm() / canvas.width(), sheet.heightMm() / canvas.height());
        boolean shines = sun.z() > 0;
        return new FigureShadow(
                canvas,
                castings.stream()
                        .filter(casting -> shines)
                        .map(casting -> CastShadows.of(casting, view, sun, toSheet, canvas))
                        .toList());
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
