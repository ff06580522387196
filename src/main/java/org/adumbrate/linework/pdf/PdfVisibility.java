package org.adumbrate.linework.pdf;

import java.util.ArrayDeque;
import java.util.Collections;
import java.util.Deque;
import java.util.IdentityHashMap;
import java.util.Optional;
import java.util.Set;
import org.adumbrate.linework.clip.TooIntricateException;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.graphics.optionalcontent.PDOptionalContentProperties;
import org.apache.pdfbox.pdmodel.graphics.optionalcontent.PDOptionalContentProperties.BaseState;

/** The layers (optional content, ISO 32000-1, 8.11) that the content is in at the moment, and whether it shows. */
final class PdfVisibility {
    private static final COSName VISIBILITY_POLICY = COSName.getPDFName("P");

    private record Level(Optional<String> name, boolean hidden) {}

    /** A drawing has some dozens of layers, and expressions of a few terms. */
    private static final int MOST_TERMS = 100_000;

    private final Optional<PDOptionalContentProperties> properties;
    private final Set<COSDictionary> on;
    private final Set<COSDictionary> off;
    private final IdentityHashMap<COSDictionary, Boolean> shown = new IdentityHashMap<>();
    private final Deque<Level> levels = new ArrayDeque<>();
    private int terms;

    PdfVisibility(Optional<PDOptionalContentProperties> properties) {
        this.properties = properties;
        on = listed(COSName.ON);
        off = listed(COSName.OFF);
        levels.push(new Level(Optional.empty(), false));
    }

    /** The name of the innermost layer. */
    Optional<String> name() {
        return levels.element().name;
    }

    /** True while a layer that the document does not show at first is open. */
    boolean hidden() {
        return levels.element().hidden;
    }

    /** How many levels are open. */
    int depth() {
        return levels.size();
    }

    /** Opens a level for marked content that is no layer. */
    void open() {
        levels.push(levels.element());
    }

    /** Opens a level for a layer or a combination of layers. */
    void open(COSDictionary group) {
        Level outer = levels.element();
        levels.push(new Level(nameOf(group).or(outer::name), outer.hidden || !shows(group)));
    }

    /** Closes levels until no more than this many are open, the outermost one always staying. */
    void closeTo(int depth) {
        while (levels.size() > Math.max(1, depth)) {
            levels.pop();
        }
    }

    private static Optional<String> nameOf(COSDictionary group) {
        if (!isMembership(group)) {
            return Optional.ofNullable(group.getString(COSName.NAME));
        }
        COSArray members = members(group);
        return members.size() == 0 || !(members.getObject(0) instanceof COSDictionary first)
                ? Optional.empty()
                : Optional.ofNullable(first.getString(COSName.NAME));
    }

    private boolean shows(COSDictionary group) {
        if (!isMembership(group)) {
            return groupShows(group);
        }
        Boolean known = shown.get(group);
        if (known == null) {
            known = membershipShows(group);
            shown.put(group, known);
        }
        return known;
    }

    private boolean groupShows(COSDictionary group) {
        boolean base = properties.isEmpty() || properties.get().getBaseState() != BaseState.OFF;
        return on.contains(group) || (base && !off.contains(group));
    }

    /** The layers that the default configuration lists under a key, by their identity. */
    private Set<COSDictionary> listed(COSName key) {
        Set<COSDictionary> groups = Collections.newSetFromMap(new IdentityHashMap<>());
        COSDictionary configuration = properties
                .map(all -> all.getCOSObject().getCOSDictionary(COSName.D))
                .orElse(null);
        COSArray list = configuration == null ? null : configuration.getCOSArray(key);
        for (int k = 0; list != null && k < list.size(); k++) {
            if (list.getObject(k) instanceof COSDictionary group) {
                groups.add(group);
            }
        }
        return groups;
    }

    private boolean membershipShows(COSDictionary membership) {
        COSArray expression = membership.getCOSArray(COSName.VE);
        if (expression != null && expression.size() > 0) {
            return holds(expression);
        }
        int on = 0;
        COSArray members = members(membership);
        for (int k = 0; k < members.size(); k++) {
            on += holds(members.getObject(k)) ? 1 : 0;
        }
        boolean any = on > 0;
        boolean all = on == members.size();
        return members.size() == 0
                || switch (membership.getNameAsString(VISIBILITY_POLICY, "AnyOn")) {
                    case "AllOn" -> all;
                    case "AnyOff" -> !all;
                    case "AllOff" -> !any;
                    default -> any;
                };
    }

    /** A visibility expression: a layer, or And, Or, Not and what they join. */
    private boolean holds(COSBase expression) {
        if (++terms > MOST_TERMS) {
            throw new TooIntricateException(
                    "has layers whose visibility takes more than " + MOST_TERMS + " terms to tell");
        }
        if (expression instanceof COSDictionary group) {
            return groupShows(group);
        }
        if (!(expression instanceof COSArray array) || array.size() < 2) {
            return true;
        }
        boolean first = holds(array.getObject(1));
        boolean any = first;
        boolean all = first;
        for (int k = 2; k < array.size(); k++) {
            boolean next = holds(array.getObject(k));
            any |= next;
            all &= next;
        }
        return switch (array.getName(0, "Or")) {
            case "And" -> all;
            case "Not" -> !first;
            default -> any;
        };
    }

    private static boolean isMembership(COSDictionary group) {
        return COSName.OCMD.equals(group.getCOSName(COSName.TYPE));
    }

    /** The groups of a membership: one of them, or a list. */
    private static COSArray members(COSDictionary membership) {
        COSBase groups = membership.getDictionaryObject(COSName.OCGS);
        if (groups instanceof COSArray array) {
            return array;
        }
        COSArray one = new COSArray();
        if (groups instanceof COSDictionary) {
            one.add(groups);
        }
        return one;
    }
}
