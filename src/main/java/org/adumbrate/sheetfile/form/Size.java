package org.adumbrate.sheetfile.form;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.adumbrate.geometry.Length;
import org.adumbrate.geometry.SheetSize;
import org.adumbrate.sheetfile.complaint.Nearest;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.ScalarNode;

/** The size of a sheet: width x height with a unit, or a paper by name and the way it lies. */
record Size() implements Form {
    private static final Map<String, Double> UNITS =
            Map.of("mm", 1.0, "cm", 10.0, "in", Length.MM_PER_INCH, "\"", Length.MM_PER_INCH);

    /** The largest side of a PDF page: 14 400 units of 1/72 in (ISO 32000-1, annex C.2). */
    private static final double LARGEST_MM = 14_400 * Length.MM_PER_POINT;

    private static final double SMALLEST_MM = 10;

    private static final String UNIT = "(?:mm|cm|in|\")";
    private static final String NUMBER = "[0-9]+(?:\\.[0-9]*)?";
    private static final String MEASURED = NUMBER + " *" + UNIT + "? *[x×] *" + NUMBER + " *" + UNIT;
    private static final Pattern PARTS =
            Pattern.compile("(" + NUMBER + ") *([^0-9x×]*?) *[x×] *(" + NUMBER + ") *([^0-9]*)");

    @Override
    public boolean fits(Node node) {
        return node instanceof ScalarNode;
    }

    @Override
    public Optional<?> read(Node node, Cursor at) {
        String text = Cursor.text(node).orElse("");
        Matcher parts = PARTS.matcher(text);
        if (parts.matches()) {
            return measured(parts, node, at);
        }
        Optional<SheetSize> paper = Paper.named(text);
        return paper.isPresent() ? paper : at.unexpected(node, expected() + paperHint(text));
    }

    private Optional<?> measured(Matcher parts, Node node, Cursor at) {
        String heightUnit = parts.group(4);
        if (heightUnit.isEmpty()) {
            String bare = parts.group(1) + " x " + parts.group(3);
            return at.unexpected(node, "a unit: %s in, %s mm or %s cm".formatted(bare, bare, bare));
        }
        String widthUnit = parts.group(2).isEmpty() ? heightUnit : parts.group(2);
        for (String unit : List.of(widthUnit, heightUnit)) {
            if (!UNITS.containsKey(unit)) {
                return at.unexpected(node, "a size in mm, cm or in" + Nearest.hint(unit, List.of("mm", "cm", "in")));
            }
        }
        double width = Double.parseDouble(parts.group(1)) * UNITS.get(widthUnit);
        double height = Double.parseDouble(parts.group(3)) * UNITS.get(heightUnit);
        return Math.min(width, height) < SMALLEST_MM || Math.max(width, height) > LARGEST_MM
                ? at.unexpected(node, "sides of 10 to 5080 mm, the largest that a PDF page may have")
                : Optional.of(new SheetSize(width, height));
    }

    private static String paperHint(String text) {
        return Paper.named(text + " landscape").isPresent()
                ? "; write '%s landscape' or '%s portrait'".formatted(text, text)
                : Nearest.hint(text, Paper.names());
    }

    @Override
    public String expected() {
        return "a size such as 17 x 11 in, A3 landscape, ANSI B landscape or Arch D portrait";
    }

    @Override
    public Allowed allowed() {
        return Allowed.of("size", Paper.names());
    }

    @Override
    public Map<String, Object> schema(Map<String, Object> shared) {
        return SchemaJson.object("type", "string", "pattern", "^(?:" + MEASURED + "|" + Paper.PATTERN + ")$");
    }
}
