package org.adumbrate.sheetfile;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import com.networknt.schema.ValidationMessage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.adumbrate.sheetfile.schema.SheetSchema;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.snakeyaml.engine.v2.api.Dump;
import org.snakeyaml.engine.v2.api.DumpSettings;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.schema.CoreSchema;

/** The shipped schema, and that it and the reader are of one mind; the validator is not ours. */
class SheetSchemaTest {
    private static final Path SHIPPED = Path.of("src/main/resources/org/adumbrate/sheetfile/sheet.schema.json");
    private static final String RENEW = "mvn -q test -Dtest=SheetSchemaTest -Drenew=true";

    private static final JsonSchema SCHEMA =
            JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012).getSchema(SheetSchema.text());

    /** Values of every kind. */
    private static final List<?> VALUES = (List<?>) load("""
            [0, 1, 0.5, -3, 8, 50, 100, 1000, 10000000, 2.5, 50 %, 1.5 m, 0.5 mm, 90 deg, 300 dpi, 100 px, 3 furlong,
            "", word, white, as-is, sheet, auto, "#0a64c8", "#0a64c", lines.pdf, out/x.tif, out/x.pdf, "8",
            A3 landscape, A3, 17 x 11 in, 17 x 11, "2026-06-21T15:00+02:00", true, "true", [], {},
            [10, 20], [10, 20, 30, 40], [[0, 50], [100, 70]], [[5, 5], [9, 5], [9, 9]],
            { file: lines.pdf }, { fiel: 3 }, { name: 5 mm }, { name: { color: black } }]
            """);

    /** What a schema cannot say: the disk, what one value owes another, the range of a number written as text. */
    private static final Predicate<String> IS_BEYOND_A_SCHEMA = Pattern.compile(
                    "[0-9]+:[0-9]+: (no such |.* is also (read|written) as |.* draws .* already|no (floor|region|pen|layer) is called "
                            + "|.* needs 'floor'|'profile' needs |'fades' needs |.* is the name of a group of |.* is named already"
                            + "|the underlay always lies lowest|.* must not be more than |.* must be less than |.* must ascend"
                            + "|.* is ('[0-9.]+'|[0-9.]+ (%|mm|m|deg|dpi|px)); expected (more than |[-0-9.]+ to )).*")
            .asMatchPredicate();

    private static final ObjectMapper JSON = new ObjectMapper();

    @TempDir
    Path folder;

    @Test
    void theShippedSchemaIsThatOfTheRecords() throws IOException {
        if (Boolean.getBoolean("renew")) {
            Files.writeString(SHIPPED, SheetSchema.text());
        }
        assertThat(SHIPPED).as("out of date? renew it with: " + RENEW).exists().hasContent(SheetSchema.text());
    }

    @Test
    void everyKeyIsDescribed() throws IOException {
        assertDescribed(JSON.readTree(SheetSchema.text()));
    }

    private static void assertDescribed(JsonNode node) {
        node.path("properties").fields().forEachRemaining(key -> assertThat(
                        key.getValue().path("description").asText())
                .as(key.getKey())
                .isNotBlank());
        node.forEach(SheetSchemaTest::assertDescribed);
    }

    @Test
    void aGoodSheetFilePassesAndAnUnknownKeyFails() throws IOException {
        assertThat(findings(Desk.fullSheet())).isEmpty();
        assertThat(findings(Desk.fullSheet().replace("opacity: 60 %", "opacty: 60 %")))
                .singleElement()
                .asString()
                .contains("opacty");
        assertThat(findings(Desk.fullSheet().replace("opacity: 60 %", "opacity: 0.6")))
                .singleElement()
                .asString()
                .contains("opacity");
        assertThat(findings(Desk.fullSheet().replace("focal: 260 mm", "focal: 260 mm\n  field-of-view: 79 deg")))
                .isNotEmpty();
    }

    /** Takes every seventh pair of key and value: each key with half a dozen values, each value at a dozen keys. */
    @Test
    void readerAndSchemaAgreeOnAnyValueOfAnyKey() throws IOException {
        Desk desk = new Desk(folder);
        int pair = 0;
        int good = 0;
        int bad = 0;
        for (Map.Entry<Object, String> section : sections().entrySet()) {
            for (List<Object> path : paths(load(section.getValue()))) {
                for (Object value : path.get(0).equals(section.getKey()) ? VALUES : List.of()) {
                    if (pair++ % 7 == 0) {
                        boolean isGood = agreedOn(replaced(section.getValue(), path, value), desk);
                        good += isGood ? 1 : 0;
                        bad += isGood ? 0 : 1;
                    }
                }
            }
        }
        assertThat(good).isGreaterThan(50);
        assertThat(bad).isGreaterThan(500);
    }

    private static boolean agreedOn(String text, Desk desk) {
        List<String> complaints = desk.complaints(text).stream()
                .filter(IS_BEYOND_A_SCHEMA.negate())
                .toList();
        Set<ValidationMessage> findings = findings(text);
        assertThat(findings.isEmpty())
                .as("%s%nreader: %s%nschema: %s", text, complaints, findings)
                .isEqualTo(complaints.isEmpty());
        return findings.isEmpty();
    }

    /** The sections of the full sheet, each with no more besides than there must be. */
    private static Map<Object, String> sections() throws IOException {
        Map<Object, String> sections = new LinkedHashMap<>();
        children(load(Desk.fullSheet())).forEach((key, section) -> {
            Map<Object, Object> sheet = new LinkedHashMap<>();
            sheet.put("lines", "lines.pdf");
            sheet.put("deliver", Map.of("drawing", "out/drawing.pdf"));
            sheet.put(key, section);
            sections.put(key, dumped(sheet));
        });
        return sections;
    }

    private static String replaced(String yaml, List<Object> path, Object value) {
        Object tree = load(yaml);
        replace(tree, path, value);
        return dumped(tree);
    }

    private static String dumped(Object tree) {
        return new Dump(DumpSettings.builder().build()).dumpToString(tree);
    }

    private static Object load(String yaml) {
        LoadSettings settings =
                LoadSettings.builder().setSchema(new CoreSchema()).build();
        return new Load(settings).loadFromString(yaml);
    }

    private static Set<ValidationMessage> findings(String yaml) {
        return SCHEMA.validate(JSON.valueToTree(load(yaml)));
    }

    /** The way to every value in a tree of maps and lists; of a list, to its first item. */
    private static List<List<Object>> paths(Object tree) {
        List<List<Object>> paths = new ArrayList<>();
        children(tree).forEach((key, child) -> {
            if (!(key instanceof Integer index) || index == 0) {
                paths.add(List.of(key));
                paths(child)
                        .forEach(below -> paths.add(
                                Stream.concat(Stream.of(key), below.stream()).toList()));
            }
        });
        return paths;
    }

    private static Map<Object, Object> children(Object tree) {
        Map<Object, Object> children = new LinkedHashMap<>();
        if (tree instanceof Map<?, ?> map) {
            children.putAll(map);
        } else if (tree instanceof List<?> list) {
            list.forEach(item -> children.put(children.size(), item));
        }
        return children;
    }

    @SuppressWarnings("unchecked")
    private static void replace(Object tree, List<Object> path, Object value) {
        Object key = path.get(0);
        if (path.size() > 1) {
            replace(children(tree).get(key), path.subList(1, path.size()), value);
        } else if (tree instanceof Map<?, ?>) {
            ((Map<Object, Object>) tree).put(key, value);
        } else {
            ((List<Object>) tree).set((Integer) key, value);
        }
    }
}
