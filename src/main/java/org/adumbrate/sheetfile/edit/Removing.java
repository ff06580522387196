package org.adumbrate.sheetfile.edit;

import java.util.ArrayList;
import java.util.List;
import org.adumbrate.sheetfile.yaml.TextPart;

/** The splices that take a key out of a mapping or an item out of a list: whole lines where it has its own. */
record Removing(Lines lines) {
    List<Splice> of(TextPart holder, int index) {
        int count = Math.max(holder.items().size(), holder.entries().size());
        boolean isList = holder.kind() == TextPart.Kind.LIST;
        if (count == 1) {
            return List.of(Replacing.of(lines, holder, isList ? "[]" : "{}"));
        }
        return holder.style() == TextPart.Style.FLOW
                ? flow(holder, index, count)
                : List.of(block(holder, index, count));
    }

    private Splice block(TextPart holder, int index, int count) {
        int begin = begin(holder, index);
        int end = end(holder, index);
        int start = lines.start(begin);
        if (lines.isBlank(start, begin) || lines.text().substring(start, begin).equals("\uFEFF")) {
            int from = lines.text().startsWith("\uFEFF") && start == 0 ? 1 : start;
            int next = lines.next(end);
            boolean isLastLine = next == lines.text().length() && next == lines.end(end) && from > 0;
            return isLastLine ? Splice.out(endBefore(from), next) : Splice.out(from, next);
        }
        // the first of several, on the line of what holds it: the next takes its place
        int follower = index + 1 < count ? begin(holder, index + 1) : end;
        return lines.isBlank(end, follower) ? Splice.out(begin, follower) : Splice.out(begin, end);
    }

    /** Where the line before ends. */
    private int endBefore(int start) {
        String text = lines.text();
        int end = start - 1;
        return end > 0 && text.charAt(end) == '\n' && text.charAt(end - 1) == '\r' ? end - 1 : end;
    }

    private int begin(TextPart holder, int index) {
        return holder.kind() == TextPart.Kind.LIST
                ? holder.style() == TextPart.Style.FLOW
                        ? holder.items().get(index).from()
                        : new Dashes(lines, holder).at(index)
                : holder.entries().get(index).key().from();
    }

    private static int end(TextPart holder, int index) {
        return holder.kind() == TextPart.Kind.LIST
                ? holder.items().get(index).to()
                : holder.entries().get(index).value().to();
    }

    private List<Splice> flow(TextPart holder, int index, int count) {
        int begin = begin(holder, index);
        int end = end(holder, index);
        List<Splice> splices = new ArrayList<>();
        if (index + 1 < count) {
            int comma = lines.skip(end);
            int next = begin(holder, index + 1);
            if (lines.isBlank(end, comma) && lines.isBlank(comma + 1, next)) {
                return List.of(Splice.out(begin, next));
            }
            splices.add(Splice.out(begin, end));
            splices.add(Splice.out(comma, comma + 1));
            return splices;
        }
        int before = end(holder, index - 1);
        int comma = lines.skip(before);
        if (lines.isBlank(before, comma) && lines.isBlank(comma + 1, begin)) {
            return List.of(Splice.out(before, end));
        }
        splices.add(Splice.out(comma, comma + 1));
        splices.add(Splice.out(begin, end));
        return splices;
    }
}
