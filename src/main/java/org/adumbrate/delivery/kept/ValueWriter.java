package org.adumbrate.delivery.kept;

import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Collection;
import java.util.HashMap;
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
 * Writes immutable values as bytes: numbers, texts, files, enums, records of this program, and lists, sets, maps and
 * optionals of these; paths, regions and packed strips. Equal values give equal bytes, except that lists, sets and maps
 * count as equal only in the same order.
 */
final class ValueWriter {
    private final ByteArrayOutputStream bytes = new ByteArrayOutputStream(1 << 12);
    private final DataOutputStream out = new DataOutputStream(bytes);
    private final Map<Class<?>, Integer> types = new HashMap<>();
    private final Map<Class<?>, RecordForm> forms = new HashMap<>();

    private ValueWriter() {}

    /**
     * The bytes of a value.
     *
     * @throws IOException if there is something in it that is not among the values named above
     */
    static byte[] bytes(Object value) throws IOException {
        ValueWriter writer = new ValueWriter();
        writer.write(value);
        return writer.bytes.toByteArray();
    }

    private void write(Object value) throws IOException {
        if (value instanceof Record) {
            writeRecord(value);
        } else if (value instanceof Enum<?> constant) {
            tag(Tag.ENUM);
            type(constant.getDeclaringClass());
            text(constant.name());
        } else if (value instanceof VectorPath<?> path) {
            tag(Tag.PATH);
            path.writeTo(out);
        } else if (value instanceof Region<?> region) {
            tag(Tag.REGION);
            region.writeTo(out);
        } else if (value instanceof Packed strip) {
            tag(Tag.STRIP);
            strip.writeTo(out);
        } else if (value instanceof Space<?> space) {
            tag(Tag.SPACE);
            text(space.toString());
        } else if (value instanceof Map<?, ?> map) {
            tag(Tag.MAP);
            out.writeInt(map.size());
            for (Map.Entry<?, ?> entry : map.entrySet()) {
                write(entry.getKey());
                write(entry.getValue());
            }
        } else if (value instanceof Path file) {
            // before collections: a path is a collection of its names
            tag(Tag.FILE);
            text(file.toString());
        } else if (value instanceof Collection<?> items) {
            tag(items instanceof Set ? Tag.SET : Tag.LIST);
            out.writeInt(items.size());
            for (Object item : items) {
                write(item);
            }
        } else if (value instanceof Optional<?> optional) {
            tag(optional.isPresent() ? Tag.PRESENT : Tag.EMPTY);
            if (optional.isPresent()) {
                write(optional.get());
            }
        } else {
            writePlain(value);
        }
    }

    private void writePlain(Object value) throws IOException {
        if (value instanceof Double number) {
            tag(Tag.DOUBLE);
            out.writeDouble(number);
        } else if (value instanceof Integer number) {
            tag(Tag.INT);
            out.writeInt(number);
        } else if (value instanceof Long number) {
            tag(Tag.LONG);
            out.writeLong(number);
        } else if (value instanceof Boolean truth) {
            tag(truth ? Tag.TRUE : Tag.FALSE);
        } else if (value instanceof String text) {
            tag(Tag.TEXT);
            text(text);
        } else if (value instanceof OptionalDouble number) {
            tag(number.isPresent() ? Tag.PRESENT_DOUBLE : Tag.EMPTY_DOUBLE);
            if (number.isPresent()) {
                out.writeDouble(number.getAsDouble());
            }
        } else if (value instanceof OptionalInt number) {
            tag(number.isPresent() ? Tag.PRESENT_INT : Tag.EMPTY_INT);
            if (number.isPresent()) {
                out.writeInt(number.getAsInt());
            }
        } else {
            throw new IOException("cannot be kept: "
                    + (value == null ? null : value.getClass().getName()));
        }
    }

    private void writeRecord(Object value) throws IOException {
        tag(Tag.RECORD);
        Class<?> type = value.getClass();
        type(type);
        try {
            RecordForm form = forms.get(type);
            if (form == null) {
                form = RecordForm.of(type);
                forms.put(type, form);
            }
            for (int k = 0; k < form.size(); k++) {
                write(form.component(value, k));
            }
        } catch (ReflectiveOperationException e) {
            throw new IOException("cannot be kept: " + type.getName(), e);
        }
    }

    private void tag(Tag tag) throws IOException {
        out.writeByte(tag.code());
    }

    /** A class by its name when it comes first, and by its number from then on. */
    private void type(Class<?> type) throws IOException {
        Integer known = types.get(type);
        if (known != null) {
            out.writeInt(known);
            return;
        }
        types.put(type, types.size());
        out.writeInt(types.size() - 1);
        text(type.getName());
    }

    private void text(String text) throws IOException {
        byte[] encoded = text.getBytes(StandardCharsets.UTF_8);
        out.writeInt(encoded.length);
        out.write(encoded);
    }
}
