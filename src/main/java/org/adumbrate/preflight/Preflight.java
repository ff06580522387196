package org.adumbrate.preflight;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import org.adumbrate.fault.Refusal;
import org.adumbrate.preflight.Observation.Severity;
import org.adumbrate.prepare.PreparedSheet;
import org.adumbrate.prepare.memory.Run;

/**
 * What there is to be said of a sheet before it is printed.
 *
 * @param file the sheet file
 * @param observations the gravest first, those of one severity in the order of the sheet file
 */
public record Preflight(Path file, List<Observation> observations) {
    private static final List<Rule> RULES = List.of(
            new RefusalRule(),
            new BuildRule(),
            new PassRule(),
            new PenRule(),
            new HiddenRule(),
            new FigureRule(),
            new SunRule(),
            new ToneRule(),
            new PageRule(),
            new MarginRule(),
            new InkRule());

    private static final Comparator<Observation> ORDER = Comparator.comparing(Observation::severity)
            .thenComparingInt(one -> one.place().line())
            .thenComparingInt(one -> one.place().column());

    /** Copies the list. */
    public Preflight {
        observations = List.copyOf(observations);
    }

    /**
     * Makes a sheet ready and looks at it; nothing is written.
     *
     * @param dpi the resolution that it is printed at; the sheet file's if absent
     * @throws Refusal if a page does not fit the sheet
     * @throws IOException if the sheet file cannot be followed or an input cannot be used
     */
    public static Preflight of(Path file, OptionalDouble dpi) throws IOException, Refusal {
        return of(CheckedSheet.of(file, dpi));
    }

    /**
     * Looks at a sheet that is ready.
     *
     * @param dpi the resolution that it is printed at
     * @param run knows what earlier looks held of it, and ends the work where it is superseded
     * @throws IOException if one of its troubles is an input that cannot be used
     */
    public static Preflight of(PreparedSheet sheet, double dpi, Run run) throws IOException {
        return of(CheckedSheet.of(sheet, dpi, run));
    }

    private static Preflight of(CheckedSheet sheet) {
        Observations found = new Observations(sheet.asked());
        RULES.forEach(rule -> rule.look(sheet, found));
        return new Preflight(
                sheet.asked().file(), found.all().stream().sorted(ORDER).toList());
    }

    /** Those of a severity. */
    public List<Observation> of(Severity severity) {
        return observations.stream().filter(one -> one.severity() == severity).toList();
    }

    /** True if nothing is graver than a note. */
    public boolean passes() {
        return of(Severity.ERROR).isEmpty() && of(Severity.WARNING).isEmpty();
    }
}
