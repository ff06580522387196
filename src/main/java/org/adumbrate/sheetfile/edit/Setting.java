package org.adumbrate.sheetfile.edit;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.adumbrate.sheetfile.complaint.Wording;
import org.adumbrate.sheetfile.form.Form;
import org.adumbrate.sheetfile.form.Steps;
import org.adumbrate.sheetfile.yaml.TextPart;
import org.snakeyaml.engine.v2.nodes.Tag;

/**
 * Sets, adds, removes, renames and moves single values.
 *
 * @param revision the text that this is done in
 */
record Setting(Revision revision) {
    /** A list that grows or shrinks by more is written anew, on one line. */
    private static final int MANY = 50;

    static List<String> step(List<String> steps, String step) {
        List<String> longer = new ArrayList<>(steps);
        longer.add(step);
        return longer;
    }

    /** Gives a key a value; what is missing on the way is written too. Of lists and mappings, what is the same stays as it stands. */
    void set(List<String> steps, TextPart value) throws Unfit {
        set(steps, value, false);
    }

    /** @param isWithin true within a list or mapping that is set as a whole, where a bare number is in the key's first unit */
    private void set(List<String> steps, TextPart value, boolean isWithin) throws Unfit {
        Route at = revision.route(steps);
        if (!at.isWritten()) {
            new Extending(revision)
                    .add(at, Wanted.within(at.rest().subList(1, at.rest().size()), value));
            return;
        }
        TextPart part = at.part();
        boolean isOneForMany = part.kind() == TextPart.Kind.LIST
                && at.form().unsaid(value.node()).equals(Optional.of(Steps.item(0)));
        TextPart wanted = isOneForMany ? Wanted.list(value) : value;
        Rewriting rewriting = new Rewriting(revision);
        OptionalInt shape = rewriting.shape(part, at.form(), wanted, isWithin, at.isInFlow());
        boolean isLonger = Math.abs(part.items().size() - wanted.items().size()) > MANY;
        if (shape.isPresent()) {
            if (!rewriting.splices().isEmpty()) {
                revision.splice(at, rewriting.splices(), shape.getAsInt());
            }
        } else if (isLonger) {
            replace(at, wanted);
        } else if (part.kind() == TextPart.Kind.LIST && wanted.kind() == TextPart.Kind.LIST) {
            setItems(steps, part, wanted);
        } else if (part.kind() == TextPart.Kind.MAPPING && wanted.kind() == TextPart.Kind.MAPPING) {
            setEntries(steps, part, wanted);
        } else {
            replace(at, wanted);
        }
    }

    private void setItems(List<String> steps, TextPart part, TextPart wanted) throws Unfit {
        int before = part.items().size();
        int after = wanted.items().size();
        for (int k = 0; k < Math.min(before, after); k++) {
            set(step(steps, Steps.item(k)), wanted.items().get(k), true);
        }
        for (int k = before; k < after; k++) {
            insert(steps, k, wanted.items().get(k));
        }
        for (int k = before - 1; k >= after; k--) {
            remove(step(steps, Steps.item(k)));
        }
    }

    private void setEntries(List<String> steps, TextPart part, TextPart wanted) throws Unfit {
        for (TextPart.Entry entry : wanted.entries()) {
            set(step(steps, entry.key().text()), entry.value(), true);
        }
        for (TextPart.Entry entry : part.entries()) {
            if (wanted.entry(entry.key().text()).isEmpty()) {
                remove(step(steps, entry.key().text()));
            }
        }
    }

    private void replace(Route at, TextPart wanted) throws Unfit {
        TextPart part = at.part();
        String written;
        int shape;
        if (wanted.isCollection()) {
            written = Inscription.flow(wanted, at.form());
            shape = revision.shape(written);
        } else {
            Form leaf = Inscription.leaf(at.form(), wanted);
            written = Inscription.scalar(wanted.text(), leaf, TextPart.Style.PLAIN, at.isInFlow());
            shape = revision.shapes().scalar(wanted.text(), Inscription.tag(written));
        }
        revision.splice(at, List.of(Replacing.of(revision.lines(), part, written)), shape);
    }

    /** Puts an item before another, or behind the last. */
    void insert(List<String> list, int index, TextPart value) throws Unfit {
        new Extending(revision).insert(list, index, value);
    }

    /** Takes a key or an item out. */
    void remove(List<String> steps) throws Unfit {
        Route.Turn turn = turn(steps);
        Route holder = revision.route(steps).holder();
        revision.splice(holder, new Removing(revision.lines()).of(turn.holder(), turn.index()), without(turn));
    }

    private int without(Route.Turn turn) {
        TextPart holder = turn.holder();
        if (holder.kind() == TextPart.Kind.LIST) {
            List<Integer> items = new ArrayList<>(
                    holder.items().stream().map(revision.shapes()::of).toList());
            items.remove(turn.index());
            return revision.shapes().list(items);
        }
        List<int[]> pairs = pairs(holder);
        pairs.remove(turn.index());
        return revision.shapes().mapping(pairs);
    }

    private List<int[]> pairs(TextPart mapping) {
        List<int[]> pairs = new ArrayList<>();
        mapping.entries()
                .forEach(entry -> pairs.add(new int[] {
                    revision.shapes().of(entry.key()), revision.shapes().of(entry.value())
                }));
        return pairs;
    }

    /** Where a value is held, which must be written on its own. */
    private Route.Turn turn(List<String> steps) throws Unfit {
        Route at = revision.route(steps);
        String path = Steps.path(steps);
        if (!at.isWritten()) {
            throw new Unfit(at.part().from(), "'" + path + "' is not written");
        }
        Route outer = revision.route(steps.subList(0, steps.size() - 1));
        if (at.turns().isEmpty() || outer.turns().size() == at.turns().size()) {
            throw new Unfit(at.part().from(), "'" + path + "' stands alone for '" + outer.path() + "'; name that");
        }
        return at.last().orElseThrow();
    }

    /** Where a key stands. */
    Route.Turn key(List<String> steps) throws Unfit {
        Route.Turn turn = turn(steps);
        if (turn.holder().kind() != TextPart.Kind.MAPPING) {
            throw new Unfit(turn.value().from(), "'" + Steps.path(steps) + "' is an item of a list and has no name");
        }
        return turn;
    }

    /** Gives a key another name. */
    void rename(List<String> steps, String name) throws Unfit {
        Route.Turn turn = key(steps);
        List<String> outer = steps.subList(0, steps.size() - 1);
        TextPart key = turn.holder().entries().get(turn.index()).key();
        Route there = revision.route(step(outer, name)); // also tells of names that may not stand there
        if (there.isWritten()) {
            throw new Unfit(there.part().from(), "'" + there.path() + "' is there already; choose another name");
        }
        Route holder = revision.route(steps).holder();
        boolean isInFlow = holder.isInFlow() || turn.holder().style() == TextPart.Style.FLOW;
        String written =
                switch (key.style()) {
                    case SINGLE -> "'" + name + "'";
                    case DOUBLE -> "\"" + name + "\"";
                    default -> Inscription.key(name, isInFlow);
                };
        Tag tag = Inscription.tag(written);
        List<int[]> pairs = pairs(turn.holder());
        pairs.get(turn.index())[0] = revision.shapes().scalar(name, tag);
        revision.splice(
                holder,
                List.of(new Splice(key.content(), key.to(), written)),
                revision.shapes().mapping(pairs));
    }

    /** Gives a key or an item another place among its like. */
    void move(List<String> steps, int index) throws Unfit {
        Route.Turn turn = turn(steps);
        TextPart holder = turn.holder();
        int count = Math.max(holder.items().size(), holder.entries().size());
        if (index < 0 || index >= count) {
            throw new Unfit(
                    turn.value().from(),
                    "there is no place " + index + " among " + Wording.count(count, "item") + "; the first is 0");
        }
        List<Integer> order = new ArrayList<>(IntStream.range(0, count).boxed().toList());
        order.add(index, order.remove(turn.index()));
        int shape = holder.kind() == TextPart.Kind.LIST
                ? revision.shapes()
                        .list(order.stream()
                                .map(k -> revision.shapes().of(holder.items().get(k)))
                                .toList())
                : revision.shapes().mapping(holder, Map.of());
        Route at = revision.route(steps).holder();
        List<String> keys = order.stream()
                .map(k -> holder.kind() == TextPart.Kind.LIST
                        ? ""
                        : holder.entries().get(k).key().text())
                .toList();
        revision.splice(at, new Moving(revision.lines()).of(holder, turn.index(), index), shape);
        List<String> found = revision.route(steps).last().stream()
                .flatMap(last -> last.holder().entries().stream())
                .map(entry -> entry.key().text())
                .toList();
        if (!found.isEmpty() && Collections.indexOfSubList(found, keys) != 0) {
            throw new IllegalStateException("keys stand in another order than they should: " + found);
        }
    }
}
