package org.adumbrate.sheetfile.edit;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.adumbrate.sheetfile.PenRole;
import org.adumbrate.sheetfile.complaint.Wording;

/** What holds where a value is not written and another one decides: a pen's width by its role, an item's look by the common one. */
final class HoldingDefaults {
    private static final Pattern PEN_WIDTH = Pattern.compile("(pens\\.[^.]+\\.)width");
    private static final Pattern LOOK =
            Pattern.compile("(?:figures\\[\\d+\\]|(?:planting|birds)\\.[^.]+)\\.look\\.([^.]+)");

    private HoldingDefaults() {}

    /** The values with these filled in. */
    static List<SheetValue> in(List<SheetValue> values) {
        Map<String, String> known = new HashMap<>();
        values.forEach(value -> known.put(value.key(), value.value()));
        return values.stream()
                .map(value -> value.span().isPresent() || !value.value().isEmpty()
                        ? value
                        : holding(value.key(), known)
                                .map(text -> new SheetValue(
                                        value.key(),
                                        value.span(),
                                        text,
                                        value.meaning(),
                                        value.allowed(),
                                        value.isNeeded(),
                                        value.isShared()))
                                .orElse(value))
                .toList();
    }

    private static Optional<String> holding(String key, Map<String, String> known) {
        Matcher width = PEN_WIDTH.matcher(key);
        if (width.matches()) {
            return Optional.ofNullable(known.get(width.group(1) + "role"))
                    .flatMap(HoldingDefaults::role)
                    .map(role -> Wording.number(role.width().mm()) + " mm");
        }
        Matcher look = LOOK.matcher(key);
        return look.matches() ? Optional.ofNullable(known.get("entourage." + look.group(1))) : Optional.empty();
    }

    private static Optional<PenRole> role(String word) {
        return Stream.of(PenRole.values())
                .filter(role -> Wording.hyphened(role.name()).equals(word))
                .findFirst();
    }
}
