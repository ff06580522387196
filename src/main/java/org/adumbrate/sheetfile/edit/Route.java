package org.adumbrate.sheetfile.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.adumbrate.sheetfile.complaint.Nearest;
import org.adumbrate.sheetfile.complaint.Wording;
import org.adumbrate.sheetfile.form.Field;
import org.adumbrate.sheetfile.form.Form;
import org.adumbrate.sheetfile.form.Steps;
import org.adumbrate.sheetfile.yaml.TextPart;

/**
 * The way from the top of a sheet file to a value, as far as it is written.
 *
 * @param turns the way through lists and mappings
 * @param part where it ends: the value, or what would hold it
 * @param form the form of that
 * @param rest the steps that are not written; none where the value is
 * @param unsaid where the part stands alone for what would hold the value: the step that was left unsaid
 * @param walked the steps to the part
 */
record Route(
        List<Turn> turns, TextPart part, Form form, List<String> rest, Optional<String> unsaid, List<String> walked) {
    /**
     * A step through a list or a mapping.
     *
     * @param holder the list or mapping
     * @param index which of its items or entries
     */
    record Turn(TextPart holder, int index) {
        TextPart value() {
            return holder.kind() == TextPart.Kind.LIST
                    ? holder.items().get(index)
                    : holder.entries().get(index).value();
        }
    }

    static Route of(TextPart root, Form sheet, List<String> steps) throws Unfit {
        List<Turn> turns = new ArrayList<>();
        TextPart part = root;
        Form form = sheet;
        for (int k = 0; k < steps.size(); k++) {
            String step = steps.get(k);
            Optional<String> unsaid = part.isNothing() ? Optional.empty() : form.unsaid(part.node());
            Optional<Form> next = form.inner(step);
            if (next.isEmpty()) {
                throw unknown(part, form, steps.subList(0, k), step);
            }
            boolean isUnsaid = unsaid.equals(Optional.of(step));
            Optional<Integer> index = isUnsaid ? Optional.empty() : index(part.meant(), step);
            if (!isUnsaid && (unsaid.isPresent() || index.isEmpty())) {
                last(part, form, steps.subList(0, k), steps.subList(k, steps.size()));
                return new Route(turns, part, form, steps.subList(k, steps.size()), unsaid, steps.subList(0, k));
            }
            if (!isUnsaid) {
                turns.add(new Turn(part.meant(), index.get()));
                part = turns.get(turns.size() - 1).value();
            }
            form = next.get();
        }
        return new Route(turns, part, form, List.of(), Optional.empty(), steps);
    }

    /** The form at the end of steps that are not written. */
    private static Form last(TextPart part, Form form, List<String> walked, List<String> rest) throws Unfit {
        Form last = form;
        List<String> way = new ArrayList<>(walked);
        for (String step : rest) {
            Optional<Form> next = last.inner(step);
            if (next.isEmpty()) {
                throw unknown(part, last, way, step);
            }
            last = next.get();
            way.add(step);
        }
        return last;
    }

    /** The form of the value, whether or not it is written. */
    Form wantedForm() throws Unfit {
        return last(part, form, walked, rest);
    }

    private static Optional<Integer> index(TextPart part, String step) {
        if (part.kind() == TextPart.Kind.LIST) {
            return Steps.index(step).filter(index -> index < part.items().size());
        }
        for (int k = 0; k < part.entries().size(); k++) {
            if (part.entries().get(k).key().text().equals(step)) {
                return Optional.of(k);
            }
        }
        return Optional.empty();
    }

    private static Unfit unknown(TextPart part, Form form, List<String> walked, String step) {
        String place = walked.isEmpty() ? "a sheet file" : "'" + Steps.path(walked) + "'";
        if (form.allowed().type().equals("names")) {
            return new Unfit(
                    part.from(), Wording.quoted(step) + " is no name; expected a name of letters, digits and hyphens");
        }
        List<String> known = form.fields(List.of()).stream().map(Field::key).toList();
        if (form.inner(Steps.item(0)).isPresent()) {
            String example = Steps.path(walked) + Steps.item(0);
            return new Unfit(
                    part.from(),
                    place + " is a list and has no key " + Wording.quoted(step) + "; name an item, such as " + example);
        }
        if (known.isEmpty()) {
            return new Unfit(
                    part.from(),
                    place + " holds " + form.expected() + " and no " + Wording.quoted(step) + "; name '"
                            + Steps.path(walked) + "' itself");
        }
        return new Unfit(
                part.from(),
                place + " has no key " + Wording.quoted(step) + "; expected " + Wording.choice(known)
                        + Nearest.hint(step, known));
    }

    boolean isWritten() {
        return rest.isEmpty();
    }

    /** True within brackets or braces, where no line has a meaning. */
    boolean isInFlow() {
        return turns.stream().anyMatch(turn -> turn.holder().style() == TextPart.Style.FLOW);
    }

    /** The list or mapping that the part is in, and which of its items or entries it is. */
    Optional<Turn> last() {
        return turns.isEmpty() ? Optional.empty() : Optional.of(turns.get(turns.size() - 1));
    }

    /** The way to the list or mapping that holds the part. */
    Route holder() {
        Turn turn = turns.get(turns.size() - 1);
        return new Route(
                turns.subList(0, turns.size() - 1),
                turn.holder(),
                form,
                List.of(),
                Optional.empty(),
                walked.subList(0, walked.size() - 1));
    }

    String path() {
        return Steps.path(walked);
    }
}
