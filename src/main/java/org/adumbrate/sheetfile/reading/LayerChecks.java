package org.adumbrate.sheetfile.reading;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.adumbrate.sheetfile.complaint.Nearest;
import org.adumbrate.sheetfile.complaint.Wording;
import org.adumbrate.sheetfile.form.Notes;

/**
 * That no two layers of the drawing have the same name, and that their order names layers.
 *
 * @param notes what the reading found
 */
record LayerChecks(Notes notes) {
    /** The layer below all others, whatever the order. */
    private static final String LOWEST = "underlay";

    /** Layers that a drawing has of its own, next to those named in the sheet file. */
    private static final List<String> OWN = List.of(
            "cut",
            "cut-backing",
            "cut-hatch",
            "cut-outline",
            "profile",
            "entourage",
            "planting",
            "figures",
            "birds",
            LOWEST);

    /** Those of them that have a place of their own in the order; what stands before and behind each other has one together. */
    private static final List<String> PLACES =
            List.of("profile", "entourage", "cut-backing", "cut-hatch", "cut-outline");

    void run() {
        Map<String, String> taken = new HashMap<>();
        OWN.forEach(layer -> taken.put(layer, "every drawing"));
        List<String> known = new ArrayList<>();
        notes.namesIn("pens").forEach(pen -> claim(pen, "pens." + pen, taken, known));
        notes.namesIn("veils").forEach(veil -> claim(veil + NameUses.FILL, "veils." + veil, taken, known));
        notes.namesIn("planting").forEach(name -> claim(name, "planting." + name, taken, new ArrayList<>()));
        notes.namesIn("birds").forEach(name -> claim(name, "birds." + name, taken, new ArrayList<>()));
        known.addAll(PLACES);
        orderNamesEachOnce(known);
    }

    private void claim(String layer, String path, Map<String, String> taken, List<String> known) {
        String first = taken.putIfAbsent(layer, "'" + path + "'");
        if (first != null) {
            notes.complain(path, "'%s' is the name of a group of %s; choose another".formatted(layer, first));
        }
        known.add(layer);
    }

    private void orderNamesEachOnce(List<String> known) {
        Set<Object> named = new HashSet<>();
        notes.values(NameUses.OF_LAYERS).forEach(layer -> {
            String name = (String) layer.getValue();
            if (name.equals(LOWEST)) {
                notes.complain(layer.getKey(), "the underlay always lies lowest; leave it out");
            } else if (!known.contains(name)) {
                notes.complain(layer.getKey(), Nearest.unknown("layer", name, known));
            } else if (!named.add(name)) {
                notes.complain(layer.getKey(), Wording.quoted(name) + " is named already; keep one of the two");
            }
        });
    }
}
