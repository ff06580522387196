package org.adumbrate.editing;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.adumbrate.output.OutputFile;
import org.adumbrate.sheetfile.edit.SheetText;

/**
 * The history of one sheet file on the disk. It is a comfort: one that is missing, damaged or of another program counts as none, and
 * one that cannot be written is done without.
 *
 * @param file where it stands
 */
record HistoryFile(Path file) {
    /** Beside the outputs, as what builds keep. */
    static final String FOLDER = ".adumbrate-edits";

    /** More steps than anybody goes back. */
    private static final int MOST_EDITS = 200;

    private static final int MOST_BYTES = 1 << 20;

    /** The first four bytes; the last digit is the version of the form. */
    private static final int MARK = 0x41444501;

    /** That of a sheet file: in the folder of its first output, or in its own where it names none. */
    static HistoryFile of(SheetText text) {
        Path sheet = text.file().toAbsolutePath().normalize();
        Path folder = text.firstOutput()
                .map(output -> output.toAbsolutePath().normalize().getParent())
                .orElse(sheet.getParent())
                .resolve(FOLDER);
        String tag = Digest.of(folder.relativize(sheet).toString()).substring(0, 8);
        return new HistoryFile(folder.resolve(sheet.getFileName() + "-" + tag));
    }

    /** Whether it could be written. */
    boolean write(History history) {
        History kept = history;
        while (kept.size() > MOST_EDITS) {
            kept = kept.shorter();
        }
        try {
            byte[] bytes = bytes(kept);
            while (bytes.length > MOST_BYTES) {
                kept = kept.shorter();
                bytes = bytes(kept);
            }
            try (OutputFile output = OutputFile.begin(file)) {
                output.stream().write(bytes);
                output.commit();
            }
            return true;
        } catch (IOException e) {
            System.getLogger(HistoryFile.class.getName()).log(System.Logger.Level.DEBUG, "not kept: " + file, e);
            return false;
        }
    }

    History read() {
        try {
            if (!Files.isRegularFile(file) || Files.size(file) > MOST_BYTES) {
                return History.NONE;
            }
            byte[] bytes = Files.readAllBytes(file);
            DataInputStream in = new DataInputStream(new ByteArrayInputStream(bytes));
            if (in.readInt() != MARK) {
                return History.NONE;
            }
            return new History(edits(in), edits(in));
        } catch (IOException | RuntimeException e) {
            System.getLogger(HistoryFile.class.getName()).log(System.Logger.Level.DEBUG, "damaged: " + file, e);
            return History.NONE;
        }
    }

    private static byte[] bytes(History history) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        DataOutputStream out = new DataOutputStream(bytes);
        out.writeInt(MARK);
        for (List<PastEdit> edits : List.of(history.done(), history.undone())) {
            out.writeInt(edits.size());
            for (PastEdit edit : edits) {
                text(out, edit.before());
                text(out, edit.after());
                out.writeInt(edit.told().size());
                for (PastEdit.ToldChange told : edit.told()) {
                    text(out, told.key());
                    text(out, told.before());
                    text(out, told.after());
                }
                out.writeInt(edit.swaps().size());
                for (Swap swap : edit.swaps()) {
                    out.writeInt(swap.at());
                    text(out, swap.lead());
                    text(out, swap.before());
                    text(out, swap.after());
                    text(out, swap.tail());
                }
            }
        }
        return bytes.toByteArray();
    }

    private static List<PastEdit> edits(DataInputStream in) throws IOException {
        List<PastEdit> edits = new ArrayList<>();
        for (int k = in.readInt(); k > 0; k--) {
            String before = text(in);
            String after = text(in);
            List<PastEdit.ToldChange> told = new ArrayList<>();
            for (int t = in.readInt(); t > 0; t--) {
                told.add(new PastEdit.ToldChange(text(in), text(in), text(in)));
            }
            List<Swap> swaps = new ArrayList<>();
            for (int s = in.readInt(); s > 0; s--) {
                swaps.add(new Swap(in.readInt(), text(in), text(in), text(in), text(in)));
            }
            edits.add(new PastEdit(told, before, after, swaps));
        }
        return edits;
    }

    /** Halves of surrogate pairs may part at the edge of what stands around a stretch, so chars are written as they are. */
    private static void text(DataOutputStream out, String text) throws IOException {
        ByteBuffer chars = ByteBuffer.allocate(2 * text.length());
        chars.asCharBuffer().put(text);
        out.writeInt(text.length());
        out.write(chars.array());
    }

    private static String text(DataInputStream in) throws IOException {
        int length = in.readInt();
        if (length < 0 || length > in.available() / 2) {
            throw new IOException("damaged");
        }
        return ByteBuffer.wrap(in.readNBytes(2 * length)).asCharBuffer().toString();
    }
}
