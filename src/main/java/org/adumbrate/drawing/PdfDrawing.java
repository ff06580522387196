package org.adumbrate.drawing;

import java.io.Closeable;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.adumbrate.fault.OutputFault;
import org.adumbrate.geometry.Length;
import org.adumbrate.geometry.PixelSize;
import org.adumbrate.geometry.SheetSize;
import org.adumbrate.output.OutputFile;

/**
 * The drawing as a PDF of one page at the sheet's true size: an underlay, if there is one, then groups of lines in the
 * order in which they are given, each on a layer (optional content group) of its own name. Equal drawings give equal
 * bytes. Print programs are asked not to scale the page.
 *
 * <pre>
 *   try (PdfDrawing drawing = PdfDrawing.begin(file, sheet)) {
 *       try (OutputStream rows = drawing.underlay(size, 1, profile)) { ... }
 *       drawing.lines(groups);
 *       drawing.finish();
 *   }
 * </pre>
 *
 * <p>All is written beside the file and moved into its place by {@link #finish}; closing without that leaves what stood
 * there before. Every failure to write is an {@link OutputFault}. Not safe for use by several threads at once.
 */
public final class PdfDrawing implements Closeable {
    /** The name of the underlay's layer. */
    public static final String UNDERLAY = "underlay";

    private static final int SIZE_DECIMALS = 4;

    private final OutputFile file;
    private final PdfFile pdf;
    private final SheetSize sheet;
    private final Map<String, Integer> layers = new LinkedHashMap<>();
    private final List<Integer> contents = new ArrayList<>();
    private int image;

    private PdfDrawing(OutputFile file, PdfFile pdf, SheetSize sheet) {
        this.file = file;
        this.pdf = pdf;
        this.sheet = sheet;
    }

    /**
     * Begins a drawing.
     *
     * @param file where it is to stand in the end; folders on the way are made
     * @param sheet its size
     * @throws OutputFault if nothing can be written there
     */
    public static PdfDrawing begin(Path file, SheetSize sheet) throws IOException {
        OutputFile aside = OutputFile.begin(file);
        try {
            return new PdfDrawing(aside, new PdfFile(aside.stream()), sheet);
        } catch (IOException e) {
            aside.close();
            throw e;
        }
    }

    /**
     * Opens the underlay, an image that fills the sheet below all lines. Takes a zlib stream of its rows from the top, each
     * row as PNG has it: the number of its filter, then its 8-bit samples, filtered. The stream must be closed before
     * anything else is asked of this drawing.
     *
     * @param size the size of the image
     * @param channels samples to a pixel: 1 for grey, 3 for red, green and blue
     * @param iccProfile the ICC profile of the samples; empty if they have none
     * @throws IllegalStateException if there is an underlay already, or lines
     */
    public OutputStream underlay(PixelSize size, int channels, byte[] iccProfile) throws IOException {
        if (!contents.isEmpty()) {
            throw new IllegalStateException("the underlay lies below everything else and must come first");
        }
        if (channels != 1 && channels != 3) {
            throw new IllegalArgumentException("an image of " + channels + " channels");
        }
        String space = channels == 1 ? "/DeviceGray" : "/DeviceRGB";
        if (iccProfile.length > 0) {
            int profile = pdf.reserve();
            try (OutputStream out = pdf.openCompressed(profile, "/N " + channels + "/Alternate" + space)) {
                out.write(iccProfile);
            }
            space = "[/ICCBased " + PdfFile.reference(profile) + "]";
        }
        String placing = number(sheet.widthMm()) + " 0 0 " + number(sheet.heightMm()) + " 0 0 cm /Underlay Do\n";
        content(UNDERLAY, out -> out.write(ascii(placing)));
        image = pdf.reserve();
        return pdf.open(
                image,
                "/Type/XObject/Subtype/Image/Width " + size.width() + "/Height " + size.height() + "/ColorSpace "
                        + space
                        + "/BitsPerComponent 8/Filter/FlateDecode/DecodeParms<</Predictor 15/Colors " + channels
                        + "/BitsPerComponent 8/Columns " + size.width() + ">>");
    }

    /** Draws groups of lines over what is there, each on the layer of its name. */
    public void lines(List<LineGroup> groups) throws IOException {
        for (LineGroup group : groups) {
            content(group.name(), out -> PdfLines.write(group, sheet, out));
        }
    }

    /** Completes the file and puts it in its place. */
    public void finish() throws IOException {
        int pages = pdf.reserve();
        int page = pdf.object("<</Type/Page/Parent " + PdfFile.reference(pages) + "/MediaBox[0 0 "
                + number(sheet.widthMm()) + " " + number(sheet.heightMm()) + "]/Resources<<" + resources()
                + ">>/Contents[" + references(contents) + "]>>");
        pdf.object(pages, "<</Type/Pages/Count 1/Kids[" + PdfFile.reference(page) + "]>>");
        String groups = references(List.copyOf(layers.values()));
        int catalog = pdf.object("<</Type/Catalog/Pages " + PdfFile.reference(pages)
                + "/ViewerPreferences<</PrintScaling/None>>/OCProperties<</OCGs[" + groups + "]/D<</Order[" + groups
                + "]/ON[" + groups + "]>>>>>>");
        pdf.finish(catalog, pdf.object("<</Producer(Adumbrate)>>"));
        file.commit();
    }

    /** Gives the drawing up, unless it is finished. */
    @Override
    public void close() throws OutputFault {
        file.close();
    }

    private interface Content {
        void writeTo(OutputStream out) throws IOException;
    }

    /** Adds content on a layer. */
    private void content(String layer, Content content) throws IOException {
        if (!layers.containsKey(layer)) {
            layers.put(layer, pdf.object("<</Type/OCG/Name" + PdfText.of(layer) + ">>"));
        }
        int number = pdf.reserve();
        contents.add(number);
        try (OutputStream out = pdf.openCompressed(number, "")) {
            out.write(ascii("/OC /" + propertyName(layers.get(layer)) + " BDC q\n"));
            content.writeTo(out);
            out.write(ascii("Q EMC\n"));
        }
    }

    private static byte[] ascii(String text) {
        return text.getBytes(StandardCharsets.US_ASCII);
    }

    private String resources() {
        String properties = layers.values().stream()
                .map(number -> "/" + propertyName(number) + " " + PdfFile.reference(number))
                .collect(Collectors.joining());
        String images = image == 0 ? "" : "/XObject<</Underlay " + PdfFile.reference(image) + ">>";
        return "/Properties<<" + properties + ">>" + images;
    }

    private static String propertyName(int number) {
        return "L" + number;
    }

    private static String references(List<Integer> numbers) {
        return numbers.stream().map(PdfFile::reference).collect(Collectors.joining(" "));
    }

    private static String number(double mm) {
        return CompactNumber.of(mm / Length.MM_PER_POINT, SIZE_DECIMALS);
    }
}
