package org.adumbrate.raster.decode.png;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.zip.DataFormatException;
import java.util.zip.Inflater;
import org.adumbrate.raster.Orientation;
import org.adumbrate.raster.decode.icc.EmbeddedProfile;
import org.adumbrate.raster.decode.metadata.ExifBlock;
import org.adumbrate.raster.decode.metadata.Resolution;
import org.adumbrate.raster.decode.source.SourceFile;

/** What a PNG's chunks beside the image data say of its colour, resolution and orientation. */
final class PngAncillary {
    private static final int LARGEST_PROFILE = 1 << 24;
    private static final int LARGEST_CHUNK = 1 << 24;
    private static final int METRE = 1;

    private final SourceFile file;
    private byte[] palette = {};
    private byte[] transparency;
    private EmbeddedProfile profile = EmbeddedProfile.NONE;
    private boolean srgb;
    private double gamma;
    private double[] chromaticities;
    private OptionalDouble dpi = OptionalDouble.empty();
    private ExifBlock exif = ExifBlock.NONE;
    private ExifBlock textExif = ExifBlock.NONE;
    private int xmpOrientation;
    private Optional<PngCodePoints> codePoints = Optional.empty();
    private long dataAt;

    private PngAncillary(SourceFile file) {
        this.file = file;
    }

    /** Reads on to the first chunk of image data, and enters it. */
    static PngAncillary read(SourceFile file, PngChunks chunks) throws IOException {
        PngAncillary found = new PngAncillary(file);
        chunks.next();
        while (!chunks.type().equals("IDAT")) {
            if (chunks.type().equals("IEND")) {
                throw file.damaged("it holds no image data");
            }
            found.take(chunks);
            chunks.next();
        }
        found.dataAt = chunks.at();
        return found;
    }

    private void take(PngChunks chunks) throws IOException {
        switch (chunks.type()) {
            case "PLTE", "tRNS", "iCCP", "sRGB", "gAMA", "cHRM", "cICP", "pHYs", "eXIf", "tEXt", "zTXt", "iTXt" -> {
                if (chunks.left() > LARGEST_CHUNK) {
                    throw file.damaged("its chunk " + chunks.type() + " is " + chunks.left() + " bytes long");
                }
                take(chunks.type(), chunks.body());
            }
            default -> {
                if (Character.isUpperCase(chunks.type().charAt(0))) {
                    throw file.unsupported("PNG with the critical chunk " + chunks.type());
                }
                chunks.skip();
            }
        }
    }

    private void take(String type, byte[] body) throws IOException {
        ByteBuffer data = ByteBuffer.wrap(body);
        switch (type) {
            case "PLTE" -> palette = palette(body);
            case "tRNS" -> transparency = body;
            case "iCCP" -> profile = profile.isPresent() ? profile : profile(body);
            case "sRGB" -> srgb = true;
            case "gAMA" -> gamma = body.length == 4 ? data.getInt() / 1e5 : 0;
            case "cHRM" -> chromaticities = body.length == 32 ? chromaticities(data) : null;
            case "pHYs" -> dpi = body.length == 9 ? dpi(data) : dpi;
            case "cICP" -> codePoints = PngCodePoints.read(body);
            default -> takeSeen(type, body);
        }
    }

    /** What says how the picture is to be seen. */
    private void takeSeen(String type, byte[] body) throws IOException {
        if (type.equals("eXIf")) {
            exif = ExifBlock.read(file, body);
            return;
        }
        Optional<PngText> text = PngText.read(type, body);
        if (text.isPresent()) {
            textExif = text.get().exif(file).orElse(textExif);
            xmpOrientation = Math.max(xmpOrientation, text.get().orientation());
        }
    }

    private byte[] palette(byte[] body) throws IOException {
        if (body.length == 0 || body.length % 3 != 0 || body.length > 3 * 256) {
            throw file.damaged("its palette is " + body.length + " bytes long");
        }
        return body;
    }

    /** Name, zero, method 0, zlib stream (clause 11.3.3.3); a stream that is broken is kept as an unreadable profile. */
    private static EmbeddedProfile profile(byte[] body) {
        int name = 0;
        while (name < body.length && body[name] != 0) {
            name++;
        }
        Inflater inflater = new Inflater();
        try {
            inflater.setInput(body, Math.min(body.length, name + 2), Math.max(0, body.length - name - 2));
            byte[] out = new byte[1 << 12];
            int length = 0;
            for (int count = 1; count > 0 && length < LARGEST_PROFILE; length += count) {
                out = length == out.length ? Arrays.copyOf(out, 2 * length) : out;
                count = inflater.inflate(out, length, out.length - length);
            }
            return EmbeddedProfile.of(Arrays.copyOf(out, length));
        } catch (DataFormatException e) {
            return EmbeddedProfile.of(new byte[0]);
        } finally {
            inflater.end();
        }
    }

    private static double[] chromaticities(ByteBuffer data) {
        double[] xy = new double[8];
        for (int i = 0; i < xy.length; i++) {
            xy[i] = data.getInt() / 1e5;
        }
        return xy;
    }

    private static OptionalDouble dpi(ByteBuffer data) {
        double x = data.getInt() & 0xffffffffL;
        double y = data.getInt() & 0xffffffffL;
        return data.get() == METRE ? Resolution.dpi(x, y, Resolution.INCH_M) : OptionalDouble.empty();
    }

    /** Red, green and blue of each palette entry; empty if there is no palette. */
    byte[] palette() {
        return palette;
    }

    /** The body of tRNS, or null. */
    byte[] transparency() {
        return transparency;
    }

    /** The colour profile. */
    EmbeddedProfile profile() {
        return profile;
    }

    /** Whether an sRGB chunk settles the colour. */
    boolean srgb() {
        return srgb;
    }

    /** The exponent of gAMA, from light to code; 0 if there is none. */
    double gamma() {
        return gamma;
    }

    /** x and y of white, red, green and blue, or null. */
    double[] chromaticities() {
        return chromaticities;
    }

    /** The colour space of cICP. */
    Optional<PngCodePoints> codePoints() {
        return codePoints;
    }

    /** Looks behind the image data as well for what says how the picture is to be seen. */
    void readTail() throws IOException {
        PngTail.read(file, dataAt, this::takeSeen);
    }

    /** Stated resolution, by pHYs or else by the Exif block. */
    OptionalDouble dpi() {
        return dpi.isPresent() ? dpi : shown().dpi();
    }

    /** How to turn it: by the Exif block or else by XMP. */
    Orientation orientation() {
        Orientation stated = shown().orientation();
        return stated == Orientation.TOP_LEFT ? Orientation.ofExif(xmpOrientation) : stated;
    }

    /** The Exif block of the chunk made for it, or else of a text. */
    private ExifBlock shown() {
        return exif.equals(ExifBlock.NONE) ? textExif : exif;
    }
}
