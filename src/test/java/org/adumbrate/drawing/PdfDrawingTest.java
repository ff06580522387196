package org.adumbrate.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.awt.color.ColorSpace;
import java.awt.color.ICC_Profile;
import java.awt.image.Raster;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import java.util.zip.DeflaterOutputStream;
import org.adumbrate.fault.OutputFault;
import org.adumbrate.geometry.PixelSize;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.SheetSize;
import org.adumbrate.geometry.Space;
import org.adumbrate.geometry.Srgb;
import org.adumbrate.geometry.VectorPath;
import org.adumbrate.linework.read.LineSheets;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.graphics.color.PDICCBased;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PdfDrawingTest {
    private static final PixelSize SIZE = new PixelSize(4, 3);

    @TempDir
    Path folder;

    @Test
    void thePageHasTheSizeOfTheSheet() throws IOException {
        SheetSize a1 = new SheetSize(841, 594);
        Path file = folder.resolve("drawing.pdf");
        try (PdfDrawing drawing = PdfDrawing.begin(file, a1)) {
            drawing.layers(Sketches.layers());
            drawing.finish();
        }
        try (PDDocument document = Loader.loadPDF(file.toFile())) {
            assertThat(document.getNumberOfPages()).isEqualTo(1);
            var box = document.getPage(0).getMediaBox();
            assertThat((double) box.getWidth()).isCloseTo(841 / 25.4 * 72, within(1e-3));
            assertThat((double) box.getHeight()).isCloseTo(594 / 25.4 * 72, within(1e-3));
            assertThat(document.getDocumentCatalog()
                            .getCOSObject()
                            .getCOSDictionary(COSName.getPDFName("ViewerPreferences"))
                            .getNameAsString("PrintScaling"))
                    .isEqualTo("None");
        }
    }

    @Test
    void linesAreFoundAgainAsTheyWereGiven() throws IOException {
        RoundTrip.assertHolds(LineSheets.read(drawn("drawing.pdf")), Sketches.layers());
    }

    @Test
    void everyLayerIsAGroupOfItsNameAndSoIsTheUnderlay() throws IOException {
        try (PDDocument document = Loader.loadPDF(drawn("drawing.pdf").toFile())) {
            assertThat(document.getDocumentCatalog().getOCProperties().getGroupNames())
                    .containsExactly("underlay", "furniture", "cut outline", "böden");
        }
    }

    @Test
    void theUnderlayKeepsItsSamplesAndItsProfile() throws IOException {
        try (PDDocument document = Loader.loadPDF(drawn("drawing.pdf").toFile())) {
            PDImageXObject image =
                    (PDImageXObject) document.getPage(0).getResources().getXObject(COSName.getPDFName("Underlay"));
            assertThat(image.getWidth()).isEqualTo(SIZE.width());
            assertThat(image.getHeight()).isEqualTo(SIZE.height());
            assertThat(((PDICCBased) image.getColorSpace()).getPDStream().toByteArray())
                    .isEqualTo(grey());
            Raster raster = image.getRawRaster();
            assertThat(raster.getPixels(0, 0, 4, 3, (int[]) null))
                    .containsExactly(0, 10, 20, 30, 50, 60, 70, 80, 100, 110, 120, 130);
        }
    }

    @Test
    void equalDrawingsAreEqualBytesAndOthersHaveAnotherIdentifier() throws IOException {
        byte[] first = Files.readAllBytes(drawn("a.pdf"));
        assertThat(Files.readAllBytes(drawn("b.pdf"))).isEqualTo(first);
        Path other = folder.resolve("c.pdf");
        try (PdfDrawing drawing = PdfDrawing.begin(other, Sketches.SHEET)) {
            drawing.finish();
        }
        assertThat(identifier(other)).isNotEqualTo(identifier(folder.resolve("a.pdf")));
    }

    @Test
    void manyLinesShareAPathAndLayersOfOneNameAGroup() throws IOException {
        VectorPath.Builder<SheetPoint> line = VectorPath.in(Space.SHEET);
        line.moveTo(10, 10);
        line.lineTo(20, 20);
        List<VectorPath<SheetPoint>> lines = Collections.nCopies(1200, line.build());
        Layer layer = Sketches.lines("lines", Pen.round(0.25, Srgb.BLACK), lines);
        Path file = folder.resolve("many.pdf");
        try (PdfDrawing drawing = PdfDrawing.begin(file, Sketches.SHEET)) {
            drawing.layers(List.of(layer, layer));
            drawing.finish();
        }
        var strokes = LineSheets.read(file).strokes();
        assertThat(strokes).hasSize(6);
        assertThat(strokes.stream().mapToInt(stroke -> stroke.path().runs()).sum())
                .isEqualTo(2400);
        try (PDDocument document = Loader.loadPDF(file.toFile())) {
            assertThat(document.getDocumentCatalog().getOCProperties().getGroupNames())
                    .containsExactly("lines");
        }
    }

    @Test
    void aDrawingThatIsGivenUpLeavesWhatStoodThere() throws IOException {
        Path file = Files.writeString(folder.resolve("drawing.pdf"), "the old drawing");
        try (PdfDrawing drawing = PdfDrawing.begin(file, Sketches.SHEET)) {
            drawing.layers(Sketches.layers());
        }
        assertThat(file).hasContent("the old drawing");
        assertThat(folder).isDirectoryNotContaining(path -> !path.equals(file));
    }

    @Test
    void aFinishedDrawingReplacesWhatStoodThereAndMakesItsFolder() throws IOException {
        Path file = folder.resolve("out/today/drawing.pdf");
        drawn("out/today/drawing.pdf");
        drawn("out/today/drawing.pdf");
        assertThat(file.getParent()).isDirectoryNotContaining(path -> !path.equals(file));
    }

    @Test
    void aPlaceThatCannotBeWrittenIsTold() throws IOException {
        Path notAFolder = Files.writeString(folder.resolve("out"), "a file");
        assertThatThrownBy(() -> PdfDrawing.begin(notAFolder.resolve("drawing.pdf"), Sketches.SHEET))
                .isInstanceOf(OutputFault.class)
                .hasMessageStartingWith(notAFolder.resolve("drawing.pdf") + ": cannot be written (")
                .hasMessageContaining("not a folder")
                .hasMessageNotContaining("\n");
        assertThatThrownBy(() -> PdfDrawing.begin(folder, Sketches.SHEET))
                .isInstanceOf(OutputFault.class)
                .hasMessageContaining("is a folder");
    }

    @Test
    void theUnderlayComesFirstAndIsClosedBeforeTheLayers() throws IOException {
        try (PdfDrawing drawing = PdfDrawing.begin(folder.resolve("drawing.pdf"), Sketches.SHEET)) {
            OutputStream open = drawing.underlay(SIZE, 3, new byte[0]);
            assertThatThrownBy(() -> drawing.layers(Sketches.layers())).isInstanceOf(IllegalStateException.class);
            open.close();
            assertThatThrownBy(() -> drawing.underlay(SIZE, 3, new byte[0])).isInstanceOf(IllegalStateException.class);
        }
    }

    /** The sketch over an underlay whose sample in column x and row y is 10 x + 50 y. */
    private Path drawn(String name) throws IOException {
        Path file = folder.resolve(name);
        try (PdfDrawing drawing = PdfDrawing.begin(file, Sketches.SHEET)) {
            try (OutputStream rows = new DeflaterOutputStream(drawing.underlay(SIZE, 1, grey()))) {
                // the first row as it is (filter 0), the others as differences from the one above (filter 2)
                rows.write(new byte[] {0, 0, 10, 20, 30});
                rows.write(new byte[] {2, 50, 50, 50, 50});
                rows.write(new byte[] {2, 50, 50, 50, 50});
            }
            drawing.layers(Sketches.layers());
            drawing.finish();
        }
        return file;
    }

    private static byte[] grey() {
        return ICC_Profile.getInstance(ColorSpace.CS_GRAY).getData();
    }

    private static String identifier(Path file) throws IOException {
        try (PDDocument document = Loader.loadPDF(file.toFile())) {
            return document.getDocument().getDocumentID().toString();
        }
    }
}
