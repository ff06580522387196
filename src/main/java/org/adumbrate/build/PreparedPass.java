package org.adumbrate.build;

import java.io.IOException;
import java.util.Optional;
import java.util.OptionalDouble;
import org.adumbrate.geometry.Canvas;
import org.adumbrate.geometry.Frame;
import org.adumbrate.geometry.SheetSize;
import org.adumbrate.raster.GreyReduction;
import org.adumbrate.registration.FramePlacement;
import org.adumbrate.registration.LinePattern;
import org.adumbrate.registration.PassImage;
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
 * @param source its pixels
 * @param placement where it lies
 * @param look how it is to look, its white settled
 * @param grey whether one channel shows it truly
 * @param shadowTone the light of its full shadow as a share of its white, if it was measured and has one
 * @param whiteMissing whether a white was looked for and not found
 * @param doubtful whether it is pinned where its edges say it does not lie
 */
record PreparedPass(
        PassSource source,
        Placement placement,
        PassLook look,
        boolean grey,
        OptionalDouble shadowTone,
        boolean whiteMissing,
        boolean doubtful) {

    /** A pass is placed by a picture of it with no more pixels than this. */
    private static final long PLACING_PIXELS = 16_000_000;

    /**
     * Places and measures a pass.
     *
     * @param lines the lines that it is placed by; by its ratio alone if there are none
     * @param measuresShadow whether its shadow's tone is wanted
     * @param stages knows what was placed and measured before
     */
    static PreparedPass of(
            PassSource source, SheetSize sheet, Optional<LinePattern> lines, boolean measuresShadow, SheetStages stages)
            throws IOException {
        PassRequest request = source.request();
        FramePlacement.Pinned pinned = place(source, sheet, lines, stages);
        Placement placement = pinned.placement();
        boolean measures = request.measuresWhite() || (measuresShadow && request.role() == PassRole.SHADOW);
        if (!measures || !placement.aligned()) {
            boolean grey = source.info().light().lightChannels() == 1;
            return new PreparedPass(
                    source, placement, request.look(), grey, OptionalDouble.empty(), false, pinned.doubtful());
        }
        PassTones tones = stages.tones(request.file(), () -> tones(source));
        WhitePoint white =
                request.measuresWhite() ? tones.white() : request.look().white();
        boolean missing = request.measuresWhite() && !tones.whiteFound();
        PassLook look = request.look().withWhite(white);
        return new PreparedPass(source, placement, look, tones.grey(), tones.shadow(), missing, pinned.doubtful());
    }

    /** Its rows on loan, to be laid onto a canvas in strips of so many rows by so many threads. */
    PassSource.Rows rows(Canvas canvas, int stripRows, int threads) throws IOException {
        return source.blend(placement.passToSheet(), canvas, stripRows, threads);
    }

    /** The same where it lies. */
    PlacedPass placed(PassSource.Rows rows) {
        return new PlacedPass(source.request().role(), rows.rows(), placement.passToSheet());
    }

    private static PassTones tones(PassSource source) throws IOException {
        try (PassSource.Rows rows = source.look()) {
            return PassTones.measure(rows.rows());
        }
    }

    private static FramePlacement.Pinned place(
            PassSource source, SheetSize sheet, Optional<LinePattern> lines, SheetStages stages) throws IOException {
        Optional<Frame> frame = source.request().frame();
        if (lines.isEmpty() && frame.isEmpty()) {
            return new FramePlacement.Pinned(
                    FramePlacement.byRatio(source.info().size(), sheet), false);
        }
        if (lines.isEmpty()) {
            return new FramePlacement.Pinned(FramePlacement.unseen(source.info().size(), frame.get()), false);
        }
        Placement found = stages.placement(
                source.request().file(), () -> Registration.register(lines.get(), sheet, image(source)));
        return frame.map(pinned -> FramePlacement.pinned(pinned, found))
                .orElse(new FramePlacement.Pinned(found, false));
    }

    /** A grey picture of a pass, to place it by. */
    static PassImage image(PassSource source) throws IOException {
        try (PassSource.Rows rows = source.look()) {
            int factor = GreyReduction.factorFor(source.info().size(), PLACING_PIXELS);
            return new PassImage(
                    GreyReduction.of(rows.rows(), factor), source.info().size());
        }
    }
}
