package org.adumbrate.start;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.adumbrate.geometry.Srgb;
import org.adumbrate.linework.pens.LineRole;
import org.adumbrate.linework.pens.PenSuggestion;

/**
 * The pens of a draft, by name: each is named by what its lines seem to depict.
 *
 * @param byName in drawing order, the lightest first
 * @param cut the colour of the cut
 */
record DraftPens(Map<String, PenSuggestion> byName, Optional<PenSuggestion> cut) {
    static DraftPens of(SheetRoles roles) {
        Optional<Srgb> heights = roles.heights().map(SheetRoles.ColorIn::color);
        Optional<PenSuggestion> cut =
                roles.pens().stream().filter(pen -> pen.role() == LineRole.CUT).findFirst();
        List<PenSuggestion> pens = new ArrayList<>(roles.pens());
        pens.removeIf(pen -> heights.filter(pen.colors()::contains).isPresent()
                || cut.filter(pen::equals).isPresent());
        pens.removeIf(pen -> pen.role() == LineRole.PLANTING && isOfTrees(roles, pen));
        pens.sort(Comparator.comparingDouble(DraftPens::width));
        Map<LineRole, Integer> counts = new HashMap<>();
        Map<String, PenSuggestion> byName = new LinkedHashMap<>();
        for (PenSuggestion pen : pens) {
            int count = counts.merge(pen.role(), 1, Integer::sum);
            byName.put(count == 1 ? word(pen) : word(pen) + "-" + count, pen);
        }
        return new DraftPens(byName, cut);
    }

    /** The veil of the trees draws their lines too. */
    private static boolean isOfTrees(SheetRoles roles, PenSuggestion pen) {
        return roles.trees()
                .filter(trees -> pen.colors().contains(trees.color()))
                .isPresent();
    }

    private static double width(PenSuggestion pen) {
        return pen.widthMm().orElse(LineRole.OTHER.widthMm().orElseThrow());
    }

    /** The role as a sheet file says it. Height lines that are not used as such are lines like others. */
    static String word(PenSuggestion pen) {
        return pen.role() == LineRole.HEIGHT_LINES
                ? LineRole.OTHER.word()
                : pen.role().word();
    }

    boolean has(LineRole role) {
        return byName.values().stream().anyMatch(pen -> pen.role() == role);
    }

    Optional<PenSuggestion> first(LineRole role) {
        return byName.values().stream().filter(pen -> pen.role() == role).findFirst();
    }
}
