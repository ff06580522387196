package org.adumbrate.hostile;

import java.io.IOException;
import java.nio.file.Path;
import org.adumbrate.figure.outline.OutlineFiles;
import org.adumbrate.sheetfile.reading.SheetFileReader;

/** Everything that the program reads, and the reader of each. */
@SuppressWarnings("ImmutableEnumChecker") // its readers hold nothing
enum Format {
    PNG(".png", Syntax.PNG, WholeReading::raster),
    JPEG(".jpg", Syntax.JPEG, WholeReading::raster),
    TIFF(".tif", Syntax.TIFF, WholeReading::raster),
    BMP(".bmp", Syntax.BYTES, WholeReading::raster),
    PNM(".pnm", Syntax.LINES, WholeReading::raster),
    HDR(".hdr", Syntax.LINES, WholeReading::raster),
    /** Colour profiles, which are read within a picture. */
    ICC(".icc", Syntax.BYTES, WholeReading::raster),
    /** Exif blocks, which are read within a picture. */
    EXIF(".exif", Syntax.BYTES, WholeReading::raster),
    PDF(".pdf", Syntax.PDF, WholeReading::lines),
    SVG(".svg", Syntax.SVG, WholeReading::lines),
    /** Outlines of people and planting, drawn by a person. */
    OUTLINE(".svg", Syntax.SVG, OutlineFiles::read),
    SHEET(".sheet.yaml", Syntax.YAML, SheetFileReader::read);

    /** Reads a file of the format whole, as the program does. */
    @FunctionalInterface
    interface Reader {
        void read(Path file) throws IOException;
    }

    private final String suffix;
    private final Syntax syntax;
    private final Reader reader;

    Format(String suffix, Syntax syntax, Reader reader) {
        this.suffix = suffix;
        this.syntax = syntax;
        this.reader = reader;
    }

    /** The ending of such a file's name. */
    String suffix() {
        return suffix;
    }

    /** The name of its folder among the seeds and in the corpus. */
    String folder() {
        return name().toLowerCase(java.util.Locale.ROOT);
    }

    /** How such a file is built. */
    Syntax syntax() {
        return syntax;
    }

    /** Reads one, watched. */
    Outcome read(Path file) {
        return Guard.read(file, reader);
    }

    /** True for what is read only within something else. */
    boolean isEmbedded() {
        return this == ICC || this == EXIF;
    }
}
