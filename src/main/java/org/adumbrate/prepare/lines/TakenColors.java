package org.adumbrate.prepare.lines;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.adumbrate.geometry.Srgb;
import org.adumbrate.linework.Stroke;
import org.adumbrate.linework.sort.ColorRendering;
import org.adumbrate.linework.sort.ColorSort;
import org.adumbrate.linework.sort.ColorTally;
import org.adumbrate.prepare.finding.Finding;
import org.adumbrate.sheetfile.Sheet;
import org.adumbrate.sheetfile.Veil;

/**
 * Colours that a sheet file states and that no stroke has, while the strokes of one other colour have a known rendering of it: its
 * grey, its CMYK. These are taken for it and that is said; where it is open which are meant, none are.
 *
 * @param colors which stated colour a colour of the files is taken for
 * @param findings what there is to say
 */
record TakenColors(Map<Srgb, Srgb> colors, List<Finding> findings) {
    /** What a sheet file states as a colour of strokes, by its key. */
    static Map<String, Srgb> stated(Sheet sheet) {
        Map<String, Srgb> stated = new LinkedHashMap<>();
        sheet.pens().forEach((name, pen) -> stated.put("pens." + name, pen.color()));
        sheet.cut().ifPresent(cut -> stated.put("cut", cut.color()));
        sheet.heights().ifPresent(heights -> stated.put("heights", heights.color()));
        sheet.veils().forEach((name, veil) -> {
            if (veil instanceof Veil.ByLines shown) {
                stated.put("veils." + name, shown.color());
            }
        });
        return stated;
    }

    /**
     * Looks for stated colours that files lack.
     *
     * @param files that are looked into
     * @param wanted the colours that they should hold, by their keys
     * @param stated all colours of the sheet file: what stands for one of them is never taken for another
     */
    static TakenColors of(List<LaidLines> files, Map<String, Srgb> wanted, Map<String, Srgb> stated) {
        Map<Srgb, ColorTally> found = tallies(files);
        Map<Srgb, List<String>> missing = new LinkedHashMap<>();
        wanted.forEach((key, color) -> {
            if (found.keySet().stream().noneMatch(one -> isNear(one, color))) {
                missing.computeIfAbsent(color, c -> new ArrayList<>()).add(key);
            }
        });
        List<ColorTally> free = found.values().stream()
                .filter(one -> stated.values().stream().noneMatch(color -> isNear(one.color(), color)))
                .sorted(ColorTally.LONGEST_FIRST)
                .toList();
        if (missing.isEmpty() || free.isEmpty()) {
            return new TakenColors(Map.of(), List.of());
        }
        return new Search(missing, free).taken();
    }

    private static Map<Srgb, ColorTally> tallies(List<LaidLines> files) {
        Map<Srgb, ColorTally> tallies = new TreeMap<>();
        for (LaidLines laid : files) {
            for (Stroke stroke : laid.lines().strokes()) {
                ColorTally one = new ColorTally(stroke.color(), 1, stroke.path().length());
                tallies.merge(stroke.color(), one, ColorTally::plus);
            }
        }
        return tallies;
    }

    private static boolean isNear(Srgb one, Srgb other) {
        return one.distanceTo(other) <= ColorSort.TOLERANCE;
    }

    private static final class Search {
        private final Map<Srgb, List<String>> missing;
        /** By the shade drawn most, each with its shades. */
        private final Map<Srgb, List<ColorTally>> families = new LinkedHashMap<>();

        private final Map<Srgb, Srgb> taken = new LinkedHashMap<>();
        private final List<Finding> findings = new ArrayList<>();

        Search(Map<Srgb, List<String>> missing, List<ColorTally> free) {
            this.missing = missing;
            Map<Srgb, Srgb> heads = ColorSort.families(free);
            free.forEach(one -> families.computeIfAbsent(heads.get(one.color()), head -> new ArrayList<>())
                    .add(one));
        }

        TakenColors taken() {
            missing.forEach((color, keys) -> {
                Map<Srgb, ColorRendering> candidates = candidates(color);
                if (!candidates.isEmpty()) {
                    keys.forEach(key -> findings.add(
                            new Finding(Finding.Severity.WARNING, key, key + ": " + told(color, candidates))));
                }
            });
            return new TakenColors(taken, findings);
        }

        private Map<Srgb, ColorRendering> candidates(Srgb color) {
            Map<Srgb, ColorRendering> candidates = new LinkedHashMap<>();
            families.forEach((head, family) -> family.stream()
                    .map(one -> ColorRendering.of(color, one.color()))
                    .flatMap(Optional::stream)
                    .findFirst()
                    .ifPresent(rendering -> candidates.put(head, rendering)));
            return candidates;
        }

        private String told(Srgb color, Map<Srgb, ColorRendering> candidates) {
            String none = "no stroke has the colour " + color + "; ";
            String all = candidates.entrySet().stream()
                    .map(one -> one.getKey() + " (" + one.getValue().word() + ")")
                    .collect(Collectors.joining(" and "));
            if (candidates.size() > 1) {
                return none + all
                        + " may each be another rendering of it, and neither is taken; state the one that is meant";
            }
            Srgb head = candidates.keySet().iterator().next();
            List<String> rivals = missing.keySet().stream()
                    .filter(other -> !other.equals(color) && candidates(other).containsKey(head))
                    .map(other -> String.join(", ", missing.get(other)))
                    .toList();
            if (!rivals.isEmpty()) {
                return none + all + " may be another rendering of it, or of what " + String.join(", ", rivals)
                        + " states, and is not taken; state which is meant";
            }
            List<ColorTally> family = families.get(head);
            family.forEach(one -> taken.put(one.color(), color));
            int strokes = family.stream().mapToInt(ColorTally::strokes).sum();
            return none + all + " is another rendering of it, and "
                    + (strokes == 1 ? "the 1 stroke of it is" : "the " + strokes + " strokes of it are")
                    + " taken; if that is right, state color: \"" + head + "\"";
        }
    }
}
