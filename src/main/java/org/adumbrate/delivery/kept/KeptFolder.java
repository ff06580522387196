package org.adumbrate.delivery.kept;

import java.io.IOException;
import java.lang.System.Logger.Level;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import org.adumbrate.output.OutputFile;
import org.adumbrate.prepare.memory.Memory;
import org.adumbrate.prepare.memory.Shelf;

/**
 * A folder of values that earlier runs made, found again by all that they depend on. It may be deleted at any time, and so
 * may any file in it; a file that is damaged counts as missing. What cannot be read or written is made anew: the folder
 * never makes a build fail. Several runs may use it at once.
 */
public final class KeptFolder implements Shelf {
    /** How the folder beside the outputs is called. */
    private static final String NAME = ".adumbrate-kept";

    /** A sheet keeps some megabytes, so that this is many states of several sheets. */
    private static final long MOST_BYTES = 256L << 20;

    private static final System.Logger LOG = System.getLogger(KeptFolder.class.getName());

    /** By this file programs that make safety copies know that the folder needs none: see bford.info/cachedir. */
    private static final String TAG = "CACHEDIR.TAG";

    private static final String TAG_TEXT = """
            Signature: 8a477f597d28d172789f06886806bc55
            # What builds made and can make again; safe to delete.
            """;

    private final Path folder;
    private final long mostBytes;
    private List<Object> identity = List.of();

    /** @param folder need not be there; it is made when something is kept */
    public KeptFolder(Path folder) {
        this(folder, MOST_BYTES);
    }

    /** @param mostBytes what all files in it may have together */
    KeptFolder(Path folder, long mostBytes) {
        this.folder = folder;
        this.mostBytes = mostBytes;
    }

    /** A memory that keeps in a folder beside the outputs. */
    public static Memory memoryBesideOutputs() {
        return Memory.with(outputs -> new KeptFolder(outputs.resolve(NAME)));
    }

    @Override
    public <T> Optional<T> find(String part, List<?> from, Class<T> type) {
        try {
            Path file = file(part, from);
            if (!Files.exists(file)) {
                return Optional.empty();
            }
            T value = type.cast(read(Files.readAllBytes(file), part, type));
            // what was used last is given up last
            Files.setLastModifiedTime(file, FileTime.from(Instant.now()));
            return Optional.of(value);
        } catch (IOException e) {
            LOG.log(Level.DEBUG, "not found again: " + part, e);
            return Optional.empty();
        }
    }

    /** The value in a file; the file says of which part it is, so that one under another's name is noticed. */
    private static Object read(byte[] written, String part, Class<?> type) throws IOException {
        boolean whole = written.length >= Sha256.BYTES
                && Arrays.equals(Sha256.of(written, Sha256.BYTES), Arrays.copyOf(written, Sha256.BYTES));
        if (!whole) {
            throw new IOException("damaged");
        }
        Object content = ValueReader.value(written, Sha256.BYTES);
        boolean fits = content instanceof List<?> labelled
                && labelled.size() == 2
                && labelled.get(0).equals(part)
                && type.isInstance(labelled.get(1));
        if (!fits) {
            throw new IOException("not of this part");
        }
        return ((List<?>) content).get(1);
    }

    @Override
    public void keep(String part, List<?> from, Object value) {
        try {
            byte[] bytes = ValueWriter.bytes(List.of(part, value));
            if (bytes.length > mostBytes / 4) {
                return;
            }
            Files.createDirectories(folder);
            if (!Files.exists(folder.resolve(TAG))) {
                write(folder.resolve(TAG), TAG_TEXT.getBytes(StandardCharsets.US_ASCII));
            }
            write(file(part, from), Sha256.of(bytes, 0), bytes);
        } catch (IOException e) {
            LOG.log(Level.DEBUG, "not kept: " + part, e);
        }
    }

    @Override
    public void trim() {
        try {
            KeptFiles.in(folder).trim(mostBytes);
        } catch (IOException e) {
            LOG.log(Level.DEBUG, "not trimmed: " + folder, e);
        }
    }

    private Path file(String part, List<?> from) throws IOException {
        byte[] key = ValueWriter.bytes(List.of(identity(), part, from));
        return folder.resolve(HexFormat.of().formatHex(Sha256.of(key, 0)) + KeptFiles.END);
    }

    private synchronized List<Object> identity() throws IOException {
        if (identity.isEmpty()) {
            identity = Identity.ofThisProgram();
        }
        return identity;
    }

    private static void write(Path file, byte[]... parts) throws IOException {
        try (OutputFile output = OutputFile.begin(file)) {
            for (byte[] part : parts) {
                output.stream().write(part);
            }
            output.commit();
        }
    }
}
