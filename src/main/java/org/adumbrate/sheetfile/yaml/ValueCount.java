package org.adumbrate.sheetfile.yaml;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import org.adumbrate.sheetfile.complaint.Complaint;
import org.adumbrate.sheetfile.complaint.Place;
import org.adumbrate.sheetfile.complaint.SheetFileFault;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.SequenceNode;

/**
 * Counts the values of a sheet file, those that an alias stands for as often as it stands: fifty of a long list make a short
 * text a long one.
 */
final class ValueCount {
    /** Fifty thousand points, or a list of ten thousand with all that figures can say. */
    static final int MOST_VALUES = 100_000;

    /** What to say of them. */
    static final String TOLD = "more than " + MOST_VALUES + " values, most of them here; a polygon may have "
            + YamlText.LONGEST_LIST + " corners";

    private final IdentityHashMap<Node, Long> known = new IdentityHashMap<>();
    private Node fullest;

    private ValueCount() {}

    /** @throws SheetFileFault if there are more values than any sheet file has */
    static void require(Node root, Path file) throws SheetFileFault {
        ValueCount count = new ValueCount();
        if (count.of(root) > MOST_VALUES) {
            Place place = Place.of(count.fullest);
            throw new SheetFileFault(List.of(new Complaint(
                    file,
                    place.line(),
                    place.column(),
                    "more than " + MOST_VALUES + " values up to here; a polygon may have " + YamlText.LONGEST_LIST
                            + " corners, and what an alias stands for counts as often as it stands")));
        }
    }

    /** Lists that are too long by themselves count little here, for they will be complained of by name. */
    private long of(Node node) {
        Long before = known.get(node);
        if (before != null) {
            return before;
        }
        long count = 1;
        for (Node part : parts(node)) {
            count += of(part);
            if (count > MOST_VALUES && fullest == null) {
                fullest = part;
            }
        }
        known.put(node, count);
        return count;
    }

    private static List<Node> parts(Node node) {
        if (node instanceof SequenceNode list) {
            return list.getValue().size() > YamlText.LONGEST_LIST ? List.of() : list.getValue();
        }
        List<Node> parts = new ArrayList<>();
        if (node instanceof MappingNode mapping) {
            mapping.getValue().forEach(entry -> {
                parts.add(entry.getKeyNode());
                parts.add(entry.getValueNode());
            });
        }
        return parts;
    }
}
