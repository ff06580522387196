package org.adumbrate.sheetfile.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.adumbrate.sheetfile.complaint.SheetFileFault;
import org.adumbrate.sheetfile.form.Field;
import org.adumbrate.sheetfile.form.Form;
import org.adumbrate.sheetfile.form.Steps;
import org.adumbrate.sheetfile.yaml.TextPart;
import org.adumbrate.sheetfile.yaml.TextParts;

/** Lists the values of a text, in its order; what is not written follows what stands in the same mapping. */
final class Values {
    /** More than a sheet file that is meant to be one has; a text of aliases of aliases has without end. */
    private static final int MOST = 100_000;

    private static final String MERGED = "<<";

    private final Places places;
    private final List<SheetValue> found = new ArrayList<>();

    private Values(String text) {
        this.places = new Places(text);
    }

    static List<SheetValue> of(SheetText text) throws SheetFileFault {
        Values values = new Values(text.text());
        Optional<TextPart> root = TextParts.of(text.file(), text.text());
        if (root.isPresent()) {
            values.mapping("", Revision.SHEET, root.get().meant(), false);
        }
        return HoldingDefaults.in(values.found);
    }

    private void value(String path, Form form, TextPart part, Field field, boolean isShared) {
        if (found.size() > MOST) {
            return;
        }
        TextPart meant = part.meant();
        Optional<String> unsaid = meant.isNothing() ? Optional.empty() : form.unsaid(meant.node());
        if (unsaid.isPresent()) {
            form.inner(unsaid.get())
                    .ifPresent(inner -> value(Steps.join(path, unsaid.get()), inner, part, field, isShared));
            form.fields(List.of(unsaid.get())).stream()
                    .filter(other -> !other.key().equals(unsaid.get()))
                    .forEach(other -> unwritten(path, other));
            return;
        }
        boolean isElsewhere = isShared || part.kind() == TextPart.Kind.ALIAS;
        SheetValue.Span span =
                new SheetValue.Span(part.from(), part.to(), places.at(part.from()), places.at(part.to()));
        String text = meant.kind() == TextPart.Kind.SCALAR ? meant.text() : "";
        found.add(new SheetValue(
                path,
                Optional.of(span),
                text,
                field == null ? "" : field.meaning(),
                form.allowed(),
                field != null && field.isRequired(),
                isElsewhere));
        for (int k = 0; k < meant.items().size(); k++) {
            String step = Steps.item(k);
            TextPart item = meant.items().get(k);
            form.inner(step).ifPresent(inner -> value(Steps.join(path, step), inner, item, null, isElsewhere));
        }
        if (meant.kind() == TextPart.Kind.MAPPING || meant.isNothing()) {
            mapping(path, form, meant, isElsewhere);
        }
    }

    private void mapping(String path, Form form, TextPart mapping, boolean isShared) {
        List<String> given = new ArrayList<>();
        keys(mapping, given);
        List<Field> fields = form.fields(given);
        written(path, form, fields, mapping, isShared, new ArrayList<>());
        fields.stream().filter(field -> !given.contains(field.key())).forEach(field -> unwritten(path, field));
    }

    /** The keys of a mapping, with those that are merged into it. */
    private static void keys(TextPart mapping, List<String> keys) {
        for (TextPart.Entry entry : mapping.entries()) {
            if (entry.key().text().equals(MERGED)) {
                keys(entry.value().meant(), keys);
            } else {
                keys.add(entry.key().text());
            }
        }
    }

    private void written(
            String path, Form form, List<Field> fields, TextPart mapping, boolean isShared, List<String> told) {
        for (TextPart.Entry entry : mapping.entries()) {
            String key = entry.key().text();
            if (!key.equals(MERGED) && !told.contains(key)) {
                told.add(key);
                Field field = fields.stream()
                        .filter(each -> each.key().equals(key))
                        .findFirst()
                        .orElse(null);
                form.inner(key).ifPresent(inner -> value(Steps.join(path, key), inner, entry.value(), field, isShared));
            }
        }
        for (TextPart.Entry entry : mapping.entries()) {
            if (entry.key().text().equals(MERGED)) {
                written(path, form, fields, entry.value().meant(), true, told);
            }
        }
    }

    private void unwritten(String path, Field field) {
        found.add(new SheetValue(
                Steps.join(path, field.key()),
                Optional.empty(),
                field.standardWritten().orElse(""),
                field.meaning(),
                field.form().allowed(),
                field.isRequired(),
                false));
        if (field.standardWritten().equals(Optional.of("{}"))) {
            String holder = Steps.join(path, field.key());
            field.form().fields(List.of()).forEach(inner -> unwritten(holder, inner));
        }
    }
}
