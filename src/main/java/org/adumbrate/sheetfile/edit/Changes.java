package org.adumbrate.sheetfile.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.adumbrate.sheetfile.complaint.Place;
import org.adumbrate.sheetfile.complaint.SheetFileFault;
import org.adumbrate.sheetfile.complaint.Wording;
import org.adumbrate.sheetfile.form.Steps;
import org.adumbrate.sheetfile.reading.NameUses;
import org.adumbrate.sheetfile.yaml.TextPart;

/**
 * Makes edits, and tells what they changed.
 *
 * @param revision the text that they are made in
 */
record Changes(Revision revision) {
    List<EditResult.Change> make(Edit edit) throws Unfit {
        List<String> steps = Revision.steps(edit.key());
        if (edit instanceof Edit.Set set) {
            return told(steps, () -> new Setting(revision).set(steps, Wanted.of(set.value())));
        }
        if (edit instanceof Edit.Add add) {
            return added(steps, Wanted.of(add.value()));
        }
        if (edit instanceof Edit.Remove) {
            return removed(steps);
        }
        if (edit instanceof Edit.Rename rename) {
            return renamed(steps, rename.name());
        }
        return moved(steps, ((Edit.Move) edit).index());
    }

    private interface Work {
        void run() throws Unfit;
    }

    private List<EditResult.Change> told(List<String> steps, Work work) throws Unfit {
        Optional<String> before = revision.written(steps);
        int stood = revision.route(steps).part().from();
        work.run();
        Optional<String> after = revision.written(steps);
        int at = after.isPresent()
                ? revision.route(steps).part().from()
                : Math.min(stood, revision.text().length());
        return List.of(new EditResult.Change(Steps.path(steps), before, after, revision.place(at)));
    }

    private List<EditResult.Change> removed(List<String> steps) throws Unfit {
        Optional<String> before = revision.written(steps);
        Place place = revision.place(revision.route(steps).part().from());
        new Setting(revision).remove(steps);
        return List.of(new EditResult.Change(Steps.path(steps), before, Optional.empty(), place));
    }

    private List<EditResult.Change> added(List<String> steps, TextPart value) throws Unfit {
        Setting setting = new Setting(revision);
        Optional<Integer> index = Steps.index(steps.get(steps.size() - 1));
        if (index.isPresent()) {
            List<String> list = steps.subList(0, steps.size() - 1);
            setting.insert(list, index.get(), value);
            return toldNew(steps);
        }
        Route at = revision.route(steps);
        TextPart part = at.part();
        if (at.wantedForm().inner(Steps.item(0)).isPresent()) {
            boolean isList = at.isWritten() && part.meant().kind() == TextPart.Kind.LIST && !isAlone(at);
            int count = isList ? part.meant().items().size() : at.isWritten() && !part.isNothing() ? 1 : 0;
            List<String> item = Setting.step(steps, Steps.item(count));
            setting.insert(steps, count, value);
            return toldNew(item);
        }
        if (at.isWritten() && value.kind() == TextPart.Kind.MAPPING) {
            List<EditResult.Change> changes = new ArrayList<>();
            for (TextPart.Entry entry : value.entries()) {
                List<String> key = Setting.step(steps, entry.key().text());
                changes.addAll(addedKey(key, entry.value()));
            }
            return changes;
        }
        return addedKey(steps, value);
    }

    /** True where a single item stands for a list of one. */
    private static boolean isAlone(Route at) {
        return at.form().unsaid(at.part().node()).isPresent();
    }

    private List<EditResult.Change> addedKey(List<String> steps, TextPart value) throws Unfit {
        Route at = revision.route(steps);
        if (at.isWritten()) {
            throw new Unfit(at.part().from(), "'" + at.path() + "' is there already; set it, or add another key");
        }
        return told(steps, () -> new Setting(revision).set(steps, value));
    }

    private List<EditResult.Change> toldNew(List<String> steps) throws Unfit {
        int at = revision.route(steps).part().from();
        return List.of(new EditResult.Change(
                Steps.path(steps), Optional.empty(), revision.written(steps), revision.place(at)));
    }

    private List<EditResult.Change> renamed(List<String> steps, String name) throws Unfit {
        Route.Turn turn = new Setting(revision).key(steps);
        String old = turn.holder().entries().get(turn.index()).key().text();
        List<String> holder = steps.subList(0, steps.size() - 1);
        new Setting(revision).rename(steps, name);
        int at = revision.route(Setting.step(holder, name)).part().from();
        List<EditResult.Change> changes = new ArrayList<>();
        changes.add(new EditResult.Change(Steps.path(steps), Optional.of(old), Optional.of(name), revision.place(at)));
        for (NameUses uses : NameUses.of(Steps.path(holder))) {
            for (String key : uses(uses.where(), old + uses.ending())) {
                List<String> use = Revision.steps(key);
                TextPart value = Wanted.scalar(name + uses.ending());
                changes.addAll(told(use, () -> new Setting(revision).set(use, value)));
            }
        }
        return changes;
    }

    /** The key paths of a pattern at which a text stands. */
    private List<String> uses(String where, String text) throws Unfit {
        try {
            return revision.now().values().stream()
                    .filter(value -> value.span().isPresent() && value.value().equals(text))
                    .map(SheetValue::key)
                    .filter(key -> key.matches(where))
                    .toList();
        } catch (SheetFileFault e) {
            throw new IllegalStateException("a text that was taken apart a moment ago", e);
        }
    }

    private List<EditResult.Change> moved(List<String> steps, int index) throws Unfit {
        Route at = revision.route(steps);
        if (!at.isWritten() || at.turns().isEmpty()) {
            throw new Unfit(at.part().from(), "'" + Steps.path(steps) + "' is not written, and so has no place");
        }
        int from = at.last().orElseThrow().index();
        new Setting(revision).move(steps, index);
        List<String> moved = Steps.index(steps.get(steps.size() - 1)).isPresent()
                ? Setting.step(steps.subList(0, steps.size() - 1), Steps.item(index))
                : steps;
        int place = revision.route(moved).part().from();
        return List.of(new EditResult.Change(
                Steps.path(steps),
                Optional.of("place " + Wording.number(from)),
                Optional.of("place " + Wording.number(index)),
                revision.place(place)));
    }
}
