package org.adumbrate.linework.read;

import static org.adumbrate.linework.read.PathAssertions.assertPath;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Path;
import org.adumbrate.geometry.Affine;
import org.adumbrate.geometry.PagePoint;
import org.adumbrate.geometry.Space;
import org.adumbrate.geometry.VectorPath;
import org.adumbrate.linework.LineSheet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Shapes, path data, transforms and page sizes. */
class SvgShapeTest {
    @TempDir
    Path folder;

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "M10 20L30 40 | M 10 20 L 30 40",
                "M10,20 30,40 l5-5 | M 10 20 L 30 40 L 35 35",
                "m10 20 h5 v-5 H1 V2 z l1 1 | M 10 20 L 15 20 L 15 15 L 1 15 L 1 2 Z M 10 20 L 11 21",
                "M1 2c1 0 2 1 2 2s1 2 2 2 | M 1 2 C 2 2 3 3 3 4 C 3 5 4 6 5 6",
                "M0 0Q3 6 6 0T12 0 | M 0 0 C 2 4 4 4 6 0 C 8 -4 10 -4 12 0",
                "M1.5.5.25-1e-1 | M 1.5 0.5 L 0.25 -0.1",
                "M1 1L2 2L3 | M 1 1 L 2 2",
                "M1 1L2 2 X 9 9 | M 1 1 L 2 2",
            })
    void pathDataIsDrawnAsItIsWritten(String data, String expected) throws IOException {
        assertPath(path("<path d='" + data + "' stroke='red'/>"), expected, 1e-9);
    }

    @ParameterizedTest
    @CsvSource({
        // a quarter of a circle of radius 20 about (40, 20), and the three other quarters
        "'M60 20A20 20 0 0 1 40 40', 31.4159265",
        "'M60 20A20 20 0 1 0 40 40', 94.2477796",
        "'M60 20A20 20 0 0140 40', 31.4159265",
        // radii that are too small grow until they reach: a half circle of radius 10
        "'M30 20A5 5 0 0 1 50 20', 31.4159265",
        // a quarter turn of the ellipse makes no odds to a circle; no radius is a straight line
        "'M60 20A20 20 90 0 1 40 40', 31.4159265",
        "'M60 20A0 20 0 0 1 40 40', 28.2842712",
    })
    void arcsHaveTheLengthOfTheirCircle(String data, double length) throws IOException {
        VectorPath<PagePoint> path = path("<path d='" + data + "' stroke='red'/>");
        assertThat(path.length()).isCloseTo(length, within(length * 1e-5));
    }

    @Test
    void anEllipseOfOneSoundRadiusIsACircle() throws IOException {
        String circle =
                path("<ellipse cx='50' cy='25' rx='20' ry='20' stroke='red'/>").toString();
        assertThat(path("<ellipse cx='50' cy='25' rx='20' stroke='red'/>")).hasToString(circle);
        assertThat(path("<ellipse cx='50' cy='25' rx='-1' ry='20' stroke='red'/>"))
                .hasToString(circle);
    }

    /** The perimeter of an ellipse with axes 20 and 10 is 20 E(sqrt(3)/2) x 4 / 2 = 48.4422411 x 2 (Abramowitz, 17.3). */
    @Test
    void anEllipseIsFourQuarters() throws IOException {
        VectorPath<PagePoint> path = path("<ellipse cx='50' cy='25' rx='20' ry='10' stroke='red'/>");
        assertThat(path.length()).isCloseTo(96.8844822, within(1e-3));
        VectorPath<PagePoint> turned = path("<path d='M50 5A20 10 90 0 1 50 45A20 10 90 0 1 50 5Z' stroke='red'/>");
        assertThat(turned.length()).isCloseTo(96.8844822, within(1e-3));
    }

    @Test
    void basicShapesAreRead() throws IOException {
        assertPath(path("<line x1='1' y1='2' x2='30mm' y2='4' stroke='red'/>"), "M 1 2 L 113.385827 4", 1e-6);
        assertPath(path("<polyline points='1,2 3 4,5,6 7' stroke='red'/>"), "M 1 2 L 3 4 L 5 6", 1e-9);
        assertPath(path("<polygon points='1,2 3 4,5,6' stroke='red'/>"), "M 1 2 L 3 4 L 5 6 Z", 1e-9);
        assertPath(
                path("<rect x='10%' y='10' width='20' height='10' stroke='red'/>"),
                "M 30 10 L 50 10 L 50 20 L 30 20 Z",
                1e-9);
        assertThat(path("<rect x='10' y='10' width='20' height='10' rx='2' stroke='red'/>")
                        .length())
                .isCloseTo(60 - 16 + 4 * Math.PI, within(1e-3));
        assertThat(path("<circle cx='50' cy='25' r='10' stroke='red'/>").length())
                .isCloseTo(20 * Math.PI, within(1e-3));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "translate(10) | M 11 2 L 13 4",
                "translate(10,20)scale(2) | M 12 24 L 16 28",
                "scale(2,3), translate(1 1) | M 4 9 L 8 15",
                "rotate(90) | M -2 1 L -4 3",
                "rotate(180 10 10) | M 19 18 L 17 16",
                "matrix(0 1 -1 0 5 6) | M 3 7 L 1 9",
                "skewX(45) | M 3 2 L 7 4",
                "skewY(45) | M 1 3 L 3 7",
            })
    void transformsAreApplied(String transform, String expected) throws IOException {
        String line = "<line x1='1' y1='2' x2='3' y2='4' stroke='red'/>";
        assertPath(path("<g transform='" + transform + "'>" + line + "</g>"), expected, 1e-9);
    }

    @ParameterizedTest
    @CsvSource({
        "width='17in' height='11in', 431.8, 279.4",
        "width='1224pt' height='792pt', 431.8, 279.4",
        "width='1632' height='1056px', 431.8, 279.4",
        "width='43.18cm' height='66pc', 431.8, 279.4",
        "width='100%' height='100%' viewBox='0 0 96 48', 25.4, 12.7",
        "width='50mm' viewBox='0 0 96 48', 50, 25",
        "height='50mm' viewBox='0 0 96 48', 100, 50",
    })
    void theSizeOfThePageIsStatedInAnyUnit(String attributes, double width, double height) throws IOException {
        LineSheet sheet = SvgSketch.read(folder, attributes, "<path d='M0 0 5 5' stroke='red'/>");
        assertThat(sheet.page().widthMm()).isCloseTo(width, within(1e-9));
        assertThat(sheet.page().heightMm()).isCloseTo(height, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({
        "'', M 25 0 L 75 50",
        "xMinYMin, M 0 0 L 50 50",
        "xMaxYMid meet, M 50 0 L 100 50",
        "xMidYMid slice, M 25 0 L 75 50",
        "none, M 0 0 L 100 50",
    })
    void aViewBoxOfAnotherRatioIsPlacedAsAsked(String wish, String expected) throws IOException {
        LineSheet sheet = SvgSketch.read(
                folder,
                "width='100mm' height='50mm' viewBox='0 0 10 10' preserveAspectRatio='" + wish + "'",
                "<path d='M0 0 10 10' stroke='red'/>");
        assertPath(sheet.strokes().get(0).path(), expected, 1e-9);
    }

    @Test
    void anInnerViewportScalesAndClips() throws IOException {
        String inner = "<svg x='10' y='10' width='20' height='20' viewBox='0 0 10 10'>"
                + "<path d='M-5 5 15 5' stroke='red'/></svg>";
        assertPath(path(inner), "M 10 20 L 30 20", 1e-9);
        assertPath(path(inner.replace("<svg", "<svg overflow='visible'")), "M 0 20 L 40 20", 1e-9);
    }

    @Test
    void symbolsAndGroupsAreDrawnWhereTheyAreUsed() throws IOException {
        String defs = "<defs><g id='g'><path d='M0 0 5 5'/></g>"
                + "<symbol id='s' viewBox='0 0 10 10'><path d='M0 0 10 10'/></symbol></defs>";
        assertPath(
                path(defs + "<use href='#g' x='10' y='20' transform='scale(2)' stroke='red'/>"),
                "M 20 40 L 30 50",
                1e-9);
        assertPath(
                path(defs + "<use xlink:href='#s' x='10' y='20' width='30' height='30' stroke='red'/>"),
                "M 10 20 L 40 50",
                1e-9);
    }

    /** The first stroke of a page that shows 100 mm all around the first 100 mm of user space, in user units. */
    private VectorPath<PagePoint> path(String content) throws IOException {
        LineSheet sheet = SvgSketch.read(folder, "width='300mm' height='300mm' viewBox='-100 -100 300 300'", content);
        return sheet.strokes()
                .get(0)
                .path()
                .transform(Affine.scalingThenShift(Space.PAGE, Space.PAGE, 1, 1, -100, -100));
    }
}
