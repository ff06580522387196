package org.adumbrate.sheetfile.edit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.adumbrate.sheetfile.Sheet;
import org.adumbrate.sheetfile.complaint.Complaint;
import org.adumbrate.sheetfile.complaint.Place;
import org.adumbrate.sheetfile.complaint.SheetFileFault;
import org.adumbrate.sheetfile.form.Form;
import org.adumbrate.sheetfile.form.Forms;
import org.adumbrate.sheetfile.form.Steps;
import org.adumbrate.sheetfile.yaml.TextPart;
import org.adumbrate.sheetfile.yaml.TextParts;
import org.adumbrate.sheetfile.yaml.YamlText;

/**
 * A text while edits are made. After each splice the text is taken apart again and compared with what the edit should have made
 * of it, so that a splice that changes anything else, by an anchor or by a comment that swallows a bracket, is refused.
 */
final class Revision {
    static final Form SHEET = Forms.of(Sheet.class);

    private final SheetText old;
    private final Pieces pieces;
    private final Shapes shapes = new Shapes();
    private String text;
    private TextPart root;

    private Revision(SheetText old) throws SheetFileFault, Unfit {
        this.old = old;
        this.pieces = new Pieces(old.text());
        take(old.text());
    }

    static EditResult of(SheetText old, List<Edit> edits) {
        String before = old.text();
        Revision revision = null;
        try {
            revision = new Revision(old);
            List<EditResult.Change> changes = new ArrayList<>();
            for (Edit edit : edits) {
                before = revision.text;
                changes.addAll(new Changes(revision).make(edit));
            }
            return revision.checked(changes);
        } catch (SheetFileFault e) {
            return new EditResult.Refused(e.complaints());
        } catch (Unfit e) {
            Place place = e.at() < 0 ? Place.START : placeIn(before, e.at());
            return new EditResult.Refused(
                    List.of(new Complaint(old.file(), place.line(), place.column(), e.getMessage())));
        }
    }

    private void take(String next) throws SheetFileFault, Unfit {
        text = next;
        root = TextParts.of(old.file(), next)
                .orElseThrow(() -> new Unfit(-1, "the sheet file is empty; adumbrate start writes a first one"));
    }

    String text() {
        return text;
    }

    /** The text as it stands. */
    SheetText now() {
        return new SheetText(old.file(), text);
    }

    Lines lines() {
        return new Lines(text);
    }

    Shapes shapes() {
        return shapes;
    }

    /** The shape of a value as it is written on one line. */
    int shape(String written) {
        try {
            TextPart list = TextParts.of(old.file(), "[" + written + "]").orElseThrow();
            return shapes.of(list.items().get(0));
        } catch (SheetFileFault e) {
            throw new IllegalStateException("written wrongly: " + written, e);
        }
    }

    Route route(List<String> steps) throws Unfit {
        return Route.of(root, SHEET, steps);
    }

    Place place(int at) {
        return placeIn(text, at);
    }

    static Place placeIn(String text, int at) {
        return Place.after(YamlText.unmarked(text.substring(0, at)));
    }

    /**
     * Splices.
     *
     * @param at where it changes something
     * @param splices in any order, not overlapping
     * @param shape what the part at the end of the route then says
     * @throws Unfit if the text then says anything else; nothing is changed
     */
    void splice(Route at, List<Splice> splices, int shape) throws Unfit {
        int expected = shape;
        for (int k = at.turns().size() - 1; k >= 0; k--) {
            Route.Turn turn = at.turns().get(k);
            expected = turn.holder().kind() == TextPart.Kind.LIST
                    ? listWith(turn, expected)
                    : shapes.mapping(turn.holder(), Map.of(turn.index(), expected));
        }
        String before = text;
        List<Splice> sorted =
                splices.stream().sorted(Comparator.comparingInt(Splice::from)).toList();
        StringBuilder next = new StringBuilder();
        int end = 0;
        for (Splice splice : sorted) {
            next.append(text, end, splice.from()).append(splice.text());
            end = splice.to();
        }
        next.append(text, end, text.length());
        boolean isRight;
        try {
            take(next.toString());
            isRight = shapes.of(root) == expected;
        } catch (SheetFileFault e) {
            isRight = false;
        }
        if (!isRight) {
            text = before; // what was taken apart of the other is never looked at: this ends the whole
            throw new Unfit(at.part().from(), misfit(at));
        }
        pieces.splice(sorted);
    }

    private int listWith(Route.Turn turn, int shape) {
        List<Integer> items =
                new ArrayList<>(turn.holder().items().stream().map(shapes::of).toList());
        items.set(turn.index(), shape);
        return shapes.list(items);
    }

    private String misfit(Route at) {
        String path = at.path().isEmpty() ? "the sheet file" : "'" + at.path() + "'";
        boolean isShared = text.contains("*") && text.contains("&");
        return isShared
                ? path
                        + " shares what stands there with another place by an anchor (&) or an alias (*); write it out in both"
                        + " first"
                : path + " is written in a way that cannot be changed in place; change it by hand";
    }

    private EditResult checked(List<EditResult.Change> changes) {
        List<Complaint> fresh = now().complaintsBeside(old);
        return fresh.isEmpty() ? new EditResult.Edited(now(), changes, pieces.spans()) : new EditResult.Refused(fresh);
    }

    /** What is written at a key path, as it is. */
    Optional<String> written(List<String> steps) throws Unfit {
        Route route = route(steps);
        TextPart part = route.part();
        return route.isWritten() ? Optional.of(text.substring(part.from(), part.to())) : Optional.empty();
    }

    static List<String> steps(String key) throws Unfit {
        return Steps.of(key)
                .orElseThrow(() -> new Unfit(
                        -1,
                        "'" + key + "' is no key path; write one such as passes.shadow.opacity or figures[3].foot"));
    }
}
