package org.adumbrate.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import javax.xml.parsers.DocumentBuilderFactory;
import org.adumbrate.fault.InputFault;
import org.adumbrate.fault.OutputFault;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.Space;
import org.adumbrate.geometry.Srgb;
import org.adumbrate.geometry.VectorPath;
import org.adumbrate.linework.LineSheet;
import org.adumbrate.linework.read.LineSheets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

class SvgDrawingTest {
    @TempDir
    Path folder;

    @Test
    void linesAreFoundAgainAsTheyWereGiven() throws IOException {
        LineSheet sheet = LineSheets.read(drawn(Optional.empty()));
        assertThat(sheet.page()).isEqualTo(Sketches.SHEET);
        RoundTrip.assertHolds(sheet, Sketches.layers());
        assertThat(sheet.strokes()).hasSize(20 + 4 + 30);
    }

    @Test
    void layersHaveTheirNameAsTitleAndAsId() throws Exception {
        Element root = parsed(drawn(Optional.empty()));
        assertThat(root.getAttribute("width")).isEqualTo("101.6mm");
        assertThat(root.getAttribute("height")).isEqualTo("63.5mm");
        assertThat(root.getAttribute("viewBox")).isEqualTo("0 0 101.6 63.5");
        Element second = (Element) root.getElementsByTagName("g").item(1);
        assertThat(second.getAttribute("id")).isEqualTo("cut-outline");
        assertThat(second.getElementsByTagName("title").item(0).getTextContent())
                .isEqualTo("cut outline");
    }

    @Test
    void pointedCornersAreCutOffWhereThePdfCutsThemOff() throws Exception {
        var groups = parsed(drawn(Optional.empty())).getElementsByTagName("g");
        assertThat(((Element) groups.item(0)).getAttribute("stroke-miterlimit")).isEqualTo("10");
        assertThat(((Element) groups.item(1)).hasAttribute("stroke-miterlimit")).isFalse();
    }

    @Test
    void layersOfOneNameHaveIdsOfTheirOwn() throws Exception {
        Layer layer = Sketches.layers().get(0);
        Path file = folder.resolve("twice.svg");
        SvgDrawing.write(file, Sketches.SHEET, Optional.empty(), List.of(layer, layer));
        var groups = parsed(file).getElementsByTagName("g");
        assertThat(((Element) groups.item(0)).getAttribute("id")).isEqualTo("furniture");
        assertThat(((Element) groups.item(1)).getAttribute("id")).isEqualTo("furniture-2");
    }

    @Test
    void layersThatAreKeptTogetherAreInOneGroupWhileTheyFollowEachOther() throws Exception {
        Layer line = Sketches.lines("a", Pen.round(1, Srgb.BLACK), List.of(Sketches.line(1, 1, 2, 2)));
        Path file = folder.resolve("nested.svg");
        SvgDrawing.write(
                file,
                Sketches.SHEET,
                Optional.empty(),
                List.of(line.within("cut"), line.within("cut"), line, line.within("cut")));
        assertThat(ids(parsed(file))).containsExactly("cut(a,a-2)", "a-3", "cut-2(a-4)");
    }

    @Test
    void aLayerThatIsSwitchedOffIsThereAndNotDisplayed() throws Exception {
        Element heights = group(parsed(everything()), "heights");
        assertThat(heights.getAttribute("display")).isEqualTo("none");
        assertThat(heights.getElementsByTagName("path").getLength()).isEqualTo(1);
        assertThat(group(parsed(everything()), "figures").hasAttribute("display"))
                .isFalse();
    }

    @Test
    void areasAreFilledAsTheyAreAskedFor() throws Exception {
        Element root = parsed(everything());
        Element veil = group(root, "trees-fill");
        assertThat(veil.getAttribute("fill")).isEqualTo("#ffffff");
        assertThat(veil.getAttribute("fill-opacity")).isEqualTo(".6");
        assertThat(veil.hasAttribute("stroke")).isFalse();
        Element backing = group(root, "cut-backing");
        assertThat(backing.hasAttribute("fill-opacity")).isFalse();
        String frame = ((Element) backing.getElementsByTagName("path").item(0)).getAttribute("d");
        assertThat(frame).matches("M[^M]*zM[^M]*z");
        assertThat(group(root, "figures").getElementsByTagName("g").getLength()).isEqualTo(3);
    }

    private Path everything() throws IOException {
        Path file = folder.resolve("everything.svg");
        SvgDrawing.write(file, Sketches.SHEET, Optional.empty(), Sketches.everything());
        return file;
    }

    private static Element group(Element root, String id) {
        var groups = root.getElementsByTagName("g");
        for (int k = 0; k < groups.getLength(); k++) {
            if (((Element) groups.item(k)).getAttribute("id").equals(id)) {
                return (Element) groups.item(k);
            }
        }
        throw new AssertionError("no group " + id);
    }

    /** The ids of the groups in an element, each followed by those in it. */
    private static List<String> ids(Element element) {
        List<String> ids = new ArrayList<>();
        for (Node child = element.getFirstChild(); child != null; child = child.getNextSibling()) {
            if (child instanceof Element group && group.getTagName().equals("g")) {
                String inside = String.join(",", ids(group));
                ids.add(group.getAttribute("id") + (inside.isEmpty() ? "" : "(" + inside + ")"));
            }
        }
        return ids;
    }

    @Test
    void namesAreEscaped() throws Exception {
        Layer layer = Sketches.lines("a<b & \"c\"", Pen.round(1, Srgb.BLACK), List.of(Sketches.line(1, 1, 2, 2)));
        Path file = folder.resolve("escaped.svg");
        SvgDrawing.write(file, Sketches.SHEET, Optional.empty(), List.of(layer));
        assertThat(parsed(file).getElementsByTagName("title").item(0).getTextContent())
                .isEqualTo("a<b & \"c\"");
    }

    @Test
    void pathDataAreCompactAndExact() {
        VectorPath.Builder<SheetPoint> path = VectorPath.in(Space.SHEET);
        path.moveTo(1.5, 2.0004);
        path.lineTo(1.5006, 2.9996);
        path.lineTo(0, -1);
        path.curveTo(0.25, 0.5, 1, 1, 2, 2);
        path.close();
        path.moveTo(7, 7);
        path.lineTo(8, 8);
        assertThat(SvgLine.data(path.build())).isEqualTo("M1.5 2l.001 1-1.501-4c.25 1.5 1 2 2 3zM7 7l1 1");
    }

    @Test
    void equalDrawingsAreEqualBytes() throws IOException {
        assertThat(Files.readAllBytes(drawn(Optional.empty()))).isEqualTo(Files.readAllBytes(drawn(Optional.empty())));
    }

    @Test
    void theUnderlayIsReferredToFromWhereTheDrawingStands() throws Exception {
        Path png = Files.createDirectories(folder.resolve("out put")).resolve("under#lay.png");
        Element image = image(drawn(Optional.of(new UnderlayPicture(png, false))));
        assertThat(image.getAttribute("xlink:href")).isEqualTo("out%20put/under%23lay.png");
        assertThat(image.getAttribute("width")).isEqualTo("101.6");
        assertThat(image.getAttribute("height")).isEqualTo("63.5");
        assertThat(((Element) image.getParentNode()).getAttribute("id")).isEqualTo("underlay");
    }

    @Test
    void theUnderlayIsEmbeddedWhole() throws Exception {
        byte[] picture = new byte[200_001];
        new Random(1).nextBytes(picture);
        Path png = Files.write(folder.resolve("underlay.png"), picture);
        String prefix = "data:image/png;base64,";
        String reference =
                image(drawn(Optional.of(new UnderlayPicture(png, true)))).getAttribute("xlink:href");
        assertThat(reference).startsWith(prefix);
        byte[] encoded = reference.substring(prefix.length()).getBytes(StandardCharsets.US_ASCII);
        assertThat(Base64.getDecoder().decode(encoded)).isEqualTo(picture);
    }

    @Test
    void aPictureThatIsNotThereIsTold() throws IOException {
        UnderlayPicture missing = new UnderlayPicture(folder.resolve("underlay.png"), true);
        assertThatThrownBy(() -> drawn(Optional.of(missing)))
                .isInstanceOf(InputFault.class)
                .hasMessageStartingWith(missing.png() + ": ");
        assertThat(folder).isEmptyDirectory();
    }

    @Test
    void aPlaceThatCannotBeWrittenIsTold() {
        assertThatThrownBy(() -> SvgDrawing.write(folder, Sketches.SHEET, Optional.empty(), Sketches.layers()))
                .isInstanceOf(OutputFault.class);
    }

    private Path drawn(Optional<UnderlayPicture> underlay) throws IOException {
        Path file = folder.resolve("drawing.svg");
        SvgDrawing.write(file, Sketches.SHEET, underlay, Sketches.layers());
        return file;
    }

    private static Element image(Path file) throws Exception {
        return (Element) parsed(file).getElementsByTagName("image").item(0);
    }

    private static Element parsed(Path file) throws Exception {
        return DocumentBuilderFactory.newDefaultInstance()
                .newDocumentBuilder()
                .parse(file.toFile())
                .getDocumentElement();
    }
}
