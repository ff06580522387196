package org.adumbrate.hostile;

import java.awt.color.ColorSpace;
import java.awt.color.ICC_Profile;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.adumbrate.geometry.PixelSize;

/**
 * Another reader of rasters, which shares no code with ours: ImageMagick, if {@code convert} is installed, which stands on
 * libpng, libjpeg and libtiff.
 */
final class IndependentReader {
    private static final String PROGRAM = "convert";
    private static final long LONGEST_SECONDS = 60;
    private static final int LONGEST_HEAD = 1 << 16;
    private static final String END = "ENDHDR\n";

    private IndependentReader() {}

    /** Whether it is installed. */
    static boolean isPresent() {
        try {
            return ended(new ProcessBuilder(PROGRAM, "-version")
                    .redirectErrorStream(true)
                    .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                    .start());
        } catch (IOException e) {
            return false;
        }
    }

    /** Its picture of a file, turned for viewing and brought to sRGB; empty if it refuses the file. */
    static Optional<SheetPicture> read(Path file) throws IOException {
        Path raw = Files.createTempFile("independent", ".pam");
        Path profile = Files.createTempFile("independent", ".icc");
        try {
            Files.write(profile, ICC_Profile.getInstance(ColorSpace.CS_sRGB).getData());
            Process process = new ProcessBuilder(List.of(
                            PROGRAM,
                            file.toAbsolutePath() + "[0]",
                            "-auto-orient",
                            "-profile",
                            profile.toString(),
                            "-colorspace",
                            "sRGB",
                            "-type",
                            "TrueColorAlpha",
                            "-depth",
                            "16",
                            "pam:" + raw))
                    .redirectErrorStream(true)
                    .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                    .start();
            return ended(process) ? picture(raw) : Optional.empty();
        } finally {
            Files.delete(raw);
            Files.delete(profile);
        }
    }

    private static boolean ended(Process process) throws IOException {
        try {
            boolean ended = process.waitFor(LONGEST_SECONDS, TimeUnit.SECONDS);
            process.destroyForcibly();
            return ended && process.exitValue() == 0;
        } catch (InterruptedException e) {
            throw new IOException(e);
        }
    }

    /** A portable arbitrary map of four channels of 16 bits. */
    private static Optional<SheetPicture> picture(Path pam) throws IOException {
        try (InputStream in = Files.newInputStream(pam)) {
            String head = new String(in.readNBytes(LONGEST_HEAD), StandardCharsets.ISO_8859_1);
            int end = head.indexOf(END);
            if (end < 0 || !head.contains("DEPTH 4\n") || !head.contains("MAXVAL 65535\n")) {
                return Optional.empty();
            }
            PixelSize size = new PixelSize(number(head, "WIDTH "), number(head, "HEIGHT "));
            if (!SheetPicture.mayBeCompared(size)) {
                return Optional.of(new SheetPicture(size, new float[0]));
            }
            short[] rgba = new short[(int) size.count() * 4];
            byte[] bytes = Files.readAllBytes(pam);
            int from = end + END.length();
            ByteBuffer.wrap(bytes, from, bytes.length - from).asShortBuffer().get(rgba);
            return Optional.of(SheetPicture.ofStraight(size, rgba));
        }
    }

    private static int number(String head, String key) {
        int at = head.indexOf(key) + key.length();
        return Integer.parseInt(head.substring(at, head.indexOf('\n', at)));
    }
}
