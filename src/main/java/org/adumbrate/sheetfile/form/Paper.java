package org.adumbrate.sheetfile.form;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.adumbrate.geometry.Length;
import org.adumbrate.geometry.SheetSize;

/**
 * The sheets of the trade by name, each with the way it lies, such as {@code A3 landscape}: ISO 216:2007 A0 to A5,
 * ANSI/ASME Y14.1 A to E, and the architectural trade sizes A to E1.
 */
final class Paper {
    /** All names, as a pattern. */
    static final String PATTERN = "(?:A[0-5]|ANSI [A-E]|Arch (?:[A-E]|E1)) (?:portrait|landscape)";

    private static final Map<String, SheetSize> SIZES = sizes();

    private Paper() {}

    static Optional<SheetSize> named(String name) {
        return Optional.ofNullable(SIZES.get(name));
    }

    static List<String> names() {
        return List.copyOf(SIZES.keySet());
    }

    private static Map<String, SheetSize> sizes() {
        Map<String, SheetSize> sizes = new LinkedHashMap<>();
        both(sizes, "A0", 841, 1189, 1);
        both(sizes, "A1", 594, 841, 1);
        both(sizes, "A2", 420, 594, 1);
        both(sizes, "A3", 297, 420, 1);
        both(sizes, "A4", 210, 297, 1);
        both(sizes, "A5", 148, 210, 1);
        both(sizes, "ANSI A", 8.5, 11, Length.MM_PER_INCH);
        both(sizes, "ANSI B", 11, 17, Length.MM_PER_INCH);
        both(sizes, "ANSI C", 17, 22, Length.MM_PER_INCH);
        both(sizes, "ANSI D", 22, 34, Length.MM_PER_INCH);
        both(sizes, "ANSI E", 34, 44, Length.MM_PER_INCH);
        both(sizes, "Arch A", 9, 12, Length.MM_PER_INCH);
        both(sizes, "Arch B", 12, 18, Length.MM_PER_INCH);
        both(sizes, "Arch C", 18, 24, Length.MM_PER_INCH);
        both(sizes, "Arch D", 24, 36, Length.MM_PER_INCH);
        both(sizes, "Arch E", 36, 48, Length.MM_PER_INCH);
        both(sizes, "Arch E1", 30, 42, Length.MM_PER_INCH);
        return sizes;
    }

    private static void both(Map<String, SheetSize> sizes, String name, double shorter, double longer, double mm) {
        sizes.put(name + " landscape", new SheetSize(longer * mm, shorter * mm));
        sizes.put(name + " portrait", new SheetSize(shorter * mm, longer * mm));
    }
}
