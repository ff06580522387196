package org.adumbrate.delivery;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.adumbrate.raster.LightSink;
import org.adumbrate.raster.encode.PictureFormat;
import org.adumbrate.raster.encode.StripEncoder.Packed;

/** Hands strips on to a picture and keeps them as they were packed, to make the same picture of them again. */
final class KeptStrips implements LightSink {
    /** Of a picture with more bytes than this, packing aside, nothing is kept. */
    private static final long MOST_BYTES = 256L << 20;

    private final LightSink picture;
    private final List<Packed> strips = new ArrayList<>();

    /** @param picture takes the strips; finishing and closing it is left to whoever began it */
    KeptStrips(LightSink picture) {
        this.picture = picture;
    }

    /** Whether a picture is small enough. */
    static boolean keeps(PictureFormat format) {
        return (long) format.rowBytes() * format.size().height() <= MOST_BYTES;
    }

    /** The strips so far, from the top. */
    List<Packed> strips() {
        return List.copyOf(strips);
    }

    @Override
    public Filler filler() {
        return picture.filler();
    }

    @Override
    public void take(Strip strip) throws IOException {
        strips.add((Packed) strip);
        picture.take(strip);
    }

    @Override
    public boolean wantsEvenStrips() {
        return picture.wantsEvenStrips();
    }
}
