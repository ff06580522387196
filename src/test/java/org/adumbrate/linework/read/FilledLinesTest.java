package org.adumbrate.linework.read;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Locale;
import org.adumbrate.geometry.Srgb;
import org.adumbrate.linework.LeftOut;
import org.adumbrate.linework.LineSheet;
import org.adumbrate.linework.Stroke;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Pages whose lines are filled shapes, in whole or in part. */
class FilledLinesTest {
    @TempDir
    private Path folder;

    @Test
    void aPageOfFilledLinesShowsThemInTheirColors() throws IOException {
        LineSheet sheet = svg("<rect x='10' y='9.9' width='50' height='.2' fill='#0a64c8'/>"
                + "<rect x='10' y='20' width='30' height='.35' transform='rotate(30 10 20)' fill='#c86400'/>");
        assertThat(sheet.strokes())
                .extracting(Stroke::color)
                .containsExactly(new Srgb(0x0a, 0x64, 0xc8), new Srgb(0xc8, 0x64, 0));
        assertThat(sheet.strokes())
                .extracting(
                        stroke -> Math.round(1000 * stroke.path().length()),
                        stroke -> Math.round(1000 * stroke.widthMm()))
                .containsExactly(
                        org.assertj.core.groups.Tuple.tuple(50_000L, 200L),
                        org.assertj.core.groups.Tuple.tuple(30_000L, 350L));
        assertThat(sheet.leftOut()).isEmpty();
        assertThat(sheet.recovered().shapes()).isEqualTo(2);
    }

    @Test
    void theSameInAPdf() throws IOException {
        try (PdfSketch sketch = new PdfSketch(100, 100)) {
            LineSheet sheet = sketch.draws("1 0 0 rg q 0.8 0.6 -0.6 0.8 20 20 cm 0 -0.25 50 0.5 re f Q"
                            + " 0 0 1 RG 0 50 m 100 50 l S 10 10 m 60 10 l 60 10.5 l 10 10.5 l f*")
                    .read(folder);
            assertThat(sheet.strokes()).hasSize(3);
            assertThat(sheet.strokes().get(0).path().length()).isCloseTo(50 * 25.4 / 72, within(1e-4));
            assertThat(sheet.strokes().get(2).color()).isEqualTo(new Srgb(255, 0, 0));
        }
    }

    @Test
    void aFilledLineHidesNoMoreThanAStroke() throws IOException {
        String stroke = "<path d='M0 50H100' stroke='red' fill='none'/>";
        LineSheet sheet = svg(
                stroke + "<rect x='50' y='0' width='.5' height='100'/><rect x='50' y='49.8' width='40' height='.4'/>");
        assertThat(sheet.strokes()).hasSize(3);
        assertThat(sheet.strokes().get(0).path().length()).isEqualTo(100);
        assertThat(sheet.hidden().isNothing()).isTrue();
    }

    @Test
    void aThinWhiteShapeCovers() throws IOException {
        LineSheet sheet =
                svg("<path d='M0 50H100' stroke='red' fill='none'/><rect x='50' width='1' height='100' fill='white'/>");
        assertThat(sheet.strokes()).hasSize(1);
        assertThat(sheet.strokes().get(0).path().length()).isCloseTo(99, within(1e-6));
    }

    @Test
    void anAreaAmongFilledLinesStaysOne() throws IOException {
        LineSheet sheet = svg("<path d='M0 50H100' stroke='red' fill='none'/>"
                + "<path d='M10 40H90V43H10Z'/><path d='M10 48H13V90H10ZM20 20H80V20.25H20Z'/>");
        assertThat(sheet.strokes()).hasSize(2);
        assertThat(sheet.strokes().get(1).path().length()).isCloseTo(60, within(1e-6));
        assertThat(sheet.strokes().get(0).path().length()).isCloseTo(97, within(1e-6));
        assertThat(sheet.leftOut()).containsExactly(new LeftOut(LeftOut.Kind.AREA, 2, 80 * 3 + 42 * 3));
    }

    @Test
    void facetsSideBySideAreASurface() throws IOException {
        StringBuilder facets = new StringBuilder("<path d='M0 50H100' stroke='red' fill='none'/>");
        for (int k = 0; k < 30; k++) {
            facets.append(String.format(
                    Locale.ROOT,
                    "<rect x='%.1f' y='30' width='.8' height='40' fill='#%02x0000'/>",
                    20 + 0.8 * k,
                    100 + k));
        }
        LineSheet sheet = svg(facets.toString());
        assertThat(sheet.strokes()).hasSize(1);
        assertThat(sheet.strokes().get(0).path().length()).isCloseTo(100 - 24, within(1e-3));
        assertThat(sheet.leftOut()).hasSize(1);
        assertThat(sheet.leftOut().get(0).count()).isEqualTo(30);
    }

    @Test
    void aThinFaceOutlinedInAnotherColorIsAnArea() throws IOException {
        LineSheet sheet = svg("<path d='M0 50H100' stroke='red' fill='none'/>"
                + "<rect x='40' y='20' width='1' height='60' fill='#888' stroke='black' stroke-width='.1'/>");
        assertThat(sheet.strokes()).hasSize(2);
        assertThat(sheet.strokes().get(0).path().length()).isCloseTo(99, within(1e-3));
        assertThat(sheet.strokes().get(1).path().length()).isCloseTo(122, within(1e-6));
    }

    @Test
    void aHairlineAroundInTheSameColorWidensTheLine() throws IOException {
        LineSheet sheet =
                svg("<rect x='10' y='10' width='60' height='.3' fill='#333' stroke='#333' stroke-width='.1'/>");
        assertThat(sheet.strokes()).hasSize(1);
        assertThat(sheet.strokes().get(0).widthMm()).isCloseTo(0.4, within(1e-9));
    }

    @Test
    void shortLinesRunAsThoseOfTheirPenAndAloneAreAreas() throws IOException {
        String shorts = "<path d='M5 5h.1v.3h-.1zM7 7h.3v.1h-.3zM9 9h.5v.3h-.5z'/>";
        StringBuilder pen = new StringBuilder();
        for (int k = 0; k < 12; k++) {
            pen.append("M20 ").append(20 + k).append("h40v.3h-40z");
        }
        LineSheet sheet = svg("<path d='" + pen + "'/>" + shorts);
        assertThat(sheet.strokes()).hasSize(15);
        assertThat(sheet.strokes().subList(12, 15))
                .extracting(stroke -> Math.round(1000 * stroke.path().length()))
                .containsExactly(100L, 100L, 500L);
        LineSheet alone = svg("<path d='M0 50H100' stroke='red' fill='none'/>" + shorts);
        assertThat(alone.strokes()).hasSize(1);
        assertThat(alone.recovered().areas()).isEqualTo(3);
    }

    @Test
    void wideLinesAreTold() throws IOException {
        LineSheet sheet =
                svg("<rect x='10' y='10' width='80' height='1.2'/><rect x='10' y='30' width='80' height='.5'/>");
        assertThat(sheet.recovered().told())
                .containsExactly(
                        "2 filled shapes are taken as lines",
                        "1 of them is wider than 1 mm (1.2 mm at most) and may be an area");
    }

    @Test
    void whatIsSeenThroughIsToldAsOfStrokes() throws IOException {
        String lines = "<path d='M10 10H90V10.3H10Z' fill-opacity='.5'/><g opacity='.5'>"
                + "<path d='M10 20H90V20.3H10Z'/></g><path d='M10 30H90V30.3H10Z' fill='#8888'/>"
                + "<path d='M10 40H90V40.3H10Z'/>";
        assertThat(svg(lines).leftOut()).containsExactly(new LeftOut(LeftOut.Kind.FAINT_STROKE, 3, 0));
    }

    @Test
    void aClosedPathOfTwoPointsIsOneLine() throws IOException {
        try (PdfSketch sketch = new PdfSketch(100, 100)) {
            LineSheet sheet = sketch.draws("0 50 m 100 50 l h S 0 60 m 100 60 l 0 60 l S 0 70 m 100 70 l 0 70 l s"
                            + " 0 80 m 10 80 l h 20 80 m 30 80 l 30 90 l h S")
                    .read(folder);
            assertThat(sheet.strokes())
                    .extracting(stroke -> Math.round(1000 * stroke.path().length() * 72 / 25.4))
                    .containsExactly(100_000L, 100_000L, 100_000L, 10_000L + 20_000 + 14_142);
        }
    }

    private LineSheet svg(String content) throws IOException {
        return SvgSketch.read(folder, "width='100mm' height='100mm' viewBox='0 0 100 100'", content);
    }
}
