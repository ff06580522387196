package org.adumbrate.raster.decode;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.util.Arrays;
import java.util.OptionalDouble;
import java.util.zip.DataFormatException;
import java.util.zip.Inflater;

/** What a PNG's chunks before the image data say of its colour and resolution. */
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
        return found;
    }

    private void take(PngChunks chunks) throws IOException {
        switch (chunks.type()) {
            case "PLTE", "tRNS", "iCCP", "sRGB", "gAMA", "cHRM", "pHYs", "eXIf" -> {
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
            default -> exif = ExifBlock.read(file, body);
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

    /** Stated resolution, by pHYs or else by the Exif block. */
    OptionalDouble dpi() {
        return dpi.isPresent() ? dpi : exif.dpi();
    }

    /** The Exif block. */
    ExifBlock exif() {
        return exif;
    }
}
