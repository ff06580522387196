package org.adumbrate.sheetfile.form;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.adumbrate.sheetfile.Key;
import org.adumbrate.sheetfile.complaint.Wording;

/**
 * The numbers that a key may hold.
 *
 * @param min the least; minus infinity for no limit
 * @param above must be exceeded; minus infinity for no limit
 * @param max the greatest; infinity for no limit
 * @param choices the only numbers; empty for no such limit
 */
public record Range(double min, double above, double max, List<Double> choices) {
    /** Any number. */
    static final Range ANY =
            new Range(Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY, List.of());

    /** Coordinates in mm, also of points that lie well off the sheet. */
    static final Range ON_SHEET = new Range(-100_000, Double.NEGATIVE_INFINITY, 100_000, List.of());

    /** Widths and heights in mm. */
    static final Range OF_SHEET_SIDE = new Range(Double.NEGATIVE_INFINITY, 0, 100_000, List.of());

    static Range of(Key key) {
        return new Range(
                key.min(),
                key.above(),
                key.max(),
                Arrays.stream(key.choices()).asDoubleStream().boxed().toList());
    }

    boolean holds(double value) {
        return value >= min && value > above && value <= max && (choices.isEmpty() || choices.contains(value));
    }

    /** Such as {@code 0 to 100 %}, with the unit given. */
    String told(String unit) {
        if (!choices.isEmpty()) {
            return Wording.choice(choices.stream().map(Wording::number).toList()) + unit;
        }
        String most = Wording.number(max) + unit;
        return Double.isFinite(above)
                ? "more than " + Wording.number(above) + " and at most " + most
                : Wording.number(min) + " to " + most;
    }

    void describeIn(Map<String, Object> schema) {
        if (!choices.isEmpty()) {
            schema.put("enum", choices);
            return;
        }
        schema.put(Double.isFinite(above) ? "exclusiveMinimum" : "minimum", Double.isFinite(above) ? above : min);
        schema.put("maximum", max);
    }
}
