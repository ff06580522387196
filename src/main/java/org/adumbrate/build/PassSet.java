package org.adumbrate.build;

import java.io.Closeable;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.DoubleConsumer;
import org.adumbrate.fault.Refusal;
import org.adumbrate.geometry.Canvas;
import org.adumbrate.geometry.SheetSize;
import org.adumbrate.raster.LightRows;
import org.adumbrate.raster.LightSink;
import org.adumbrate.registration.LinePattern;
import org.adumbrate.underlay.Blend;
import org.adumbrate.underlay.LaidPass;
import org.adumbrate.underlay.PassLook;
import org.adumbrate.underlay.PassRole;
import org.adumbrate.underlay.PlacedPass;
import org.adumbrate.underlay.ShownPass;
import org.adumbrate.underlay.ToneCurve;
import org.adumbrate.underlay.Underlay;
import org.adumbrate.underlay.WhitePoint;

/**
 * The printed passes of a sheet: opened, then placed and measured, then blended as often as pictures are wanted. The light
 * that arrives past figures can join them, computed and not read.
 */
final class PassSet implements Closeable {
    /** How strongly figures' shadows darken where no building's shadow says it; common practice for a shadow pass. */
    private static final double OPACITY_ALONE = 0.6;

    private final SheetSize sheet;
    private final List<PassSource> sources = new ArrayList<>();
    private List<PreparedPass> prepared = List.of();
    private Optional<FigureLight> figureLight = Optional.empty();

    private PassSet(SheetSize sheet) {
        this.sheet = sheet;
    }

    /** Opens the passes; their headers are read, nothing else. */
    static PassSet open(SheetSize sheet, List<PassRequest> requests) throws IOException {
        PassSet set = new PassSet(sheet);
        try {
            for (PassRequest request : requests) {
                set.sources.add(PassSource.open(request, PassSource.allowance(requests.size())));
            }
            return set;
        } catch (IOException | RuntimeException e) {
            set.close();
            throw e;
        }
    }

    /** True if the sheet has no printed pass and no shadows of figures. */
    boolean isEmpty() {
        return sources.isEmpty() && figureLight.isEmpty();
    }

    /** Lets the light that arrives past figures join the passes. */
    void join(FigureLight light) {
        figureLight = Optional.of(light);
    }

    /** Keeps passes of moderate size in memory once decoded, for when they are read more than once. */
    void hold() throws IOException {
        for (PassSource source : sources) {
            source.holdIfModerate();
        }
    }

    /** The light that arrives past figures, if it has joined. */
    Optional<FigureLight> figureLight() {
        return figureLight;
    }

    /**
     * Places and measures all passes at once.
     *
     * @param lines the lines that they are placed by; by their ratio alone if there are none
     * @param figuresCast whether figures' light is to join, which takes its tone from the building's shadow
     * @param stages knows what was placed and measured before
     * @throws Refusal if one does not belong to the sheet
     */
    void prepare(Optional<LinePattern> lines, boolean figuresCast, SheetStages stages) throws IOException, Refusal {
        boolean joins = figuresCast
                || sources.stream().anyMatch(source -> source.request().role() == PassRole.FIGURE_SHADOW);
        List<Callable<PreparedPass>> tasks = new ArrayList<>();
        for (PassSource source : sources) {
            tasks.add(() -> PreparedPass.of(source, sheet, lines, joins, stages));
        }
        prepared = InParallel.all(tasks);
        for (PreparedPass pass : prepared) {
            if (!pass.placement().aligned()) {
                String see = lines.isPresent() ? "; see it with adumbrate register LINES PASS --picture FILE.png" : "";
                throw new Refusal(
                        pass.source().request().file() + ": " + pass.placement().message() + see);
            }
        }
    }

    /** The passes as they were placed. */
    List<PreparedPass> prepared() {
        return prepared;
    }

    /** Where the passes lie. */
    List<PassPlacement> placements() {
        return prepared.stream()
                .map(pass -> new PassPlacement(pass.source().request().file(), pass.placement()))
                .toList();
    }

    /** What should be known before printing at a resolution. */
    List<Finding> findings(double dpi) {
        List<Finding> findings = new ArrayList<>();
        for (PreparedPass pass : prepared) {
            if (pass.doubtful()) {
                findings.add(new Finding(
                        Finding.Severity.WARNING,
                        pass.source().request().file() + ": " + pass.placement().message()));
            }
            if (pass.whiteMissing()) {
                findings.add(new Finding(
                        Finding.Severity.WARNING,
                        pass.source().request().file()
                                + ": no lit white was found in it, so its tones are taken as they are; give 'white: as-is'"
                                + " if that is meant"));
            }
            for (String note : pass.source().info().notes()) {
                findings.add(new Finding(
                        Finding.Severity.NOTE, pass.source().request().file() + ": " + note));
            }
            double own = 25.4 / pass.placement().passToSheet().meanScale();
            if (own < dpi / 3) {
                findings.add(new Finding(
                        Finding.Severity.WARNING,
                        String.format(
                                Locale.ROOT,
                                "%s: has %.0f pixels per inch at this size, so its edges will look soft at %.0f; render it larger",
                                pass.source().request().file(),
                                own,
                                dpi)));
            }
        }
        return findings;
    }

    /** The channels that show the passes truly. */
    int channels() {
        boolean color = prepared.stream().anyMatch(pass -> pass.look().tint().isPresent() || !pass.grey());
        return color ? 3 : 1;
    }

    /**
     * Blends the passes into what takes them.
     *
     * @param canvas what is blended
     * @param channels 1 or 3
     * @param sinks take it; finishing them is left to the caller
     * @param stripRows rows of a strip
     */
    void blend(Canvas canvas, int channels, List<? extends LightSink> sinks, int stripRows, DoubleConsumer progress)
            throws IOException {
        int threads = Runtime.getRuntime().availableProcessors();
        List<PassSource.Rows> loans = new ArrayList<>();
        try {
            List<ShownPass> shown = new ArrayList<>();
            for (PreparedPass pass : prepared) {
                PassSource.Rows rows = pass.rows(canvas, stripRows, threads);
                loans.add(rows);
                shown.add(pass.placed(rows).on(canvas).as(pass.look()));
            }
            figureLight.ifPresent(
                    light -> shown.add(covering(canvas, light.on(canvas)).as(figureLook())));
            Blend blend = new Blend(canvas, shown, channels, shadowTone());
            Underlay.render(blend, sinks, stripRows, threads, progress);
        } finally {
            for (PassSource.Rows rows : loans) {
                rows.close();
            }
        }
    }

    /** Printed as the building's shadow is: both are the same sun's. */
    private PassLook figureLook() {
        return shadow().map(pass -> new PassLook(
                        pass.look().opacity(),
                        WhitePoint.ONE,
                        ToneCurve.STRAIGHT,
                        pass.look().tint(),
                        Optional.empty()))
                .orElse(PassLook.plain(OPACITY_ALONE));
    }

    /** Figures' light that covers the sheet pixel by pixel of a canvas's grid. */
    static LaidPass covering(Canvas canvas, LightRows light) {
        return new PlacedPass(PassRole.FIGURE_SHADOW, light, canvas.toSheet()).on(canvas);
    }

    private Optional<PreparedPass> shadow() {
        return prepared.stream()
                .filter(pass -> pass.source().request().role() == PassRole.SHADOW)
                .findFirst();
    }

    /** The light of the building's full shadow as it is printed, its opacity left aside. */
    private double shadowTone() {
        return shadow().filter(pass -> pass.shadowTone().isPresent())
                .map(pass -> pass.look().tone().bend((float) pass.shadowTone().getAsDouble()))
                .orElse(0f);
    }

    @Override
    public void close() throws IOException {
        for (PassSource source : sources) {
            source.close();
        }
    }
}
