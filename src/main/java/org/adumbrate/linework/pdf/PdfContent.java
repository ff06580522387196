package org.adumbrate.linework.pdf;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import org.adumbrate.linework.clip.TooIntricateException;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.filter.Filter;
import org.apache.pdfbox.filter.FilterFactory;
import org.apache.pdfbox.pdmodel.common.PDStream;

/**
 * The data of streams, unpacked within a limit: the library itself unpacks whatever it is given, and a kilobyte may stand for
 * a megabyte, or for a gigabyte if it was packed twice.
 */
final class PdfContent {
    /** A line of a drawing takes some 30 bytes, so this is enough for two million. */
    static final int MOST_BYTES = 1 << 26;

    /** As many ways of packing as no writer lays over each other. */
    private static final int MOST_FILTERS = 4;

    /** No row of a picture, and of no table, has more bytes. */
    private static final long LONGEST_ROW = 1 << 20;

    private PdfContent() {}

    /** The data of several streams, one after the other, with a blank between them. */
    static byte[] of(Iterator<PDStream> streams) throws IOException {
        Limited all = new Limited(MOST_BYTES);
        while (streams.hasNext()) {
            COSStream stream = streams.next().getCOSObject();
            PdfIntegrity.check(stream);
            unpack(stream, all);
            all.write('\n');
        }
        return all.bytes.toByteArray();
    }

    /**
     * The data of one stream.
     *
     * @throws IOException if they are damaged, or more than so many bytes
     */
    static byte[] of(COSStream stream, int mostBytes) throws IOException {
        Limited data = new Limited(mostBytes);
        unpack(stream, data);
        return data.bytes.toByteArray();
    }

    private static void unpack(COSStream stream, Limited to) throws IOException {
        List<Filter> filters = filters(stream);
        try (InputStream raw = stream.createRawInputStream()) {
            InputStream in = raw;
            for (int k = 0; k < filters.size() - 1; k++) {
                Limited between = new Limited(to.most);
                filters.get(k).decode(in, between, stream, k);
                in = new ByteArrayInputStream(between.bytes.toByteArray());
            }
            if (filters.isEmpty()) {
                in.transferTo(to);
            } else {
                filters.get(filters.size() - 1).decode(in, to, stream, filters.size() - 1);
            }
        }
    }

    private static List<Filter> filters(COSStream stream) throws IOException {
        requireShortRows(stream);
        COSBase named = stream.getFilters();
        List<Filter> filters = new ArrayList<>();
        if (named instanceof COSName name) {
            filters.add(FilterFactory.INSTANCE.getFilter(name));
        } else if (named instanceof COSArray names) {
            if (names.size() > MOST_FILTERS) {
                throw new IOException("a stream is packed " + names.size() + " times over");
            }
            for (int k = 0; k < names.size(); k++) {
                if (!(names.getObject(k) instanceof COSName name)) {
                    throw new IOException("a stream is packed in a way that has no name");
                }
                filters.add(FilterFactory.INSTANCE.getFilter(name));
            }
        }
        return filters;
    }

    /** A predictor keeps a row, of whatever length its parameters state. */
    private static void requireShortRows(COSStream stream) throws IOException {
        COSBase parameters = stream.getDictionaryObject(COSName.DECODE_PARMS, COSName.DP);
        List<COSBase> each = new ArrayList<>();
        if (parameters instanceof COSArray array) {
            array.forEach(each::add);
        } else {
            each.add(parameters);
        }
        for (COSBase one : each) {
            if (one instanceof COSDictionary dictionary && dictionary.getLong(COSName.COLUMNS, 1) > LONGEST_ROW) {
                throw new IOException("a stream has rows of more than " + LONGEST_ROW + " bytes");
            }
        }
    }

    /** Bytes in memory, up to so many. */
    private static final class Limited extends OutputStream {
        private final ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        private final int most;

        Limited(int most) {
            this.most = most;
        }

        @Override
        public void write(int value) throws IOException {
            require(1);
            bytes.write(value);
        }

        @Override
        public void write(byte[] data, int from, int count) throws IOException {
            require(count);
            bytes.write(data, from, count);
        }

        private void require(int count) throws IOException {
            if (count > most - bytes.size()) {
                throw new TooIntricateException("has a stream that unpacks to more than " + most + " bytes");
            }
        }
    }
}
