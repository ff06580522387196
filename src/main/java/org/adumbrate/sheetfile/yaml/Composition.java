package org.adumbrate.sheetfile.yaml;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.comments.CommentLine;
import org.snakeyaml.engine.v2.common.Anchor;
import org.snakeyaml.engine.v2.composer.Composer;
import org.snakeyaml.engine.v2.events.AliasEvent;
import org.snakeyaml.engine.v2.events.CollectionStartEvent;
import org.snakeyaml.engine.v2.events.ScalarEvent;
import org.snakeyaml.engine.v2.exceptions.ComposerException;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.SequenceNode;
import org.snakeyaml.engine.v2.parser.Parser;
import org.snakeyaml.engine.v2.parser.ParserImpl;
import org.snakeyaml.engine.v2.scanner.StreamReader;
import org.snakeyaml.engine.v2.schema.CoreSchema;

/**
 * Makes nodes of YAML 1.2 (core schema), with limits: the composer calls itself for each level, so a deep text would
 * otherwise exhaust the stack.
 */
final class Composition extends Composer {
    /** Deeper than any sheet file: the deepest key of the grammar lies at level 7. */
    private static final int DEEPEST = 32;

    static final LoadSettings SETTINGS = LoadSettings.builder()
            .setSchema(new CoreSchema())
            .setAllowDuplicateKeys(true)
            .setMaxAliasesForCollections(50)
            .setCodePointLimit(YamlText.MOST_BYTES)
            .build();

    /** A list or mapping whose end is not yet met, and how many values came before it. */
    private record Open(Optional<Anchor> anchor, Optional<Mark> start, int before) {}

    private final Deque<Open> open = new ArrayDeque<>();
    private int values;

    private Composition(Parser parser) {
        super(SETTINGS, parser);
    }

    /** The only document of a text; nothing where the text is empty. */
    static Optional<Node> of(String text) {
        return new Composition(new ParserImpl(SETTINGS, new StreamReader(SETTINGS, text))).getSingleNode();
    }

    @Override
    protected Node composeScalarNode(Optional<Anchor> anchor, List<CommentLine> comments) {
        if (((ScalarEvent) parser.peekEvent()).getTag().isPresent()) {
            throw stopped(PlainWords.TAG);
        }
        if (++values > ValueCount.MOST_VALUES) {
            throw new ComposerException("", Optional.empty(), PlainWords.TOO_MANY, fullest());
        }
        return super.composeScalarNode(anchor, comments);
    }

    @Override
    protected SequenceNode composeSequenceNode(Optional<Anchor> anchor) {
        enter(anchor);
        SequenceNode node = super.composeSequenceNode(anchor);
        open.pop();
        return node;
    }

    @Override
    protected Node composeMappingNode(Optional<Anchor> anchor) {
        enter(anchor);
        Node node = super.composeMappingNode(anchor);
        open.pop();
        return node;
    }

    @Override
    protected Node composeKeyNode(MappingNode node) {
        refuseSelf();
        return super.composeKeyNode(node);
    }

    /** The library would follow a mapping that is merged into itself without end. */
    @Override
    protected Node composeValueNode(MappingNode node) {
        refuseSelf();
        return super.composeValueNode(node);
    }

    private void refuseSelf() {
        if (parser.peekEvent() instanceof AliasEvent alias && isOpen(alias.getAlias())) {
            throw stopped(PlainWords.SELF);
        }
    }

    private boolean isOpen(Anchor anchor) {
        return open.stream().anyMatch(one -> one.anchor().equals(Optional.of(anchor)));
    }

    /** Where the innermost list or mapping begins that holds most of the values. */
    private Optional<Mark> fullest() {
        return open.stream()
                .filter(one -> values - one.before() > values / 2)
                .findFirst()
                .flatMap(Open::start);
    }

    private void enter(Optional<Anchor> anchor) {
        if (((CollectionStartEvent) parser.peekEvent()).getTag().isPresent()) {
            throw stopped(PlainWords.TAG);
        }
        open.push(new Open(anchor, parser.peekEvent().getStartMark(), values));
        if (open.size() > DEEPEST) {
            throw stopped(PlainWords.TOO_DEEP);
        }
    }

    private ComposerException stopped(String problem) {
        return new ComposerException(
                "", Optional.empty(), problem, parser.peekEvent().getStartMark());
    }
}
