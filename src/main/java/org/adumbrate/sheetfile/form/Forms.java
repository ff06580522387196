package org.adumbrate.sheetfile.form;

import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.SheetSize;
import org.adumbrate.geometry.Srgb;
import org.adumbrate.sheetfile.Key;
import org.adumbrate.sheetfile.Outline;
import org.adumbrate.sheetfile.PassFrame;
import org.adumbrate.sheetfile.Written;
import org.adumbrate.sheetfile.complaint.Wording;

/** Finds the form of a type: of the values here, of everything else by what records, enums and interfaces say. */
public final class Forms {
    /** The values whose form depends on nothing but their type. */
    private static final Map<Class<?>, Form> VALUES = Map.of(
            boolean.class, new Flag(),
            Boolean.class, new Flag(),
            String.class, Text.NAME,
            OffsetDateTime.class, Text.TIME,
            SheetSize.class, new Size(),
            Srgb.class, new Shared("color", Text.COLOR),
            SheetPoint.class, new Shared("point", Row.POINT),
            PassFrame.class, new Shared("frame", new FrameOrSheet()),
            Outline.class, new Shared("outline", new OutlineOrFile()),
            Path.class, new Shared("file", new FileToRead()));

    private Forms() {}

    /** The form of a record, or of an interface sealed over records. */
    public static Form of(Class<?> type) {
        Written written = type.getAnnotation(Written.class);
        if (type.isSealed()) {
            Ways ways = new Ways(Arrays.stream(type.getPermittedSubclasses())
                    .map(Mapping::of)
                    .toList());
            return written != null && written.orFirstAlone() ? new FirstAlone(ways) : ways;
        }
        if (written == null) {
            return Mapping.of(type);
        }
        Form form = written.asList()
                ? listed(type)
                : written.orFirstAlone() ? new FirstAlone(Mapping.of(type)) : Mapping.of(type);
        return written.shared() ? new Shared(Wording.hyphened(type.getSimpleName()), form) : form;
    }

    /** The form of a component's value; that of what it holds, where the component is optional. */
    public static Form of(RecordComponent component) {
        return of(component.getGenericType(), component.getAnnotation(Key.class));
    }

    private static Form of(Type type, Key key) {
        if (type instanceof Class<?> plain) {
            return of(plain, key);
        }
        ParameterizedType generic = (ParameterizedType) type;
        Type[] arguments = generic.getActualTypeArguments();
        Form inner = of(arguments[arguments.length - 1], key);
        if (generic.getRawType() == Optional.class) {
            return inner;
        }
        return generic.getRawType() == Map.class ? new Named(inner) : new Many(inner, key.atLeast(), key.oneOrMany());
    }

    private static Form of(Class<?> type, Key key) {
        Optional<Measure> measure = Measure.of(type, key.unit());
        if (measure.isPresent()) {
            return new Quantity(measure.get(), Range.of(key));
        }
        if (key.ends().length > 0) {
            return new FileToMake(List.of(key.ends()));
        }
        if (VALUES.containsKey(type)) {
            return VALUES.get(type);
        }
        if (type.isEnum()) {
            return Choice.of(type);
        }
        return key.innerDefault().isEmpty() ? of(type) : Mapping.of(type, key.innerDefault());
    }

    private static Form listed(Class<?> type) {
        List<Form> forms =
                Arrays.stream(type.getRecordComponents()).map(Forms::of).toList();
        return forms.size() == 1 ? new WrappedList(type, (Many) forms.get(0)) : new Row(type, forms);
    }
}
