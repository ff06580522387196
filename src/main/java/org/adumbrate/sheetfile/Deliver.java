package org.adumbrate.sheetfile;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The files to make; at least one.
 *
 * @param underlay all printed passes merged
 * @param figureShadow the figures' shadows alone
 * @param drawing the whole sheet as PDF
 * @param svg the whole sheet as SVG
 * @param flat the whole sheet as one raster at print resolution
 * @param preview the whole sheet at screen resolution
 * @param report a page that tells how the sheet was made
 */
@Written(atLeast = 1)
public record Deliver(
        @Key("All printed passes merged into one raster: a file, or its options.")
        Optional<Underlay> underlay,

        @Key("The figures' shadows alone, as a pass: a file, or its options.")
        Optional<FigureShadow> figureShadow,

        @Key("The whole sheet as PDF: a file, or its options.")
        Optional<Drawing> drawing,

        @Key("The whole sheet as SVG: a file, or its options.")
        Optional<Svg> svg,

        @Key("The whole sheet as one raster at print resolution: a file, or its options.")
        Optional<Flat> flat,

        @Key("The whole sheet at screen resolution: a file, or its options.")
        Optional<Preview> preview,

        @Key("A page that tells how the sheet was made: a file, or its options.")
        Optional<Report> report) {
    /** The files asked for, in the order of the keys. */
    public List<Path> files() {
        return Stream.of(
                        underlay.map(Underlay::file),
                        figureShadow.map(FigureShadow::file),
                        drawing.map(Drawing::file),
                        svg.map(Svg::file),
                        flat.map(Flat::file),
                        preview.map(Preview::file),
                        report.map(Report::file))
                .flatMap(Optional::stream)
                .toList();
    }

    /**
     * The merged passes as a raster.
     *
     * @param file TIFF or PNG
     * @param bits for each sample, 8 or 16
     * @param compression 1 (fast) to 9 (small); the program's own choice where left out
     * @param dither true to dither 8-bit output
     * @param colors how many samples a pixel has
     */
    @Written(orFirstAlone = true)
    public record Underlay(
            @Key(
                    value = "The file to make, TIFF or PNG.",
                    ends = {".tif", ".tiff", ".png"})
            Path file,

            @Key(
                    value = "Bits for each sample.",
                    byDefault = "8",
                    choices = {8, 16})
            int bits,

            @Key(value = "Compression, from 1 (fast) to 9 (small).", min = 1, max = 9)
            Optional<Integer> compression,

            @Key(value = "True dithers 8-bit output, so that gradients print without bands.", byDefault = "true")
            boolean dither,

            @Key(value = "Grey or colour; auto writes grey where no pass has a tint.", byDefault = "auto")
            ColorMode colors) {}

    /**
     * The figures' shadows as a raster.
     *
     * @param file PNG or TIFF
     */
    @Written(orFirstAlone = true)
    public record FigureShadow(
            @Key(
                    value = "The file to make, PNG or TIFF.",
                    ends = {".png", ".tif", ".tiff"})
            Path file) {}

    /**
     * The sheet as PDF.
     *
     * @param file PDF
     */
    @Written(orFirstAlone = true)
    public record Drawing(
            @Key(value = "The file to make, PDF.", ends = ".pdf")
            Path file) {}

    /**
     * The sheet as SVG.
     *
     * @param file SVG
     * @param embedUnderlay true to write the underlay into the file rather than beside it
     */
    @Written(orFirstAlone = true)
    public record Svg(
            @Key(value = "The file to make, SVG.", ends = ".svg")
            Path file,

            @Key(value = "True writes the underlay into the file rather than beside it.", byDefault = "false")
            boolean embedUnderlay) {}

    /**
     * The sheet as a raster at print resolution.
     *
     * @param file PNG or TIFF
     * @param bits for each sample, 8
     * @param compression 1 (fast) to 9 (small); the program's own choice where left out
     */
    @Written(orFirstAlone = true)
    public record Flat(
            @Key(
                    value = "The file to make, PNG or TIFF.",
                    ends = {".png", ".tif", ".tiff"})
            Path file,

            @Key(
                    value = "Bits for each sample.",
                    byDefault = "8",
                    choices = {8})
            int bits,

            @Key(value = "Compression, from 1 (fast) to 9 (small).", min = 1, max = 9)
            Optional<Integer> compression) {}

    /**
     * How the sheet was made.
     *
     * @param file HTML
     */
    @Written(orFirstAlone = true)
    public record Report(
            @Key(value = "The file to make, HTML.", ends = ".html")
            Path file) {}

    /**
     * The sheet at screen resolution.
     *
     * @param file PNG
     * @param width in pixels
     */
    @Written(orFirstAlone = true)
    public record Preview(
            @Key(value = "The file to make, PNG.", ends = ".png")
            Path file,

            @Key(value = "Its width in pixels.", byDefault = "1600", unit = "px", min = 16, max = 16_384)
            int width) {}
}
