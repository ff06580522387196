package org.adumbrate.linework.read;

import static org.adumbrate.linework.read.PathAssertions.assertPath;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.adumbrate.geometry.VectorPath;
import org.adumbrate.linework.LineSheet;
import org.adumbrate.linework.Stroke;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Where on the page things lie: 72 points are 25.4 mm, so 7.2 points are 2.54 mm. */
class PdfPageTest {
    private static final double MICROMETRE = 1e-3;

    @TempDir
    Path folder;

    @Test
    void pageCoordinatesStartTopLeftWithYDown() throws IOException {
        LineSheet sheet = read(new PdfSketch(1224, 792).draws("72 792 m 144 720 l S"));
        assertThat(sheet.page().widthMm()).isCloseTo(431.8, within(1e-9));
        assertThat(sheet.page().heightMm()).isCloseTo(279.4, within(1e-9));
        assertPath(sheet.strokes().get(0).path(), "M 25.4 0 L 50.8 25.4", MICROMETRE);
    }

    @Test
    void theCropBoxIsThePageWhereverItsOriginLies() throws IOException {
        PdfSketch sketch = new PdfSketch(0, 0);
        sketch.page().setMediaBox(new PDRectangle(-100, -200, 1000, 1000));
        sketch.page().setCropBox(new PDRectangle(-72, 36, 720, 360));
        LineSheet sheet = read(sketch.draws("0 396 m 72 324 l S"));
        assertThat(sheet.page().widthMm()).isCloseTo(254, within(1e-9));
        assertThat(sheet.page().heightMm()).isCloseTo(127, within(1e-9));
        assertPath(sheet.strokes().get(0).path(), "M 25.4 0 L 50.8 25.4", MICROMETRE);
    }

    @Test
    void aCropBoxThatReachesBeyondTheMediaBoxIsCutToIt() throws IOException {
        PdfSketch sketch = new PdfSketch(720, 360);
        sketch.page().setCropBox(new PDRectangle(-100, -100, 2000, 2000));
        assertThat(read(sketch.draws("0 0 m 72 72 l S")).page().widthMm()).isCloseTo(254, within(1e-9));
    }

    @Test
    void aTurnedPageIsReadAsItIsSeen() throws IOException {
        // the line starts 1 in right of and 2 in below the upper left corner of the unturned page of 10 x 5 in
        String line = "72 216 m 720 216 l S";
        assertPath(turned(90, line), "M 76.2 25.4 L 76.2 254", MICROMETRE);
        assertPath(turned(180, line), "M 228.6 76.2 L 0 76.2", MICROMETRE);
        assertPath(turned(270, line), "M 50.8 228.6 L 50.8 0", MICROMETRE);
        assertPath(turned(-90, line), "M 50.8 228.6 L 50.8 0", MICROMETRE);
    }

    @Test
    void aTurnedPageLiesOnItsSide() throws IOException {
        PdfSketch sketch = new PdfSketch(720, 360).draws("72 216 m 720 216 l S");
        sketch.page().setRotation(90);
        LineSheet sheet = read(sketch);
        assertThat(sheet.page().widthMm()).isCloseTo(127, within(1e-9));
        assertThat(sheet.page().heightMm()).isCloseTo(254, within(1e-9));
    }

    @Test
    void aUserUnitScalesPageLinesAndWidths() throws IOException {
        PdfSketch sketch = new PdfSketch(72, 72).draws("7.2 w 0 36 m 36 36 l S");
        sketch.page().getCOSObject().setFloat(COSName.USER_UNIT, 10);
        LineSheet sheet = read(sketch);
        assertThat(sheet.page().widthMm()).isCloseTo(254, within(1e-9));
        assertPath(sheet.strokes().get(0).path(), "M 0 127 L 127 127", MICROMETRE);
        assertThat(sheet.strokes().get(0).widthMm()).isCloseTo(25.4, within(MICROMETRE));
    }

    @Test
    void coordinatesFarAwayKeepTheirDigits() throws IOException {
        // 24 bits would leave them whole halves of a point
        PdfSketch sketch = new PdfSketch(72, 72)
                .draws("1 0 0 1 -4500000.25 -5700000.75 cm 4500000.35 5700036.75 m 4500036.35 5700036.75 l S");
        assertPath(read(sketch).strokes().get(0).path(), "M 0.03528 12.7 L 12.73528 12.7", 1e-5);
    }

    @Test
    void nestedFormsAndTheirMatricesAreFollowed() throws IOException {
        try (PdfSketch sketch = new PdfSketch(720, 360)) {
            // outermost first: shift by (100, 50), double, turn by a quarter anticlockwise
            sketch.with(COSName.XOBJECT, "Inner", sketch.form("1 w 0 0 m 10 0 l S", box(), new double[] {
                        0, 1, -1, 0, 0, 0
                    }))
                    .with(COSName.XOBJECT, "Outer", sketch.form("2 0 0 2 0 0 cm /Inner Do", box(), identity()))
                    .draws("q 1 0 0 1 100 50 cm /Outer Do Q 0 0 m 10 0 l S");
            LineSheet sheet = LineSheets.read(sketch.saved(folder));
            double mm = 25.4 / 72;
            assertPath(
                    sheet.strokes().get(0).path(),
                    "M " + 100 * mm + " " + 310 * mm + " L " + 100 * mm + " " + 290 * mm,
                    MICROMETRE);
            assertThat(sheet.strokes().get(0).widthMm()).isCloseTo(2 * mm, within(1e-6));
            assertPath(sheet.strokes().get(1).path(), "M 0 127 L " + 10 * mm + " 127", MICROMETRE);
        }
    }

    @Test
    void theBoxOfAFormAndTheClipHideWhatLiesOutside() throws IOException {
        try (PdfSketch sketch = new PdfSketch(720, 720)) {
            sketch.with(
                            COSName.XOBJECT,
                            "F",
                            sketch.form("0 36 m 720 36 l S", new double[] {72, 0, 360, 72}, identity()))
                    .draws("/F Do q 144 144 144 144 re W n 0 216 m 720 216 l S Q 0 360 m 720 360 l S");
            List<Stroke> strokes = LineSheets.read(sketch.saved(folder)).strokes();
            assertPath(strokes.get(0).path(), "M 25.4 241.3 L 127 241.3", MICROMETRE);
            assertPath(strokes.get(1).path(), "M 50.8 177.8 L 101.6 177.8", MICROMETRE);
            assertPath(strokes.get(2).path(), "M 0 127 L 254 127", MICROMETRE);
        }
    }

    @Test
    void whatALineDoesOutsideThePageIsLeftOut() throws IOException {
        LineSheet sheet = read(new PdfSketch(720, 720).draws("-72 360 m 792 360 l S -9 -9 m -1 -1 l S"));
        assertThat(sheet.strokes()).hasSize(1);
        assertPath(sheet.strokes().get(0).path(), "M 0 127 L 254 127", MICROMETRE);
    }

    @Test
    void ofSeveralPagesTheFirstIsReadAndTheNumberTold() throws IOException {
        PdfSketch sketch = new PdfSketch(720, 720).draws("0 0 m 9 9 l S");
        sketch.document().addPage(new PDPage());
        assertThat(read(sketch).pages()).isEqualTo(2);
    }

    private VectorPath<?> turned(int degrees, String content) throws IOException {
        PdfSketch sketch = new PdfSketch(720, 360).draws(content);
        sketch.page().setRotation(degrees);
        return read(sketch).strokes().get(0).path();
    }

    private LineSheet read(PdfSketch sketch) throws IOException {
        try (sketch) {
            return sketch.read(folder);
        }
    }

    private static double[] box() {
        return new double[] {-1000, -1000, 1000, 1000};
    }

    private static double[] identity() {
        return new double[] {1, 0, 0, 1, 0, 0};
    }
}
