package org.adumbrate.sheetfile;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.adumbrate.sheetfile.schema.SheetSchema;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the README says of the sheet file is so, and it says all. */
class ReadmeSheetsTest {
    private static final Pattern SAMPLE = Pattern.compile("```yaml\\n(.*?)```", Pattern.DOTALL);

    @TempDir
    Path folder;

    @Test
    void everySampleReadsWell() throws IOException {
        Desk desk = new Desk(folder);
        List<String> samples = SAMPLE.matcher(readme())
                .results()
                .map(sample -> Desk.completed(sample.group(1)))
                .toList();
        assertThat(samples).hasSizeGreaterThan(1).allSatisfy(sample -> assertThat(desk.complaints(sample))
                .isEmpty());
    }

    @Test
    void everyKeyIsNamed() throws IOException {
        Set<String> keys = new TreeSet<>();
        collectKeys(new ObjectMapper().readTree(SheetSchema.text()), keys);
        String words = readme().substring(readme().indexOf("## The sheet file"), readme().indexOf("## Other commands"));
        assertThat(keys).hasSizeGreaterThan(80).allSatisfy(key -> assertThat(words)
                .containsPattern("(?<![\\w-])" + key + "(?![\\w-])"));
    }

    private static void collectKeys(JsonNode node, Set<String> keys) {
        node.path("properties").fieldNames().forEachRemaining(keys::add);
        node.forEach(child -> collectKeys(child, keys));
    }

    private static String readme() throws IOException {
        return Files.readString(Path.of("README.md"));
    }
}
