package org.adumbrate.delivery.kept;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.System.Logger.Level;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.security.MessageDigest;
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
 * may any file in it. Each begins with the SHA-256 of its own name and of the rest, so that one that is damaged, or that
 * stands under the name of another, counts as missing. What cannot be read or written is made anew: the folder
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
    public <T> Optional<T> find(String part, Class<T> type, List<?> from) {
        try {
            byte[] name = name(part, type, from);
            Path file = file(name);
            if (!Files.isRegularFile(file)) {
                return Optional.empty();
            }
            Object value = ofPart(part, type, ValueReader.value(whole(file, name), Sha256.BYTES));
            // what was used last is given up last
            Files.setLastModifiedTime(file, FileTime.from(Instant.now()));
            return Optional.of(type.cast(value));
        } catch (IOException e) {
            LOG.log(Level.DEBUG, "not found again: " + part, e);
            return Optional.empty();
        }
    }

    /** The value, if the file says that it is of this part, and it is of the part's type. */
    private static Object ofPart(String part, Class<?> type, Object content) throws IOException {
        if (content instanceof List<?> labelled
                && labelled.size() == 2
                && labelled.get(0).equals(part)
                && type.isInstance(labelled.get(1))) {
            return labelled.get(1);
        }
        throw new IOException("not of this part");
    }

    /** The bytes of a file, if it is whole and was written under its name. */
    private byte[] whole(Path file, byte[] name) throws IOException {
        if (Files.size(file) > mostBytes) {
            throw new IOException("larger than anything that is kept");
        }
        byte[] written = Files.readAllBytes(file);
        if (written.length < Sha256.BYTES
                || !MessageDigest.isEqual(
                        Sha256.of(name, written, Sha256.BYTES), Arrays.copyOf(written, Sha256.BYTES))) {
            throw new IOException("damaged, or written under another name");
        }
        return written;
    }

    @Override
    public void keep(String part, Class<?> type, List<?> from, Object value) {
        try {
            byte[] bytes = ValueWriter.bytes(List.of(part, value));
            if (bytes.length > mostBytes / 4) {
                return;
            }
            Files.createDirectories(folder);
            if (!Files.exists(folder.resolve(TAG))) {
                write(folder.resolve(TAG), TAG_TEXT.getBytes(StandardCharsets.US_ASCII));
            }
            byte[] name = name(part, type, from);
            write(file(name), Sha256.of(name, bytes, 0), bytes);
        } catch (IOException e) {
            LOG.log(Level.DEBUG, "not kept: " + part, e);
        }
    }

    @Override
    public void trim() {
        try {
            if (Files.isDirectory(folder)) {
                OutputFile.sweep(folder);
                KeptFiles.in(folder).trim(mostBytes);
            }
        } catch (IOException | UncheckedIOException e) {
            LOG.log(Level.DEBUG, "not trimmed: " + folder, e);
        }
    }

    /** By program, part and type, and by all that the value depends on. */
    private byte[] name(String part, Class<?> type, List<?> from) throws IOException {
        return Sha256.of(ValueWriter.bytes(List.of(identity(), part, type.getName(), from)));
    }

    private Path file(byte[] name) {
        return folder.resolve(HexFormat.of().formatHex(name) + KeptFiles.END);
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
