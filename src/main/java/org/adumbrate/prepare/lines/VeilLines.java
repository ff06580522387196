package org.adumbrate.prepare.lines;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.adumbrate.geometry.Srgb;
import org.adumbrate.linework.sort.ColorSort;
import org.adumbrate.sheetfile.PenRole;
import org.adumbrate.sheetfile.Sheet;
import org.adumbrate.sheetfile.Veil;

/** What is known of the lines around a veil by the pens of its sheet. */
final class VeilLines {
    private VeilLines() {}

    /** The pen that draws them: that of the nearest colour within the tolerance; none where they are drawn by themselves. */
    static Optional<String> pen(Sheet sheet, Veil.ByLines veil) {
        Map<String, Srgb> colors = new LinkedHashMap<>();
        sheet.pens().forEach((name, pen) -> colors.put(name, pen.color()));
        return ColorSort.by(colors).of(veil.color());
    }

    /** Narrow parts are stems where lines show planting, as those do that no pen draws; parts of panes and walls are none. */
    static boolean coverStems(Sheet sheet, Veil.ByLines veil) {
        return veil.stems().orElseGet(() -> pen(sheet, veil)
                .map(name -> sheet.pens().get(name).role() != PenRole.PLANTING)
                .orElse(false));
    }
}
