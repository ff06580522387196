package org.adumbrate.prepare.passes;

import java.io.IOException;
import java.util.List;
import org.adumbrate.geometry.Canvas;
import org.adumbrate.prepare.memory.Run;
import org.adumbrate.raster.LightRows;

/** The light that arrives past the figures of a sheet, at any resolution. */
public interface FigureLight {
    /** By what it is known. */
    List<Object> content();

    /** On the grid of a canvas, of which its window may be read; 1 where no figure takes any. */
    LightRows on(Canvas canvas);

    /** Whether it is held on a canvas but for what a few figures' shadows touch. */
    boolean isNearlyHeld(Canvas canvas, Run run);

    /**
     * The same computed and held; where only some figures moved since it was held last, only what their shadows touch is computed.
     *
     * @param run knows what was held, and ends the work where it is superseded
     */
    LightRows held(Canvas canvas, Run run) throws IOException;
}
