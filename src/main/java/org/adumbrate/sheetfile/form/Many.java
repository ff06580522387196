package org.adumbrate.sheetfile.form;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.adumbrate.sheetfile.complaint.Wording;
import org.adumbrate.sheetfile.yaml.YamlText;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.SequenceNode;

/**
 * A list.
 *
 * @param item the form of its items
 * @param atLeast how many there must be
 * @param oneAlone true where one item may stand for a list of one
 */
record Many(Form item, int atLeast, boolean oneAlone) implements Form {
    @Override
    public boolean fits(Node node) {
        return node instanceof SequenceNode list
                && !list.getValue().isEmpty()
                && item.fits(list.getValue().get(0));
    }

    @Override
    public Optional<?> read(Node node, Cursor at) {
        if (oneAlone && item.fits(node)) {
            return at.alone().read(item, node).map(List::of);
        }
        if (!(node instanceof SequenceNode list)) {
            return at.unexpected(node, expected());
        }
        int count = list.getValue().size();
        if (count < atLeast) {
            return at.complain(at.name() + " has " + Wording.count(count, "item") + "; expected " + expected());
        }
        if (count > YamlText.LONGEST_LIST) {
            return at.complain(
                    at.name() + " has " + Wording.count(count, "item") + "; expected at most " + YamlText.LONGEST_LIST);
        }
        List<Object> values = new ArrayList<>();
        for (int k = 0; k < count; k++) {
            Node value = list.getValue().get(k);
            at.item(k, value).read(item, value).ifPresent(values::add);
        }
        return values.size() == count ? Optional.of(List.copyOf(values)) : Optional.empty();
    }

    @Override
    public String expected() {
        String list = atLeast > 1 ? "a list of at least " + atLeast : "a list";
        return oneAlone ? item.expected() + ", or a list of such" : list + ", each item " + item.expected();
    }

    @Override
    public Allowed allowed() {
        return Allowed.of("list", List.of());
    }

    @Override
    public Optional<Form> inner(String step) {
        return Steps.index(step).isPresent() ? Optional.of(item) : Optional.empty();
    }

    @Override
    public Optional<String> unsaid(Node node) {
        return oneAlone && item.fits(node) ? Optional.of(Steps.item(0)) : Optional.empty();
    }

    @Override
    public Map<String, Object> schema(Map<String, Object> shared) {
        Map<String, Object> list = SchemaJson.object("type", "array", "items", item.schema(shared));
        if (atLeast > 0) {
            list.put("minItems", atLeast);
        }
        return oneAlone ? SchemaJson.object("anyOf", List.of(item.schema(shared), list)) : list;
    }
}
