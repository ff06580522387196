package org.adumbrate.raster.decode.png;

import java.io.IOException;
import java.nio.ByteBuffer;
import org.adumbrate.raster.SampleType;
import org.adumbrate.raster.Samples;
import org.adumbrate.raster.decode.light.Alpha;
import org.adumbrate.raster.decode.light.PixelLayout;
import org.adumbrate.raster.decode.source.SourceFile;

/** Pixels of which one colour counts as transparent (ISO/IEC 15948, 11.3.2.1): they gain an alpha channel. */
final class PngKeyed implements PngPixels {
    private final PngPixels opaque;
    private final PixelLayout layout;
    private final Samples key;
    private final Samples samples;
    private final Samples alphas;

    private PngKeyed(PngPixels opaque, PixelLayout layout, Samples key, int width) {
        this.opaque = opaque;
        this.layout = layout;
        this.key = key;
        this.samples = Samples.allocate(layout.type(), width * layout.channels());
        this.alphas = layout.type() == SampleType.SHORT
                ? new Samples.Shorts(new short[] {0, -1})
                : new Samples.Bytes(new byte[] {0, -1});
    }

    static PngKeyed over(SourceFile file, PngPixels opaque, PngHeader header, byte[] transparency) throws IOException {
        PixelLayout plain = opaque.layout();
        int colours = plain.channels();
        if (transparency.length != 2 * colours) {
            throw file.damaged("its transparent colour is " + transparency.length + " bytes long");
        }
        // The colour stands as one row of one pixel, in 16 bits a sample, unscaled.
        int scale = header.depth() < 8 ? 255 / ((1 << header.depth()) - 1) : 1;
        Samples key = Samples.allocate(plain.type(), colours);
        for (int c = 0; c < colours; c++) {
            int code = ByteBuffer.wrap(transparency).getShort(2 * c) & 0xffff;
            if (key instanceof Samples.Bytes bytes) {
                bytes.values()[c] = (byte) (code * scale);
            } else {
                ((Samples.Shorts) key).values()[c] = (short) code;
            }
        }
        PixelLayout layout = new PixelLayout(plain.colour(), Alpha.STRAIGHT, plain.type());
        return new PngKeyed(opaque, layout, key, header.size().width());
    }

    @Override
    public PixelLayout layout() {
        return layout;
    }

    @Override
    public Samples unpack(byte[] row, int pixels) throws IOException {
        Samples plain = opaque.unpack(row, pixels);
        int colours = layout.colour().channels();
        for (int i = 0; i < pixels; i++) {
            int from = opaque.offset() + i * colours;
            int to = i * (colours + 1);
            samples.copyFrom(to, plain, from, colours);
            samples.copyFrom(to + colours, alphas, isKey(plain, from, colours) ? 0 : 1, 1);
        }
        return samples;
    }

    private boolean isKey(Samples plain, int from, int colours) {
        for (int c = 0; c < colours; c++) {
            boolean same = plain instanceof Samples.Bytes bytes
                    ? bytes.values()[from + c] == ((Samples.Bytes) key).values()[c]
                    : ((Samples.Shorts) plain).values()[from + c] == ((Samples.Shorts) key).values()[c];
            if (!same) {
                return false;
            }
        }
        return true;
    }
}
