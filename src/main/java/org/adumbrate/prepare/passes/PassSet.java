package org.adumbrate.prepare.passes;

import java.io.IOException;
import java.io.InterruptedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.DoubleConsumer;
import org.adumbrate.fault.Refusal;
import org.adumbrate.geometry.Canvas;
import org.adumbrate.geometry.SheetSize;
import org.adumbrate.prepare.finding.Finding;
import org.adumbrate.prepare.finding.Trouble;
import org.adumbrate.prepare.lines.PlacingLines;
import org.adumbrate.prepare.memory.InParallel;
import org.adumbrate.prepare.memory.Run;
import org.adumbrate.raster.LightRows;
import org.adumbrate.raster.LightSink;
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
 * The printed passes of a sheet, placed and measured, to be blended as often as pictures are wanted. The light that arrives past
 * figures can join them, computed and not read.
 *
 * @param prepared the passes that can be blended
 * @param troubles why others cannot
 * @param figureLight the light that arrives past figures, if it has joined
 */
public record PassSet(List<PreparedPass> prepared, List<Trouble> troubles, Optional<FigureLight> figureLight) {
    /** What the light past figures tells. */
    public static final PassRole FIGURES_ROLE = PassRole.FIGURE_SHADOW;

    /** How strongly figures' shadows darken where no building's shadow says it; common practice for a shadow pass. */
    private static final double OPACITY_ALONE = 0.6;

    public PassSet {
        prepared = List.copyOf(prepared);
        troubles = List.copyOf(troubles);
    }

    /** How one pass came out: prepared, or with the reason why not. */
    private record Tried(Optional<PreparedPass> pass, Optional<Trouble> trouble) {}

    /**
     * Opens, places and measures all passes at once.
     *
     * @param requests the passes
     * @param lines the lines that they are placed by; by their ratio alone if there are none
     * @param figuresCast whether figures' light is to join, which takes its tone from the building's shadow
     * @param held whether they are read more than once, so that those of moderate size are better held in memory
     */
    public static PassSet of(
            SheetSize sheet,
            List<PassRequest> requests,
            Optional<PlacingLines> lines,
            boolean figuresCast,
            boolean held,
            Run run)
            throws IOException {
        boolean joins = figuresCast || requests.stream().anyMatch(request -> request.role() == PassRole.FIGURE_SHADOW);
        long allowance = PassPixels.allowance(requests.size());
        List<Callable<Tried>> tasks = new ArrayList<>();
        for (PassRequest request : requests) {
            tasks.add(() -> tried(request, lines.isPresent(), () -> {
                PassPixels pixels = held
                        ? PassPixels.of(request.file(), allowance, run)
                        : PassPixels.passing(request.file(), allowance);
                return PreparedPass.of(request, pixels, sheet, lines, joins, run);
            }));
        }
        List<Tried> tried = InParallel.all(tasks);
        return new PassSet(
                tried.stream().flatMap(one -> one.pass().stream()).toList(),
                tried.stream().flatMap(one -> one.trouble().stream()).toList(),
                Optional.empty());
    }

    private static Tried tried(PassRequest request, boolean looked, Run.Work<PreparedPass> work)
            throws InterruptedIOException {
        try {
            PreparedPass pass = work.run();
            if (pass.placement().aligned()) {
                return new Tried(Optional.of(pass), Optional.empty());
            }
            String see = looked ? "; see it with adumbrate register LINES PASS --picture FILE.png" : "";
            Refusal refusal =
                    new Refusal(request.file() + ": " + pass.placement().message() + see);
            return new Tried(Optional.empty(), Optional.of(new Trouble(request.key(), refusal)));
        } catch (InterruptedIOException ended) {
            throw ended;
        } catch (IOException fault) {
            return new Tried(Optional.empty(), Optional.of(new Trouble(request.key(), fault)));
        }
    }

    /** Throws the first trouble, for whoever wants all passes or none. */
    public PassSet orRaise() throws IOException, Refusal {
        if (!troubles.isEmpty()) {
            troubles.get(0).raise();
        }
        return this;
    }

    /** True if the sheet has no printed pass and no shadows of figures. */
    public boolean isEmpty() {
        return prepared.isEmpty() && figureLight.isEmpty();
    }

    /** The same with the light that arrives past figures. */
    public PassSet with(Optional<FigureLight> light) {
        return new PassSet(prepared, troubles, light);
    }

    /** By what the light of the passes is known: their files, where they lie, and the figures; not how they look. */
    public List<Object> content() {
        List<Object> content = new ArrayList<>();
        prepared.forEach(pass -> content.add(List.of(
                pass.request().role(), pass.pixels().content(), pass.placement().passToSheet())));
        figureLight.ifPresent(light -> content.add(light.content()));
        return content;
    }

    /** Where the passes lie. */
    public List<PassPlacement> placements() {
        return prepared.stream()
                .map(pass -> new PassPlacement(pass.file(), pass.placement()))
                .toList();
    }

    /** What should be known of the passes at any resolution. */
    public List<Finding> findings() {
        List<Finding> findings = new ArrayList<>();
        for (PreparedPass pass : prepared) {
            if (pass.pinned().doubtful()) {
                findings.add(new Finding(
                        Finding.Severity.WARNING,
                        pass.request().key(),
                        pass.file() + ": " + pass.placement().message()));
            }
            if (pass.whiteMissing()) {
                findings.add(new Finding(
                        Finding.Severity.WARNING,
                        pass.request().key(),
                        pass.file()
                                + ": no lit white was found in it, so its tones are taken as they are; give 'white: as-is'"
                                + " if that is meant"));
            }
            for (String note : pass.notes()) {
                findings.add(new Finding(Finding.Severity.NOTE, pass.request().key(), pass.file() + ": " + note));
            }
        }
        return findings;
    }

    /** Passes whose pixels are too few for a resolution. */
    public List<Finding> softAt(double dpi) {
        return prepared.stream()
                .filter(pass -> pass.isSoftAt(dpi))
                .map(pass -> new Finding(
                        Finding.Severity.WARNING,
                        pass.request().key(),
                        String.format(
                                Locale.ROOT,
                                "%s: has %.0f pixels per inch at this size, so its edges will look soft at %.0f; render it larger",
                                pass.file(),
                                pass.ppi(),
                                dpi)))
                .toList();
    }

    /** The channels that show the passes truly. */
    public int channels() {
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
    public void blend(
            Canvas canvas, int channels, List<? extends LightSink> sinks, int stripRows, DoubleConsumer progress)
            throws IOException {
        int threads = Runtime.getRuntime().availableProcessors();
        List<PassPixels.Rows> loans = new ArrayList<>();
        try {
            List<ShownPass> shown = new ArrayList<>();
            for (PreparedPass pass : prepared) {
                PassPixels.Rows rows = pass.rows(canvas, stripRows, threads);
                loans.add(rows);
                shown.add(pass.placed(rows).on(canvas).as(pass.look()));
            }
            figureLight.ifPresent(
                    light -> shown.add(covering(canvas, light.on(canvas)).as(figureLook())));
            Blend blend = new Blend(canvas, shown, channels, shadowTone());
            Underlay.render(blend, sinks, stripRows, threads, progress);
        } finally {
            for (PassPixels.Rows rows : loans) {
                rows.close();
            }
        }
    }

    /** How the figures' light is to look. It is printed as the building's shadow is: both are the same sun's. */
    public PassLook figureLook() {
        return shadow().map(pass -> new PassLook(
                        pass.look().opacity(),
                        WhitePoint.ONE,
                        ToneCurve.STRAIGHT,
                        pass.look().tint(),
                        Optional.empty()))
                .orElse(PassLook.plain(OPACITY_ALONE));
    }

    /** Figures' light that covers the sheet pixel by pixel of a canvas's grid. */
    public static LaidPass covering(Canvas canvas, LightRows light) {
        return new PlacedPass(FIGURES_ROLE, light, canvas.toSheet()).on(canvas);
    }

    private Optional<PreparedPass> shadow() {
        return prepared.stream()
                .filter(pass -> pass.request().role() == PassRole.SHADOW)
                .findFirst();
    }

    /** The light of the building's full shadow as it is printed, its opacity left aside; 0 where it is not known. */
    public double shadowTone() {
        return shadow().filter(pass -> pass.shadowTone().isPresent())
                .map(pass -> pass.look().tone().bend((float) pass.shadowTone().getAsDouble()))
                .orElse(0f);
    }
}
