package org.adumbrate.linework.read;

import static org.adumbrate.linework.read.PathAssertions.assertPath;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.color.ColorSpace;
import java.awt.color.ICC_Profile;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.adumbrate.geometry.Dash;
import org.adumbrate.geometry.LineCap;
import org.adumbrate.geometry.LineJoin;
import org.adumbrate.geometry.Srgb;
import org.adumbrate.linework.LineSheet;
import org.adumbrate.linework.Stroke;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSFloat;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSString;
import org.apache.pdfbox.pdmodel.graphics.color.PDICCBased;
import org.apache.pdfbox.pdmodel.graphics.color.PDLab;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** How strokes look, and which marks are strokes. */
class PdfStrokeTest {
    private static final String LINE = " 0 0 m 72 72 l S ";

    @TempDir
    Path folder;

    @Test
    void deviceColoursComeOutAsRoundAsTheyWentIn() throws IOException {
        assertThat(colors(new PdfSketch(72, 72)
                        .draws(LINE
                                + "0.251 0.251 0.2824 RG" + LINE
                                + "1 G" + LINE
                                + "0 0 0 1 K" + LINE
                                + "1 0.5 0 0.25 K" + LINE)))
                // cyan takes all the red; magenta takes half of the three quarters of the green that black leaves
                .containsExactly("#000000", "#404048", "#ffffff", "#000000", "#0060bf");
    }

    @Test
    void darkGreysOfSeveralInksStayApartFromBlack() throws IOException {
        assertThat(colors(new PdfSketch(72, 72)
                        .draws("0 0 0 0.8 K" + LINE
                                + "0.3 0.2 0.2 0.8 K" + LINE
                                + "0.5 0.4 0.4 0.9 K" + LINE
                                + "0.7 0.6 0.6 1 K" + LINE
                                + "-1 2 0 0 K" + LINE)))
                .containsExactly("#333333", "#242929", "#0d0f0f", "#000000", "#ff00ff");
    }

    @Test
    void aProfileOfSrgbLeavesColoursAsTheyAre() throws IOException {
        try (PdfSketch sketch = new PdfSketch(72, 72)) {
            PDICCBased srgb = new PDICCBased(sketch.document());
            srgb.getPDStream().getCOSObject().setInt(COSName.N, 3);
            try (var out = srgb.getPDStream().createOutputStream()) {
                out.write(ICC_Profile.getInstance(ColorSpace.CS_sRGB).getData());
            }
            sketch.with(COSName.COLORSPACE, "Icc", srgb.getCOSObject()).draws("/Icc CS 0.251 0.251 0.2824 SCN" + LINE);
            assertThat(colors(sketch)).containsExactly("#404048");
        }
    }

    @Test
    void inksAreTakenByTheirAlternateColour() throws IOException {
        try (PdfSketch sketch = new PdfSketch(72, 72)) {
            sketch.with(COSName.COLORSPACE, "Spot", separation(COSName.DEVICERGB, "1 0 0.2"))
                    .with(COSName.COLORSPACE, "Black", separation(COSName.DEVICECMYK, "0 0 0 1"))
                    .draws("/Spot CS 1 SCN" + LINE + "0.5 SCN" + LINE + "/Black CS 1 SCN" + LINE);
            // the tint goes from no colour (0) to the full colour
            assertThat(colors(sketch)).containsExactly("#ff0033", "#80001a", "#000000");
        }
    }

    @Test
    void indexedAndLabColoursAreLookedUp() throws IOException {
        try (PdfSketch sketch = new PdfSketch(72, 72)) {
            COSArray indexed = new COSArray();
            indexed.add(COSName.INDEXED);
            indexed.add(COSName.DEVICERGB);
            indexed.add(COSInteger.ONE);
            indexed.add(new COSString(new byte[] {10, 20, 30, (byte) 200, 100, 0}));
            PDLab lab = new PDLab();
            // the white of graphic arts, D50
            ((COSDictionary) ((COSArray) lab.getCOSObject()).getObject(1))
                    .setItem(COSName.WHITE_POINT, PdfSketch.numbers(0.9642, 1, 0.8249));
            sketch.with(COSName.COLORSPACE, "Idx", indexed)
                    .with(COSName.COLORSPACE, "Lab", lab.getCOSObject())
                    .draws("/Idx CS 1 SC" + LINE + "/Lab CS 100 0 0 SC" + LINE + "0 0 0 SC" + LINE);
            assertThat(colors(sketch)).containsExactly("#c86400", "#ffffff", "#000000");
        }
    }

    @Test
    void widthDashCapAndJoinFollowTheScale() throws IOException {
        Stroke stroke = strokes(
                        new PdfSketch(720, 720).draws("2 0 0 8 0 0 cm 1.5 w [3 1.5] 0.75 d 1 J 2 j 0 0 m 9 9 l S"))
                .get(0);
        // sqrt(2 x 8) = 4 points to the unit
        double mm = 4 * 25.4 / 72;
        assertThat(stroke.widthMm()).isCloseTo(1.5 * mm, within(1e-6));
        assertThat(stroke.dash().lengthsMm().get(0)).isCloseTo(3 * mm, within(1e-6));
        assertThat(stroke.dash().lengthsMm().get(1)).isCloseTo(1.5 * mm, within(1e-6));
        assertThat(stroke.dash().phaseMm()).isCloseTo(0.75 * mm, within(1e-6));
        assertThat(stroke.cap()).isEqualTo(LineCap.ROUND);
        assertThat(stroke.join()).isEqualTo(LineJoin.BEVEL);
    }

    @Test
    void aHairlineStaysOneAndAnEmptyDashIsNone() throws IOException {
        Stroke stroke =
                strokes(new PdfSketch(72, 72).draws("0 w [0 0] 0 d" + LINE)).get(0);
        assertThat(stroke.widthMm()).isZero();
        assertThat(stroke.dash()).isEqualTo(Dash.NONE);
    }

    @Test
    void aParameterDictionarySetsTheStateToo() throws IOException {
        try (PdfSketch sketch = new PdfSketch(72, 72)) {
            COSDictionary parameters = new COSDictionary();
            parameters.setFloat(COSName.LW, 7.2f);
            parameters.setInt(COSName.LC, 2);
            parameters.setInt(COSName.LJ, 1);
            COSDictionary unseen = new COSDictionary();
            unseen.setFloat(COSName.CA, 0);
            sketch.with(COSName.EXT_G_STATE, "G", parameters)
                    .with(COSName.EXT_G_STATE, "U", unseen)
                    .draws("/G gs" + LINE + "/U gs" + LINE);
            List<Stroke> strokes = strokes(sketch);
            assertThat(strokes).hasSize(1);
            assertThat(strokes.get(0).widthMm()).isCloseTo(2.54, within(1e-6));
            assertThat(strokes.get(0).cap()).isEqualTo(LineCap.PROJECTING);
            assertThat(strokes.get(0).join()).isEqualTo(LineJoin.ROUND);
        }
    }

    @Test
    void curvesStayCurvesAndRectanglesAreClosed() throws IOException {
        List<Stroke> strokes = strokes(new PdfSketch(72, 72)
                .draws("0 72 m 0 36 36 36 72 72 c S 0 72 m 36 36 72 72 v S 0 72 m 36 36 72 72 y S 0 36 36 36 re S"));
        assertPath(strokes.get(0).path(), "M 0 0 C 0 12.7 12.7 12.7 25.4 0", 1e-5);
        assertPath(strokes.get(1).path(), "M 0 0 C 0 0 12.7 12.7 25.4 0", 1e-5);
        assertPath(strokes.get(2).path(), "M 0 0 C 12.7 12.7 25.4 0 25.4 0", 1e-5);
        assertPath(strokes.get(3).path(), "M 0 12.7 L 12.7 12.7 L 12.7 0 L 0 0 Z", 1e-5);
    }

    @Test
    void aPaintedAndStrokedPathIsAStrokeAndOthersAreCounted() throws IOException {
        try (PdfSketch sketch = new PdfSketch(72, 72)) {
            sketch.draws("0 0 9 9 re B 0 0 9 9 re b* 0 0 9 9 re f 0 0 9 9 re f* 0 0 9 9 re n "
                    + "BT /NoSuchFont 12 Tf (text) Tj ET q BI /W 1 /H 1 /CS /G /BPC 8 ID x EI Q "
                    + "/Pattern CS /P1 SCN" + LINE);
            LineSheet sheet = sketch.read(folder);
            assertThat(sheet.strokes()).hasSize(2);
            assertThat(sheet.otherMarks()).isEqualTo(5);
        }
    }

    @Test
    void aMoveWithNothingAfterItIsNoStroke() throws IOException {
        List<Stroke> strokes = strokes(new PdfSketch(72, 72).draws("5 5 m S 0 72 m 9 9 m 36 72 l 1 1 m S"));
        assertThat(strokes).hasSize(1);
        assertThat(strokes.get(0).path().runs()).isEqualTo(1);
    }

    private List<String> colors(PdfSketch sketch) throws IOException {
        return strokes(sketch).stream().map(Stroke::color).map(Srgb::toString).toList();
    }

    private List<Stroke> strokes(PdfSketch sketch) throws IOException {
        try (sketch) {
            return sketch.read(folder).strokes();
        }
    }

    /** An ink that goes in a straight line from no colour to the one given. */
    private static COSArray separation(COSName alternate, String full) {
        String[] words = full.split(" ", -1);
        COSArray high = new COSArray();
        COSArray low = new COSArray();
        for (String word : words) {
            high.add(new COSFloat(Float.parseFloat(word)));
            low.add(COSInteger.ZERO);
        }
        COSDictionary function = new COSDictionary();
        function.setInt(COSName.FUNCTION_TYPE, 2);
        function.setItem(COSName.DOMAIN, PdfSketch.numbers(0, 1));
        function.setItem(COSName.C0, low);
        function.setItem(COSName.C1, high);
        function.setInt(COSName.N, 1);
        COSArray space = new COSArray();
        space.add(COSName.SEPARATION);
        space.add(COSName.getPDFName("Ink"));
        space.add(alternate);
        space.add(function);
        return space;
    }
}
