package org.adumbrate.drawing;

import java.io.Closeable;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.adumbrate.fault.OutputFault;
import org.adumbrate.geometry.Length;
import org.adumbrate.geometry.PixelSize;
import org.adumbrate.geometry.SheetSize;
import org.adumbrate.output.OutputFile;

/**
 * The drawing as a PDF of one page at the sheet's true size: an underlay, if there is one, then layers in the order in
 * which they are given, each an optional content group of its own name, inside that of the layers it is kept with. Layers
 * that are not shown are switched off, on screen and in print. Equal drawings give equal bytes. Print programs are asked
 * not to scale the page.
 *
 * <pre>
 *   try (PdfDrawing drawing = PdfDrawing.begin(file, sheet)) {
 *       try (OutputStream rows = drawing.underlay(size, 1, profile)) { ... }
 *       drawing.layers(layers);
 *       drawing.finish();
 *   }
 * </pre>
 *
 * <p>All is written beside the file and moved into its place by {@link #finish}; closing without that leaves what stood
 * there before. Every failure to write is an {@link OutputFault}. Not safe for use by several threads at once.
 */
public final class PdfDrawing implements Closeable {
    private static final int SIZE_DECIMALS = 4;

    private final OutputFile file;
    private final PdfFile pdf;
    private final SheetSize sheet;
    private final PdfGroups groups;
    private final PdfLayers shown;
    private final List<Integer> contents = new ArrayList<>();
    private int image;

    private PdfDrawing(OutputFile file, PdfFile pdf, SheetSize sheet) {
        this.file = file;
        this.pdf = pdf;
        this.sheet = sheet;
        this.groups = new PdfGroups(pdf);
        this.shown = new PdfLayers(pdf, sheet, number(sheet.widthMm()) + " " + number(sheet.heightMm()));
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
     * Opens the underlay, an image that fills the sheet below all layers. Takes a zlib stream of its rows from the top, each
     * row as PNG has it: the number of its filter, then its 8-bit samples, filtered. The stream must be closed before
     * anything else is asked of this drawing.
     *
     * @param size the size of the image
     * @param channels samples to a pixel: 1 for grey, 3 for red, green and blue
     * @param iccProfile the ICC profile of the samples; empty if they have none
     * @throws IllegalStateException if there is an underlay already, or a layer
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
        String placing =
                "q " + number(sheet.widthMm()) + " 0 0 " + number(sheet.heightMm()) + " 0 0 cm /Underlay Do Q\n";
        content(Layer.of(DrawingOrder.UNDERLAY, List.of()), out -> out.write(ascii(placing)));
        image = pdf.reserve();
        return pdf.open(
                image,
                "/Type/XObject/Subtype/Image/Width " + size.width() + "/Height " + size.height() + "/ColorSpace "
                        + space
                        + "/BitsPerComponent 8/Filter/FlateDecode/DecodeParms<</Predictor 15/Colors " + channels
                        + "/BitsPerComponent 8/Columns " + size.width() + ">>");
    }

    /** Draws layers over what is there. */
    public void layers(List<Layer> layers) throws IOException {
        for (Layer layer : layers) {
            content(layer, shown.of(layer));
        }
    }

    /** Completes the file and puts it in its place. */
    public void finish() throws IOException {
        int pages = pdf.reserve();
        int page = pdf.object("<</Type/Page/Parent " + PdfFile.reference(pages) + "/MediaBox[0 0 "
                + number(sheet.widthMm()) + " " + number(sheet.heightMm()) + "]" + blending() + "/Resources<<"
                + resources() + ">>/Contents[" + references(contents) + "]>>");
        pdf.object(pages, "<</Type/Pages/Count 1/Kids[" + PdfFile.reference(page) + "]>>");
        int catalog = pdf.object("<</Type/Catalog/Pages " + PdfFile.reference(pages)
                + "/ViewerPreferences<</PrintScaling/None>>" + groups.write() + ">>");
        pdf.finish(catalog, pdf.object("<</Producer(Adumbrate)>>"));
        file.commit();
    }

    /** Gives the drawing up, unless it is finished. */
    @Override
    public void close() throws OutputFault {
        file.close();
    }

    /** Adds content on a layer. */
    private void content(Layer layer, PdfLayers.Content content) throws IOException {
        List<String> inside = groups.of(layer);
        int number = pdf.reserve();
        contents.add(number);
        try (OutputStream out = pdf.openCompressed(number, "")) {
            for (String group : inside) {
                out.write(ascii("/OC /" + group + " BDC\n"));
            }
            content.writeTo(out);
            out.write(ascii("EMC\n".repeat(inside.size())));
        }
    }

    private static byte[] ascii(String text) {
        return text.getBytes(StandardCharsets.US_ASCII);
    }

    /** Colours that shine through are mixed as they are encoded for the screen, whatever the printer mixes in. */
    private String blending() {
        return shown.areTransparent() ? "/Group<</S/Transparency/CS/DeviceRGB>>" : "";
    }

    private String resources() {
        String objects = (image == 0 ? "" : "/Underlay " + PdfFile.reference(image)) + shown.objects();
        return groups.resources() + shown.states() + (objects.isEmpty() ? "" : "/XObject<<" + objects + ">>");
    }

    private static String references(List<Integer> numbers) {
        return numbers.stream().map(PdfFile::reference).collect(Collectors.joining(" "));
    }

    private static String number(double mm) {
        return CompactNumber.of(mm / Length.MM_PER_POINT, SIZE_DECIMALS);
    }
}
