package org.adumbrate.sheetfile.edit;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.adumbrate.sheetfile.complaint.SheetFileFault;
import org.adumbrate.sheetfile.complaint.Wording;
import org.adumbrate.sheetfile.form.Steps;
import org.adumbrate.sheetfile.yaml.TextPart;
import org.adumbrate.sheetfile.yaml.TextParts;
import org.snakeyaml.engine.v2.common.FlowStyle;
import org.snakeyaml.engine.v2.common.ScalarStyle;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;
import org.snakeyaml.engine.v2.nodes.Tag;

/** Values that someone wants to have in a sheet file, as parts that stand nowhere yet. */
final class Wanted {
    private Wanted() {}

    /** A value as it was typed: what begins with a bracket, a brace or quotes is YAML, all else a text as it is. */
    static TextPart of(String typed) throws Unfit {
        String text = typed.strip();
        if (text.isEmpty() || "[{\"'".indexOf(text.charAt(0)) < 0) {
            return scalar(text);
        }
        try {
            TextPart part = TextParts.of(Path.of("value"), text).orElseThrow();
            if (isPlainTree(part)) {
                return part;
            }
            throw new Unfit(-1, "the value " + Wording.quoted(text) + " has an anchor or an alias; write it out");
        } catch (SheetFileFault e) {
            String reason = e.complaints().get(0).text();
            throw new Unfit(-1, "the value " + Wording.quoted(text) + " is not well written: " + reason);
        }
    }

    private static boolean isPlainTree(TextPart part) {
        return part.kind() != TextPart.Kind.ALIAS
                && part.from() == part.content()
                && part.items().stream().allMatch(Wanted::isPlainTree)
                && part.entries().stream()
                        .allMatch(entry -> entry.key().kind() == TextPart.Kind.SCALAR
                                && isPlainTree(entry.key())
                                && isPlainTree(entry.value()));
    }

    static TextPart scalar(String text) {
        TextPart.Style style = TextPart.Style.PLAIN;
        ScalarNode node = new ScalarNode(TextParts.tag(text), text, ScalarStyle.PLAIN);
        return new TextPart(
                TextPart.Kind.SCALAR, 0, 0, text.length(), style, text, List.of(), List.of(), Optional.empty(), node);
    }

    static TextPart list(TextPart... items) {
        List<TextPart> all = List.of(items);
        SequenceNode node =
                new SequenceNode(Tag.SEQ, all.stream().map(TextPart::node).toList(), FlowStyle.FLOW);
        return new TextPart(
                TextPart.Kind.LIST, 0, 0, 0, TextPart.Style.FLOW, "", all, List.of(), Optional.empty(), node);
    }

    static TextPart mapping(String key, TextPart value) {
        List<TextPart.Entry> entries = List.of(new TextPart.Entry(scalar(key), value));
        List<NodeTuple> tuples = new ArrayList<>();
        tuples.add(new NodeTuple(entries.get(0).key().node(), value.node()));
        MappingNode node = new MappingNode(Tag.MAP, tuples, FlowStyle.FLOW);
        return new TextPart(
                TextPart.Kind.MAPPING, 0, 0, 0, TextPart.Style.FLOW, "", List.of(), entries, Optional.empty(), node);
    }

    /** A value within what is to be written around it. */
    static TextPart within(List<String> steps, TextPart value) throws Unfit {
        TextPart part = value;
        for (int k = steps.size() - 1; k >= 0; k--) {
            Optional<Integer> index = Steps.index(steps.get(k));
            if (index.isPresent() && index.get() > 0) {
                throw new Unfit(-1, "there is no item before " + steps.get(k) + "; the first of a list is [0]");
            }
            part = index.isPresent() ? list(part) : mapping(steps.get(k), part);
        }
        return part;
    }
}
