package org.adumbrate.raster.decode.netpbm;

import java.io.IOException;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import org.adumbrate.geometry.PixelSize;
import org.adumbrate.raster.SampleType;
import org.adumbrate.raster.decode.light.Alpha;
import org.adumbrate.raster.decode.light.ColourModel;
import org.adumbrate.raster.decode.light.PixelLayout;
import org.adumbrate.raster.decode.source.SourceFile;

/**
 * The head of a portable map (J. Poskanzer and others, <em>Netpbm formats</em>: pbm(5), pgm(5), ppm(5), pam(5)).
 *
 * @param kind the digit behind the P: 1 to 3 for text, 4 to 6 for packed bits and bytes, 7 for an arbitrary map
 * @param size its size
 * @param layout of a pixel as delivered
 * @param maxval the number that stands for full
 * @param length of the head in bytes
 */
record PnmHead(int kind, PixelSize size, PixelLayout layout, int maxval, int length) {
    private static final int ARBITRARY = 7;
    private static final int LARGEST_MAXVAL = 65535;
    private static final int LONGEST_KEY = 16;
    private static final int MOST_PIXELS_PER_BYTE = 8;

    static PnmHead read(SourceFile file) throws IOException {
        try (PnmInput in = new PnmInput(file)) {
            in.read();
            int kind = in.read() - '0';
            PnmHead head = kind == ARBITRARY ? arbitrary(file, in) : simple(file, in, kind);
            file.requireBytes(head.size, head.size.count() / MOST_PIXELS_PER_BYTE);
            return head;
        }
    }

    private static PnmHead simple(SourceFile file, PnmInput in, int kind) throws IOException {
        long width = number(in, "PNM", "its width");
        long height = number(in, "PNM", "its height");
        PixelSize size = file.checkedSize(width, height);
        boolean bits = kind == 1 || kind == 4;
        int maxval = bits ? 1 : maxval(in, "PNM", number(in, "PNM", "its largest value"));
        ColourModel colour = kind == 3 || kind == 6 ? ColourModel.RGB : ColourModel.GREY;
        return new PnmHead(kind, size, new PixelLayout(colour, Alpha.NONE, type(maxval)), maxval, in.endHead());
    }

    private static long number(PnmInput in, String format, String what) throws IOException {
        long number = in.number();
        if (number < 0) {
            throw in.badHead(format, what + " is no number");
        }
        return number;
    }

    private static int maxval(PnmInput in, String format, long stated) throws IOException {
        if (stated < 1 || stated > LARGEST_MAXVAL) {
            throw in.badHead(format, "its largest value is " + stated + ", not 1 to " + LARGEST_MAXVAL);
        }
        return (int) stated;
    }

    private static SampleType type(int maxval) {
        return maxval > 255 ? SampleType.SHORT : SampleType.BYTE;
    }

    /** Lines of a key and its value, up to ENDHDR. */
    private static PnmHead arbitrary(SourceFile file, PnmInput in) throws IOException {
        Map<String, String> values = new HashMap<>();
        in.line();
        for (String line = in.line(); !"ENDHDR".equals(line == null ? null : line.strip()); line = in.line()) {
            if (line == null) {
                throw in.badHead("PAM", "it has no end");
            }
            String[] words = line.strip().split("\\s+", 2);
            if (!words[0].isEmpty() && words[0].charAt(0) != '#') {
                String old = values.put(words[0], words.length > 1 ? words[1] : "");
                if (old != null || words[0].length() > LONGEST_KEY) {
                    throw in.badHead("PAM", "its keys are no head's");
                }
            }
        }
        PixelSize size = file.checkedSize(value(in, values, "WIDTH"), value(in, values, "HEIGHT"));
        int maxval = maxval(in, "PAM", value(in, values, "MAXVAL"));
        long depth = value(in, values, "DEPTH");
        PixelLayout layout = layout(in, values.getOrDefault("TUPLTYPE", ""), depth, type(maxval));
        return new PnmHead(ARBITRARY, size, layout, maxval, in.endHead());
    }

    private static long value(PnmInput in, Map<String, String> values, String key) throws IOException {
        String value = values.getOrDefault(key, "");
        if (!value.matches("\\d{1,10}")) {
            throw in.badHead("PAM", key + " is no number");
        }
        return Long.parseLong(value);
    }

    /** By its tuple type; if that is left out, by its depth, which is then all there is to go by. */
    private static PixelLayout layout(PnmInput in, String tuple, long depth, SampleType type) throws IOException {
        PixelLayout layout =
                switch (tuple.toUpperCase(Locale.ROOT)) {
                    case "BLACKANDWHITE", "GRAYSCALE" -> new PixelLayout(ColourModel.GREY, Alpha.NONE, type);
                    case "BLACKANDWHITE_ALPHA", "GRAYSCALE_ALPHA" ->
                        new PixelLayout(ColourModel.GREY, Alpha.STRAIGHT, type);
                    case "RGB" -> new PixelLayout(ColourModel.RGB, Alpha.NONE, type);
                    case "RGB_ALPHA" -> new PixelLayout(ColourModel.RGB, Alpha.STRAIGHT, type);
                    case "" ->
                        new PixelLayout(
                                depth < 3 ? ColourModel.GREY : ColourModel.RGB,
                                depth % 2 == 0 ? Alpha.STRAIGHT : Alpha.NONE,
                                type);
                    default -> throw in.badHead("PAM", "its tuple type is not known here");
                };
        if (layout.channels() != depth) {
            throw in.badHead("PAM", "its depth of " + depth + " does not fit its tuple type");
        }
        return layout;
    }

    /** The name of its format. */
    String format() {
        return kind == ARBITRARY ? "PAM" : "PNM";
    }

    /** Whether pixels are written as numbers in text. */
    boolean isText() {
        return kind <= 3;
    }

    /** Whether pixels are bits, of which 1 is black. */
    boolean isBitmap() {
        return kind == 1 || kind == 4;
    }

    /** Samples of a row. */
    int rowSamples() {
        return size.width() * layout.channels();
    }

    /** Bytes of a row that is not text. */
    int rowBytes() {
        return kind == 4
                ? (size.width() + 7) / 8
                : Math.multiplyExact(rowSamples(), layout.type().bytes());
    }
}
