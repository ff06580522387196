package org.adumbrate.sheetfile.yaml;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CoderResult;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.adumbrate.fault.InputFault;
import org.adumbrate.sheetfile.complaint.Complaint;
import org.adumbrate.sheetfile.complaint.Place;
import org.adumbrate.sheetfile.complaint.SheetFileFault;
import org.snakeyaml.engine.v2.common.ScalarStyle;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.ReaderException;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.Tag;

/** From a file to YAML nodes: what is no text or no YAML is refused here, with the place where it goes wrong. */
public final class YamlText {
    /** Far more than any sheet file needs, little enough to be read at once. */
    static final int MOST_BYTES = 1 << 20;

    /** More items than any hand writes in a list; a polygon drawn after a contour has some hundreds of corners. */
    public static final int LONGEST_LIST = 10_000;

    private YamlText() {}

    /** The mark by which some editors begin a text, U+FEFF; it belongs to the file and not to its YAML. */
    public static final String MARK = "\uFEFF";

    /** The text of a file without the mark that it may begin with. */
    public static String read(Path file) throws InputFault, SheetFileFault {
        return unmarked(whole(file));
    }

    /** A text without the mark that it may begin with. */
    public static String unmarked(String text) {
        return text.startsWith(MARK) ? text.substring(MARK.length()) : text;
    }

    /** The text of a file, every character of it. */
    public static String whole(Path file) throws InputFault, SheetFileFault {
        if (!Files.exists(file)) {
            throw new InputFault(file, "no such file", "name a sheet file, such as kiln.sheet.yaml");
        }
        if (!Files.isRegularFile(file)) {
            String kind = Files.isDirectory(file) ? "is a folder" : "is not a file on a disk";
            throw new InputFault(file, kind, "name the sheet file itself");
        }
        try (InputStream bytes = Files.newInputStream(file)) {
            return whole(file, bytes);
        } catch (InputFault | SheetFileFault e) {
            throw e;
        } catch (IOException e) {
            throw new InputFault(file, "cannot be read", "check that you are allowed to", e);
        }
    }

    /** The text of a stream, of which no more is read than a sheet file may have. */
    public static String whole(Path file, InputStream stream) throws IOException {
        byte[] bytes = stream.readNBytes(MOST_BYTES + 1);
        if (bytes.length > MOST_BYTES) {
            throw new InputFault(file, "is larger than 1 MiB, as no sheet file is", "is it the right file?");
        }
        CharBuffer text = CharBuffer.allocate(bytes.length);
        CoderResult result = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes), text, true);
        String decoded = text.flip().toString();
        if (result.isError()) {
            throw fault(file, Place.after(decoded), "this is not UTF-8 text; save the sheet file as UTF-8");
        }
        return decoded;
    }

    /** The root node; an empty text gives an empty scalar. */
    public static Node compose(Path file, String text) throws SheetFileFault {
        try {
            Node root = Composition.of(text).orElseGet(() -> new ScalarNode(Tag.NULL, "", ScalarStyle.PLAIN));
            ValueCount.require(root, file);
            return root;
        } catch (ReaderException e) {
            int end = text.offsetByCodePoints(0, Math.min(e.getPosition(), text.codePointCount(0, text.length())));
            String code = "U+%04X".formatted(e.getCodePoint());
            throw fault(
                    file,
                    Place.after(text.substring(0, end)),
                    "the character " + code + " has no place in a text; is this a sheet file?");
        } catch (MarkedYamlEngineException e) {
            throw fault(file, PlainWords.place(e), PlainWords.of(e));
        } catch (RuntimeException e) { // the library lets some bad escapes through as failures of parsing numbers
            throw fault(file, Place.START, PlainWords.of(e));
        }
    }

    /** A piece of YAML that the program itself wrote. */
    public static Node snippet(String yaml) {
        return Composition.of(yaml).orElseThrow();
    }

    private static SheetFileFault fault(Path file, Place place, String text) {
        return new SheetFileFault(List.of(new Complaint(file, place.line(), place.column(), text)));
    }
}
