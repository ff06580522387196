package org.adumbrate.linework.pdf;

import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.util.zip.Adler32;
import java.util.zip.DataFormatException;
import java.util.zip.Inflater;
import org.adumbrate.linework.clip.TooIntricateException;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;

/**
 * Checks that nothing is missing. A PDF library shows what it can of a damaged file; a drawing with some of its lines
 * missing must not pass for the whole.
 */
final class PdfIntegrity {
    private PdfIntegrity() {}

    /**
     * Checks that a stream's data are whole, as far as they are compressed in the usual way.
     *
     * @throws IOException if they are not, or if they are far too many
     */
    static void check(COSStream stream) throws IOException {
        COSBase filters = stream.getFilters();
        boolean justDeflated = COSName.FLATE_DECODE.equals(filters)
                || (filters instanceof COSArray list
                        && list.size() == 1
                        && COSName.FLATE_DECODE.equals(list.getObject(0)));
        if (!justDeflated || PdfContent.isNothing(stream)) {
            return;
        }
        Inflater inflater = new Inflater(/* nowrap= */ true);
        try (InputStream data = stream.createRawInputStream()) {
            data.skipNBytes(2);
            checkInflated(inflater, data);
        } catch (EOFException e) {
            throw new DamagedContentException("compressed content ends early", e);
        } catch (DataFormatException e) {
            throw new DamagedContentException("compressed content is damaged", e);
        } finally {
            inflater.end();
        }
    }

    private static void checkInflated(Inflater inflater, InputStream data) throws IOException, DataFormatException {
        Adler32 sum = new Adler32();
        byte[] packed = new byte[8192];
        byte[] plain = new byte[65536];
        int length = 0;
        while (!inflater.finished()) {
            if (inflater.needsInput()) {
                length = data.read(packed);
                if (length < 0) {
                    throw new DamagedContentException("compressed content ends early");
                }
                inflater.setInput(packed, 0, length);
            }
            sum.update(plain, 0, inflater.inflate(plain));
            if (inflater.getBytesWritten() > PdfContent.MOST_BYTES) {
                throw new TooIntricateException(
                        "has content that unpacks to more than " + PdfContent.MOST_BYTES + " bytes");
            }
        }
        checkSum(sum, packed, length - inflater.getRemaining(), length, data);
    }

    /** Compares the check sum behind the data; some programs leave it off, which does no harm. */
    private static void checkSum(Adler32 sum, byte[] packed, int from, int to, InputStream data) throws IOException {
        byte[] stored = new byte[4];
        int held = Math.min(4, to - from);
        System.arraycopy(packed, from, stored, 0, held);
        held += data.readNBytes(stored, held, 4 - held);
        long expected = 0;
        for (byte b : stored) {
            expected = expected << 8 | (b & 0xff);
        }
        if (held == 4 && expected != sum.getValue()) {
            throw new DamagedContentException("compressed content does not match its check sum");
        }
    }
}
