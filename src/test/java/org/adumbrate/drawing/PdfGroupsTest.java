package org.adumbrate.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.adumbrate.geometry.Srgb;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.graphics.optionalcontent.PDOptionalContentProperties;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Layers of a PDF as PDFBox finds them again. */
class PdfGroupsTest {
    private static final Mark RED = area(new Srgb(255, 0, 0), 1, 10);
    private static final Mark BLUE = area(new Srgb(0, 0, 255), 1, 40);

    @TempDir
    Path folder;

    private static Mark area(Srgb color, double opacity, double left) {
        return new Mark.Area(color, opacity, Sketches.rectangle(left, 10, left + 20, 50));
    }

    @Test
    void layersThatAreKeptTogetherAreListedUnderTheirCommonName() throws IOException {
        try (PDDocument document = drawn(Sketches.everything())) {
            assertThat(order(configuration(document).getCOSArray(COSName.ORDER)))
                    .isEqualTo("furniture trees-fill böden figures cut [cut-backing cut-outline] heights");
        }
    }

    /** PDFBox reads references that run together; other readers do not. */
    @Test
    void referencesStandApart() throws IOException {
        drawn(Sketches.everything()).close();
        assertThat(Files.readString(folder.resolve("drawing.pdf"), StandardCharsets.ISO_8859_1))
                .contains("/Order[1 0 R 4 0 R")
                .doesNotContainPattern("0 R[0-9]");
    }

    @Test
    void switchingOffAGroupHidesWhatIsInItAndNothingElse() throws IOException {
        List<Layer> layers = List.of(
                Layer.of("red", List.of(RED)).within("both"),
                Layer.of("blue", List.of(BLUE)).within("both"),
                Layer.of("red", List.of(area(Srgb.BLACK, 1, 70))));
        try (PDDocument document = drawn(layers)) {
            assertThat(colors(document)).containsExactly(0xff0000, 0x0000ff, 0x000000);
            groups(document).setGroupEnabled("both", false);
            assertThat(colors(document)).containsExactly(0xffffff, 0xffffff, 0x000000);
            groups(document).setGroupEnabled("both", true);
            groups(document).setGroupEnabled("blue", false);
            assertThat(colors(document)).containsExactly(0xff0000, 0xffffff, 0x000000);
        }
    }

    @Test
    void aHiddenLayerIsOffOnScreenAndInPrint() throws IOException {
        List<Layer> layers = List.of(Layer.of("red", List.of(RED)).hidden(), Layer.of("blue", List.of(BLUE)));
        try (PDDocument document = drawn(layers)) {
            assertThat(groups(document).isGroupEnabled("red")).isFalse();
            assertThat(groups(document).isGroupEnabled("blue")).isTrue();
            assertThat(colors(document)).startsWith(0xffffff, 0x0000ff);
            COSDictionary automatic = (COSDictionary) configuration(document)
                    .getCOSArray(COSName.getPDFName("AS"))
                    .getObject(0);
            assertThat(automatic.getNameAsString("Event")).isEqualTo("Print");
            COSArray printed = automatic.getCOSArray(COSName.OCGS);
            assertThat(order(printed)).isEqualTo("red");
            assertThat(((COSDictionary) printed.getObject(0))
                            .getCOSDictionary(COSName.getPDFName("Usage"))
                            .getCOSDictionary(COSName.getPDFName("Print"))
                            .getNameAsString("PrintState"))
                    .isEqualTo("OFF");
            groups(document).setGroupEnabled("red", true);
            assertThat(colors(document)).startsWith(0xff0000, 0x0000ff);
        }
    }

    @Test
    void opacityIsOfTheFillAndIsMixedInTheColoursOfTheScreen() throws IOException {
        List<Layer> layers = List.of(Layer.of("veil", List.of(area(Srgb.BLACK, 0.35, 10), BLUE)));
        try (PDDocument document = drawn(layers)) {
            PDPage page = document.getPage(0);
            var states = page.getResources().getExtGStateNames().iterator();
            assertThat(page.getResources().getExtGState(states.next()).getNonStrokingAlphaConstant())
                    .isEqualTo(0.35f);
            assertThat(states.hasNext()).isFalse();
            assertThat(page.getCOSObject().getCOSDictionary(COSName.GROUP).getNameAsString(COSName.CS))
                    .isEqualTo("DeviceRGB");
            // 0.65 of 255
            assertThat(colors(document).get(0) & 0xff).isBetween(165, 167);
            assertThat(colors(document).get(1)).isEqualTo(0x0000ff);
        }
    }

    @Test
    void anOpaqueDrawingHasNoTransparency() throws IOException {
        try (PDDocument document = drawn(List.of(Layer.of("red", List.of(RED))))) {
            assertThat(document.getPage(0).getCOSObject().containsKey(COSName.GROUP))
                    .isFalse();
            assertThat(document.getPage(0).getResources().getExtGStateNames()).isEmpty();
        }
    }

    private PDDocument drawn(List<Layer> layers) throws IOException {
        Path file = folder.resolve("drawing.pdf");
        try (PdfDrawing drawing = PdfDrawing.begin(file, Sketches.SHEET)) {
            drawing.layers(layers);
            drawing.finish();
        }
        return Loader.loadPDF(file.toFile());
    }

    private static PDOptionalContentProperties groups(PDDocument document) {
        return document.getDocumentCatalog().getOCProperties();
    }

    private static COSDictionary configuration(PDDocument document) {
        return groups(document).getCOSObject().getCOSDictionary(COSName.D);
    }

    /** The names in an array of groups, those of arrays in it in brackets. */
    private static String order(COSArray array) {
        List<String> names = new ArrayList<>();
        for (int k = 0; k < array.size(); k++) {
            COSBase entry = array.getObject(k);
            names.add(
                    entry instanceof COSArray inner
                            ? "[" + order(inner) + "]"
                            : ((COSDictionary) entry).getString(COSName.NAME));
        }
        return String.join(" ", names);
    }

    /** The colours in the middle of three areas, as rendered. */
    private static List<Integer> colors(PDDocument document) throws IOException {
        BufferedImage image = new PDFRenderer(document).renderImageWithDPI(0, 25.4f);
        return List.of(
                image.getRGB(20, 30) & 0xffffff, image.getRGB(50, 30) & 0xffffff, image.getRGB(80, 30) & 0xffffff);
    }
}
