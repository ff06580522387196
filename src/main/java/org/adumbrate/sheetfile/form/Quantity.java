package org.adumbrate.sheetfile.form;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.adumbrate.sheetfile.complaint.Nearest;
import org.adumbrate.sheetfile.complaint.Wording;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.ScalarNode;

/**
 * A number with its unit, or without one. Numbers are decimal as YAML 1.2 has them, so {@code 010} is ten.
 *
 * @param measure what is measured
 * @param range the numbers allowed, in the measure's first unit
 */
record Quantity(Measure measure, Range range) implements Form {
    /** A decimal number; good for Java and for ECMA-262 alike, as JSON Schema demands. */
    static final String NUMBER = "[-+]?(?:[0-9]+(?:\\.[0-9]*)?|\\.[0-9]+)(?:[eE][-+]?[0-9]+)?";

    private static final Pattern NUMBER_AND_UNIT = Pattern.compile("(" + NUMBER + ") *([^-+0-9.,\\s]+2?)?");

    /** What two ways to compute the same number may differ by, as a share of it. */
    private static final double ROUNDING = 1e-14;

    /** True for a number, be its unit a known one or not. */
    static boolean isOne(String text) {
        return NUMBER_AND_UNIT.matcher(text.strip()).matches();
    }

    @Override
    public boolean fits(Node node) {
        return node instanceof ScalarNode;
    }

    @Override
    public Optional<?> read(Node node, Cursor at) {
        String text = Cursor.text(node).filter(written -> isQuotedRightly(node)).orElse("");
        Matcher parts = NUMBER_AND_UNIT.matcher(text);
        if (!parts.matches()) {
            return at.unexpected(node, expected() + commaHint(text));
        }
        String unit = Optional.ofNullable(parts.group(2)).orElse("");
        Optional<Double> factor = measure.factor(unit);
        if (factor.isEmpty()) {
            return at.unexpected(node, unitsExpected(unit));
        }
        double number = Double.parseDouble(parts.group(1));
        return checked(number * factor.get(), unit, node, at);
    }

    /** A number that takes no unit takes no quotes either: to all else that reads YAML it would be a text. */
    private boolean isQuotedRightly(Node node) {
        return !measure.units().isEmpty() || ((ScalarNode) node).isPlain();
    }

    private Optional<?> checked(double number, String unit, Node node, Cursor at) {
        if (measure.isShare() && unit.isEmpty() && number > 0 && number <= 1) {
            return at.complain(unclear(number, at.name()));
        }
        boolean isBroken = measure.isWhole() && number != Math.rint(number);
        if (isBroken || !range.holds(number)) {
            String unitToldOf = measure.mainUnit().isEmpty() ? "" : " " + measure.mainUnit();
            return at.unexpected(node, (isBroken ? "a whole number, " : "") + range.told(unitToldOf));
        }
        return Optional.of(measure.of(number));
    }

    private static String unclear(double share, String name) {
        String written = Wording.number(share);
        String percent = Wording.number(Math.round(share * 1e8) / 1e6);
        return "%s is %s, which could mean %s %% or %s %%; write %s or %s %%"
                .formatted(name, written, written, percent, percent, percent);
    }

    private String unitsExpected(String unit) {
        if (measure.units().isEmpty()) {
            return expected();
        }
        List<String> known = measure.unitWords().stream()
                .filter(word -> !"\"°".contains(word))
                .toList();
        return expected() + "; units here: " + Wording.choice(known) + Nearest.hint(unit, known);
    }

    private String commaHint(String text) {
        String pointed = text.replaceFirst(",", ".");
        return isOne(pointed) && !pointed.equals(text) ? "; write " + Wording.quoted(pointed) : "";
    }

    @Override
    public String expected() {
        return measure.expected();
    }

    @Override
    public String measured(String wanted) {
        boolean isBare = wanted.strip().matches(NUMBER) && !measure.mainUnit().isEmpty();
        return isBare ? wanted.strip() + " " + measure.mainUnit() : wanted;
    }

    @Override
    public Allowed allowed() {
        return new Allowed(measure.isWhole() ? "integer" : "number", measure.unitWords(), range, List.of());
    }

    /** Keeps the unit that stands there where the wanted number can be told in it with at most six decimals. */
    @Override
    public String restyled(String standing, String wanted) {
        Matcher old = NUMBER_AND_UNIT.matcher(standing.strip());
        Matcher parts = NUMBER_AND_UNIT.matcher(wanted.strip());
        if (!old.matches() || !parts.matches()) {
            return wanted;
        }
        String unit = Optional.ofNullable(old.group(2)).orElse("");
        String wantedUnit = Optional.ofNullable(parts.group(2)).orElse("");
        String tail = standing.strip().substring(old.end(1));
        if (wantedUnit.isEmpty() || wantedUnit.equals(unit)) {
            return parts.group(1) + tail;
        }
        Optional<Double> factor = measure.factor(unit);
        Optional<Double> wantedFactor = measure.factor(wantedUnit);
        if (factor.isEmpty() || wantedFactor.isEmpty()) {
            return wanted;
        }
        double number = Double.parseDouble(parts.group(1));
        double meant = number * wantedFactor.get();
        String told = Wording.number(Math.round(meant / factor.get() * 1e6) / 1e6);
        double error = Math.abs(Double.parseDouble(told) * factor.get() - meant);
        return error <= ROUNDING * Math.abs(meant) ? told + tail : wanted;
    }

    @Override
    public Map<String, Object> schema(Map<String, Object> shared) {
        String number = measure.isWhole() ? "integer" : "number";
        Map<String, Object> schema =
                SchemaJson.object("type", measure.units().isEmpty() ? number : List.of(number, "string"));
        range.describeIn(schema);
        if (measure.isShare()) {
            schema.put("not", SchemaJson.object("type", "number", "exclusiveMinimum", 0, "maximum", 1));
        }
        if (!measure.units().isEmpty()) {
            String units = measure.unitWords().stream().collect(Collectors.joining("|"));
            schema.put("pattern", "^" + NUMBER + " *(?:" + units + ")?$");
        }
        return schema;
    }
}
