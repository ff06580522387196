package org.adumbrate.prepare;

import java.lang.reflect.RecordComponent;
import java.nio.file.Path;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.adumbrate.sheetfile.Deliver;
import org.adumbrate.sheetfile.Sheet;
import org.adumbrate.sheetfile.reading.SheetFile;

/** The files that a sheet is made from: the sheet file, and every file that it names anywhere but under {@code deliver}. */
public final class Inputs {
    private Inputs() {}

    public static List<Path> of(SheetFile asked) {
        Set<Path> files = new LinkedHashSet<>();
        files.add(asked.file());
        files.addAll(of(asked.sheet()));
        return List.copyOf(files);
    }

    /** Those that a sheet names. */
    static Set<Path> of(Sheet sheet) {
        Set<Path> files = new LinkedHashSet<>();
        collect(sheet, files);
        return files;
    }

    private static void collect(Object value, Set<Path> files) {
        if (value instanceof Path file) {
            files.add(file);
        } else if (value instanceof Optional<?> optional) {
            optional.ifPresent(inner -> collect(inner, files));
        } else if (value instanceof Map<?, ?> map) {
            collect(map.values(), files);
        } else if (value instanceof Collection<?> items) {
            items.forEach(item -> collect(item, files));
        } else if (value instanceof Record asked && !(asked instanceof Deliver)) {
            for (RecordComponent component : asked.getClass().getRecordComponents()) {
                collect(read(component, asked), files);
            }
        }
    }

    private static Object read(RecordComponent component, Record asked) {
        try {
            return component.getAccessor().invoke(asked);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("what a sheet file asks is public", e);
        }
    }
}
