package org.adumbrate.sheetfile.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.adumbrate.sheetfile.complaint.Wording;
import org.adumbrate.sheetfile.form.Field;
import org.adumbrate.sheetfile.form.Form;
import org.adumbrate.sheetfile.form.Steps;
import org.adumbrate.sheetfile.yaml.TextPart;

/**
 * Adds what is not written yet.
 *
 * @param revision the text that this is done in
 */
record Extending(Revision revision) {
    /**
     * Writes what a route lacks.
     *
     * @param at ends at what would hold it
     * @param value the value of the first step that is missing
     */
    void add(Route at, TextPart value) throws Unfit {
        String step = at.rest().get(0);
        Optional<Integer> index = Steps.index(step);
        TextPart meant = at.part().meant();
        if (at.unsaid().isPresent()) {
            written(at, step, value);
        } else if (at.part().isNothing()) {
            TextPart whole = Wanted.within(List.of(step), value);
            int shape = revision.shape(Inscription.flow(whole, at.form()));
            revision.splice(at, List.of(new Inserting(revision.lines()).within(at, whole)), shape);
        } else if (meant.kind() == TextPart.Kind.LIST && index.isPresent()) {
            item(at, index.get(), value);
        } else if (meant.kind() == TextPart.Kind.MAPPING && index.isEmpty()) {
            entry(at, step, value);
        } else {
            throw new Unfit(
                    at.part().from(),
                    "'" + at.path() + "' holds no " + step + "; expected "
                            + at.form().expected());
        }
    }

    /** A value that stands alone for a whole becomes that whole. */
    private void written(Route at, String step, TextPart value) throws Unfit {
        TextPart part = at.part();
        String unsaid = at.unsaid().orElseThrow();
        String alone = revision.text().substring(part.content(), part.to());
        if (part.meant().style() == TextPart.Style.BLOCK
                || part.kind() == TextPart.Kind.ALIAS
                || part.from() < part.content()) {
            throw new Unfit(
                    part.from(), "'" + at.path() + "' stands alone for { " + unsaid + ": ... }; write it so first");
        }
        Form form = at.form().inner(step).orElseThrow();
        Optional<Integer> index = Steps.index(step);
        if (index.isPresent() && index.get() != 1) {
            throw new Unfit(part.from(), "'" + at.path() + "' has 1 item; the next is " + at.path() + Steps.item(1));
        }
        String told = part.kind() == TextPart.Kind.SCALAR
                ? Inscription.scalar(part.text(), Inscription.leaf(at.form(), part), part.style(), true)
                : alone;
        TextPart.Entry entry = new TextPart.Entry(Wanted.scalar(step), value);
        String whole = index.isPresent()
                ? "[" + told + ", " + Inscription.flow(value, form) + "]"
                : "{ " + unsaid + ": " + told + ", " + Inscription.entry(entry, at.form(), true) + " }";
        revision.splice(at, List.of(Replacing.of(revision.lines(), part, whole)), revision.shape(whole));
    }

    private void entry(Route at, String key, TextPart value) throws Unfit {
        TextPart mapping = at.part().meant();
        TextPart styled = styled(at.form(), mapping, key, value);
        TextPart.Entry entry = new TextPart.Entry(Wanted.scalar(key), styled);
        List<int[]> pairs = new ArrayList<>();
        mapping.entries()
                .forEach(other -> pairs.add(new int[] {
                    revision.shapes().of(other.key()), revision.shapes().of(other.value())
                }));
        Form form = at.form().inner(key).orElseThrow();
        String name = Inscription.key(key, true);
        String written = styled.isCollection()
                ? Inscription.flow(styled, form)
                : Inscription.scalar(styled.text(), Inscription.leaf(form, styled), TextPart.Style.PLAIN, true);
        pairs.add(new int[] {revision.shapes().scalar(key, Inscription.tag(name)), revision.shape(written)});
        Splice splice = new Inserting(revision.lines()).entry(at, entry);
        revision.splice(at, List.of(splice), revision.shapes().mapping(pairs));
    }

    /** A number in the unit that its default has. */
    private static TextPart styled(Form holder, TextPart mapping, String key, TextPart value) {
        if (value.kind() != TextPart.Kind.SCALAR) {
            return value;
        }
        List<String> given =
                mapping.entries().stream().map(entry -> entry.key().text()).toList();
        return holder.fields(given).stream()
                .filter(field -> field.key().equals(key))
                .findFirst()
                .flatMap(Field::standardWritten)
                .map(standard -> Wanted.scalar(
                        Inscription.leaf(holder.inner(key).orElseThrow(), value).restyled(standard, value.text())))
                .orElse(value);
    }

    /** Puts an item before another, or behind the last; of a list that is not written, it is the first. */
    void insert(List<String> list, int index, TextPart value) throws Unfit {
        Route at = revision.route(list);
        List<String> item = Setting.step(list, Steps.item(index));
        Route there = revision.route(item);
        boolean isAlone = at.isWritten()
                && !at.part().isNothing()
                && at.form().unsaid(at.part().node()).isPresent();
        if (at.isWritten() && at.part().meant().kind() == TextPart.Kind.LIST && !isAlone) {
            item(at, index, value);
        } else if (there.isWritten()) {
            throw new Unfit(
                    at.part().from(),
                    "'" + at.path() + "' stands alone for a list; add behind it, at " + at.path() + "[1]");
        } else {
            add(there, Wanted.within(there.rest().subList(1, there.rest().size()), value));
        }
    }

    private void item(Route at, int index, TextPart value) throws Unfit {
        TextPart list = at.part().meant();
        int count = list.items().size();
        if (index > count) {
            throw new Unfit(
                    at.part().from(),
                    "'" + at.path() + "' has " + Wording.count(count, "item") + "; the next is " + at.path()
                            + Steps.item(count));
        }
        Form form = at.form()
                .inner(Steps.item(index))
                .orElseThrow(() -> new Unfit(
                        at.part().from(),
                        "'" + at.path() + "' takes no more items; expected "
                                + at.form().expected()));
        String written = value.isCollection()
                ? Inscription.flow(value, form)
                : Inscription.scalar(value.text(), Inscription.leaf(form, value), TextPart.Style.PLAIN, true);
        List<Integer> items =
                new ArrayList<>(list.items().stream().map(revision.shapes()::of).toList());
        items.add(index, revision.shape(written));
        Splice splice = new Inserting(revision.lines()).item(at, index, value);
        revision.splice(at, List.of(splice), revision.shapes().list(items));
    }
}
