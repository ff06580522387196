package org.adumbrate.prepare;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import javax.xml.parsers.DocumentBuilderFactory;
import org.adumbrate.drawing.Layer;
import org.adumbrate.drawing.Mark;
import org.adumbrate.drawing.MarkedContent;
import org.adumbrate.drawing.PdfDrawing;
import org.adumbrate.drawing.SvgDrawing;
import org.adumbrate.fault.Refusal;
import org.adumbrate.prepare.memory.Memory;
import org.adumbrate.prepare.memory.Run;
import org.adumbrate.prepare.memory.StageClock;
import org.adumbrate.sheetfile.edit.SheetText;
import org.adumbrate.sheetfile.edit.SheetValue;
import org.adumbrate.sheetfile.reading.SheetFileReader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/** What marks say of the key that asked for them. */
class MarkKeysTest {
    private static final Path DEMO = Path.of("passes", "kiln-yard");

    @TempDir
    Path folder;

    /** The keys of a sheet's marks by layer. */
    private static Map<String, Set<String>> keys(PreparedSheet sheet) {
        Map<String, Set<String>> keys = new TreeMap<>();
        for (Layer layer : sheet.layers()) {
            Set<String> here = keys.computeIfAbsent(layer.name(), name -> new TreeSet<>());
            layer.marks().stream().map(Mark::key).forEach(here::add);
        }
        return keys;
    }

    /** The keys of all values that a text has or may have, and of what holds them: {@code profile: 0.5 mm} is a profile.width. */
    private static Set<String> known(Path file) throws IOException {
        Set<String> known = new TreeSet<>();
        for (SheetValue value : SheetText.read(file).values()) {
            known.add(value.key());
            known.add(value.key().replaceFirst("\\.[^.]*$", ""));
        }
        return known;
    }

    private Path sheet(String text) throws IOException {
        String exports = DEMO.toAbsolutePath().toString().replace('\\', '/');
        return Files.writeString(folder.resolve("a.sheet.yaml"), text.replace("DEMO", exports));
    }

    @Test
    void everyMarkOfTheDemoHasAKeyThatItsTextKnows() throws IOException, Refusal {
        Path file = DEMO.resolve("kiln-yard.sheet.yaml");
        Set<String> known = known(file);
        PreparedSheet sheet = SheetsForTests.prepared(file);
        Map<String, Set<String>> keys = keys(sheet);
        assertThat(keys)
                .containsEntry("building", Set.of("pens.building"))
                .containsEntry("trees-fill", Set.of("veils.trees"))
                .containsEntry("cut-backing", Set.of("cut.backing"))
                .containsEntry("cut-hatch", Set.of("cut.hatch"))
                .containsEntry("cut-outline", Set.of("cut.outline"))
                .containsEntry("profile", Set.of("profile"))
                .containsEntry("heights", Set.of("heights"))
                .containsEntry("border", Set.of("planting.border"))
                .containsEntry("gulls", Set.of("birds.gulls"));
        assertThat(keys.get("figures")).contains("figures[0]", "figures[10]").hasSize(11);
        assertThat(known)
                .containsAll(keys.values().stream().flatMap(Set::stream).toList());
    }

    /** Figures stand before and behind the bed, so their layer is opened several times. */
    @Test
    void everyFigureOfTheDemoIsOneGroupOfItsSvgAndItsPdf() throws Exception {
        PreparedSheet sheet = SheetsForTests.prepared(DEMO.resolve("kiln-yard.sheet.yaml"));
        List<String> drawn = sheet.layers().stream()
                .flatMap(layer -> layer.marks().stream())
                .map(Mark::key)
                .filter(key -> key.startsWith("figures["))
                .distinct()
                .toList();
        assertThat(drawn).hasSize(11);
        assertThat(figures(svg(sheet))).containsExactlyElementsOf(drawn);
        try (PdfDrawing drawing = PdfDrawing.begin(folder.resolve("a.pdf"), sheet.size())) {
            drawing.layers(sheet.layers());
            drawing.finish();
        }
        assertThat(MarkedContent.of(folder.resolve("a.pdf")).stream()
                        .filter(painted -> painted.startsWith("entourage/figures/"))
                        .map(painted -> painted.split("[/ ]")[2]))
                .containsExactlyElementsOf(drawn);
    }

    private Document svg(PreparedSheet sheet) throws Exception {
        Path file = folder.resolve("a.svg");
        SvgDrawing.write(file, sheet.size(), Optional.empty(), sheet.layers());
        return DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(file.toFile());
    }

    /** The titles of the groups of figures, whose ids say the same. */
    private static List<String> figures(Document svg) {
        List<String> figures = new ArrayList<>();
        var groups = svg.getElementsByTagName("g");
        for (int k = 0; k < groups.getLength(); k++) {
            Element group = (Element) groups.item(k);
            if (group.getAttribute("id").startsWith("figures_")) {
                figures.add(group.getElementsByTagName("title").item(0).getTextContent());
                assertThat(group.getAttribute("id") + "]")
                        .isEqualTo(figures.get(figures.size() - 1).replace('[', '_'));
            }
        }
        return figures;
    }

    @Test
    void strayLinesAndVeilsAreKeyedByWhatAskedForThem() throws IOException, Refusal {
        Path file = sheet("""
                size: 17 x 11 in
                lines: DEMO/lines.pdf
                pens: { building: { color: "#404048", role: building } }
                veils:
                  trees: { lines: DEMO/lines-trees.pdf, color: "#008838", etch: { angle: 30, spacing: 2, width: 0.13 } }
                deliver: { preview: a.png }
                """);
        Map<String, Set<String>> keys = keys(SheetsForTests.prepared(file));
        assertThat(keys)
                .containsEntry("trees", Set.of("veils.trees"))
                .containsEntry("trees-fill", Set.of("veils.trees", "veils.trees.etch"))
                .containsEntry("lines-0060a8", Set.of("lines"));
    }

    /** A pen, and then a veil of its name and colour: the same lines drawn the same way, for another key. */
    @Test
    void aLayerThatIsRememberedIsNotTakenForOneOfAnotherKey() throws IOException, Refusal {
        String head = """
                size: 17 x 11 in
                lines: DEMO/lines.pdf
                deliver: { preview: a.png }
                """;
        Memory memory = Memory.inMemory();
        List<Set<String>> found = List.of(
                keys(memory, head + "pens: { desks: { color: \"#0060a8\", role: planting } }\n"),
                keys(memory, head + "veils: { desks: { color: \"#0060a8\" } }\n"));
        assertThat(found).containsExactly(Set.of("pens.desks"), Set.of("veils.desks"));
    }

    private Set<String> keys(Memory memory, String text) throws IOException, Refusal {
        try (Run run = memory.begin()) {
            PreparedSheet sheet = PreparedSheet.of(
                    SheetFileReader.read(sheet(text)), run, new StageClock(StageClock.Listener.SILENT));
            return keys(sheet).get("desks");
        }
    }
}
