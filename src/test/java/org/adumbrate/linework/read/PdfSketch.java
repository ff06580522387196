package org.adumbrate.linework.read;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.adumbrate.linework.LineSheet;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSFloat;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.common.PDStream;

/** Makes small PDFs for tests, the content stream being written out by the test itself. */
public final class PdfSketch implements AutoCloseable {
    private final PDDocument document = new PDDocument();
    private final PDPage page;

    /** A page of a size in points. */
    public PdfSketch(double width, double height) {
        page = new PDPage(new PDRectangle((float) width, (float) height));
        page.setResources(new PDResources());
        document.addPage(page);
    }

    public PDDocument document() {
        return document;
    }

    public PDPage page() {
        return page;
    }

    public PDResources resources() {
        return page.getResources();
    }

    /** Sets what the page draws. */
    public PdfSketch draws(String content) {
        try {
            PDStream stream = new PDStream(document);
            write(stream.getCOSObject(), content);
            page.setContents(stream);
            return this;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A form without resources of its own. */
    public COSStream form(String content, double[] box, double[] matrix) throws IOException {
        COSStream form = document.getDocument().createCOSStream();
        form.setItem(COSName.SUBTYPE, COSName.FORM);
        form.setItem(COSName.BBOX, numbers(box));
        form.setItem(COSName.MATRIX, numbers(matrix));
        write(form, content);
        return form;
    }

    /** Puts something among the page's resources. */
    public PdfSketch with(COSName category, String name, COSBase resource) {
        COSDictionary resources = resources().getCOSObject();
        if (resources.getCOSDictionary(category) == null) {
            resources.setItem(category, new COSDictionary());
        }
        resources.getCOSDictionary(category).setItem(COSName.getPDFName(name), resource);
        return this;
    }

    public static COSArray numbers(double... values) {
        COSArray array = new COSArray();
        for (double value : values) {
            array.add(new COSFloat((float) value));
        }
        return array;
    }

    /** Writes the document into a folder. */
    public Path saved(Path folder) throws IOException {
        Path file = Files.createTempFile(folder, "sketch", ".pdf");
        document.save(file.toFile());
        return file;
    }

    /** What is read of the document. */
    public LineSheet read(Path folder) throws IOException {
        return LineSheets.read(saved(folder));
    }

    private static void write(COSStream stream, String content) throws IOException {
        try (OutputStream out = stream.createOutputStream(COSName.FLATE_DECODE)) {
            out.write(content.getBytes(StandardCharsets.ISO_8859_1));
        }
    }

    @Override
    public void close() throws IOException {
        document.close();
    }
}
