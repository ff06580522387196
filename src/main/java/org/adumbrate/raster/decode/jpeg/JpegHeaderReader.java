package org.adumbrate.raster.decode.jpeg;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.SortedMap;
import java.util.TreeMap;
import org.adumbrate.geometry.PixelSize;
import org.adumbrate.raster.decode.icc.EmbeddedProfile;
import org.adumbrate.raster.decode.light.ColourModel;
import org.adumbrate.raster.decode.metadata.ExifBlock;
import org.adumbrate.raster.decode.metadata.Resolution;
import org.adumbrate.raster.decode.source.SourceFile;

/** Reads the head of a JPEG: each segment is understood, passed on to the decoder, or passed over. */
final class JpegHeaderReader {
    private static final int DHT = 0xc4;
    private static final int DAC = 0xcc;
    private static final int DQT = 0xdb;
    private static final int DRI = 0xdd;
    private static final int APP0 = 0xe0;
    private static final int APP1 = 0xe1;
    private static final int APP2 = 0xe2;
    private static final int APP14 = 0xee;

    /** Tables beyond this are none that a decoder needs. */
    private static final int LARGEST_HEAD = 1 << 20;

    /** Every block of 64 samples takes at least one bit, in a progressive picture's first scan as elsewhere. */
    private static final int MOST_PIXELS_PER_BYTE = 64 * 8;

    private final SourceFile file;
    private final ByteArrayOutputStream tables = new ByteArrayOutputStream();
    private final SortedMap<Integer, byte[]> profileParts = new TreeMap<>();
    private JpegFrame frame;
    private boolean jfif;
    private int adobeTransform = -1;
    private OptionalDouble dpi = OptionalDouble.empty();
    private ExifBlock exif = ExifBlock.NONE;

    private JpegHeaderReader(SourceFile file) {
        this.file = file;
    }

    static JpegHeader read(SourceFile file) throws IOException {
        JpegHeaderReader reader = new JpegHeaderReader(file);
        try (JpegSegments segments = new JpegSegments(file)) {
            int marker = segments.next();
            while (marker != JpegSegments.SOS) {
                if (marker == JpegSegments.EOI) {
                    throw file.damaged("it holds no image data");
                }
                reader.take(marker, segments.body());
                marker = segments.next();
            }
            long scanAt = segments.markerAt();
            return reader.header(scanAt, segments.body());
        }
    }

    private void take(int marker, byte[] body) throws IOException {
        switch (marker) {
            case DQT, DHT, DRI, DAC -> keep(marker, body);
            case APP0 -> takeJfif(body);
            case APP1 -> takeExif(body);
            case APP2 -> takeProfile(body);
            case APP14 -> takeAdobe(body);
            default -> {
                if (JpegFrame.isFrame(marker)) {
                    takeFrame(marker, body);
                }
            }
        }
    }

    private void keep(int marker, byte[] body) throws IOException {
        tables.write(0xff);
        tables.write(marker);
        tables.write((body.length + 2) >> 8);
        tables.write(body.length + 2);
        tables.writeBytes(body);
        if (tables.size() > LARGEST_HEAD) {
            throw file.damaged("its head holds more tables than any picture needs");
        }
    }

    private void takeJfif(byte[] body) {
        if (begins(body, "JFIF\0") && body.length >= 12) {
            jfif = true;
            double x = unsignedShort(body, 8);
            double y = unsignedShort(body, 10);
            dpi = switch (body[7]) {
                case 1 -> Resolution.dpi(x, y, 1);
                case 2 -> Resolution.dpi(x, y, Resolution.INCH_CM);
                default -> OptionalDouble.empty();
            };
        }
    }

    private void takeExif(byte[] body) throws IOException {
        if (begins(body, "Exif\0") && exif.equals(ExifBlock.NONE)) {
            exif = ExifBlock.read(file, Arrays.copyOfRange(body, Math.min(6, body.length), body.length));
        }
    }

    /** A profile comes in numbered parts (ICC.1:2022, annex B.4). */
    private void takeProfile(byte[] body) {
        if (begins(body, "ICC_PROFILE\0") && body.length > 14) {
            profileParts.put(body[12] & 0xff, Arrays.copyOfRange(body, 14, body.length));
        }
    }

    private void takeAdobe(byte[] body) {
        if (begins(body, "Adobe") && body.length >= 12) {
            adobeTransform = body[11] & 0xff;
        }
    }

    private void takeFrame(int marker, byte[] body) throws IOException {
        if (frame != null) {
            throw file.damaged("it holds two frames");
        }
        frame = JpegFrame.read(file, marker, body);
        keep(marker, body);
    }

    private JpegHeader header(long scanAt, byte[] scan) throws IOException {
        if (frame == null) {
            throw file.damaged("it holds no frame header");
        }
        if (frame.height() == 0) {
            throw file.unsupported("JPEG that states its height at its end only (DNL)");
        }
        PixelSize size = file.checkedSize(frame.width(), frame.height());
        file.requireBytes(size, size.count() / MOST_PIXELS_PER_BYTE);
        List<Integer> components = frame.components();
        JpegColour colour = JpegColour.of(components, jfif, adobeTransform)
                .orElseThrow(() -> file.unsupported("JPEG of " + components.size() + " components"));
        boolean interleaved = scan.length > 0 && scan[0] == components.size();
        if (frame.progressive() || !interleaved) {
            frame.requireKeepable(file);
        }
        return new JpegHeader(
                frame,
                size,
                colour,
                interleaved,
                colour.model() == ColourModel.CMYK && adobeTransform >= 0,
                profile(),
                dpi.isPresent() ? dpi : exif.dpi(),
                exif,
                head(colour),
                scanAt);
    }

    private EmbeddedProfile profile() {
        if (profileParts.isEmpty()) {
            return EmbeddedProfile.NONE;
        }
        ByteArrayOutputStream whole = new ByteArrayOutputStream();
        profileParts.values().forEach(whole::writeBytes);
        return EmbeddedProfile.of(whole.toByteArray());
    }

    private ByteBuffer head(JpegColour colour) {
        ByteArrayOutputStream head = new ByteArrayOutputStream();
        head.write(0xff);
        head.write(0xd8);
        head.writeBytes(colour.segment());
        head.writeBytes(tables.toByteArray());
        return ByteBuffer.wrap(head.toByteArray()).asReadOnlyBuffer();
    }

    private static int unsignedShort(byte[] body, int at) {
        return ByteBuffer.wrap(body).getShort(at) & 0xffff;
    }

    private static boolean begins(byte[] body, String word) {
        byte[] letters = word.getBytes(StandardCharsets.ISO_8859_1);
        return body.length >= letters.length && Arrays.equals(body, 0, letters.length, letters, 0, letters.length);
    }
}
