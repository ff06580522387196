package org.adumbrate.linework.read;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Path;
import org.adumbrate.fault.InputFault;
import org.adumbrate.geometry.VectorPath;
import org.adumbrate.linework.LeftOut;
import org.adumbrate.linework.LineSheet;
import org.adumbrate.linework.Stroke;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBoolean;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A line of 100 on a page of 100, and what is painted over its left half. */
class CoveredLinesTest {
    private static final double POINT = 25.4 / 72;
    private static final String LINE = " 0 50 m 100 50 l S ";

    @TempDir
    private Path folder;

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '"', textBlock = """
            1 g 0 0 50 100 re f                                   | 50
            0.5 0.2 0 rg 0 0 50 100 re f                          | 50
            0 0 0 0 k 0 0 50 100 re f*                            | 50
            0 0 m 50 0 l 50 100 l 0 100 l f                       | 50
            0 0 50 100 re 10 10 30 80 re f*                       | 80
            0 0 50 100 re 10 10 30 80 re f                        | 50
            q 0.5 0 0 1 0 0 cm 0 0 100 100 re f Q                 | 50
            q 0 0 25 100 re W n 0 0 50 100 re f Q                 | 75
            q 20 0 m 70 50 l 20 100 l h W n 0 0 50 100 re f Q     | 70
            q 50 0 0 100 0 0 cm /Solid Do Q                       | 50
            q 50 0 0 100 0 0 cm /Masked Do Q                      | 100
            q 50 0 0 100 0 0 cm BI /W 1 /H 1 /CS /G /BPC 8 ID x EI Q | 50
            q 50 0 0 100 0 0 cm BI /W 1 /H 1 /IM true ID x EI Q   | 100
            /Form Do                                              | 50
            /Half gs /Group Do                                    | 100
            /Half gs 0 0 50 100 re f                              | 100
            /Multiply gs 0 0 50 100 re f                          | 100
            q 0 0 50 100 re W n /Axial sh Q                       | 50
            /Strip sh                                             | 80
            /Ring sh                                              | 60
            /Pattern cs /Gradient scn 0 0 50 100 re f             | 50
            /Pattern cs /Tiles scn 0 0 50 100 re f                | 100
            /Triangles sh                                         | 50
            0 0 50 100 re n                                       | 100
            """)
    void opaqueAreasOfAPdfHideWhatLiesBehind(String over, double left) throws IOException {
        try (PdfSketch sketch = sketch()) {
            LineSheet sheet =
                    sketch.draws(LINE + over.replace("ID x EI", "ID \0 EI")).read(folder);
            assertThat(lengthMm(sheet)).isCloseTo(left * POINT, within(2e-3));
            assertThat(sheet.hidden().lengthMm()).isCloseTo((100 - left) * POINT, within(2e-3));
        }
        try (PdfSketch sketch = sketch()) {
            LineSheet sheet =
                    sketch.draws(over.replace("ID x EI", "ID \0 EI") + LINE).read(folder);
            assertThat(lengthMm(sheet)).as("painted before the line").isCloseTo(100 * POINT, within(2e-3));
        }
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '"', textBlock = """
            <rect width='50' height='100' fill='white'/>                                                 | 50
            <rect width='50' height='100'/>                                                              | 50
            <path d='M0 0H50V100H0ZM10 10H40V90H10Z' fill-rule='evenodd'/>                               | 80
            <path d='M0 0H50V100H0ZM10 10H40V90H10Z'/>                                                   | 50
            <g transform='scale(.5 1)'><rect width='100' height='100' fill='hsl(0,0%,100%)'/></g>        | 50
            <rect width='50' height='100' fill='white' fill-opacity='.5'/>                               | 100
            <rect width='50' height='100' fill='white' opacity='.5'/>                                    | 100
            <rect width='50' height='100' fill='#ffffff80'/>                                             | 100
            <rect width='50' height='100' fill='rgba(255,255,255,.5)'/>                                  | 100
            <rect width='50' height='100' fill='rgb(255 255 255 / 1)'/>                                  | 50
            <g opacity='.5'><rect width='50' height='100' fill='white'/></g>                             | 100
            <g style='mix-blend-mode: multiply'><rect width='50' height='100' fill='white'/></g>         | 100
            <rect width='50' height='100' fill='none'/>                                                  | 100
            <rect width='100' height='100' clip-path='url(#left)'/>                                      | 75
            <use href='#face'/>                                                                          | 50
            <rect width='50' height='100' fill='url(#solid)'/>                                           | 50
            <rect width='50' height='100' fill='url(#faint)'/>                                           | 100
            <image width='50' height='100' preserveAspectRatio='none' href='data:image/png;base64,GREY'/> | 50
            <image width='50' height='100' href='data:image/png;base64,GREY'/>                           | 50
            <image width='50' height='100' y='25' href='data:image/png;base64,GREY'/>                    | 100
            <image width='50' height='100' preserveAspectRatio='none' href='data:image/png;base64,ALPHA'/> | 100
            <image width='50' height='100' href='outside.jpg'/>                                          | 100
            """)
    void opaqueAreasOfAnSvgHideWhatLiesBehind(String written, double left) throws IOException {
        String over = written.replace("GREY", png(0)).replace("ALPHA", png(4));
        String line = "<line x1='0' y1='50' x2='100' y2='50' stroke='black'/>";
        String defs = "<defs><clipPath id='left'><rect width='25' height='100'/></clipPath>"
                + "<rect id='face' width='50' height='100' fill='red'/>"
                + "<linearGradient id='solid'><stop stop-color='red'/><stop offset='1'/></linearGradient>"
                + "<linearGradient id='faint'><stop/><stop style='stop-opacity:.2'/></linearGradient></defs>";
        LineSheet sheet = svg(defs + line + over);
        assertThat(lengthMm(sheet)).isCloseTo(left, within(2e-3));
        assertThat(lengthMm(svg(defs + over + line)))
                .as("painted before the line")
                .isCloseTo(100, within(2e-3));
    }

    @Test
    void whatAGroupSeenThroughPaintsHidesWithinTheGroupAlone() throws IOException {
        LineSheet sheet = svg("<g stroke='black'><path d='M0 50H100'/><g opacity='.5'><path d='M0 60H100'/>"
                + "<rect width='50' height='100' fill='white' stroke='none'/></g></g>");
        assertThat(sheet.strokes()).extracting(stroke -> stroke.path().length()).containsExactly(100.0, 50.0);
    }

    @Test
    void aFaceHidesWhatLiesBehindAndKeepsItsOwnOutline() throws IOException {
        String face = "10 10 80 80 re B ";
        try (PdfSketch sketch = sketch()) {
            LineSheet sheet =
                    sketch.draws("1 g " + LINE + face + "30 30 40 40 re B").read(folder);
            assertThat(sheet.strokes()).hasSize(3);
            assertThat(lengthMm(sheet)).isCloseTo((20 + 320 + 160) * POINT, within(2e-3));
        }
        LineSheet sheet = svg("<g stroke='black' fill='white'><path d='M0 50H100'/>"
                + "<rect x='10' y='10' width='80' height='80'/><rect x='30' y='30' width='40' height='40'/></g>");
        assertThat(lengthMm(sheet)).isCloseTo(20 + 320 + 160, within(2e-3));
    }

    @Test
    void everythingThatIsNoLineIsCountedWithItsArea() throws IOException {
        LineSheet sheet = svg("<rect width='10' height='10'/><rect width='20' height='10' fill='#fff'/>"
                + "<rect width='30' height='10' fill='red' stroke='red'/><rect x='90' width='30' height='10'/>"
                + "<text>a</text><image width='5' height='4'/>"
                + "<path stroke='url(#g)' d='M0 50H9'/><path stroke='black' fill='none' d='M0 90H100'/>");
        assertThat(sheet.leftOut())
                .containsExactly(
                        new LeftOut(LeftOut.Kind.AREA, 2, 200),
                        new LeftOut(LeftOut.Kind.WHITE_AREA, 1, 200),
                        new LeftOut(LeftOut.Kind.OUTLINED_AREA, 1, 300),
                        new LeftOut(LeftOut.Kind.IMAGE, 1, 20),
                        new LeftOut(LeftOut.Kind.TEXT, 1, 0),
                        new LeftOut(LeftOut.Kind.UNCOLORED_STROKE, 1, 0));
    }

    @Test
    void aSheetWhoseLinesAreAllCoveredSaysSo() {
        assertThatThrownBy(() -> svg("<path stroke='red' d='M10 10H90'/><rect width='100' height='100'/>"))
                .isInstanceOf(InputFault.class)
                .hasMessageContaining("areas are painted over all 1 strokes");
    }

    private PdfSketch sketch() throws IOException {
        PdfSketch sketch = new PdfSketch(100, 100);
        double[] page = {0, 0, 100, 100};
        double[] asItIs = {1, 0, 0, 1, 0, 0};
        COSStream group = sketch.form("0 0 50 100 re f", page, asItIs);
        group.setItem(COSName.GROUP, new COSDictionary());
        COSStream solid = sketch.form("x", page, asItIs);
        solid.setItem(COSName.SUBTYPE, COSName.IMAGE);
        COSStream masked = sketch.form("x", page, asItIs);
        masked.setItem(COSName.SUBTYPE, COSName.IMAGE);
        masked.setItem(COSName.SMASK, solid);
        COSDictionary half = new COSDictionary();
        half.setFloat(COSName.CA_NS, 0.5f);
        COSDictionary multiply = new COSDictionary();
        multiply.setItem(COSName.BM, COSName.MULTIPLY);
        COSDictionary gradient = new COSDictionary();
        gradient.setInt(COSName.PATTERN_TYPE, 2);
        gradient.setItem(COSName.SHADING, shading(2, /* extended= */ true, 0, 0, 1, 0));
        COSDictionary tiles = new COSDictionary();
        tiles.setInt(COSName.PATTERN_TYPE, 1);
        return sketch.with(
                        COSName.XOBJECT, "Form", sketch.form("0 0 100 100 re f", new double[] {0, 0, 50, 100}, asItIs))
                .with(COSName.XOBJECT, "Group", group)
                .with(COSName.XOBJECT, "Solid", solid)
                .with(COSName.XOBJECT, "Masked", masked)
                .with(COSName.EXT_G_STATE, "Half", half)
                .with(COSName.EXT_G_STATE, "Multiply", multiply)
                .with(COSName.SHADING, "Axial", shading(2, /* extended= */ true, 10, 0, 20, 0))
                .with(COSName.SHADING, "Strip", shading(2, /* extended= */ false, 10, 0, 30, 0))
                .with(COSName.SHADING, "Ring", shading(3, /* extended= */ false, 50, 50, 10, 50, 50, 30))
                .with(COSName.SHADING, "Triangles", triangles(sketch))
                .with(COSName.PATTERN, "Gradient", gradient)
                .with(COSName.PATTERN, "Tiles", tiles);
    }

    private static COSDictionary shading(int type, boolean extended, double... coordinates) {
        COSDictionary shading = new COSDictionary();
        shading.setInt(COSName.SHADING_TYPE, type);
        shading.setItem(COSName.COORDS, PdfSketch.numbers(coordinates));
        COSArray extend = new COSArray();
        extend.add(COSBoolean.getBoolean(extended));
        extend.add(COSBoolean.getBoolean(extended));
        shading.setItem(COSName.EXTEND, extend);
        return shading;
    }

    /** Two triangles of a strip: flag, x, y and one component each, of a byte. */
    private static COSStream triangles(PdfSketch sketch) throws IOException {
        String half = "\u007f";
        COSStream mesh = sketch.form(
                "\0\0\0\0" + "\0" + half + "\0\0" + "\0\0\u00ff\0" + "\1" + half + "\u00ff\0",
                new double[] {0, 0, 100, 100},
                new double[] {1, 0, 0, 1, 0, 0});
        mesh.setInt(COSName.SHADING_TYPE, 4);
        mesh.setItem(COSName.BITS_PER_FLAG, COSInteger.get(8));
        mesh.setItem(COSName.BITS_PER_COORDINATE, COSInteger.get(8));
        mesh.setItem(COSName.BITS_PER_COMPONENT, COSInteger.get(8));
        mesh.setItem(COSName.DECODE, PdfSketch.numbers(0, 50 * 255.0 / 127, 0, 100, 0, 1));
        mesh.removeItem(COSName.BBOX);
        return mesh;
    }

    /** The head of a square PNG of a colour type, and the beginning of its data. */
    private static String png(int colorType) {
        byte[] head = new byte[48];
        byte[] begin = {(byte) 0x89, 'P', 'N', 'G', 13, 10, 26, 10, 0, 0, 0, 13, 'I', 'H', 'D', 'R'};
        System.arraycopy(begin, 0, head, 0, begin.length);
        head[19] = head[23] = 8;
        head[24] = 8;
        head[25] = (byte) colorType;
        byte[] data = {'I', 'D', 'A', 'T'};
        System.arraycopy(data, 0, head, 37, data.length);
        return java.util.Base64.getEncoder().encodeToString(head);
    }

    private LineSheet svg(String content) throws IOException {
        return SvgSketch.read(folder, "width='100mm' height='100mm' viewBox='0 0 100 100'", content);
    }

    private static double lengthMm(LineSheet sheet) {
        return sheet.strokes().stream()
                .map(Stroke::path)
                .mapToDouble(VectorPath::length)
                .sum();
    }
}
