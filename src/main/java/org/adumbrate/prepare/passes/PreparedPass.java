package org.adumbrate.prepare.passes;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.adumbrate.geometry.Canvas;
import org.adumbrate.geometry.Frame;
import org.adumbrate.geometry.PixelSize;
import org.adumbrate.geometry.SheetSize;
import org.adumbrate.prepare.lines.PlacingLines;
import org.adumbrate.prepare.memory.Part;
import org.adumbrate.prepare.memory.Run;
import org.adumbrate.registration.FramePlacement;
import org.adumbrate.registration.Placement;
import org.adumbrate.registration.Registration;
import org.adumbrate.underlay.PassLook;
import org.adumbrate.underlay.PassRole;
import org.adumbrate.underlay.PassTones;
import org.adumbrate.underlay.PlacedPass;
import org.adumbrate.underlay.WhitePoint;

/**
 * A pass that has been placed and measured, and can be blended.
 *
 * @param request as it is asked for
 * @param pixels its pixels
 * @param pinned where it lies, and whether it is pinned where its edges say it does not lie
 * @param tones its tones, if they were measured
 * @param notes what is to be known of its file
 */
public record PreparedPass(
        PassRequest request,
        PassPixels pixels,
        FramePlacement.Pinned pinned,
        Optional<PassTones> tones,
        List<String> notes) {
    /** Enlarged more than this, edges of a render look soft beside lines; common practice: half the print's resolution. */
    private static final double MOST_ENLARGED = 2;

    /** By this share a placement may be off in scale: a pixel of a thousand. */
    private static final double PLACING = 1e-3;

    /** Copies the notes. */
    public PreparedPass {
        notes = List.copyOf(notes);
    }

    /**
     * Places and measures a pass.
     *
     * @param lines the lines that it is placed by; by its ratio alone if there are none
     * @param measuresShadow whether its shadow's tone is wanted
     */
    static PreparedPass of(
            PassRequest request,
            PassPixels pixels,
            SheetSize sheet,
            Optional<PlacingLines> lines,
            boolean measuresShadow,
            Run run)
            throws IOException {
        FramePlacement.Pinned pinned = place(request, pixels, sheet, lines, run);
        boolean measures = request.measuresWhite() || (measuresShadow && request.role() == PassRole.SHADOW);
        Optional<PassTones> tones = measures && pinned.placement().aligned()
                ? Optional.of(run.of(Part.TONES, PassTones.class, List.of(pixels.content()), pixels::tones))
                : Optional.empty();
        return new PreparedPass(request, pixels, pinned, tones, pixels.notes());
    }

    private static FramePlacement.Pinned place(
            PassRequest request, PassPixels pixels, SheetSize sheet, Optional<PlacingLines> lines, Run run)
            throws IOException {
        PixelSize size = pixels.info().size();
        Optional<Frame> frame = request.frame();
        if (lines.isEmpty()) {
            Placement unseen = frame.map(pinned -> FramePlacement.unseen(size, pinned))
                    .orElseGet(() -> FramePlacement.byRatio(size, sheet));
            return new FramePlacement.Pinned(unseen, false);
        }
        Placement found = run.of(
                Part.PLACEMENT,
                Placement.class,
                List.of(lines.get().content(), pixels.content()),
                () -> Registration.register(lines.get().pattern().run(), sheet, pixels.image()));
        return frame.map(pinned -> FramePlacement.pinned(pinned, found))
                .orElse(new FramePlacement.Pinned(found, false));
    }

    /** Where it is. */
    public Path file() {
        return request.file();
    }

    /** Where it lies. */
    public Placement placement() {
        return pinned.placement();
    }

    /** How it is to look, its white settled. */
    public PassLook look() {
        return request.measuresWhite()
                ? request.look().withWhite(tones.map(PassTones::white).orElse(WhitePoint.ONE))
                : request.look();
    }

    /** Whether one channel shows it truly. */
    public boolean grey() {
        return tones.map(PassTones::grey).orElseGet(() -> pixels.info().light().lightChannels() == 1);
    }

    /** The light of its full shadow as a share of its white, if it was measured and has one. */
    OptionalDouble shadowTone() {
        return tones.map(PassTones::shadow).orElse(OptionalDouble.empty());
    }

    /** Whether a white was looked for and not found. */
    boolean whiteMissing() {
        return request.measuresWhite() && tones.isPresent() && !tones.get().whiteFound();
    }

    /** Its resolution where it lies, in pixels per inch. */
    double ppi() {
        return placement().ppi();
    }

    /** True if its edges look soft beside lines where the sheet is printed at a resolution. */
    boolean isSoftAt(double dpi) {
        return isSoft(dpi / ppi());
    }

    /** True if edges of a render look soft that is enlarged so many times; twice is still well, as it is placed to a fraction. */
    public static boolean isSoft(double enlarged) {
        return enlarged > MOST_ENLARGED * (1 + PLACING);
    }

    /** Its rows on loan, to be laid onto a canvas in strips of so many rows by so many threads. */
    public PassPixels.Rows rows(Canvas canvas, int stripRows, int threads) throws IOException {
        return pixels.rows(placement().passToSheet(), canvas, stripRows, threads);
    }

    /** The same where it lies. */
    public PlacedPass placed(PassPixels.Rows rows) {
        return new PlacedPass(request.role(), rows.rows(), placement().passToSheet());
    }
}
