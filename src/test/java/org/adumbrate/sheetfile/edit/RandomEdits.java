package org.adumbrate.sheetfile.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.Set;
import java.util.function.Predicate;
import org.adumbrate.sheetfile.form.Allowed;
import org.adumbrate.sheetfile.form.Steps;

/** Edits by chance: most of them such as a person would make, some of them nonsense. */
public final class RandomEdits {
    private static final String NAMED = "(pens|floors|regions|veils|planting|birds)\\.[^.\\[]+";
    private static final Set<String> HOLDERS = Set.of("list", "mapping", "names", "row");

    private final Random random;

    /** @param random decides */
    public RandomEdits(Random random) {
        this.random = random;
    }

    /** An edit of a text with some values. */
    public Edit of(List<SheetValue> values) {
        SheetValue any = pick(values);
        SheetValue written = among(values, value -> value.span().isPresent(), any);
        return switch (random.nextInt(12)) {
            case 0, 1 ->
                new Edit.Remove(among(values, value -> value.span().isPresent() && !value.isNeeded(), any)
                        .key());
            case 2 ->
                new Edit.Rename(
                        among(values, value -> value.key().matches(NAMED), any).key(),
                        pick(List.of("yard", "größe-2", "wall", "7", "a b", "shadow", "true", "neu", "x9")));
            case 3 -> new Edit.Move(written.key(), random.nextInt(4));
            case 4, 5 -> added(values, any);
            case 6, 7 -> new Edit.Set(extended(any.key()), value(any.allowed(), any.key()));
            default -> {
                SheetValue leaf =
                        among(values, value -> !HOLDERS.contains(value.allowed().type()), any);
                yield new Edit.Set(leaf.key(), value(leaf.allowed(), leaf.key()));
            }
        };
    }

    private SheetValue among(List<SheetValue> values, Predicate<SheetValue> wanted, SheetValue otherwise) {
        List<SheetValue> chosen = values.stream().filter(wanted).toList();
        return chosen.isEmpty() || random.nextInt(8) == 0 ? otherwise : pick(chosen);
    }

    private Edit added(List<SheetValue> values, SheetValue any) {
        SheetValue list = among(values, value -> value.allowed().type().equals("list"), any);
        String key = list.key();
        String index = random.nextInt(3) == 0 ? "[" + random.nextInt(3) + "]" : "";
        String last = key.replaceFirst(".*\\.", "");
        String item =
                switch (last) {
                    case "figures" -> "{ outline: walking, foot: [3, 4], floor: " + name(values, "floors") + " }";
                    case "behind" -> name(values, "regions");
                    case "order", "pens" -> name(values, "pens");
                    case "lines" -> pick(List.of("mehr.svg", "{ file: mehr.svg, fit: crop }"));
                    case "dash" -> "1.5";
                    case "outlines" -> "fern";
                    case "sample" -> "{ foot: [1, 2], head: [1, 1], tip: [3, 2] }";
                    case "tone" -> "[100, 99]";
                    default ->
                        pick(List.of(
                                "[" + random.nextInt(100) + ", " + random.nextInt(100) + "]",
                                "[[1, 2], [3, 4], [5, 6]]",
                                "walking"));
                };
        boolean isMapping = list.allowed().type().equals("mapping");
        return new Edit.Add(key + index, isMapping ? "{ opacity: 30, ink: white }" : item);
    }

    private String name(List<SheetValue> values, String mapping) {
        return among(values, value -> value.key().matches(mapping + "\\.[^.\\[]+"), values.get(0))
                .key()
                .replaceFirst("^[^.]*\\.", "")
                .replaceFirst("\\..*", "");
    }

    /** Sometimes a key that is not there and whose parents may be missing. */
    private String extended(String key) {
        return switch (random.nextInt(12)) {
            case 0 -> key + ".ink";
            case 1 -> key + ".fit";
            case 2 -> key + Steps.item(random.nextInt(2));
            case 3 -> "pens.neu-" + random.nextInt(3) + ".color";
            case 4 -> "floors.geschoß.elevation";
            default -> key;
        };
    }

    private String value(Allowed allowed, String key) {
        if (key.endsWith(".color") && key.startsWith("pens.neu")) {
            return "#" + Integer.toHexString(0x100000 + random.nextInt(0xEFFFFF));
        }
        return switch (allowed.type()) {
            case "number" -> number() + unit(allowed);
            case "integer" -> String.valueOf(random.nextInt(20)) + (random.nextBoolean() ? "" : unit(allowed));
            case "flag", "choice", "size" -> random.nextInt(9) == 0 ? "none: such" : pick(allowed.words());
            case "color" ->
                pick(List.of("white", "black", "#fff", "#%06x".formatted(random.nextInt(0x1000000)), "blue"));
            case "name" -> pick(List.of("yard", "hof", "wall", "building", "1", "true", "a, b"));
            case "time" -> "2026-06-2" + random.nextInt(9) + "T1" + random.nextInt(9) + ":00+02:00";
            case "file" -> pick(List.of("grund.pdf", "mehr.svg", "none here.png", "lines.pdf"));
            case "output" ->
                "out/" + pick(List.of("neu 1", "ä", "x#y", "a, b", "c: d", "'q'", "#x", "12"))
                        + allowed.words().stream().findFirst().orElse("");
            case "outline" -> pick(List.of("walking", "standing", "mehr.svg", "no such"));
            case "frame", "row" -> pick(List.of("[1, 2]", "[10.5, 20 mm]", "[1, 2, 3, 4]", "sheet", "[5,6]"));
            case "list" ->
                pick(List.of(
                        "[]",
                        "[[1, 2], [3, 4], [5, 9]]",
                        "[wall]",
                        "wall",
                        "[1, 2, 1, 2]",
                        "[0.5, 2 mm]",
                        "[[0, 0], [100, 100]]"));
            default ->
                pick(List.of(
                        "{}",
                        "{ fit: crop }",
                        "0.5",
                        "{ color: \"#abcdef\", role: glass }",
                        "{ opacity: 33 }",
                        "[1]",
                        "white"));
        };
    }

    private String number() {
        String number = String.format(Locale.ROOT, "%." + random.nextInt(4) + "f", random.nextDouble() * 90);
        return random.nextInt(8) == 0 ? "0" : number;
    }

    private String unit(Allowed allowed) {
        return allowed.units().isEmpty() || random.nextBoolean()
                ? ""
                : (random.nextBoolean() ? " " : "") + pick(allowed.units());
    }

    private <T> T pick(List<T> choices) {
        return new ArrayList<>(choices).get(random.nextInt(choices.size()));
    }
}
