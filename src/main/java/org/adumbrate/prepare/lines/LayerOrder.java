package org.adumbrate.prepare.lines;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.adumbrate.drawing.DrawingOrder;
import org.adumbrate.drawing.Layer;
import org.adumbrate.sheetfile.Sheet;
import org.adumbrate.sheetfile.Veil;
import org.adumbrate.sheetfile.complaint.Complaint;
import org.adumbrate.sheetfile.complaint.SheetFileFault;
import org.adumbrate.sheetfile.reading.SheetFile;

/** The order in which the layers of a sheet are drawn: the default, with what the sheet file wishes otherwise. */
public final class LayerOrder {
    private static final String KEY = "order";

    private LayerOrder() {}

    /**
     * The order of a sheet's layers.
     *
     * @param strays layers of lines that no pen was given for
     * @param wish names of layers, the backmost first; empty for the default
     * @throws SheetFileFault if a name is not a layer's or is named twice, or the underlay is not named first
     */
    public static DrawingOrder of(SheetFile file, List<Layer> strays, List<String> wish) throws SheetFileFault {
        Sheet sheet = file.sheet();
        Map<String, String> veils = new LinkedHashMap<>();
        sheet.veils().forEach((name, veil) -> veils.put(name, lines(sheet, name, veil)));
        DrawingOrder order = DrawingOrder.of(
                strays.stream().map(Layer::name).toList(),
                List.copyOf(sheet.pens().keySet()),
                veils);
        List<Complaint> complaints = complaints(file, order, wish);
        if (!complaints.isEmpty()) {
            throw new SheetFileFault(complaints);
        }
        return order.rearranged(wish);
    }

    /** The layer of a veil's own lines: the pen's that draws its colour, otherwise one of its own name. */
    private static String lines(Sheet sheet, String name, Veil veil) {
        return veil instanceof Veil.ByLines shown ? VeilLines.pen(sheet, shown).orElse(name) : name;
    }

    private static List<Complaint> complaints(SheetFile file, DrawingOrder order, List<String> wish) {
        List<Complaint> complaints = new ArrayList<>();
        for (int k = 0; k < wish.size(); k++) {
            String name = wish.get(k);
            String at = KEY + "[" + k + "]";
            if (!order.names().contains(name)) {
                complaints.add(file.unknown(at, "layer", name, order.names()));
            } else if (wish.indexOf(name) < k) {
                complaints.add(file.complaint(at, "'" + name + "' is named twice; leave one out"));
            } else if (k > 0 && name.equals(DrawingOrder.UNDERLAY)) {
                complaints.add(file.complaint(at, "the underlay lies behind all else; leave it out or name it first"));
            }
        }
        return complaints;
    }
}
