package org.adumbrate.golden;

import java.awt.Rectangle;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Arrays;
import java.util.Optional;
import javax.imageio.ImageIO;

/**
 * Compares a picture with the expected one in {@code golden-images/}, by three limits that must all hold: the mean
 * difference, the share of samples that stray by more than a level or two, and the most that any sample may differ.
 *
 * <p>{@code mvn -o test -Dtest=GoldenImagesTest -Drenew=true} puts the pictures of today in the place of the expected
 * ones; look at each before committing it. A failure leaves the picture it got in {@code target/golden-images/}.
 */
public final class GoldenImage {
    static final Path EXPECTED = Path.of("golden-images");
    static final Path GOT = Path.of("target", "golden-images");
    static final String WHAT_NEXT =
            "; what was made is in " + GOT + "; if it is right, run mvn -o test -Dtest=GoldenImagesTest -Drenew=true";

    private GoldenImage() {}

    /**
     * How far a picture may be off.
     *
     * @param mean mean difference of a sample, in levels
     * @param strays share of samples that may differ by more than 2 levels
     * @param most difference that no sample may exceed, in levels
     */
    public record Limits(double mean, double strays, int most) {}

    /** Fails unless the picture is the expected one within the limits; with {@code -Drenew=true} makes it the expected one. */
    public static void check(String name, Path picture, Limits limits) throws IOException {
        Path expected = EXPECTED.resolve(name + ".png");
        if (Boolean.getBoolean("renew")) {
            Files.createDirectories(EXPECTED);
            Files.copy(picture, expected, StandardCopyOption.REPLACE_EXISTING);
            return;
        }
        BufferedImage got = ImageIO.read(picture.toFile());
        Optional<String> complaint = difference(ImageIO.read(expected.toFile()), got, limits);
        if (complaint.isPresent()) {
            Files.createDirectories(GOT);
            Files.copy(picture, GOT.resolve(name + ".png"), StandardCopyOption.REPLACE_EXISTING);
            throw new AssertionError(expected + ": " + complaint.get() + WHAT_NEXT);
        }
    }

    /**
     * Writes a part of a picture beside it with 8 bits, each pixel the mean of a square of its pixels.
     *
     * @param part what part, in pixels; of its width and height what is over at the end is left out
     * @param factor the side of the square
     */
    public static Path part(Path picture, Rectangle part, int factor) throws IOException {
        BufferedImage whole = ImageIO.read(picture.toFile());
        int bands = whole.getRaster().getNumBands();
        int type = bands == 1 ? BufferedImage.TYPE_BYTE_GRAY : BufferedImage.TYPE_3BYTE_BGR;
        BufferedImage small = new BufferedImage(part.width / factor, part.height / factor, type);
        int[] square = new int[factor * factor];
        double levels = (1 << whole.getSampleModel().getSampleSize(0)) - 1.0;
        for (int y = 0; y < small.getHeight(); y++) {
            for (int x = 0; x < small.getWidth(); x++) {
                for (int band = 0; band < bands; band++) {
                    whole.getRaster()
                            .getSamples(part.x + x * factor, part.y + y * factor, factor, factor, band, square);
                    double mean = Arrays.stream(square).average().orElseThrow();
                    small.getRaster().setSample(x, y, band, (int) Math.round(255 / levels * mean));
                }
            }
        }
        Path file = picture.resolveSibling("part-of-" + picture.getFileName());
        ImageIO.write(small, "png", file.toFile());
        return file;
    }

    /** What is wrong with a picture, if anything is. */
    static Optional<String> difference(BufferedImage expected, BufferedImage got, Limits limits) {
        if (expected.getWidth() != got.getWidth() || expected.getHeight() != got.getHeight()) {
            return Optional.of("expected %d x %d pixels, got %d x %d"
                    .formatted(expected.getWidth(), expected.getHeight(), got.getWidth(), got.getHeight()));
        }
        if (expected.getRaster().getNumBands() != got.getRaster().getNumBands()) {
            return Optional.of("another number of channels");
        }
        int[] a = expected.getRaster().getPixels(0, 0, got.getWidth(), got.getHeight(), (int[]) null);
        int[] b = got.getRaster().getPixels(0, 0, got.getWidth(), got.getHeight(), (int[]) null);
        long sum = 0;
        long strays = 0;
        int most = 0;
        for (int k = 0; k < a.length; k++) {
            int off = Math.abs(a[k] - b[k]);
            sum += off;
            strays += off > 2 ? 1 : 0;
            most = Math.max(most, off);
        }
        double mean = (double) sum / a.length;
        double share = (double) strays / a.length;
        return mean <= limits.mean && share <= limits.strays && most <= limits.most
                ? Optional.empty()
                : Optional.of("mean difference %.4f (limit %.4f), strays %.5f (%.5f), most %d (%d)"
                        .formatted(mean, limits.mean, share, limits.strays, most, limits.most));
    }
}
