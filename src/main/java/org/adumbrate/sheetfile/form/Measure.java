package org.adumbrate.sheetfile.form;

import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;
import org.adumbrate.geometry.Length;
import org.adumbrate.sheetfile.Degrees;
import org.adumbrate.sheetfile.Metres;
import org.adumbrate.sheetfile.Percent;
import org.adumbrate.sheetfile.PrintResolution;
import org.adumbrate.sheetfile.SquareMillimetres;

/**
 * What is measured, and the units that it may be written in.
 *
 * @param expected what to write, as a phrase
 * @param type of the values
 * @param value makes a value of a number of the first unit
 * @param units the units; a bare number is in the first of them
 */
record Measure(String expected, Class<?> type, DoubleFunction<Object> value, List<Unit> units) {
    private static final List<Unit> SHEET_UNITS = List.of(
            new Unit("mm", 1),
            new Unit("cm", 10),
            new Unit("in", Length.MM_PER_INCH),
            new Unit("\"", Length.MM_PER_INCH),
            new Unit("pt", Length.MM_PER_POINT));

    private static final List<Unit> MODEL_UNITS = List.of(
            new Unit("m", 1),
            new Unit("cm", 0.01),
            new Unit("mm", 0.001),
            new Unit("ft", 12 * Length.MM_PER_INCH / 1000),
            new Unit("in", Length.MM_PER_INCH / 1000));

    static final Measure SHEET_COORDINATE =
            new Measure("a number of mm such as 212.5", double.class, mm -> mm, SHEET_UNITS);

    private static final List<Measure> ALL = List.of(
            SHEET_COORDINATE,
            new Measure("a percentage such as 60 %", Percent.class, Percent::new, List.of(new Unit("%", 1))),
            new Measure("a length on the sheet such as 0.25 mm", Length.class, Length::ofMillimetres, SHEET_UNITS),
            new Measure("a length in the model such as 1.65 m", Metres.class, Metres::new, MODEL_UNITS),
            new Measure(
                    "an area on the sheet such as 120 mm2",
                    SquareMillimetres.class,
                    SquareMillimetres::new,
                    List.of(new Unit("mm2", 1), new Unit("mm²", 1), new Unit("cm2", 100), new Unit("cm²", 100))),
            new Measure(
                    "an angle such as 42 deg",
                    Degrees.class,
                    Degrees::new,
                    List.of(new Unit("deg", 1), new Unit("°", 1))),
            new Measure(
                    "a resolution such as 300 dpi",
                    PrintResolution.class,
                    PrintResolution::new,
                    List.of(new Unit("dpi", 1))),
            new Measure(
                    "a whole number of pixels such as 1600 px", int.class, px -> (int) px, List.of(new Unit("px", 1))),
            new Measure("a whole number", int.class, count -> (int) count, List.of()));

    /**
     * @param word as it follows the number
     * @param factor how many of the measure's first unit it stands for
     */
    record Unit(String word, double factor) {}

    /** The measure of a type; of whole numbers, that with the given unit. */
    static Optional<Measure> of(Class<?> type, String unit) {
        Class<?> wanted = type == Integer.class ? int.class : type;
        return ALL.stream()
                .filter(measure -> measure.type == wanted)
                .filter(measure -> !measure.isWhole() || measure.mainUnit().equals(unit))
                .findFirst();
    }

    boolean isWhole() {
        return type == int.class;
    }

    /** True for percentages, where a number up to 1 may be meant as a share of 1. */
    boolean isShare() {
        return type == Percent.class;
    }

    /** The unit of bare numbers; empty for none. */
    String mainUnit() {
        return units.isEmpty() ? "" : units.get(0).word();
    }

    List<String> unitWords() {
        return units.stream().map(Unit::word).toList();
    }

    /** The factor of a unit; 1 where none is written. */
    Optional<Double> factor(String unit) {
        return unit.isEmpty()
                ? Optional.of(1.0)
                : units.stream()
                        .filter(known -> known.word().equals(unit))
                        .map(Unit::factor)
                        .findFirst();
    }

    /** The value for a number of the first unit. */
    Object of(double number) {
        return value.apply(number);
    }
}
