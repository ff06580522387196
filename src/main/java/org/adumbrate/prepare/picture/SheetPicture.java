package org.adumbrate.prepare.picture;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import org.adumbrate.drawing.FlatDrawing;
import org.adumbrate.drawing.HeldInk;
import org.adumbrate.geometry.Canvas;
import org.adumbrate.prepare.PreparedSheet;
import org.adumbrate.prepare.memory.Part;
import org.adumbrate.prepare.memory.Run;
import org.adumbrate.raster.encode.Levels;

/**
 * A window of a sheet by its held parts. Never changed.
 *
 * @param underlay the passes, and the light past figures
 * @param ink what is drawn over them
 */
public record SheetPicture(HeldUnderlay underlay, HeldInk ink) {
    private static final int THREADS = Runtime.getRuntime().availableProcessors();

    /** Rows that are blended at a time: those of a row of tiles. */
    private static final int STRIP_ROWS = FlatDrawing.STRIP_ROWS;

    /** A window of a sheet, exact. */
    public static SheetPicture of(PreparedSheet sheet, Canvas canvas, Run run) throws IOException {
        return of(sheet, canvas, run, false);
    }

    /**
     * A window of a sheet.
     *
     * @param canvas a window on any grid of the sheet
     * @param run knows what earlier pictures held of it, and ends the work where it is superseded
     * @param coarse whether light past figures may be held on a coarser grid where the exact one takes long
     */
    public static SheetPicture of(PreparedSheet sheet, Canvas canvas, Run run, boolean coarse) throws IOException {
        return new SheetPicture(HeldUnderlay.of(sheet.passes(), canvas, run, coarse), ink(sheet, canvas, run));
    }

    /** Begins with what was inked for the picture before. */
    private static HeldInk ink(PreparedSheet sheet, Canvas canvas, Run run) throws IOException {
        int channels = FlatDrawing.channels(sheet.passes().channels(), sheet.layers());
        List<Object> place = List.of(canvas, channels);
        Optional<HeldInk> before = run.find(Part.INK, HeldInk.class, place);
        HeldInk ink = before.isPresent()
                ? before.get().with(sheet.layers(), THREADS, run::step)
                : HeldInk.of(canvas, channels, sheet.layers(), THREADS, run::step);
        run.keep(Part.INK, HeldInk.class, place, ink);
        return ink;
    }

    /**
     * The picture, dithered as a preview is; it must be exact.
     *
     * @param run ends the work where it is superseded
     */
    public Levels levels(Run run) throws IOException {
        Levels levels = new Levels(underlay.canvas().window(), ink.all().channels(), true, run::step);
        underlay.blend(List.of(new FlatDrawing(underlay.channels(), ink.all(), levels)), STRIP_ROWS);
        return levels;
    }
}
