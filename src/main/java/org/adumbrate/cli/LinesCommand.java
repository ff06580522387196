package org.adumbrate.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.adumbrate.fault.Refusal;
import org.adumbrate.geometry.Srgb;
import org.adumbrate.json.Json;
import org.adumbrate.linework.LeftOut;
import org.adumbrate.linework.LineSheet;
import org.adumbrate.linework.ReadingNote;
import org.adumbrate.linework.pens.PenSuggestion;
import org.adumbrate.linework.pens.PenSuggestions;
import org.adumbrate.linework.read.LineSheets;
import org.adumbrate.linework.sort.ColorTally;
import org.adumbrate.output.FileClaims;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Tells what a line sheet holds. */
@Command(
        name = "lines",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        description =
                "Tell what a line sheet holds: its page, how many strokes of what length in each colour, and which pen"
                        + " may suit it: a guess by names, shades and strokes, with its reason. What areas hide that are painted"
                        + " over the lines is left out, and told, as is everything that is not taken as a line. Thin filled shapes"
                        + " count as lines, and dashes exported one by one as dashed lines.",
        footer = {"", "Example:", "  adumbrate lines passes/kiln-yard/lines.pdf"})
final class LinesCommand implements Callable<Integer> {
    @Mixin
    private CommonOptions common;

    @Parameters(index = "0", paramLabel = "LINES", description = "The line sheet, PDF or SVG.")
    private Path lines;

    @Override
    public Integer call() throws IOException, Refusal {
        common.guard(new FileClaims().reads(lines));
        LineSheet sheet = LineSheets.read(lines);
        Map<Srgb, PenSuggestion> pens = new HashMap<>();
        for (PenSuggestion pen : PenSuggestions.of(sheet)) {
            pen.colors().forEach(color -> pens.put(color, pen));
        }
        if (common.printsForPeople()) {
            common.out()
                    .printf(
                            "%s: %s, %d strokes%n",
                            lines, sheet.page(), sheet.strokes().size());
            for (ColorTally tally : ColorTally.of(sheet)) {
                common.out()
                        .printf(
                                "  %s %7d strokes %10.1f mm  %s%n",
                                tally.color(), tally.strokes(), tally.lengthMm(), guess(pens.get(tally.color())));
            }
            if (!sheet.hidden().isNothing()) {
                common.out()
                        .printf(
                                "  areas painted over them hide %s, %.1f mm in all%n",
                                sheet.hidden().told(), sheet.hidden().lengthMm());
            }
            sheet.recovered().told().forEach(clause -> common.out().printf("  %s%n", clause));
            printKinds("not taken as lines", sheet, kind -> !kind.isTakenOtherwise());
            printKinds("lines may look otherwise in the file", sheet, LeftOut.Kind::isTakenOtherwise);
            sheet.remarks().forEach(remark -> common.out().printf("  %s%n", remark.told()));
            boolean otherPage = sheet.remarks().stream().anyMatch(remark -> remark.kind() == ReadingNote.Kind.PAGE);
            if (sheet.pages() > 1 && !otherPage) {
                common.out().printf("  only the first of its %d pages was read%n", sheet.pages());
            }
        }
        common.writeJson(Json.object(
                "sheet",
                Results.sheet(lines, sheet.page()),
                "colors",
                ColorTally.of(sheet).stream()
                        .map(tally -> Json.object(
                                "color", tally.color(),
                                "strokes", tally.strokes(),
                                "lengthMm", tally.lengthMm(),
                                "pen", pen(pens.get(tally.color()))))
                        .toList(),
                "otherMarks",
                sheet.otherMarks(),
                "leftOut",
                sheet.leftOut().stream()
                        .map(left -> Json.object(
                                "kind", left.kind().word(), "count", left.count(), "areaMm2", left.areaMm2()))
                        .toList(),
                "hidden",
                Json.object(
                        "strokes", sheet.hidden().strokes(),
                        "cut", sheet.hidden().cut(),
                        "lengthMm", sheet.hidden().lengthMm()),
                "recovered",
                Json.object(
                        "shapes", sheet.recovered().shapes(),
                        "wide", sheet.recovered().wide(),
                        "widestMm", sheet.recovered().widestMm(),
                        "areas", sheet.recovered().areas(),
                        "dashes", sheet.recovered().dashes(),
                        "dashedLines", sheet.recovered().dashed()),
                "pages",
                sheet.pages(),
                "remarks",
                sheet.remarks().stream()
                        .map(remark -> Json.object("kind", remark.kind().word(), "text", remark.told()))
                        .toList()));
        return ExitCode.DONE;
    }

    private void printKinds(String words, LineSheet sheet, Predicate<LeftOut.Kind> wanted) {
        String told = sheet.leftOut().stream()
                .filter(left -> wanted.test(left.kind()))
                .map(LeftOut::told)
                .collect(Collectors.joining(", "));
        if (!told.isEmpty()) {
            common.out().printf("  %s: %s%n", words, told);
        }
    }

    private static String guess(PenSuggestion pen) {
        String width =
                pen.widthMm().isPresent() ? ", " + Numbers.plain(pen.widthMm().getAsDouble()) + " mm" : ", not drawn";
        return "perhaps " + pen.role().word() + width + ": " + pen.reason();
    }

    private static Map<String, Object> pen(PenSuggestion pen) {
        Map<String, Object> object = Json.object("role", pen.role().word(), "reason", pen.reason());
        pen.widthMm().ifPresent(width -> object.put("widthMm", width));
        return object;
    }
}
