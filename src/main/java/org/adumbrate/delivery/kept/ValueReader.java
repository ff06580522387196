package org.adumbrate.delivery.kept;

import java.io.ByteArrayInputStream;
import java.io.DataInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import org.adumbrate.geometry.Region;
import org.adumbrate.geometry.Space;
import org.adumbrate.geometry.VectorPath;
import org.adumbrate.raster.encode.StripEncoder.Packed;

/**
 * Reads what {@link ValueWriter} wrote. Whatever the bytes say, nothing is made but records and enums of this program and
 * plain values, and records only through their own checks.
 */
final class ValueReader {
    private static final String OWN = "org.adumbrate.";

    private final ByteArrayInputStream bytes;
    private final DataInputStream in;
    private final List<Class<?>> types = new ArrayList<>();
    private final Map<Class<?>, RecordForm> forms = new HashMap<>();

    private ValueReader(byte[] written, int from) {
        this.bytes = new ByteArrayInputStream(written, from, written.length - from);
        this.in = new DataInputStream(bytes);
    }

    /**
     * The value that stands from some byte to the end.
     *
     * @throws IOException if there is none
     */
    static Object value(byte[] written, int from) throws IOException {
        ValueReader reader = new ValueReader(written, from);
        try {
            Object value = reader.read();
            if (reader.bytes.available() > 0) {
                throw new IOException("more than a value");
            }
            return value;
        } catch (ReflectiveOperationException | RuntimeException | LinkageError e) {
            throw new IOException("no value that this program makes", e);
        }
    }

    private Object read() throws IOException, ReflectiveOperationException {
        Tag tag = Tag.of(in.readUnsignedByte());
        if (tag == null) {
            throw new IOException("no such kind of value");
        }
        return switch (tag) {
            case FALSE -> false;
            case TRUE -> true;
            case INT -> in.readInt();
            case LONG -> in.readLong();
            case DOUBLE -> in.readDouble();
            case TEXT -> text();
            case FILE -> Path.of(text());
            case LIST -> Collections.unmodifiableList(items());
            case SET -> set();
            case MAP -> map();
            case EMPTY -> Optional.empty();
            case PRESENT -> Optional.of(read());
            case EMPTY_INT -> OptionalInt.empty();
            case PRESENT_INT -> OptionalInt.of(in.readInt());
            case EMPTY_DOUBLE -> OptionalDouble.empty();
            case PRESENT_DOUBLE -> OptionalDouble.of(in.readDouble());
            case ENUM -> constant();
            case RECORD -> instance();
            case PATH -> VectorPath.readFrom(in);
            case REGION -> Region.readFrom(in);
            case STRIP -> Packed.readFrom(in);
            case SPACE -> Space.named(text());
        };
    }

    private List<Object> items() throws IOException, ReflectiveOperationException {
        int count = count();
        List<Object> items = new ArrayList<>(count);
        for (int k = 0; k < count; k++) {
            items.add(read());
        }
        return items;
    }

    private Set<Object> set() throws IOException, ReflectiveOperationException {
        return Collections.unmodifiableSet(new LinkedHashSet<>(items()));
    }

    private Map<Object, Object> map() throws IOException, ReflectiveOperationException {
        int count = count();
        Map<Object, Object> map = new LinkedHashMap<>();
        for (int k = 0; k < count; k++) {
            Object key = read();
            map.put(key, read());
        }
        return Collections.unmodifiableMap(map);
    }

    private Object constant() throws IOException, ReflectiveOperationException {
        Class<?> type = type();
        String name = text();
        if (!type.isEnum()) {
            throw new IOException("no constant");
        }
        for (Object constant : type.getEnumConstants()) {
            if (((Enum<?>) constant).name().equals(name)) {
                return constant;
            }
        }
        throw new IOException("no such constant");
    }

    private Object instance() throws IOException, ReflectiveOperationException {
        Class<?> type = type();
        if (!type.isRecord()) {
            throw new IOException("no record");
        }
        RecordForm form = forms.get(type);
        if (form == null) {
            form = RecordForm.of(type);
            forms.put(type, form);
        }
        Object[] components = new Object[form.size()];
        for (int k = 0; k < components.length; k++) {
            components[k] = read();
        }
        return form.make(components);
    }

    private Class<?> type() throws IOException, ReflectiveOperationException {
        int number = in.readInt();
        if (number == types.size()) {
            String name = text();
            if (!name.startsWith(OWN)) {
                throw new IOException("no type of this program");
            }
            types.add(Class.forName(name));
        }
        if (number < 0 || number >= types.size()) {
            throw new IOException("no such type");
        }
        return types.get(number);
    }

    private String text() throws IOException {
        return new String(in.readNBytes(count()), StandardCharsets.UTF_8);
    }

    /** A count of things that take a byte each at least, so that a wrong one asks for no more memory than there are bytes. */
    private int count() throws IOException {
        int count = in.readInt();
        if (count < 0 || count > bytes.available()) {
            throw new IOException("cut off");
        }
        return count;
    }
}
