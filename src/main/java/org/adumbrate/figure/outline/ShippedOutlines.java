package org.adumbrate.figure.outline;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.adumbrate.linework.svg.SvgArea;

/** The outlines that come with the program: people, planting and birds of our own drawing. */
public final class ShippedOutlines {
    private ShippedOutlines() {}

    /** The names of all, people first, then planting, then birds. */
    public static List<String> names() {
        return NominalSize.ALL.stream().map(NominalSize::name).toList();
    }

    /** The names of one kind. */
    public static List<String> names(OutlineKind kind) {
        return NominalSize.ALL.stream()
                .filter(size -> size.kind() == kind)
                .map(NominalSize::name)
                .toList();
    }

    /** The outline of a name, with its nominal size; nothing if there is none of that name. */
    public static Optional<FigureOutline> named(String name) {
        return NominalSize.ALL.stream()
                .filter(size -> size.name().equals(name))
                .findFirst()
                .map(ShippedOutlines::read);
    }

    private static FigureOutline read(NominalSize size) {
        String file = size.name() + ".svg";
        try (InputStream in = ShippedOutlines.class.getResourceAsStream(file)) {
            if (in == null) {
                throw new IllegalStateException("the program lacks its outline " + file);
            }
            return FigureOutline.standing(
                    size.name(), SvgArea.read(Path.of(file), in), OptionalDouble.of(size.metres()));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
