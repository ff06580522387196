package org.adumbrate.sheetfile.yaml;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.adumbrate.sheetfile.complaint.SheetFileFault;
import org.snakeyaml.engine.v2.common.Anchor;
import org.snakeyaml.engine.v2.common.FlowStyle;
import org.snakeyaml.engine.v2.common.ScalarStyle;
import org.snakeyaml.engine.v2.events.AliasEvent;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.events.MappingStartEvent;
import org.snakeyaml.engine.v2.events.NodeEvent;
import org.snakeyaml.engine.v2.events.ScalarEvent;
import org.snakeyaml.engine.v2.events.SequenceStartEvent;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;
import org.snakeyaml.engine.v2.nodes.Tag;
import org.snakeyaml.engine.v2.parser.Parser;
import org.snakeyaml.engine.v2.parser.ParserImpl;
import org.snakeyaml.engine.v2.resolver.ScalarResolver;
import org.snakeyaml.engine.v2.scanner.StreamReader;
import org.snakeyaml.engine.v2.schema.CoreSchema;

/**
 * Takes a text apart. The marks of the parser count code points; a block collection seems to end where the next token begins, so
 * its end is that of its last leaf; a block scalar is taken without the empty lines behind it.
 */
public final class TextParts {
    private static final ScalarResolver RESOLVER = new CoreSchema().getScalarResolver();

    private final String text;
    private final Parser parser;
    private final int shift;
    private final Map<Anchor, TextPart> anchored = new HashMap<>();

    /** Where each code point begins; empty where every one of them is one char. */
    private final int[] starts;

    private TextParts(String text, int shift) {
        this.text = text;
        this.shift = shift;
        String yaml = text.substring(shift);
        this.parser = new ParserImpl(Composition.SETTINGS, new StreamReader(Composition.SETTINGS, yaml));
        this.starts = starts(yaml);
    }

    /**
     * The only document of a text; nothing where that is empty.
     *
     * @param file to complain of
     * @param text with the mark that it may begin with
     * @throws SheetFileFault if it is no YAML
     */
    public static Optional<TextPart> of(Path file, String text) throws SheetFileFault {
        int shift = text.length() - YamlText.unmarked(text).length();
        YamlText.compose(file, text.substring(shift)); // keeps its limits, which the parser alone has not
        return new TextParts(text, shift).root();
    }

    /** What YAML takes a plain scalar for. */
    public static Tag tag(String plain) {
        return RESOLVER.resolve(plain, true);
    }

    private Optional<TextPart> root() {
        parser.next(); // the stream
        if (parser.checkEvent(Event.ID.StreamEnd)) {
            return Optional.empty();
        }
        parser.next(); // the document
        return Optional.of(part());
    }

    private TextPart part() {
        Event event = parser.next();
        if (event instanceof AliasEvent alias) {
            TextPart target = anchored.get(alias.getAlias());
            int from = at(alias.getStartMark());
            int to = at(alias.getEndMark());
            return new TextPart(
                    TextPart.Kind.ALIAS,
                    from,
                    from,
                    to,
                    TextPart.Style.PLAIN,
                    "",
                    List.of(),
                    List.of(),
                    Optional.of(target),
                    target.node());
        }
        TextPart part = event instanceof ScalarEvent scalar
                ? scalar(scalar)
                : event instanceof SequenceStartEvent list ? list(list) : mapping((MappingStartEvent) event);
        ((NodeEvent) event).getAnchor().ifPresent(anchor -> anchored.put(anchor, part));
        return part;
    }

    private TextPart scalar(ScalarEvent event) {
        int from = at(event.getStartMark());
        int content = content(event, from);
        int to = Math.max(content, at(event.getEndMark()));
        ScalarStyle written = event.getScalarStyle();
        TextPart.Style style =
                switch (written) {
                    case SINGLE_QUOTED -> TextPart.Style.SINGLE;
                    case DOUBLE_QUOTED -> TextPart.Style.DOUBLE;
                    case LITERAL, FOLDED -> TextPart.Style.BLOCK;
                    default -> TextPart.Style.PLAIN;
                };
        if (style == TextPart.Style.BLOCK) {
            while (to > content + 1 && Character.isWhitespace(text.charAt(to - 1))) {
                to--;
            }
        }
        Tag tag = style == TextPart.Style.PLAIN ? tag(event.getValue()) : Tag.STR;
        Node node = new ScalarNode(tag, true, event.getValue(), written, event.getStartMark(), event.getEndMark());
        return new TextPart(
                TextPart.Kind.SCALAR,
                from,
                content,
                to,
                style,
                event.getValue(),
                List.of(),
                List.of(),
                Optional.empty(),
                node);
    }

    private TextPart list(SequenceStartEvent event) {
        int from = at(event.getStartMark());
        int content = content(event, from);
        List<TextPart> items = new ArrayList<>();
        while (!parser.checkEvent(Event.ID.SequenceEnd)) {
            items.add(part());
        }
        int end = at(parser.next().getEndMark());
        boolean isFlow = event.isFlow();
        int to = isFlow
                ? end
                : items.isEmpty() ? content : items.get(items.size() - 1).to();
        Node node = new SequenceNode(
                Tag.SEQ,
                true,
                items.stream().map(TextPart::node).toList(),
                isFlow ? FlowStyle.FLOW : FlowStyle.BLOCK,
                event.getStartMark(),
                event.getEndMark());
        return new TextPart(
                TextPart.Kind.LIST,
                from,
                content,
                to,
                style(isFlow),
                "",
                List.copyOf(items),
                List.of(),
                Optional.empty(),
                node);
    }

    private TextPart mapping(MappingStartEvent event) {
        int from = at(event.getStartMark());
        int content = content(event, from);
        List<TextPart.Entry> entries = new ArrayList<>();
        while (!parser.checkEvent(Event.ID.MappingEnd)) {
            TextPart key = part();
            entries.add(new TextPart.Entry(key, part()));
        }
        int end = at(parser.next().getEndMark());
        boolean isFlow = event.isFlow() && text.charAt(content) == '{';
        int to = isFlow
                ? end
                : entries.isEmpty()
                        ? content
                        : entries.get(entries.size() - 1).value().to();
        List<NodeTuple> tuples = entries.stream()
                .map(entry -> new NodeTuple(entry.key().node(), entry.value().node()))
                .toList();
        Node node = new MappingNode(
                Tag.MAP,
                true,
                tuples,
                isFlow ? FlowStyle.FLOW : FlowStyle.BLOCK,
                event.getStartMark(),
                event.getEndMark());
        // a pair without braces within brackets counts as a block: nothing can be added to it
        return new TextPart(
                TextPart.Kind.MAPPING,
                from,
                content,
                to,
                style(isFlow),
                "",
                List.of(),
                List.copyOf(entries),
                Optional.empty(),
                node);
    }

    private static TextPart.Style style(boolean isFlow) {
        return isFlow ? TextPart.Style.FLOW : TextPart.Style.BLOCK;
    }

    /** Behind the anchor and the space that follows it. */
    private int content(NodeEvent event, int from) {
        if (event.getAnchor().isEmpty() || from >= text.length() || text.charAt(from) != '&') {
            return from;
        }
        int end = from;
        while (end < text.length() && !Character.isWhitespace(text.charAt(end))) {
            end++;
        }
        boolean isEmpty = event instanceof ScalarEvent scalar
                && scalar.isPlain()
                && scalar.getValue().isEmpty();
        if (isEmpty) {
            return end;
        }
        while (end < text.length()) {
            char c = text.charAt(end);
            if (c == '#') {
                end = lineEnd(end);
            } else if (Character.isWhitespace(c)) {
                end++;
            } else {
                break;
            }
        }
        return end;
    }

    private int lineEnd(int at) {
        int end = at;
        while (end < text.length() && text.charAt(end) != '\n' && text.charAt(end) != '\r') {
            end++;
        }
        return end;
    }

    private int at(Optional<Mark> mark) {
        int index = mark.map(Mark::getIndex).orElse(0);
        return shift + (starts.length == 0 ? index : starts[index]);
    }

    private static int[] starts(String text) {
        int count = text.codePointCount(0, text.length());
        if (count == text.length()) {
            return new int[0];
        }
        int[] starts = new int[count + 1];
        for (int k = 1; k <= count; k++) {
            starts[k] = text.offsetByCodePoints(starts[k - 1], 1);
        }
        return starts;
    }
}
