package org.adumbrate.sheetfile.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import org.adumbrate.sheetfile.form.Form;
import org.adumbrate.sheetfile.form.Steps;
import org.adumbrate.sheetfile.yaml.TextPart;

/**
 * Other scalars in the place of those that stand there, all at once, where lists and mappings keep their items and keys.
 *
 * @param revision the text
 * @param splices collects what is to be done
 */
record Rewriting(Revision revision, List<Splice> splices) {
    Rewriting(Revision revision) {
        this(revision, new ArrayList<>());
    }

    /**
     * The shape that a part then has; nothing where it cannot be made by other scalars alone.
     *
     * @param isWithin true within a list or mapping that is set as a whole, where a bare number is in the key's first unit
     */
    OptionalInt shape(TextPart part, Form form, TextPart wanted, boolean isWithin, boolean inFlow) {
        if (part.kind() != wanted.kind()) {
            return OptionalInt.empty();
        }
        boolean isFlow = inFlow || part.style() == TextPart.Style.FLOW;
        return switch (part.kind()) {
            case SCALAR -> OptionalInt.of(scalar(part, Inscription.leaf(form, wanted), wanted, isWithin, inFlow));
            case LIST -> list(part, form, wanted, isFlow);
            case MAPPING -> mapping(part, form, wanted, isFlow);
            default -> OptionalInt.empty();
        };
    }

    private int scalar(TextPart part, Form leaf, TextPart wanted, boolean isWithin, boolean inFlow) {
        String typed = isWithin ? leaf.measured(wanted.text()) : wanted.text();
        boolean isNumber = !typed.equals(wanted.text()) && part.isNothing();
        String text = isNumber ? wanted.text() : leaf.restyled(part.text(), typed);
        if (text.equals(part.text()) && !part.isNothing()) {
            return revision.shapes().of(part);
        }
        String written = Inscription.scalar(text, leaf, part.style(), inFlow);
        splices.add(Replacing.of(revision.lines(), part, written));
        return revision.shapes().scalar(text, Inscription.tag(written));
    }

    private OptionalInt list(TextPart part, Form form, TextPart wanted, boolean inFlow) {
        if (part.items().size() != wanted.items().size()) {
            return OptionalInt.empty();
        }
        List<Integer> shapes = new ArrayList<>();
        for (int k = 0; k < part.items().size(); k++) {
            Form item = form.inner(Steps.item(k)).orElse(form);
            OptionalInt shape = shape(part.items().get(k), item, wanted.items().get(k), true, inFlow);
            if (shape.isEmpty()) {
                return shape;
            }
            shapes.add(shape.getAsInt());
        }
        return OptionalInt.of(revision.shapes().list(shapes));
    }

    private OptionalInt mapping(TextPart part, Form form, TextPart wanted, boolean inFlow) {
        if (part.entries().size() != wanted.entries().size()) {
            return OptionalInt.empty();
        }
        List<int[]> pairs = new ArrayList<>();
        for (TextPart.Entry entry : part.entries()) {
            String key = entry.key().text();
            TextPart other = wanted.entry(key).map(TextPart.Entry::value).orElse(null);
            if (other == null) {
                return OptionalInt.empty();
            }
            OptionalInt shape = shape(entry.value(), form.inner(key).orElse(form), other, true, inFlow);
            if (shape.isEmpty()) {
                return shape;
            }
            pairs.add(new int[] {revision.shapes().of(entry.key()), shape.getAsInt()});
        }
        return OptionalInt.of(revision.shapes().mapping(pairs));
    }
}
