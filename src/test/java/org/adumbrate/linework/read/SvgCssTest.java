package org.adumbrate.linework.read;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.adumbrate.linework.LeftOut;
import org.adumbrate.linework.LineSheet;
import org.adumbrate.linework.Stroke;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Style sheets: selectors (Selectors 4), media (Media Queries 4), values (CSS Values 4, Color 4, Variables 1). */
class SvgCssTest {
    private static final String HEAD = "width='100mm' height='50mm' viewBox='0 0 100 50'";

    @TempDir
    Path folder;

    /** The second of three lines in a group, the only one of class b, as rules find it; blue if they do not. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            [data-pen] { stroke: red }                          | #ff0000
            [data-pen='wall'] { stroke: red }                   | #ff0000
            [data-pen='WALL'] { stroke: red }                   | #0000ff
            [data-pen='WALL' i] { stroke: red }                 | #ff0000
            [data-pen^='wa'] { stroke: red }                    | #ff0000
            [data-pen$='ll'] { stroke: red }                    | #ff0000
            [data-pen*='al'] { stroke: red }                    | #ff0000
            [class~='b'] { stroke: red }                        | #ff0000
            path:first-child { stroke: red }                    | #0000ff
            path:nth-child(2) { stroke: red }                   | #ff0000
            path:nth-child(2n + 1) { stroke: red }              | #0000ff
            path:nth-child(even) { stroke: red }                | #ff0000
            path:nth-last-child(-n+2) { stroke: red }           | #ff0000
            path:nth-of-type(3) { stroke: red }                 | #0000ff
            path:only-child { stroke: red }                     | #0000ff
            path:empty { stroke: red }                          | #ff0000
            :root path.b { stroke: red }                        | #ff0000
            path:not(.a, .c) { stroke: red }                    | #ff0000
            :is(.a, .b) { stroke: red }                         | #ff0000
            :where(#p) { stroke: red } path { stroke: lime }    | #00ff00
            .a + path { stroke: red }                           | #ff0000
            .a ~ .c { stroke: red }                             | #0000ff
            g > .a + .b { stroke: red }                         | #ff0000
            svg > .b { stroke: red }                            | #0000ff
            .b:hover { stroke: red }                            | #0000ff
            .b:unheard-of, .b { stroke: red }                   | #0000ff
            /* .b {} */ .b { /* ; } */ stroke: /**/ red }       | #ff0000
            .b { stroke: red; stroke: 12 }                      | #ff0000
            .b { stroke: "red }" ; } .b { stroke: red }         | #ff0000
            .\\62 { stroke: red }                               | #ff0000
            """)
    void selectorsFindTheirElements(String css, String color) throws IOException {
        assertThat(second(css).color()).hasToString(color);
    }

    @Test
    void attributesBeginWithAWordUpToAHyphen() throws IOException {
        assertThat(second("[lang|='en'] { stroke: red }").color()).hasToString("#ff0000");
        assertThat(second("[lang|='e'] { stroke: red }").color()).hasToString("#0000ff");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            @media screen { .b { stroke: red } }                               | #ff0000
            @media print { .b { stroke: red } }                                | #0000ff
            @media not print { .b { stroke: red } }                            | #ff0000
            @media (min-width: 90mm) { .b { stroke: red } }                    | #ff0000
            @media (min-width: 110mm) { .b { stroke: red } }                   | #0000ff
            @media (orientation: landscape) and (color) { .b { stroke: red } } | #ff0000
            @media print, screen and (max-height: 60mm) { .b { stroke: red } } | #ff0000
            @media (prefers-color-scheme: dark) { .b { stroke: red } }         | #0000ff
            """)
    void mediaAreThoseOfAScreenAsLargeAsThePage(String css, String color) throws IOException {
        assertThat(second(css).color()).hasToString(color);
    }

    @Test
    void rulesForPrintAreToldWhereTheySpeakOfSomethingDrawn() throws IOException {
        assertThat(kinds("@media print { .b { stroke: red } }")).containsExactly(LeftOut.Kind.MEDIUM);
        assertThat(kinds("@media print { .y { stroke: red } }")).isEmpty();
    }

    @Test
    void rulesThatAreNotUnderstoodAreTold() throws IOException {
        assertThat(kinds("@supports (fill: red) { .b { stroke: red } }")).containsExactly(LeftOut.Kind.STYLE);
        assertThat(kinds("@media (90mm < width) { .b { stroke: red } } .b { stroke: lime }"))
                .containsExactly(LeftOut.Kind.STYLE);
        assertThat(kinds("@font-face { font-family: a } @namespace svg 'http://www.w3.org/2000/svg';"))
                .isEmpty();
    }

    @Test
    void lengthsThatDependOnAWindowOrAFontAreTold() throws IOException {
        assertThat(kinds(".b { stroke-width: 2vw }")).containsExactly(LeftOut.Kind.UNIT);
        assertThat(kinds(".b { stroke-width: 1.5e-1VMAX; stroke-dasharray: 1lh 2cqw }"))
                .containsOnly(LeftOut.Kind.UNIT);
        assertThat(kinds(".b { stroke-width: 2mm } .v2vw { stroke: red } /* a1vw */"))
                .isEmpty();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            :root { --pen: red } .b { stroke: var(--pen) }                        | #ff0000
            .b { stroke: var(--pen, lime) }                                       | #00ff00
            :root { --a: var(--b); --b: #f00 } .b { stroke: var(--a) }            | #ff0000
            :root { --a: var(--b); --b: var(--a) } .b { stroke: var(--a) }        | #0000ff
            .b { stroke: red; stroke: var(--none) }                               | #0000ff
            .b { stroke: hsl(120, 100%, 25%) }                                    | #008000
            .b { stroke: hsl(.5turn 100% 50% / .5) }                              | #00ffff
            .b { stroke: hwb(0 50% 0%) }                                          | #ff8080
            .b { stroke: rgb(50% 0% 0%) }                                         | #800000
            .b { stroke: red; stroke: color(display-p3 1 0 0) }                   | #ff0000
            .b { stroke: initial } .b { stroke: inherit }                         | #0000ff
            g { stroke: lime } .b { color: red; stroke: currentColor }            | #ff0000
            .b { stroke: url(#none) red }                                         | #ff0000
            """)
    void valuesAreThoseOfCss(String css, String color) throws IOException {
        assertThat(second(css).color()).hasToString(color);
    }

    @Test
    void lengthsCountInTheFontAndAreCalculated() throws IOException {
        assertThat(second("g { font-size: 2px; stroke-width: 0.5em } .b { font-size: 10px }")
                        .widthMm())
                .isEqualTo(1);
        assertThat(second(".b { --w: 2px; stroke-width: calc((1px + var(--w)) * 2) }")
                        .widthMm())
                .isEqualTo(6);
        assertThat(second(".b { stroke-dasharray: 1em, 2 }").dash().lengthsMm()).containsExactly(16.0, 2.0);
    }

    @Test
    void alphaHidesALineOnlyWhereNothingOfItIsSeen() throws IOException {
        LineSheet sheet = SvgSketch.read(
                folder,
                HEAD,
                "<path d='M0 0 9 9' stroke='#ff000000'/><path d='M0 0 9 9' stroke='rgba(255,0,0,0)'/>"
                        + "<path d='M0 0 9 9' stroke='rgb(255 0 0 / 50%)'/>");
        assertThat(sheet.strokes()).hasSize(1);
        assertThat(sheet.leftOut()).containsExactly(new LeftOut(LeftOut.Kind.FAINT_STROKE, 1, 0));
    }

    @Test
    void styleSheetsElsewhereAreToldAndNotFetched() throws IOException {
        assertThat(kinds("@import url(pens.css); .b { stroke: red }")).containsExactly(LeftOut.Kind.OUTSIDE);
    }

    private Stroke second(String css) throws IOException {
        List<Stroke> strokes = sheet(css).strokes();
        assertThat(strokes).hasSize(3);
        return strokes.get(1);
    }

    private List<LeftOut.Kind> kinds(String css) throws IOException {
        return sheet(css).leftOut().stream().map(LeftOut::kind).toList();
    }

    private LineSheet sheet(String css) throws IOException {
        return SvgSketch.read(
                folder,
                HEAD,
                "<style><![CDATA[" + css + "]]></style><g stroke='blue' fill='none'><path class='a' d='M0 1H9'/>"
                        + "<path id='p' class='x b' data-pen='wall' lang='en-GB' d='M0 2H9'/>"
                        + "<path class='c' d='M0 3H9'/></g>");
    }
}
