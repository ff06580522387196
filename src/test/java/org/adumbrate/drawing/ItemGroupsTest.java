package org.adumbrate.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.xml.parsers.DocumentBuilderFactory;
import org.adumbrate.geometry.Srgb;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/** Figures in SVG and PDF as they are found when these are opened again. */
class ItemGroupsTest {
    private static final Srgb GREY = new Srgb(80, 80, 80);

    @TempDir
    Path folder;

    /** A figure with an outline, as an item of a list asks for it. */
    private static List<Mark> outlined(int k, double x) {
        String key = "figures[" + k + "]";
        return List.of(
                new Mark.Area(key, Srgb.WHITE, 1, Sketches.disc(x, 30, 8)),
                new Mark.Lines(key, Pen.round(0.25, Srgb.BLACK), List.of(Sketches.line(x, 20, x, 40))));
    }

    private static Mark faded(int k, double x) {
        return new Mark.Area("figures[" + k + "]", GREY, 0.5, Sketches.disc(x, 30, 8));
    }

    private static Layer figures(List<Mark> marks) {
        return Layer.of("figures", marks).within("entourage");
    }

    private static List<Mark> joined(List<Mark> some, List<Mark> more) {
        List<Mark> all = new ArrayList<>(some);
        all.addAll(more);
        return all;
    }

    /** Figures before and behind a bed. */
    private static List<Layer> entourage() {
        Mark plant = new Mark.Area("planting.bed", GREY, 1, Sketches.disc(50, 30, 5));
        Mark other = new Mark.Lines("planting.bed", Pen.round(0.1, GREY), List.of(Sketches.line(40, 30, 60, 30)));
        return List.of(
                figures(joined(outlined(2, 20), outlined(0, 30))),
                Layer.of("bed", List.of(plant, other)).within("entourage"),
                figures(outlined(1, 60)));
    }

    @Test
    void eachFigureIsAGroupOfTheSvgInDrawingOrder() throws Exception {
        Element root = svg(entourage());
        assertThat(named(root)).containsExactly("entourage(figures(figures_2,figures_0),bed,figures-2(figures_1))");
        assertThat(titles(root))
                .containsExactly("entourage", "figures", "figures[2]", "figures[0]", "bed", "figures", "figures[1]");
    }

    @Test
    void eachFigureIsMarkedContentOfThePdfInItsLayer() throws IOException {
        assertThat(MarkedContent.of(pdf(entourage())))
                .containsExactly(
                        "entourage/figures/figures[2] f S",
                        "entourage/figures/figures[0] f S",
                        "entourage/bed f S",
                        "entourage/figures/figures[1] f S");
    }

    @Test
    void figuresThatFadeTogetherAreGroupsToo() throws Exception {
        List<Layer> layers = List.of(figures(List.of(faded(0, 20), faded(1, 30), faded(2, 70))));
        Element root = svg(layers);
        assertThat(named(root)).containsExactly("entourage(figures((figures_0,figures_1,figures_2)))");
        assertThat(MarkedContent.of(pdf(layers)))
                .containsExactly(
                        "entourage/figures/figures[0] f",
                        "entourage/figures/figures[1] f",
                        "entourage/figures/figures[2] f");
    }

    @Test
    void aKeyMayHaveAnyLetters() throws Exception {
        List<Layer> layers =
                List.of(Layer.of("a", List.of(new Mark.Area("bäume.(x)[12]", GREY, 1, Sketches.disc(20, 30, 8)))));
        assertThat(MarkedContent.of(pdf(layers))).containsExactly("a/bäume.(x)[12] f");
        assertThat(titles(svg(layers))).containsExactly("a", "bäume.(x)[12]");
    }

    @Test
    void layersWithoutItemsAreWrittenAsBefore() throws IOException {
        List<Layer> keyed = List.of(Layer.of("bed", entourage().get(1).marks()));
        List<Layer> plain = List.of(Layer.of(
                "bed",
                List.of(
                        new Mark.Area(GREY, 1, Sketches.disc(50, 30, 5)),
                        new Mark.Lines(Pen.round(0.1, GREY), List.of(Sketches.line(40, 30, 60, 30))))));
        byte[] svg = Files.readAllBytes(written(keyed));
        assertThat(written(plain)).hasBinaryContent(svg);
        byte[] pdf = Files.readAllBytes(pdf(keyed));
        assertThat(pdf(plain)).hasBinaryContent(pdf);
    }

    @Test
    void equalFiguresGiveEqualBytes() throws IOException {
        List<Layer> layers = joinedLayers();
        byte[] svg = Files.readAllBytes(written(layers));
        byte[] pdf = Files.readAllBytes(pdf(layers));
        assertThat(written(joinedLayers())).hasBinaryContent(svg);
        assertThat(pdf(joinedLayers())).hasBinaryContent(pdf);
    }

    private static List<Layer> joinedLayers() {
        List<Layer> layers = new ArrayList<>(entourage());
        layers.add(figures(List.of(faded(3, 20), faded(4, 25))));
        return layers;
    }

    private Path written(List<Layer> layers) throws IOException {
        Path file = folder.resolve("drawing.svg");
        SvgDrawing.write(file, Sketches.SHEET, Optional.empty(), layers);
        return file;
    }

    private Path pdf(List<Layer> layers) throws IOException {
        Path file = folder.resolve("drawing.pdf");
        try (PdfDrawing drawing = PdfDrawing.begin(file, Sketches.SHEET)) {
            drawing.layers(layers);
            drawing.finish();
        }
        return file;
    }

    private Element svg(List<Layer> layers) throws Exception {
        return DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(written(layers).toFile())
                .getDocumentElement();
    }

    private static List<String> titles(Element root) {
        List<String> titles = new ArrayList<>();
        var found = root.getElementsByTagName("title");
        for (int k = 0; k < found.getLength(); k++) {
            titles.add(found.item(k).getTextContent());
        }
        return titles;
    }

    /** The ids of the groups in an element, each followed by those in it; of groups that only say how something looks, these. */
    private static List<String> named(Element element) {
        List<String> names = new ArrayList<>();
        for (Node child = element.getFirstChild(); child != null; child = child.getNextSibling()) {
            if (child instanceof Element group && group.getTagName().equals("g")) {
                String inside = String.join(",", named(group));
                String all = group.getAttribute("id") + (inside.isEmpty() ? "" : "(" + inside + ")");
                if (!all.isEmpty()) {
                    names.add(all);
                }
            }
        }
        return names;
    }
}
