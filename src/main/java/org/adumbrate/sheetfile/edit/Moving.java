package org.adumbrate.sheetfile.edit;

import java.util.ArrayList;
import java.util.List;
import org.adumbrate.sheetfile.yaml.TextPart;

/** The splices that give an item another place: those between change places with it, each with the comment behind it. */
record Moving(Lines lines) {
    List<Splice> of(TextPart holder, int from, int to) {
        int count = Math.max(holder.items().size(), holder.entries().size());
        List<Integer> order = new ArrayList<>();
        for (int k = 0; k < count; k++) {
            order.add(k);
        }
        order.add(to, order.remove(from));
        List<Splice> splices = new ArrayList<>();
        for (int k = 0; k < count; k++) {
            if (order.get(k) != k) {
                Splice slot = slot(holder, k);
                splices.add(new Splice(
                        slot.from(), slot.to(), slot(holder, order.get(k)).text()));
            }
        }
        return splices;
    }

    private Splice slot(TextPart holder, int index) {
        boolean isFlow = holder.style() == TextPart.Style.FLOW;
        boolean isList = holder.kind() == TextPart.Kind.LIST;
        int begin = isList
                ? isFlow ? holder.items().get(index).from() : new Dashes(lines, holder).at(index)
                : holder.entries().get(index).key().from();
        int end = isList
                ? holder.items().get(index).to()
                : holder.entries().get(index).value().to();
        int to = isFlow ? end : lines.end(end);
        return new Splice(begin, to, lines.text().substring(begin, to));
    }
}
