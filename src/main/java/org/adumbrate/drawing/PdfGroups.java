package org.adumbrate.drawing;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * The layers of a PDF: optional content groups (ISO 32000-1, 8.11). Layers of one name are one group. Layers that are
 * kept together have a group around them all; content is marked with both, and shows while both are on.
 */
final class PdfGroups {
    private final PdfFile pdf;
    private final Map<String, Group> apart = new LinkedHashMap<>();
    private final Map<String, Group> around = new LinkedHashMap<>();

    /** All groups that are not within another, in the order in which they came. */
    private final List<Group> outer = new ArrayList<>();

    PdfGroups(PdfFile pdf) {
        this.pdf = pdf;
    }

    private static final class Group {
        private final String name;
        private final int number;
        private final Map<String, Group> members = new LinkedHashMap<>();
        private boolean off;

        Group(String name, int number) {
            this.name = name;
            this.number = number;
        }
    }

    /** The names, in the page's resources, of the groups that a layer's content is in, the outermost first. */
    List<String> of(Layer layer) {
        Optional<Group> outside = layer.within().map(name -> outer(around, name));
        Group own = outside.isPresent()
                ? outside.get().members.computeIfAbsent(layer.name(), this::make)
                : outer(apart, layer.name());
        own.off |= !layer.shown();
        return outside.isPresent() ? List.of(resource(outside.get()), resource(own)) : List.of(resource(own));
    }

    private Group outer(Map<String, Group> known, String name) {
        return known.computeIfAbsent(name, made -> {
            Group group = make(made);
            outer.add(group);
            return group;
        });
    }

    private Group make(String name) {
        return new Group(name, pdf.reserve());
    }

    private static String resource(Group group) {
        return "L" + group.number;
    }

    /** The page's resources that name the groups. */
    String resources() {
        StringBuilder text = new StringBuilder("/Properties<<");
        for (Group group : all()) {
            text.append('/').append(resource(group)).append(' ').append(PdfFile.reference(group.number));
        }
        return text.append(">>").toString();
    }

    /**
     * Writes the groups.
     *
     * @return the catalog's entry that says how they are ordered and which are off, on screen and in print
     */
    String write() throws IOException {
        for (Group group : all()) {
            String usage = group.off ? "/Usage<</Print<</PrintState/OFF>>>>" : "";
            pdf.object(group.number, "<</Type/OCG/Name" + PdfText.of(group.name) + usage + ">>");
        }
        List<String> order = new ArrayList<>();
        for (Group group : outer) {
            order.add(PdfFile.reference(group.number));
            if (!group.members.isEmpty()) {
                order.add("[" + references(group.members.values()) + "]");
            }
        }
        List<Group> off = all().stream().filter(group -> group.off).toList();
        List<Group> on = all().stream().filter(group -> !group.off).toList();
        String hidden = off.isEmpty()
                ? ""
                : "/OFF[" + references(off) + "]/AS[<</Event/Print/Category[/Print]/OCGs[" + references(off) + "]>>]";
        return "/OCProperties<</OCGs[" + references(all()) + "]/D<</Order[" + String.join(" ", order) + "]/ON["
                + references(on) + "]" + hidden + ">>>>";
    }

    private List<Group> all() {
        List<Group> all = new ArrayList<>();
        for (Group group : outer) {
            all.add(group);
            all.addAll(group.members.values());
        }
        return all;
    }

    private static String references(Collection<Group> groups) {
        return groups.stream().map(group -> PdfFile.reference(group.number)).collect(Collectors.joining(" "));
    }
}
