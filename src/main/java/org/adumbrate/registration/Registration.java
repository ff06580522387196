package org.adumbrate.registration;

import java.util.Locale;
import org.adumbrate.geometry.Affine;
import org.adumbrate.geometry.RasterPoint;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.SheetSize;

/**
 * Finds where passes lie on their sheet by looking: edges of the pass are matched with the lines themselves. The ratio of
 * the pass is neither needed nor trusted. A pass that does not belong is refused with the reason.
 */
public final class Registration {
    /** Shorter sides are not looked at, in pixels. */
    private static final int LEAST_SIDE = 64;

    private final LinePattern lines;
    private final SheetSize sheet;
    private final PassImage pass;
    private final ToneImage tone;

    private Registration(LinePattern lines, SheetSize sheet, PassImage pass) {
        this.lines = lines;
        this.sheet = sheet;
        this.pass = pass;
        this.tone = ToneImage.of(pass);
    }

    /**
     * Places a pass on its sheet.
     *
     * @param lines the lines of the sheet
     * @param sheet the sheet's size
     * @param pass the pass
     * @return where it lies, or that it was refused and why
     */
    public static Placement register(LinePattern lines, SheetSize sheet, PassImage pass) {
        return new Registration(lines, sheet, pass).place();
    }

    private Placement place() {
        if (lines.probes().count == 0) {
            return unseen("the sheet has no lines to compare it with");
        }
        if (Math.min(tone.width, tone.height) < LEAST_SIDE) {
            return unseen("it is too small to compare: " + pass.original());
        }
        PixelRect inside = Bars.inside(tone);
        if (tone.isPlain(inside)) {
            return unseen("it is blank: it shows one tone only");
        }
        Attempt attempt = Attempt.of(lines, sheet, tone, pass.original(), inside);
        return attempt.accepted() ? aligned(attempt, inside) : refused(attempt, reason(attempt));
    }

    private Placement aligned(Attempt attempt, PixelRect inside) {
        Affine<RasterPoint, SheetPoint> passToSheet = Lay.back(attempt.map());
        Explainer explainer = new Explainer(
                attempt.map(),
                sheet,
                pass.original(),
                inside.enlarged(tone.reduction, pass.original()),
                tone.isPlainOutside(Lay.reduced(attempt.map(), tone.reduction), sheet),
                attempt.sigma());
        String by = attempt.sifting()
                .map(sifting -> String.format(
                        Locale.ROOT,
                        "; placed by the %d of %d pieces of line that it shows",
                        sifting.shown().count(),
                        lines.count()))
                .orElse("");
        return placement(
                attempt, Placement.Status.ALIGNED, explainer.explanation(), passToSheet, explainer.message() + by);
    }

    private Placement refused(Attempt attempt, String reason) {
        return placement(
                attempt,
                Placement.Status.REFUSED,
                Explanation.REFUSED,
                Lay.back(attempt.map()),
                "does not belong to these lines: " + reason);
    }

    private Placement placement(
            Attempt attempt,
            Placement.Status status,
            Explanation explains,
            Affine<RasterPoint, SheetPoint> passToSheet,
            String message) {
        int reduction = attempt.fitted().level().image().reduction;
        double residual = attempt.fitted().residual() * reduction;
        RasterPoint worst = attempt.agreement().worst();
        return new Placement(
                pass.original(),
                status,
                explains,
                passToSheet,
                residual,
                residual * passToSheet.meanScale(),
                attempt.sigma(),
                attempt.confidence(),
                worst == null ? middle() : passToSheet.apply(worst),
                message);
    }

    /** Why an attempt is not believed. */
    private String reason(Attempt attempt) {
        Agreement agreement = attempt.agreement();
        ToneImage mirrored = tone.mirrored();
        if (Attempt.of(lines, sheet, mirrored, pass.original(), Bars.inside(mirrored))
                .accepted()) {
            return "it is mirrored; seen in a mirror it would fit, so export it again without mirroring";
        }
        if (attempt.blind()) {
            return String.format(
                    Locale.ROOT, "only %d places along the lines show an edge, too few to tell", agreement.edges());
        }
        String shares = String.format(
                Locale.ROOT,
                "at the best place %.0f %% of the edges lie on their lines, where chance brings %.0f %%",
                100 * agreement.share(),
                100 * agreement.chance());
        if (attempt.loose()) {
            return shares + String.format(Locale.ROOT, ", but it may be %.1f pixels off", 2 * attempt.sigma());
        }
        return shares
                + String.format(
                        Locale.ROOT,
                        "; they do so in %.0f %% of its parts, so it shows something else or was taken with another camera",
                        100 * agreement.regions());
    }

    /** A refusal without having looked. */
    private Placement unseen(String reason) {
        return new Placement(
                pass.original(),
                Placement.Status.REFUSED,
                Explanation.REFUSED,
                sheet.frame().placing(pass.original()),
                Double.NaN,
                Double.NaN,
                Double.POSITIVE_INFINITY,
                0,
                middle(),
                "cannot be placed: " + reason);
    }

    private SheetPoint middle() {
        return new SheetPoint(sheet.widthMm() / 2, sheet.heightMm() / 2);
    }
}
