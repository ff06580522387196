package org.adumbrate.linework.read;

import static org.adumbrate.linework.read.PathAssertions.assertPath;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.SocketTimeoutException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.adumbrate.geometry.Dash;
import org.adumbrate.geometry.LineCap;
import org.adumbrate.geometry.LineJoin;
import org.adumbrate.linework.LineSheet;
import org.adumbrate.linework.Stroke;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Styles, clips, layers, and what is not drawn. */
class SvgStyleTest {
    private static final String LINE = "d='M0 0 5 5'";

    @TempDir
    Path folder;

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "#0a64c8 | #0a64c8",
                "#f0c | #ff00cc",
                "#0a64c880 | #0a64c8",
                "rgb(10, 100, 200) | #0a64c8",
                "rgb(0%,50%,100%) | #0080ff",
                "rgba(10 100 200 / 0.5) | #0a64c8",
                "RebeccaPurple | #663399",
                "DarkSlateGrey | #2f4f4f",
                "white | #ffffff",
                "currentColor | #112233",
            })
    void coloursInAnyNotation(String color, String expected) throws IOException {
        List<Stroke> strokes =
                SvgSketch.strokes(folder, "<g color='#112233'><path " + LINE + " stroke='" + color + "'/></g>");
        assertThat(strokes.get(0).color()).hasToString(expected);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                // each weighs more than the one before it
                "path { stroke: #000001 } | '' | #000001",
                "path { stroke: #000001 } .a { stroke: #000002 } | '' | #000002",
                ".a { stroke: #000002 } path { stroke: #000001 } | '' | #000002",
                "#p { stroke: #000003 } g .a.b { stroke: #000002 } | '' | #000003",
                "#p { stroke: #000003 } | stroke: #000004 | #000004",
                "path { stroke: #000001 !important } | stroke: #000004 | #000001",
                // selectors that nest, and ones that do not match
                "g > path { stroke: #000001 } svg > path, .c { stroke: #000002 } | '' | #000001",
                "svg .outer path { stroke: #000001 } | '' | #000001",
                "path:hover, rect { stroke: #000001 } | '' | #0000ff",
                // comments and at-rules
                "/* .a { stroke: red } */ @charset 'x'; .a { stroke: #000002 } | '' | #000002",
                "@media print { path { fill: red } } .a { stroke: #000002 } | '' | #000002",
                // what cannot be read is passed over
                ".a { stroke: #000002; stroke: no colour } | '' | #000002",
            })
    void theCascadeOfStyles(String css, String style, String expected) throws IOException {
        List<Stroke> strokes = SvgSketch.strokes(
                folder,
                "<style><![CDATA[" + css
                        + "]]></style><g class='outer' stroke='#0000ff'><path id='p' class='b a' style='" + style + "' "
                        + LINE + "/></g>");
        assertThat(strokes.get(0).color()).hasToString(expected);
    }

    @Test
    void widthsAndDashesScaleUnlessTheyAreNotTo() throws IOException {
        List<Stroke> strokes = SvgSketch.strokes(
                folder,
                "<g transform='scale(2,8)' stroke='red' stroke-width='0.5' stroke-dasharray='3, 1.5' stroke-dashoffset='1'"
                        + " stroke-linecap='square' stroke-linejoin='bevel'><path " + LINE + "/><path " + LINE
                        + " vector-effect='non-scaling-stroke' stroke-width='96' stroke-dasharray='none'"
                        + " stroke-linecap='round' stroke-linejoin='round'/></g>");
        Stroke scaled = strokes.get(0);
        assertThat(scaled.widthMm()).isCloseTo(2, within(1e-9));
        assertThat(scaled.dash().lengthsMm()).containsExactly(12.0, 6.0);
        assertThat(scaled.dash().phaseMm()).isCloseTo(4, within(1e-9));
        assertThat(scaled.cap()).isEqualTo(LineCap.PROJECTING);
        assertThat(scaled.join()).isEqualTo(LineJoin.BEVEL);
        Stroke unscaled = strokes.get(1);
        assertThat(unscaled.widthMm()).isCloseTo(25.4, within(1e-9));
        assertThat(unscaled.dash()).isEqualTo(Dash.NONE);
        assertThat(unscaled.cap()).isEqualTo(LineCap.ROUND);
        assertThat(unscaled.join()).isEqualTo(LineJoin.ROUND);
    }

    @Test
    void widthsInUnitsAndPercent() throws IOException {
        List<Stroke> strokes = SvgSketch.strokes(
                folder,
                "<path stroke='red' " + LINE + "/><path stroke='red' stroke-width='10%' " + LINE + "/>"
                        + "<path stroke='red' stroke-width='1in' transform='scale(0.5)' " + LINE + "/>");
        assertThat(strokes.get(0).widthMm()).isEqualTo(1);
        // of the diagonal divided by the root of 2 (SVG 1.1, 7.10)
        assertThat(strokes.get(1).widthMm()).isCloseTo(0.1 * Math.sqrt((100 * 100 + 50 * 50) / 2.0), within(1e-9));
        // a unit is 1/96 inch of user space, whatever the viewBox makes of it
        assertThat(strokes.get(2).widthMm()).isCloseTo(48, within(1e-9));
    }

    @Test
    void whatIsNotSeenIsNotRead() throws IOException {
        List<Stroke> strokes = SvgSketch.strokes(
                folder,
                "<g stroke='red'><path id='seen' " + LINE + "/><path display='none' " + LINE + "/>"
                        + "<g style='display:none'><path " + LINE + "/></g>"
                        + "<path visibility='hidden' " + LINE + "/><path opacity='0' " + LINE + "/>"
                        + "<path stroke-opacity='0' " + LINE + "/><path stroke-width='0' " + LINE + "/>"
                        + "<path stroke='none' fill='none' " + LINE + "/><defs><path " + LINE + "/></defs>"
                        + "<g visibility='hidden'><path visibility='visible' " + LINE + "/></g></g>");
        assertThat(strokes).hasSize(2);
    }

    @Test
    void marksThatAreNoLinesAreCounted() throws IOException {
        LineSheet sheet = SvgSketch.read(
                folder,
                "width='9mm' height='9mm'",
                "<rect width='5' height='5'/><text>a</text><path stroke='red' fill='blue' " + LINE + "/>"
                        + "<image width='5' height='5'/><path stroke='url(#gradient)' " + LINE + "/>");
        assertThat(sheet.strokes()).hasSize(1);
        assertThat(sheet.otherMarks()).isEqualTo(4);
    }

    @Test
    void clipPathsHideWhatLiesOutside() throws IOException {
        String defs = "<clipPath id='Wide' clip-path='url(#Low)'><rect x='10' width='20' height='50'/>"
                + "<rect x='40' width='20' height='50'/></clipPath>"
                + "<clipPath id='Low' transform='translate(0 20)'><use href='#box'/></clipPath>"
                + "<defs><rect id='box' width='100' height='10'/></defs>";
        List<Stroke> strokes = SvgSketch.strokes(
                folder, defs + "<g stroke='red' clip-path='url(#Wide)'><path d='M0 25H100'/><path d='M0 5H100'/></g>");
        assertThat(strokes).hasSize(1);
        assertPath(strokes.get(0).path(), "M 10 25 L 30 25 M 40 25 L 60 25", 1e-9);
    }

    @Test
    void layersAreCalledByTheirTitleOrElseTheirId() throws IOException {
        List<Stroke> strokes = SvgSketch.strokes(
                folder,
                "<g stroke='red'><path " + LINE + "/><g id='walls'><path " + LINE + "/><g><path " + LINE + "/></g>"
                        + "<g id='x2'><title> inner walls </title><path id='p' " + LINE + "/></g></g></g>");
        assertThat(strokes.stream().map(stroke -> stroke.layer().orElse("-")))
                .containsExactly("-", "walls", "walls", "inner walls");
    }

    @Test
    void ofASwitchTheFirstPlainAlternativeIsDrawn() throws IOException {
        List<Stroke> strokes = SvgSketch.strokes(
                folder,
                "<switch stroke='red'><foreignObject requiredExtensions='x'/><g><path " + LINE + "/></g><path " + LINE
                        + "/></switch>");
        assertThat(strokes).hasSize(1);
    }

    @Test
    void aDocumentTypeIsPutUpWithAndNothingIsFetched() throws IOException {
        try (ServerSocket server = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            server.setSoTimeout(100);
            String address = "http://127.0.0.1:" + server.getLocalPort();
            Path file = Files.writeString(
                    folder.resolve("types.svg"),
                    "<?xml version='1.0'?><!DOCTYPE svg PUBLIC '-//W3C//DTD SVG 1.1//EN' '" + address + "/svg11.dtd' "
                            + "[<!ENTITY svg_names 'http://www.w3.org/2000/svg'>]>"
                            + "<?xml-stylesheet href='" + address + "/a.css'?>"
                            + "<svg xmlns='&svg_names;' xmlns:x='http://www.w3.org/1999/xlink' viewBox='0 0 9 9'>"
                            + "<style>@import url('" + address + "/b.css');</style><image x:href='" + address
                            + "/c.png'/>"
                            + "<use x:href='" + address + "/d.svg#e'/><script x:href='" + address + "/f.js'/>"
                            + "<path stroke='red' " + LINE + "/></svg>");
            assertThat(LineSheets.read(file).strokes()).hasSize(1);
            assertThatThrownBy(server::accept).isInstanceOf(SocketTimeoutException.class);
        }
    }

    @Test
    void aFileWithoutTheNamespaceIsReadAllTheSame() throws IOException {
        Path file = Files.writeString(
                folder.resolve("plain.svg"), "<svg viewBox='0 0 9 9'><path stroke='red' " + LINE + "/></svg>");
        assertThat(LineSheets.read(file).strokes()).hasSize(1);
    }
}
