package org.adumbrate.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
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
import org.adumbrate.linework.LineSheets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Element;

class SvgDrawingTest {
    @TempDir
    Path folder;

    @Test
    void linesAreFoundAgainAsTheyWereGiven() throws IOException {
        LineSheet sheet = LineSheets.read(drawn(Optional.empty()));
        assertThat(sheet.page()).isEqualTo(Sketches.SHEET);
        RoundTrip.assertHolds(sheet, Sketches.groups());
        assertThat(sheet.strokes()).hasSize(20 + 4 + 30);
    }

    @Test
    void groupsHaveTheirNameAsTitleAndAsId() throws Exception {
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
    void groupsOfOneNameHaveIdsOfTheirOwn() throws Exception {
        LineGroup group = Sketches.groups().get(0);
        Path file = folder.resolve("twice.svg");
        SvgDrawing.write(file, Sketches.SHEET, Optional.empty(), List.of(group, group));
        var groups = parsed(file).getElementsByTagName("g");
        assertThat(((Element) groups.item(0)).getAttribute("id")).isEqualTo("furniture");
        assertThat(((Element) groups.item(1)).getAttribute("id")).isEqualTo("furniture-2");
    }

    @Test
    void namesAreEscaped() throws Exception {
        LineGroup group = new LineGroup(
                "a<b & \"c\"",
                Pen.round(1, Srgb.BLACK),
                Sketches.groups().get(0).paths());
        Path file = folder.resolve("escaped.svg");
        SvgDrawing.write(file, Sketches.SHEET, Optional.empty(), List.of(group));
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
        assertThatThrownBy(() -> SvgDrawing.write(folder, Sketches.SHEET, Optional.empty(), Sketches.groups()))
                .isInstanceOf(OutputFault.class);
    }

    private Path drawn(Optional<UnderlayPicture> underlay) throws IOException {
        Path file = folder.resolve("drawing.svg");
        SvgDrawing.write(file, Sketches.SHEET, underlay, Sketches.groups());
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
