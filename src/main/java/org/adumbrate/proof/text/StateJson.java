package org.adumbrate.proof.text;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.adumbrate.editing.SheetFileEdits;
import org.adumbrate.json.Json;
import org.adumbrate.sheetfile.complaint.Complaint;
import org.adumbrate.sheetfile.complaint.SheetFileFault;
import org.adumbrate.sheetfile.edit.SheetText;
import org.adumbrate.sheetfile.edit.SheetValue;

/** A state of a sheet as the page hears of it. */
public final class StateJson {
    private StateJson() {}

    /** All of it. */
    public static Map<String, Object> of(TextState state) {
        SheetText text = state.text();
        ShownText shown = ShownText.of(text.text());
        List<SheetValue> values = values(text);
        SheetFileEdits edits = SheetFileEdits.of(text);
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("version", state.version());
        json.put("name", name(text.file()));
        json.put("file", text.file().toAbsolutePath().normalize());
        json.put("text", shown.text());
        json.put(
                "values",
                values.stream().map(value -> ValueJson.of(value, shown)).toList());
        json.put(
                "complaints",
                text.complaints().stream()
                        .map(complaint -> complaint(complaint, text, shown, values))
                        .toList());
        json.put("undo", edits.undoable());
        json.put("redo", edits.redoable());
        json.put("outputs", outputs(text.file(), values));
        json.put("by", state.by() == TextState.By.PAGE ? "page" : "other");
        json.put("trouble", state.trouble());
        return json;
    }

    private static String name(Path file) {
        return file.getFileName().toString().replaceFirst("(\\.sheet)?\\.ya?ml$", "");
    }

    private static List<SheetValue> values(SheetText text) {
        try {
            return text.values();
        } catch (SheetFileFault broken) {
            return List.of(); // the complaints say why
        }
    }

    /** From the place that is complained of to the end of the value there, or of the line. */
    private static Map<String, Object> complaint(
            Complaint complaint, SheetText text, ShownText shown, List<SheetValue> values) {
        int from = offset(text.text(), complaint.line(), complaint.column());
        int to = values.stream()
                .flatMap(value -> value.span().stream())
                .filter(span -> span.from() <= from && from < span.to())
                .min(Comparator.comparingInt(span -> span.to() - span.from()))
                .map(SheetValue.Span::to)
                .orElse(Integer.MAX_VALUE);
        int line = lineEnd(text.text(), from);
        return Json.object(
                "line", complaint.line(),
                "column", complaint.column(),
                "from", shown.at(from),
                "to", shown.at(Math.max(from, Math.min(to, line))),
                "text", complaint.text());
    }

    /** Where a place lies that is given by its line and by its column in code points, both counted from 1. */
    private static int offset(String text, int line, int column) {
        int start = 0;
        for (int k = 1; k < line; k++) {
            int end = text.indexOf('\n', start);
            if (end < 0) {
                break;
            }
            start = end + 1;
        }
        int end = lineEnd(text, start);
        int points = Math.min(column - 1, text.codePointCount(start, end));
        return text.offsetByCodePoints(start, Math.max(0, points));
    }

    private static int lineEnd(String text, int from) {
        int end = from;
        while (end < text.length() && text.charAt(end) != '\n' && text.charAt(end) != '\r') {
            end++;
        }
        return end;
    }

    /** What is delivered by what it is called in the sheet file, and whether it is there. */
    private static List<Map<String, Object>> outputs(Path file, List<SheetValue> values) {
        List<Map<String, Object>> outputs = new ArrayList<>();
        for (Map.Entry<String, Path> output : outputs(values, file).entrySet()) {
            boolean isThere = Files.isRegularFile(output.getValue());
            outputs.add(Json.object(
                    "kind", output.getKey(),
                    "file",
                            Optional.ofNullable(file.toAbsolutePath().getParent())
                                    .map(home -> shown(home, output.getValue()))
                                    .orElse(output.getValue().toString()),
                    "href", isThere ? Optional.of("/out/" + output.getKey()) : Optional.empty()));
        }
        return outputs;
    }

    private static String shown(Path home, Path output) {
        Path file = output.toAbsolutePath().normalize();
        return file.startsWith(home.normalize())
                ? home.normalize().relativize(file).toString()
                : file.toString();
    }

    /**
     * The files that a text names under {@code deliver}, by kind.
     *
     * @throws IOException if the text is no YAML
     */
    public static Map<String, Path> outputs(SheetText text) throws IOException {
        return outputs(text.values(), text.file());
    }

    private static Map<String, Path> outputs(List<SheetValue> values, Path file) {
        Map<String, Path> outputs = new LinkedHashMap<>();
        for (SheetValue value : values) {
            if (value.span().isPresent()
                    && value.allowed().type().equals("output")
                    && !value.value().isBlank()) {
                String[] steps = value.key().split("\\.");
                try {
                    outputs.putIfAbsent(
                            steps[1], file.resolveSibling(value.value().strip()));
                } catch (InvalidPathException noFile) {
                    // the complaints say so
                }
            }
        }
        return outputs;
    }
}
