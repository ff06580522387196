package org.adumbrate.linework.read;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.adumbrate.fault.InputFault;
import org.adumbrate.linework.LineSheet;
import org.adumbrate.linework.page.LibraryWords;
import org.adumbrate.linework.pdf.PdfSheetReader;
import org.adumbrate.linework.svg.SvgFile;
import org.adumbrate.linework.svg.SvgSheetReader;

/** Reads vector line sheets of any kind that is known: PDF and SVG. */
public final class LineSheets {
    private static final int HEAD = 1024;

    /** A site drawn at full size still fits. */
    private static final double LONGEST_PAGE_MM = 1e6;

    private static final String EXPORT = "export the lines as PDF or SVG";

    private LineSheets() {}

    /**
     * Reads a line sheet; its content, not its name, decides whether it is a PDF or SVG. Of a PDF the first page that
     * shows lines is read; layers that are switched off are left out. Nothing that the file refers to outside
     * itself is opened.
     *
     * @param file a PDF or SVG
     * @return the sheet, with at least one stroke
     * @throws InputFault if the file is missing, damaged, encrypted, of another kind, larger or more intricate than any drawing,
     *     or shows no line
     */
    public static LineSheet read(Path file) throws InputFault {
        LineSheet sheet = readAny(file);
        if (Math.max(sheet.page().widthMm(), sheet.page().heightMm()) > LONGEST_PAGE_MM) {
            throw new InputFault(file, "states a page with a side of more than 1 km", "export it with a page size");
        }
        return sheet;
    }

    private static LineSheet readAny(Path file) throws InputFault {
        byte[] head = head(file);
        if (head.length == 0) {
            throw new InputFault(file, "is empty", EXPORT);
        }
        if (SvgFile.isPacked(head)) {
            return SvgSheetReader.read(file);
        }
        String text = new String(head, StandardCharsets.ISO_8859_1);
        if (text.contains("%PDF-")) {
            return PdfSheetReader.read(file);
        }
        // whatever its encoding, an XML file begins with <, perhaps after a byte order mark and white space
        if (text.replaceAll("[\\u0000\\s\\u00ef\\u00bb\\u00bf\\u00fe\\u00ff]", "")
                .startsWith("<")) {
            return SvgSheetReader.read(file);
        }
        throw new InputFault(file, "is neither a PDF nor an SVG, whatever its name says", EXPORT);
    }

    private static byte[] head(Path file) throws InputFault {
        if (!Files.exists(file)) {
            throw new InputFault(file, "does not exist", "check the name and the folder");
        }
        if (Files.isDirectory(file)) {
            throw new InputFault(file, "is a folder, not a file", "name the PDF or SVG in it");
        }
        try (InputStream in = Files.newInputStream(file)) {
            return in.readNBytes(HEAD);
        } catch (IOException e) {
            throw new InputFault(file, "cannot be read (" + LibraryWords.of(e) + ")", "check who may read it", e);
        }
    }
}
