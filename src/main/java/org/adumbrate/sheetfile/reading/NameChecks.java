package org.adumbrate.sheetfile.reading;

import java.util.ArrayList;
import java.util.List;
import org.adumbrate.sheetfile.PenRole;
import org.adumbrate.sheetfile.StatedFaces;
import org.adumbrate.sheetfile.complaint.Nearest;
import org.adumbrate.sheetfile.complaint.Wording;
import org.adumbrate.sheetfile.form.Notes;

/**
 * That every name which a value refers to is given somewhere in the sheet file.
 *
 * @param notes what the reading found
 */
record NameChecks(Notes notes) {
    void run() {
        floors();
        all("region", NameUses.OF_REGIONS, notes.namesIn("regions"));
        all("pen", NameUses.OF_PENS, notes.namesIn("pens"));
        all("pen", NameUses.OF_LINES, lines());
        profileGoesAroundSomething();
    }

    private void floors() {
        List<String> floors = notes.namesIn("floors");
        if (floors.isEmpty()) {
            return; // the floors are then fitted, and named by whoever fits them
        }
        all("floor", NameUses.OF_FLOORS, floors);
        if (floors.size() > 1) {
            notes.values("figures\\[\\d+\\]|planting\\.[^.]+")
                    .filter(item -> !notes.has(item.getKey() + ".floor"))
                    .forEach(item -> notes.complain(
                            item.getKey(), "'" + item.getKey() + "' needs 'floor': " + Wording.choice(floors)));
        }
    }

    /** What may bound a face: what pens draw, and the cut's outline, after which no pen can be called. */
    private List<String> lines() {
        List<String> lines = new ArrayList<>(notes.namesIn("pens"));
        if (notes.has("cut")) {
            lines.add(StatedFaces.CUT);
        }
        return lines;
    }

    private void all(String kind, String path, List<String> known) {
        notes.values(path)
                .filter(name -> !known.contains(name.getValue()))
                .forEach(name -> notes.complain(name.getKey(), Nearest.unknown(kind, (String) name.getValue(), known)));
    }

    private void profileGoesAroundSomething() {
        boolean isAround = notes.has("profile.pens[0]")
                || notes.values("pens\\.[^.]+\\.role").anyMatch(role -> role.getValue() == PenRole.BUILDING);
        if (!isAround) {
            notes.values("profile")
                    .forEach(profile -> notes.complain(
                            profile.getKey(), "'profile' needs 'pens': names of pens, or a pen with role: building"));
        }
    }
}
