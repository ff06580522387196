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
import org.adumbrate.geometry.PixelSize;
import org.adumbrate.geometry.SheetSize;
import org.adumbrate.raster.encode.StripEncoder;
import org.adumbrate.registration.LinePattern;
import org.adumbrate.underlay.Blend;
import org.adumbrate.underlay.PassRole;
import org.adumbrate.underlay.PlacedPass;
import org.adumbrate.underlay.Underlay;

/** The printed passes of a sheet: opened, then placed and measured, then blended as often as pictures are wanted. */
final class PassSet implements Closeable {
    private final SheetSize sheet;
    private final List<PassSource> sources = new ArrayList<>();
    private List<PreparedPass> prepared = List.of();

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

    /** True if the sheet has no printed pass. */
    boolean isEmpty() {
        return sources.isEmpty();
    }

    /** Keeps passes of moderate size in memory once decoded, for when they are read more than once. */
    void hold() throws IOException {
        for (PassSource source : sources) {
            source.holdIfModerate();
        }
    }

    /**
     * Places and measures all passes at once.
     *
     * @param lines the lines that they are placed by; by their ratio alone if there are none
     * @throws Refusal if one does not belong to the sheet
     */
    void prepare(Optional<LinePattern> lines) throws IOException, Refusal {
        boolean joins = sources.stream().anyMatch(source -> source.request().role() == PassRole.FIGURE_SHADOW);
        List<Callable<PreparedPass>> tasks = new ArrayList<>();
        for (PassSource source : sources) {
            tasks.add(() -> PreparedPass.of(source, sheet, lines, joins));
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
     * Blends the passes into pictures of one size.
     *
     * @param canvas the pictures' size
     * @param channels their channels
     * @param encoders the pictures; finishing them is left to the caller
     * @param stripRows rows of a strip
     */
    void blend(
            PixelSize canvas,
            int channels,
            List<? extends StripEncoder> encoders,
            int stripRows,
            DoubleConsumer progress)
            throws IOException {
        int threads = Runtime.getRuntime().availableProcessors();
        List<PassSource.Rows> loans = new ArrayList<>();
        try {
            List<PlacedPass> placed = new ArrayList<>();
            for (PreparedPass pass : prepared) {
                PassSource.Rows rows = pass.source()
                        .blend(Blend.window(
                                sheet,
                                canvas,
                                pass.placement().passToSheet(),
                                pass.source().info().size(),
                                stripRows,
                                threads));
                loans.add(rows);
                placed.add(new PlacedPass(
                        pass.source().request().role(),
                        rows.rows(),
                        pass.placement().passToSheet(),
                        pass.look()));
            }
            Blend blend = new Blend(sheet, canvas, placed, channels, shadowTone());
            Underlay.render(blend, encoders, stripRows, threads, progress);
        } finally {
            for (PassSource.Rows rows : loans) {
                rows.close();
            }
        }
    }

    private double shadowTone() {
        return prepared.stream()
                .filter(pass -> pass.source().request().role() == PassRole.SHADOW)
                .mapToDouble(pass -> pass.shadowTone().orElse(0))
                .findFirst()
                .orElse(0);
    }

    @Override
    public void close() throws IOException {
        for (PassSource source : sources) {
            source.close();
        }
    }
}
