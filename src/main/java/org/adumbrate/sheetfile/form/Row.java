package org.adumbrate.sheetfile.form;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.adumbrate.geometry.Frame;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.sheetfile.complaint.Wording;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.SequenceNode;

/**
 * A record written as a list of its components, such as {@code [x, y]}.
 *
 * @param type the record
 * @param forms of its components
 */
record Row(Class<?> type, List<Form> forms) implements Form {
    private static final Form MM = new Quantity(Measure.SHEET_COORDINATE, Range.ON_SHEET);
    private static final Form MM_ABOVE_ZERO = new Quantity(Measure.SHEET_COORDINATE, Range.OF_SHEET_SIDE);

    static final Row POINT = new Row(SheetPoint.class, List.of(MM, MM));
    static final Row FRAME = new Row(Frame.class, List.of(MM, MM, MM_ABOVE_ZERO, MM_ABOVE_ZERO));

    @Override
    public boolean fits(Node node) {
        return node instanceof SequenceNode list
                && !list.getValue().isEmpty()
                && forms.get(0).fits(list.getValue().get(0));
    }

    @Override
    public Optional<?> read(Node node, Cursor at) {
        if (!(node instanceof SequenceNode list)) {
            return at.unexpected(node, expected());
        }
        int count = list.getValue().size();
        if (count != forms.size()) {
            return at.complain(at.name() + " has " + Wording.count(count, "value") + "; expected " + expected());
        }
        List<Optional<?>> values = new ArrayList<>();
        for (int k = 0; k < count; k++) {
            Node item = list.getValue().get(k);
            values.add(at.item(k, item).read(forms.get(k), item));
        }
        return values.stream().allMatch(Optional::isPresent)
                ? at.make(type, values.stream().map(Optional::get).toArray())
                : Optional.empty();
    }

    @Override
    public String expected() {
        return Arrays.stream(type.getRecordComponents())
                .map(component -> Wording.hyphened(component.getName()))
                .collect(Collectors.joining(", ", "[", "]"));
    }

    @Override
    public Allowed allowed() {
        return Allowed.of("row", List.of());
    }

    @Override
    public Optional<Form> inner(String step) {
        return Steps.index(step).filter(index -> index < forms.size()).map(forms::get);
    }

    @Override
    public Map<String, Object> schema(Map<String, Object> shared) {
        List<Map<String, Object>> items =
                forms.stream().map(form -> form.schema(shared)).toList();
        Map<String, Object> schema = SchemaJson.object("type", "array");
        if (items.stream().distinct().count() == 1) {
            schema.put("items", items.get(0));
        } else {
            schema.put("prefixItems", items);
            schema.put("items", false);
        }
        schema.put("minItems", items.size());
        schema.put("maxItems", items.size());
        return schema;
    }
}
