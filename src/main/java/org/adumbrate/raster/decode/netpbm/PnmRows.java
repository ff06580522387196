package org.adumbrate.raster.decode.netpbm;

import java.io.Closeable;
import java.io.IOException;
import org.adumbrate.fault.InputFault;
import org.adumbrate.raster.SampleType;
import org.adumbrate.raster.Samples;
import org.adumbrate.raster.decode.source.SourceFile;

/** The rows of a portable map, brought to full scale. */
final class PnmRows implements Closeable {
    private final SourceFile file;
    private final PnmHead head;
    private final PnmInput in;
    private final byte[] packed;
    private final int[] codes;
    private final Samples samples;
    private int row;

    PnmRows(SourceFile file, PnmHead head) throws IOException {
        this.file = file;
        this.head = head;
        this.in = new PnmInput(file);
        in.endHead();
        in.skip(head.length());
        this.packed = new byte[head.isText() ? 0 : head.rowBytes()];
        this.codes = new int[head.rowSamples()];
        this.samples = Samples.allocate(head.layout().type(), codes.length);
    }

    /** The next row, valid until the next call. */
    Samples next() throws IOException {
        if (head.isText()) {
            readText();
        } else {
            readPacked();
        }
        for (int i = 0; i < codes.length; i++) {
            if (codes[i] > head.maxval()) {
                throw file.damaged("row " + row + " has a value of " + codes[i]
                        + ", and its head says that none is above " + head.maxval());
            }
        }
        row++;
        if (samples instanceof Samples.Bytes bytes) {
            for (int i = 0; i < codes.length; i++) {
                bytes.values()[i] = (byte) scaled(codes[i], 0xff);
            }
        } else if (samples instanceof Samples.Shorts shorts) {
            for (int i = 0; i < codes.length; i++) {
                shorts.values()[i] = (short) scaled(codes[i], 0xffff);
            }
        }
        return samples;
    }

    /** To the nearest code of full scale; of a bitmap 1 is black. */
    private int scaled(int code, int full) {
        int level = head.isBitmap() ? 1 - code : code;
        return (int) ((2L * level * full + head.maxval()) / (2L * head.maxval()));
    }

    private void readPacked() throws IOException {
        if (!in.fill(packed, packed.length)) {
            throw endsEarly();
        }
        boolean wide = head.layout().type() == SampleType.SHORT;
        for (int i = 0; i < codes.length; i++) {
            if (head.isBitmap()) {
                codes[i] = packed[i >> 3] >> (7 - (i & 7)) & 1;
            } else {
                codes[i] = wide ? ((packed[2 * i] & 0xff) << 8) | (packed[2 * i + 1] & 0xff) : packed[i] & 0xff;
            }
        }
    }

    private void readText() throws IOException {
        for (int i = 0; i < codes.length; i++) {
            codes[i] = head.isBitmap() ? bit() : number();
        }
    }

    /** The digits of a bitmap need no blanks between them. */
    private int bit() throws IOException {
        int value = in.readVisible();
        if (value < 0) {
            throw endsEarly();
        }
        if (value != '0' && value != '1') {
            throw file.damaged("row " + row + " holds something other than 0 and 1");
        }
        return value - '0';
    }

    private int number() throws IOException {
        long number = in.number();
        if (number < 0 && in.ended()) {
            throw endsEarly();
        }
        if (number < 0) {
            throw file.damaged("row " + row + " holds something that is no number");
        }
        return (int) number;
    }

    private InputFault endsEarly() {
        return file.endsEarly("after " + row + " of " + head.size().height() + " rows");
    }

    @Override
    public void close() throws IOException {
        in.close();
    }
}
