package org.adumbrate.linework.pdf;

import static org.adumbrate.linework.read.PathAssertions.assertPath;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Path;
import org.adumbrate.linework.LeftOut;
import org.adumbrate.linework.LineSheet;
import org.adumbrate.linework.ReadingNote;
import org.adumbrate.linework.Stroke;
import org.adumbrate.linework.read.PdfSketch;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.pdmodel.PDResources;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Strokes that the page's own content does not draw: in patterns, glyphs and annotations, and under soft masks. A unit is 1/72 in. */
class PdfStrokeSourcesTest {
    private static final double[] PLAIN = {1, 0, 0, 1, 0, 0};
    private static final double[] PAGE = {0, 0, 72, 72};
    private static final double MM = 25.4 / 72;

    private final PdfSketch sketch = new PdfSketch(72, 72);

    @TempDir
    Path folder;

    @AfterEach
    void close() throws IOException {
        sketch.close();
    }

    @Test
    void aHatchGivenAsATilingPattern() throws IOException {
        COSStream cell = tiling("0 0 1 RG 0 5 m 10 5 l S", 1);
        sketch.with(COSName.PATTERN, "P", cell).draws("/Pattern cs /P scn 15 20 30 20 re f");
        LineSheet sheet = sketch.read(folder);
        // the lines at 25 and 35 run from 15 to 45
        assertThat(length(sheet)).isCloseTo(60 * MM, within(1e-4));
        assertThat(sheet.strokes()).allSatisfy(s -> assertThat(s.color()).hasToString("#0000ff"));
        assertThat(sheet.leftOut()).isEmpty();
    }

    @Test
    void aPatternWithoutColoursTakesTheOneThatIsStated() throws IOException {
        COSStream cell = tiling("0 0 1 RG 0 5 m 10 5 l S", 2);
        COSArray space = new COSArray();
        space.add(COSName.PATTERN);
        space.add(COSName.DEVICERGB);
        sketch.with(COSName.PATTERN, "P", cell)
                .with(COSName.COLORSPACE, "C", space)
                .draws("q 2 0 0 2 3 4 cm /C cs 1 0 0 /P scn 0 0 20 10 re f Q");
        LineSheet sheet = sketch.read(folder);
        // patterns lie on the page and not in the coordinates at hand; the area reaches from (3, 4) to (43, 24)
        assertThat(length(sheet)).isCloseTo(80 * MM, within(1e-4));
        assertThat(sheet.strokes()).allSatisfy(s -> assertThat(s.color()).hasToString("#ff0000"));
    }

    @Test
    void aPatternOfFarTooManyTilesIsLeftOutAndTold() throws IOException {
        COSStream cell = tiling("0 0.005 m 0.01 0.005 l S", 1);
        cell.setItem(COSName.BBOX, PdfSketch.numbers(0, 0, 0.01, 0.01));
        cell.setItem(COSName.getPDFName("XStep"), PdfSketch.numbers(0.01).get(0));
        cell.setItem(COSName.getPDFName("YStep"), PdfSketch.numbers(0.01).get(0));
        sketch.with(COSName.PATTERN, "P", cell).draws("0 0 m 9 9 l S /Pattern cs /P scn 0 0 72 72 re f");
        LineSheet sheet = sketch.read(folder);
        assertThat(sheet.strokes()).hasSize(1);
        assertThat(sheet.leftOut()).singleElement().satisfies(l -> assertThat(l.kind())
                .isEqualTo(LeftOut.Kind.SHADING));
    }

    @Test
    void glyphsThatAreDrawnByStrokes() throws IOException {
        sketch.with(
                        COSName.FONT,
                        "F",
                        type3(
                                "500 0 0 0 1000 1000 d1 0 1 0 RG 0 0 m 0 1000 l S",
                                "1000 0 d0 0 0 1 RG 0 0 m 1000 0 l S"))
                .draws("1 0 0 rg BT /F 12 Tf 1 0 0 1 6 24 Tm [(a) -500 (b)] TJ 0 -12 Td (a) ' ET");
        LineSheet sheet = sketch.read(folder);
        assertThat(sheet.strokes()).hasSize(3);
        assertStroke(sheet.strokes().get(0), "#ff0000", 6, 24, 6, 36);
        // half an em for the glyph, half an em for the shift
        assertStroke(sheet.strokes().get(1), "#0000ff", 18, 24, 30, 24);
        assertStroke(sheet.strokes().get(2), "#ff0000", 6, 12, 6, 24);
        assertThat(sheet.leftOut()).isEmpty();
    }

    @Test
    void glyphsThatAreFilledAreText() throws IOException {
        sketch.with(COSName.FONT, "F", type3("500 0 0 0 1000 1000 d1 0 0 500 500 re f", "500 0 d0 0 0 m 9 9 l S"))
                .draws("0 0 m 9 9 l S BT /F 12 Tf (a) Tj ET");
        LineSheet sheet = sketch.read(folder);
        assertThat(sheet.strokes()).hasSize(1);
        assertThat(sheet.leftOut()).containsExactly(new LeftOut(LeftOut.Kind.TEXT, 1, 0));
    }

    @Test
    void linesAndInkThatAreDrawnAsAnnotations() throws IOException {
        COSDictionary line = note("Line", 4);
        line.setItem(COSName.L, PdfSketch.numbers(10, 10, 60, 10));
        COSDictionary ink = note("Ink", 0);
        COSArray strokes = new COSArray();
        strokes.add(PdfSketch.numbers(10, 20, 30, 20, 30, 40));
        ink.setItem(COSName.getPDFName("InkList"), strokes);
        COSDictionary hidden = note("Line", 2);
        hidden.setItem(COSName.L, PdfSketch.numbers(0, 0, 60, 60));
        COSDictionary unseen = note("Line", 32);
        unseen.setItem(COSName.L, PdfSketch.numbers(0, 0, 60, 60));
        notes(line, ink, hidden, unseen);
        LineSheet sheet = sketch.draws("").read(folder);
        assertThat(sheet.strokes()).hasSize(2);
        assertThat(sheet.strokes()).allSatisfy(s -> assertThat(s.color()).hasToString("#ff0000"));
        assertThat(sheet.strokes().get(0).path().length()).isCloseTo(50 * MM, within(1e-3));
        assertThat(sheet.strokes().get(1).path().length()).isCloseTo(40 * MM, within(1e-3));
        assertThat(sheet.remarks())
                .containsExactly(
                        new ReadingNote(
                                ReadingNote.Kind.ANNOTATIONS,
                                "2 strokes are taken from annotations (1 Ink, 1 Line); 1 of them viewers show and do not print"));
    }

    @Test
    void anAnnotationsOwnPictureIsFittedIntoItsRectangle() throws IOException {
        COSDictionary line = note("Line", 4);
        line.setItem(COSName.RECT, PdfSketch.numbers(20, 30, 40, 50));
        COSDictionary looks = new COSDictionary();
        // turned by a quarter: what goes right in it goes up on the page
        looks.setItem(
                COSName.N,
                sketch.form("0 2 m 10 2 l S", new double[] {0, 0, 10, 10}, new double[] {0, 1, -1, 0, 0, 0}));
        line.setItem(COSName.AP, looks);
        notes(line);
        assertStroke(sketch.draws("").read(folder).strokes().get(0), "#000000", 36, 30, 36, 50);
    }

    @Test
    void otherAnnotationsAreCounted() throws IOException {
        COSDictionary stamp = note("Stamp", 4);
        COSDictionary looks = new COSDictionary();
        looks.setItem(COSName.N, sketch.form("0 2 m 10 2 l S", PAGE, PLAIN));
        stamp.setItem(COSName.AP, looks);
        notes(stamp, note("Link", 4));
        LineSheet sheet = sketch.draws("0 0 m 9 9 l S").read(folder);
        assertThat(sheet.strokes()).hasSize(1);
        assertThat(sheet.leftOut()).containsExactly(new LeftOut(LeftOut.Kind.ANNOTATION, 1, 0));
    }

    @Test
    void aSoftMaskHidesWhatIsBlackInIt() throws IOException {
        mask("Luminosity", "1 g 0 0 36 72 re f 0 g 0 0 18 72 re f");
        LineSheet sheet = sketch.draws("/M gs 0 36 m 72 36 l S 40 0 m 72 0 l S /N gs 0 9 m 72 9 l S")
                .read(folder);
        assertThat(sheet.strokes()).hasSize(2);
        assertStroke(sheet.strokes().get(0), "#000000", 18, 36, 36, 36);
        assertStroke(sheet.strokes().get(1), "#000000", 0, 9, 72, 9);
        assertThat(sheet.leftOut()).containsExactly(new LeftOut(LeftOut.Kind.MASKED_STROKE, 1, 0));
        assertThat(sheet.remarks()).isEmpty();
    }

    @Test
    void aSoftMaskByAlphaShowsWhatIsPaintedInAnyColour() throws IOException {
        mask("Alpha", "0 g 0 0 36 72 re f");
        LineSheet sheet = sketch.draws("/M gs 0 36 m 72 36 l S").read(folder);
        assertStroke(sheet.strokes().get(0), "#000000", 0, 36, 36, 36);
    }

    @Test
    void aSoftMaskThatShowsAPartIsTold() throws IOException {
        mask("Luminosity", "0.5 g 0 0 36 72 re f");
        LineSheet sheet = sketch.draws("/M gs 0 36 m 72 36 l S").read(folder);
        assertStroke(sheet.strokes().get(0), "#000000", 0, 36, 36, 36);
        assertThat(sheet.remarks()).singleElement().satisfies(remark -> {
            assertThat(remark.kind()).isEqualTo(ReadingNote.Kind.HALF_SHOWN);
            assertThat(remark.told()).startsWith("1 stroke lies under a soft mask that lets a part show");
        });
    }

    @Test
    void aSoftMaskOverAGroupLiesWhereItWasSet() throws IOException {
        mask("Luminosity", "0.9 g 0 0 18 36 re f");
        COSStream form = sketch.form("/N gs 0 9 m 72 9 l S", PAGE, new double[] {2, 0, 0, 2, 0, 0});
        form.setItem(COSName.GROUP, new COSDictionary());
        form.setItem(COSName.RESOURCES, sketch.resources().getCOSObject());
        sketch.with(COSName.XOBJECT, "F", form);
        LineSheet sheet = sketch.draws("q 2 0 0 2 0 0 cm /M gs 0.5 0 0 0.5 0 0 cm /F Do Q")
                .read(folder);
        // the mask lets the left half of the page be seen; what it holds for is the group, which cannot lift it
        assertStroke(sheet.strokes().get(0), "#000000", 0, 18, 36, 18);
        assertThat(sheet.remarks()).singleElement().satisfies(remark -> assertThat(remark.kind())
                .isEqualTo(ReadingNote.Kind.HALF_SHOWN));
    }

    private void mask(String kind, String content) throws IOException {
        COSStream group = sketch.form(content, PAGE, PLAIN);
        COSDictionary attributes = new COSDictionary();
        attributes.setItem(COSName.S, COSName.getPDFName("Transparency"));
        attributes.setItem(COSName.CS, COSName.DEVICEGRAY);
        group.setItem(COSName.GROUP, attributes);
        COSDictionary mask = new COSDictionary();
        mask.setItem(COSName.S, COSName.getPDFName(kind));
        mask.setItem(COSName.G, group);
        COSDictionary masked = new COSDictionary();
        masked.setItem(COSName.SMASK, mask);
        COSDictionary none = new COSDictionary();
        none.setItem(COSName.SMASK, COSName.NONE);
        sketch.with(COSName.EXT_G_STATE, "M", masked).with(COSName.EXT_G_STATE, "N", none);
    }

    private COSStream tiling(String content, int paint) throws IOException {
        COSStream cell = sketch.form(content, new double[] {0, 0, 10, 10}, PLAIN);
        cell.setInt(COSName.PATTERN_TYPE, 1);
        cell.setInt(COSName.PAINT_TYPE, paint);
        cell.setInt(COSName.TILING_TYPE, 1);
        cell.setInt(COSName.getPDFName("XStep"), 10);
        cell.setInt(COSName.getPDFName("YStep"), 10);
        cell.setItem(COSName.RESOURCES, new PDResources());
        return cell;
    }

    /** A font with the glyphs a, half an em wide, and b, an em wide. */
    private COSDictionary type3(String a, String b) throws IOException {
        COSDictionary glyphs = new COSDictionary();
        glyphs.setItem("ga", sketch.form(a, PAGE, PLAIN));
        glyphs.setItem("gb", sketch.form(b, PAGE, PLAIN));
        COSArray differences = new COSArray();
        differences.add(COSInteger.get('a'));
        differences.add(COSName.getPDFName("ga"));
        differences.add(COSName.getPDFName("gb"));
        COSDictionary encoding = new COSDictionary();
        encoding.setItem(COSName.DIFFERENCES, differences);
        COSDictionary font = new COSDictionary();
        font.setItem(COSName.SUBTYPE, COSName.getPDFName("Type3"));
        font.setItem(COSName.getPDFName("FontMatrix"), PdfSketch.numbers(0.001, 0, 0, 0.001, 0, 0));
        font.setItem(COSName.getPDFName("CharProcs"), glyphs);
        font.setItem(COSName.ENCODING, encoding);
        font.setInt(COSName.FIRST_CHAR, 'a');
        font.setItem(COSName.WIDTHS, PdfSketch.numbers(500, 1000));
        return font;
    }

    private static COSDictionary note(String kind, int flags) {
        COSDictionary note = new COSDictionary();
        note.setItem(COSName.TYPE, COSName.ANNOT);
        note.setItem(COSName.SUBTYPE, COSName.getPDFName(kind));
        note.setItem(COSName.RECT, PdfSketch.numbers(0, 0, 72, 72));
        note.setItem(COSName.C, PdfSketch.numbers(1, 0, 0));
        note.setInt(COSName.F, flags);
        return note;
    }

    private void notes(COSDictionary... notes) {
        COSArray all = new COSArray();
        for (COSDictionary note : notes) {
            all.add(note);
        }
        sketch.page().getCOSObject().setItem(COSName.ANNOTS, all);
    }

    private static double length(LineSheet sheet) {
        return sheet.strokes().stream().mapToDouble(s -> s.path().length()).sum();
    }

    /** Ends in units of the page, y up. */
    private static void assertStroke(Stroke stroke, String color, double x0, double y0, double x1, double y1) {
        assertThat(stroke.color()).hasToString(color);
        assertPath(stroke.path(), "M " + MM * x0 + " " + MM * (72 - y0) + " L " + MM * x1 + " " + MM * (72 - y1), 1e-3);
    }
}
