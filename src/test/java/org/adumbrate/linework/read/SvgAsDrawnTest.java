package org.adumbrate.linework.read;

import static org.adumbrate.linework.read.PathAssertions.assertPath;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.zip.GZIPOutputStream;
import org.adumbrate.fault.InputFault;
import org.adumbrate.linework.LeftOut;
import org.adumbrate.linework.LineSheet;
import org.adumbrate.linework.ReadingNote;
import org.adumbrate.linework.Stroke;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What browsers draw of an SVG: clips and masks (CSS Masking 1), markers, paints and conditions (SVG 2), transforms (CSS Transforms 1). */
class SvgAsDrawnTest {
    private static final String HEAD = "width='100mm' height='50mm' viewBox='0 0 100 50'";
    private static final String LINE = "<path d='M0 10H100' stroke='red'/>";

    @TempDir
    Path folder;

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            <clipPath id='c' clipPathUnits='objectBoundingBox'><rect x='.25' width='.5' height='1'/></clipPath> | M 30 10 L 60 10
            <clipPath id='c' transform='translate(20)'><rect width='30' height='50'/></clipPath>                | M 20 10 L 50 10
            <clipPath id='c'><rect width='30' height='50' transform='translate(20)'/></clipPath>                | M 20 10 L 50 10
            <clipPath id='c'><rect width='30' height='50' style='transform: translateX(20px)'/></clipPath>      | M 20 10 L 50 10
            <clipPath id='c'><rect width='60' height='50' clip-path='url(#d)'/></clipPath>                      | M 20 10 L 60 10
            <clipPath id='c'><rect width='60' height='50' clip-path='url(#c)'/></clipPath>                      | M 15 10 L 60 10
            """)
    void clipPathsHideWhatLiesOutside(String clip, String left) throws IOException {
        String more = "<clipPath id='d'><rect x='20' width='80' height='50'/></clipPath>";
        List<Stroke> strokes = SvgSketch.strokes(
                folder,
                clip + more + "<g clip-path='url(#c)' fill='none' stroke='red'><path d='M15 10H75'/>"
                        + "<path d='M15 5V20H75V5' stroke='none'/></g>");
        assertPath(strokes.get(0).path(), left, 1e-3);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            circle(20px at 50px 10px) view-box                     | M 30 10 L 70 10
            inset(0 10px 0 20px) view-box                          | M 20 10 L 90 10
            polygon(10px 0, 40px 0, 40px 50px, 10px 50px) view-box | M 10 10 L 40 10
            """)
    void clipPathsAreWrittenAsShapesToo(String shape, String left) throws IOException {
        List<Stroke> strokes = SvgSketch.strokes(folder, "<g style='clip-path: " + shape + "'>" + LINE + "</g>");
        assertPath(strokes.get(0).path(), left, 1e-3);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            clip-path='url(#c)'         | M 20 10 L 40 10
            style='clip-path: url(#c)'  | M 20 10 L 40 10
            mask='url(#m)'              | M 20 10 L 40 10
            """)
    void clipsAndMasksHoldForTheOutermostElementToo(String attribute, String left) throws IOException {
        LineSheet sheet = SvgSketch.read(
                folder,
                HEAD + " " + attribute,
                "<clipPath id='c'><rect x='20' width='20' height='50'/></clipPath>"
                        + "<mask id='m' maskUnits='userSpaceOnUse' x='0' y='0' width='100' height='50'>"
                        + "<rect x='20' width='20' height='50' fill='white'/></mask>" + LINE);
        assertPath(sheet.strokes().get(0).path(), left, 1e-3);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            <rect width='100' height='50' fill='white'/><rect x='20' width='20' height='50'/> | M 10 10 L 20 10 M 40 10 L 90 10 | 0
            <rect x='20' width='20' height='50' fill='#808080'/>                              | M 20 10 L 40 10                 | 1
            <rect x='20' width='20' height='50' fill='white' fill-opacity='.5'/>              | M 20 10 L 40 10                 | 1
            <text fill='white'>a</text>                                                       | M 10 10 L 90 10                 | 1
            <g transform='translate(20)'><rect width='20' height='50' fill='white'/></g>      | M 20 10 L 40 10                 | 0
            """)
    void masksHideWhatTheyHideWholly(String content, String left, int told) throws IOException {
        LineSheet sheet = SvgSketch.read(
                folder,
                HEAD,
                "<mask id='m' maskUnits='userSpaceOnUse' x='10' y='0' width='80' height='50'>" + content + "</mask>"
                        + "<g mask='url(#m)'>" + LINE + "</g>");
        assertPath(sheet.strokes().get(0).path(), left, 1e-3);
        assertThat(sheet.leftOut().stream().filter(l -> l.kind() == LeftOut.Kind.MASK))
                .hasSize(told);
    }

    @Test
    void masksByAlphaShowWhatTheirContentCovers() throws IOException {
        List<Stroke> strokes = SvgSketch.strokes(
                folder,
                "<mask id='m' mask-type='alpha' maskUnits='userSpaceOnUse' x='0' y='0' width='100' height='50'>"
                        + "<rect x='20' width='20' height='50'/></mask><g mask='url(#m)'>" + LINE + "</g>");
        assertPath(strokes.get(0).path(), "M 20 10 L 40 10", 1e-3);
    }

    @Test
    void markersStandOnVerticesTurnedAndScaledByTheLine() throws IOException {
        String marker = "<marker id='m' orient='auto' refX='1' markerWidth='4' overflow='visible'>"
                + "<path d='M0 0H2' stroke='context-stroke'/></marker>";
        List<Stroke> strokes = SvgSketch.strokes(
                folder,
                marker + "<path d='M10 10H30V30' fill='none' stroke='lime' stroke-width='2' marker-end='url(#m)'"
                        + " marker-start='url(#m)'/>");
        assertThat(strokes).hasSize(3);
        assertPath(strokes.get(1).path(), "M 8 10 L 12 10", 1e-9);
        assertPath(strokes.get(2).path(), "M 30 28 L 30 32", 1e-9);
        assertThat(strokes.get(2).color()).hasToString("#00ff00");
        assertThat(strokes.get(2).widthMm()).isCloseTo(2, within(1e-9));
    }

    @Test
    void markersInTheMiddleStandWhereStepsEndAndNotWithinAnArc() throws IOException {
        List<Stroke> strokes = SvgSketch.strokes(
                folder,
                "<marker id='m' markerUnits='userSpaceOnUse' markerWidth='9' markerHeight='9'><path d='M0 0H2' stroke='red'/>"
                        + "</marker><path d='M10 20A10 10 0 0 1 30 20L40 20' style='marker: url(#m)'/>"
                        + "<rect width='9' height='9' style='marker: url(#m)'/>");
        assertThat(strokes)
                .extracting(s -> s.path().toString())
                .containsExactly("M 10.0 20.0 L 12.0 20.0", "M 30.0 20.0 L 32.0 20.0", "M 40.0 20.0 L 42.0 20.0");
    }

    @Test
    void markersThatDrawEachOtherEnd() throws IOException {
        assertThat(SvgSketch.strokes(
                        folder,
                        "<marker id='m'><path d='M0 0H2' stroke='red' marker-end='url(#m)'/></marker>"
                                + "<path d='M0 9H9' stroke='red' marker-end='url(#m)'/>"))
                .hasSize(2);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            transform: translate(10px, 0)                                    | M 10 10 L 20 10
            transform: rotate(90deg); transform-origin: 0 10px               | M 0 10 L 0 20
            transform: rotate(180deg); transform-origin: center              | M 100 40 L 90 40
            transform: scale(.5); transform-origin: bottom                   | M 25 30 L 30 30
            transform: scale(.5); transform-origin: bottom right             | M 50 30 L 55 30
            transform: scale(.5); transform-origin: 25% top                  | M 12.5 5 L 17.5 5
            transform: rotate(.5turn); transform-box: fill-box; transform-origin: 50% 50% | M 10 10 L 0 10
            transform: scaleX(2) skewX(0rad)                                 | M 0 10 L 20 10
            transform: translate(10px) nonsense(1)                           | M 0 10 L 10 10
            """)
    void transformsAreStatedInCss(String style, String expected) throws IOException {
        List<Stroke> strokes = SvgSketch.strokes(folder, "<path d='M0 10H10' stroke='red' style='" + style + "'/>");
        assertPath(strokes.get(0).path(), expected, 1e-9);
    }

    @Test
    void whatIsMadeFlatIsNotDrawn() throws IOException {
        assertThat(SvgSketch.strokes(folder, LINE + "<g transform='scale(0)'>" + LINE + "</g>"))
                .hasSize(1);
    }

    @Test
    void ofASwitchTheAlternativeInEnglishIsDrawn() throws IOException {
        List<Stroke> strokes = SvgSketch.strokes(
                folder,
                "<switch><path systemLanguage='ru' d='M0 1H9' stroke='red'/>"
                        + "<path systemLanguage='de, en-GB' d='M0 2H9' stroke='red'/>" + LINE + "</switch>"
                        + "<path systemLanguage='ru' d='M0 3H9' stroke='red'/>");
        assertThat(strokes).hasSize(1);
        assertPath(strokes.get(0).path(), "M 0 2 L 9 2", 1e-9);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            <stop stop-color='lime'/>                                            | #00ff00 | ''
            <stop stop-color='lime'/><stop stop-color='lime' stop-opacity='0'/>  | #00ff00 | faint-stroke
            <stop stop-color='lime' stop-opacity='0'/><stop stop-color='red'/>   | #ff0000 | faint-stroke
            <stop stop-color='lime'/><stop stop-color='red'/>                    | #00ff00 | gradient-stroke
            """)
    void aStrokeInAGradientIsTakenInTheFirstColourOfIt(String stops, String color, String told) throws IOException {
        LineSheet sheet = SvgSketch.read(
                folder,
                HEAD,
                "<linearGradient id='g'>" + stops + "</linearGradient><path d='M0 0 9 9' stroke='url(#g)'/>");
        assertThat(sheet.strokes().get(0).color()).hasToString(color);
        assertThat(sheet.leftOut().stream().map(left -> left.kind().word()))
                .containsExactlyElementsOf(told.isEmpty() ? List.of() : List.of(told));
    }

    @Test
    void sharesOfABoxWithoutAnAreaPaintNothing() throws IOException {
        assertThat(SvgSketch.strokes(
                        folder,
                        "<linearGradient id='g'><stop stop-color='lime'/><stop/></linearGradient>"
                                + "<path d='M0 9H9' stroke='url(#g)'/><path d='M0 9H9' stroke='url(#g) red'/>"))
                .extracting(stroke -> stroke.color().toString())
                .containsExactly("#ff0000");
    }

    @Test
    void nothingIsDrawnOfADocumentThatIsNotDisplayed() {
        assertThatThrownBy(() -> SvgSketch.read(folder, HEAD + " style='display: none'", LINE))
                .isInstanceOf(InputFault.class)
                .hasMessageContaining("shows no line at all; its outermost element is not displayed;");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            <g id='a'><path d='M1 1H9'/><use href='#a' y='9'/></g>                                          | 1 | #a
            <use id='u' href='#u'/><path d='M1 1H9'/>                                                       | 1 | #u
            <g id='a'><path d='M1 1H9'/><use href='#b'/></g><g id='b'><path d='M1 2H9'/><use href='#a'/></g> | 4 | #a, #b
            <symbol id='s'><path d='M1 1H9'/><use href='#s'/></symbol><use href='#s'/><use href='#s' x='9'/> | 2 | #s
            <svg id='i'><path d='M1 1H9'/><g><use href='#i'/></g></svg>                                      | 1 | #i
            """)
    void whatUsesItselfIsNotDrawnWithinItself(String content, int strokes, String told) throws IOException {
        LineSheet sheet = SvgSketch.read(folder, HEAD + " fill='none' stroke='red'", content);
        assertThat(sheet.strokes()).hasSize(strokes);
        assertThat(sheet.remarks())
                .extracting(ReadingNote::told)
                .containsExactly("what uses itself is not drawn within itself, as in browsers: " + told);
    }

    @Test
    void aSymbolMayStandTwiceOnAWayDown() throws IOException {
        LineSheet sheet = SvgSketch.read(
                folder,
                HEAD,
                "<defs><g id='l'>" + LINE + "</g><g id='t'><use href='#l'/><use href='#l' y='5'/></g></defs>"
                        + "<use href='#t'/><use href='#t' y='20'/>");
        assertThat(sheet.strokes()).hasSize(4);
        assertThat(sheet.remarks()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            scale(1 1.5)           | 1
            skewX(30)              | 1
            scale(1 1.05)          | 0
            rotate(30) scale(2 -2) | 0
            """)
    void aPenThatATransformMakesAnEllipseIsTold(String transform, int told) throws IOException {
        LineSheet sheet = SvgSketch.read(folder, HEAD, "<g transform='" + transform + "'>" + LINE + "</g>");
        LineSheet fixed = SvgSketch.read(
                folder,
                HEAD,
                "<g transform='" + transform
                        + "'><path d='M0 10H99' stroke='red' vector-effect='non-scaling-stroke'/></g>");
        assertThat(sheet.leftOut())
                .filteredOn(left -> left.kind() == LeftOut.Kind.DISTORTED_STROKE)
                .hasSize(told);
        assertThat(fixed.leftOut()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            normal              | -red
            fill markers        | red
            fill markers stroke | red
            markers             | red
            markers stroke      | red
            stroke markers      | -red
            stroke fill markers | -red
            """)
    void markersArePaintedWhereThePaintOrderSays(String order, String seen) throws IOException {
        LineSheet sheet = SvgSketch.read(
                folder,
                HEAD,
                "<marker id='m' markerWidth='9' markerHeight='9' refX='4' refY='4' markerUnits='userSpaceOnUse'>"
                        + "<rect width='9' height='9' fill='white'/></marker>"
                        + "<path d='M10 10H40' stroke='red' fill='none' marker-start='url(#m)' paint-order='" + order
                        + "'/>");
        assertPath(sheet.strokes().get(0).path(), seen.equals("red") ? "M 10 10 L 40 10" : "M 15 10 L 40 10", 1e-3);
    }

    @Test
    void referencesToOtherFilesAreToldAndNotOpened() throws IOException {
        LineSheet sheet = SvgSketch.read(
                folder,
                HEAD,
                "<use href='other.svg#x'/><g clip-path='url(other.svg#c)' mask='url(\"other.svg#m\")'>" + LINE
                        + "</g><path d='M0 0 9 9' fill='none' stroke='url(other.svg#p)'/>");
        assertThat(sheet.leftOut()).contains(new LeftOut(LeftOut.Kind.OUTSIDE, 4, 0));
        assertPath(sheet.strokes().get(0).path(), "M 0 10 L 100 10", 1e-9);
    }

    @Test
    void filtersAndBlendModesThatChangeLinesAreTold() throws IOException {
        LineSheet sheet = SvgSketch.read(
                folder,
                HEAD,
                "<g filter='url(#f)'>" + LINE + "</g><g style='mix-blend-mode: difference'>" + LINE
                        + "</g><g style='mix-blend-mode: multiply'>" + LINE + "</g>");
        assertThat(sheet.leftOut()).containsExactly(new LeftOut(LeftOut.Kind.EFFECT, 2, 0));
    }

    @Test
    void thePageAndShapesMayBeMeasuredInCss() throws IOException {
        LineSheet sheet = SvgSketch.read(
                folder,
                "style='width: 200mm; height: 100mm' viewBox='0 0 100 50'",
                "<circle style='cx: 50px; cy: 25px; r: 10px; stroke: red'/><path style='d: path(\"M0 0H9\")' stroke='red'/>");
        assertThat(sheet.page().widthMm()).isEqualTo(200);
        assertThat(sheet.strokes().get(0).path().length()).isCloseTo(40 * Math.PI, within(1e-2));
        assertPath(sheet.strokes().get(1).path(), "M 0 0 L 18 0", 1e-9);
    }

    @Test
    void packedFilesAreReadWhateverTheyAreCalled() throws IOException {
        Path file = Files.write(
                folder.resolve("lines.dat"),
                packed("<svg xmlns='http://www.w3.org/2000/svg' " + HEAD + ">" + LINE + "</svg>"));
        assertThat(LineSheets.read(file).strokes()).hasSize(1);
        byte[] whole = Files.readAllBytes(file);
        Path half = Files.write(folder.resolve("half.svgz"), java.util.Arrays.copyOf(whole, whole.length / 2));
        assertThatThrownBy(() -> LineSheets.read(half))
                .isInstanceOf(InputFault.class)
                .hasMessageStartingWith(half + ": ");
    }

    @Test
    void aFewBytesThatUnpackToMoreThanAnyDrawingAreRefused() throws IOException {
        Path file = folder.resolve("bomb.svgz");
        try (GZIPOutputStream out = new GZIPOutputStream(Files.newOutputStream(file))) {
            out.write("<svg xmlns='http://www.w3.org/2000/svg'".getBytes(StandardCharsets.UTF_8));
            byte[] blanks = new byte[1 << 20];
            java.util.Arrays.fill(blanks, (byte) ' ');
            for (int k = 0; k < 450; k++) {
                out.write(blanks);
            }
        }
        assertThatThrownBy(() -> LineSheets.read(file))
                .isInstanceOf(InputFault.class)
                .hasMessageContaining("unpacks to more than 400000000 bytes");
    }

    private static byte[] packed(String text) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (GZIPOutputStream out = new GZIPOutputStream(bytes)) {
            out.write(text.getBytes(StandardCharsets.UTF_8));
        }
        return bytes.toByteArray();
    }
}
