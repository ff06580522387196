package org.adumbrate.sheetfile;

import java.util.List;
import java.util.Optional;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.comments.CommentLine;
import org.snakeyaml.engine.v2.common.Anchor;
import org.snakeyaml.engine.v2.composer.Composer;
import org.snakeyaml.engine.v2.events.CollectionStartEvent;
import org.snakeyaml.engine.v2.events.ScalarEvent;
import org.snakeyaml.engine.v2.exceptions.ComposerException;
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

    private static final LoadSettings SETTINGS = LoadSettings.builder()
            .setSchema(new CoreSchema())
            .setAllowDuplicateKeys(true)
            .setMaxAliasesForCollections(50)
            .setCodePointLimit(SheetText.MOST_BYTES)
            .build();

    private int level;

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
        return super.composeScalarNode(anchor, comments);
    }

    @Override
    protected SequenceNode composeSequenceNode(Optional<Anchor> anchor) {
        enter();
        SequenceNode node = super.composeSequenceNode(anchor);
        level--;
        return node;
    }

    @Override
    protected Node composeMappingNode(Optional<Anchor> anchor) {
        enter();
        Node node = super.composeMappingNode(anchor);
        level--;
        return node;
    }

    private void enter() {
        if (((CollectionStartEvent) parser.peekEvent()).getTag().isPresent()) {
            throw stopped(PlainWords.TAG);
        }
        if (++level > DEEPEST) {
            throw stopped(PlainWords.TOO_DEEP);
        }
    }

    private ComposerException stopped(String problem) {
        return new ComposerException(
                "", Optional.empty(), problem, parser.peekEvent().getStartMark());
    }
}
