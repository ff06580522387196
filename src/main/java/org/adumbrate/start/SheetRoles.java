package org.adumbrate.start;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.adumbrate.geometry.SheetSize;
import org.adumbrate.geometry.Srgb;
import org.adumbrate.linework.LineSheet;
import org.adumbrate.linework.pens.LineRole;
import org.adumbrate.linework.pens.PenSuggestion;
import org.adumbrate.linework.pens.PenSuggestions;
import org.adumbrate.linework.sort.ColorTally;

/**
 * What each line sheet is for. The base is the sheet whose colours most of the others show too; what another sheet adds to
 * it tells what that one is for. Names of files are not looked at.
 *
 * @param base the sheet that is drawn
 * @param pens what its colours and those that the others add seem to depict, the longest first
 * @param trees the sheet and the colour of trees
 * @param heights the sheet and the colour of height lines
 * @param unused sheets that are for nothing
 */
record SheetRoles(
        LineSheet base,
        List<PenSuggestion> pens,
        Optional<ColorIn> trees,
        Optional<ColorIn> heights,
        List<Unused> unused) {
    /** Pages are of one size if their sides differ by no more than this, in mm. */
    private static final double SAME_PAGE_MM = 1;

    /** A colour of a sheet. */
    record ColorIn(LineSheet sheet, Srgb color, String reason) {}

    /** @param sheets at least one */
    static SheetRoles of(List<LineSheet> sheets) {
        List<Unused> unused = new ArrayList<>();
        List<LineSheet> together = ofOnePage(sheets, unused);
        LineSheet base = base(together);
        List<LineSheet> ordered = new ArrayList<>(together);
        ordered.remove(base);
        ordered.add(0, base);
        return new Sorting(ordered, unused).roles();
    }

    /** The sheets of the page that most line is drawn on. */
    private static List<LineSheet> ofOnePage(List<LineSheet> sheets, List<Unused> unused) {
        SheetSize page = sheets.stream()
                .max(Comparator.comparingDouble(one -> sheets.stream()
                        .filter(other -> isSame(one.page(), other.page()))
                        .mapToDouble(SheetRoles::lengthMm)
                        .sum()))
                .orElseThrow()
                .page();
        List<LineSheet> together = new ArrayList<>();
        for (LineSheet sheet : sheets) {
            if (isSame(sheet.page(), page)) {
                together.add(sheet);
            } else {
                unused.add(new Unused(
                        sheet.file(), "its page is " + sheet.page() + " and that of the other lines " + page));
            }
        }
        return together;
    }

    private static boolean isSame(SheetSize one, SheetSize other) {
        return Math.abs(one.widthMm() - other.widthMm()) <= SAME_PAGE_MM
                && Math.abs(one.heightMm() - other.heightMm()) <= SAME_PAGE_MM;
    }

    private static double lengthMm(LineSheet sheet) {
        return ColorTally.of(sheet).stream().mapToDouble(ColorTally::lengthMm).sum();
    }

    /**
     * Height lines set aside, the sheet with the most colours, times the number of sheets that have all of these; then that
     * with the fewest height lines, then that with the most line.
     */
    private static LineSheet base(List<LineSheet> sheets) {
        List<PenSuggestion> pens = PenSuggestions.of(unnamed(sheets));
        return sheets.stream()
                .max(Comparator.comparingLong((LineSheet one) -> drawn(one, pens)
                                        .size()
                                * sheets.stream()
                                        .filter(other -> drawn(other, pens).containsAll(drawn(one, pens)))
                                        .count())
                        .thenComparingInt(
                                one -> drawn(one, pens).size() - all(one, pens).size())
                        .thenComparingDouble(SheetRoles::lengthMm)
                        .thenComparing(one -> one.file().toString(), Comparator.reverseOrder()))
                .orElseThrow();
    }

    /** The same sheets under names that say nothing, so that only their content is judged. */
    private static List<LineSheet> unnamed(List<LineSheet> sheets) {
        return sheets.stream().map(one -> one.named(Path.of("sheet"))).toList();
    }

    private static Set<Srgb> all(LineSheet sheet, List<PenSuggestion> pens) {
        Set<Srgb> shown = new LinkedHashSet<>();
        for (PenSuggestion pen : pens) {
            if (ColorTally.of(sheet).stream().anyMatch(tally -> pen.colors().contains(tally.color()))) {
                shown.add(pen.color());
            }
        }
        return shown;
    }

    private static Set<Srgb> drawn(LineSheet sheet, List<PenSuggestion> pens) {
        Set<Srgb> shown = all(sheet, pens);
        pens.stream().filter(pen -> pen.role() == LineRole.HEIGHT_LINES).forEach(pen -> shown.remove(pen.color()));
        return shown;
    }

    /** Goes through the sheets, the base first. */
    private static final class Sorting {
        private final List<LineSheet> sheets;
        private final List<PenSuggestion> pens;
        private final List<Unused> unused;

        Sorting(List<LineSheet> sheets, List<Unused> unused) {
            this.sheets = sheets;
            this.pens = PenSuggestions.of(unnamed(sheets));
            this.unused = unused;
        }

        SheetRoles roles() {
            LineSheet base = sheets.get(0);
            Optional<ColorIn> heights = first(LineRole.HEIGHT_LINES);
            Optional<ColorIn> trees = first(LineRole.PLANTING);
            for (LineSheet other : sheets.subList(1, sheets.size())) {
                boolean isUsed = heights.filter(found -> found.sheet().file().equals(other.file()))
                                .isPresent()
                        || trees.filter(found -> found.sheet().file().equals(other.file()))
                                .isPresent();
                if (!isUsed) {
                    unused.add(new Unused(other.file(), reason(base, other)));
                }
            }
            Set<Srgb> shown = all(base, pens);
            trees.ifPresent(found -> shown.add(found.color()));
            List<PenSuggestion> kept =
                    pens.stream().filter(pen -> shown.contains(pen.color())).toList();
            return new SheetRoles(base, kept, trees, heights, unused);
        }

        /** Where the most drawn colour of a role is shown: the first of the sheets that has it. */
        private Optional<ColorIn> first(LineRole role) {
            return pens.stream().filter(pen -> pen.role() == role).findFirst().flatMap(pen -> sheets.stream()
                    .filter(sheet -> all(sheet, pens).contains(pen.color()))
                    .findFirst()
                    .map(sheet -> new ColorIn(sheet, pen.color(), pen.reason())));
        }

        private String reason(LineSheet base, LineSheet other) {
            Set<Srgb> added = all(other, pens);
            added.removeAll(all(base, pens));
            return added.isEmpty()
                    ? "it shows no colour that " + base.file().getFileName() + " does not show"
                    : "it adds the colour " + added.iterator().next()
                            + ", which looks neither like trees nor like height lines";
        }
    }
}
