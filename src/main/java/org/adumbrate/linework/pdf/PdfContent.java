package org.adumbrate.linework.pdf;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.adumbrate.linework.clip.TooIntricateException;
import org.adumbrate.linework.page.LibraryWords;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.filter.Filter;
import org.apache.pdfbox.filter.FilterFactory;

/**
 * The data of streams, unpacked within a limit: the library itself unpacks whatever it is given, and a kilobyte may stand for
 * a megabyte, or for a gigabyte if it was packed twice.
 */
final class PdfContent {
    /** A line of a drawing takes some 30 bytes, so this is enough for two million. */
    static final int MOST_BYTES = 1 << 26;

    /** As many ways of packing as no writer lays over each other. */
    private static final int MOST_FILTERS = 4;

    /** Line ends around data of no bytes. */
    private static final int MOST_BLANKS = 4;

    /** No row of a picture, and of no table, has more bytes. */
    private static final long LONGEST_ROW = 1 << 20;

    private PdfContent() {}

    /**
     * The content of a page, which may be spread over several streams; a blank stands between them.
     *
     * @param skips counts what stands among them and is no stream
     * @throws IOException if it is damaged, or far too much
     */
    static byte[] of(COSDictionary page, PdfSkips skips) throws IOException {
        COSBase contents = page.getDictionaryObject(COSName.CONTENTS);
        List<COSBase> streams = new ArrayList<>();
        if (contents instanceof COSArray array) {
            for (int k = 0; k < array.size(); k++) {
                streams.add(array.getObject(k));
            }
        } else if (contents != null || page.containsKey(COSName.CONTENTS)) {
            streams.add(contents);
        }
        Limited all = new Limited(MOST_BYTES);
        for (COSBase each : streams) {
            if (each instanceof COSStream stream) {
                PdfIntegrity.check(stream);
                unpack(stream, all);
                all.write('\n');
            } else {
                skips.add("a part of the page's content is missing");
            }
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
        if (isNothing(stream)) {
            return;
        }
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
        } catch (TooIntricateException | DamagedContentException e) {
            throw e;
        } catch (IOException | RuntimeException e) {
            throw new DamagedContentException("a stream cannot be unpacked (" + LibraryWords.of(e) + ")", e);
        }
    }

    /** Whether a stream holds nothing but blanks: some programs pack nothing into nothing. */
    static boolean isNothing(COSStream stream) throws IOException {
        if (!stream.hasData()) {
            return true;
        }
        try (InputStream raw = stream.createRawInputStream()) {
            byte[] head = raw.readNBytes(MOST_BLANKS + 1);
            return head.length <= MOST_BLANKS && new String(head, StandardCharsets.ISO_8859_1).isBlank();
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
