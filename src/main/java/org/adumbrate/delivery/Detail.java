package org.adumbrate.delivery;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.adumbrate.fault.Refusal;
import org.adumbrate.geometry.Canvas;
import org.adumbrate.geometry.Frame;
import org.adumbrate.geometry.SheetSize;
import org.adumbrate.prepare.finding.Finding;
import org.adumbrate.sheetfile.Deliver;

/**
 * A window of the sheet that is delivered alone, beside the whole pictures' files and never over them.
 *
 * @param frame what is wanted of the sheet
 * @param dpi the resolution, where it is not the item's own
 */
record Detail(Frame frame, OptionalDouble dpi) {
    /** Where the window of a picture is written: beside the whole, its name with {@code -window} before the ending. */
    static Path file(Path whole) {
        String name = whole.getFileName().toString();
        int dot = name.lastIndexOf('.');
        String stem = dot > 0 ? name.substring(0, dot) : name;
        return whole.resolveSibling(stem + "-window" + name.substring(stem.length()));
    }

    /**
     * Checks that it can be delivered.
     *
     * @throws Refusal if nothing of it lies on the sheet, or an item has no windows
     */
    void check(Deliveries wanted, SheetSize sheet) throws Refusal {
        boolean others = wanted.underlay().isPresent()
                || wanted.figureShadow().isPresent()
                || wanted.drawing().isPresent()
                || wanted.svg().isPresent()
                || wanted.report().isPresent();
        if (others) {
            throw new Refusal("--window: only preview and flat can be made of a part of the sheet; give --only preview,"
                    + " --only flat or both");
        }
        if (on(Canvas.whole(sheet, 72)).isEmpty()) {
            throw new Refusal(String.format(
                    Locale.ROOT,
                    "--window: nothing of it lies on the sheet, which is %s; it goes from %s,%s to %s,%s mm, counted from the"
                            + " sheet's top left corner",
                    sheet,
                    plain(frame.left()),
                    plain(frame.top()),
                    plain(frame.right()),
                    plain(frame.bottom())));
        }
    }

    /** What is told where part of it lies off the sheet. */
    Optional<Finding> cut(SheetSize sheet) {
        boolean within = frame.left() >= 0
                && frame.top() >= 0
                && frame.right() <= sheet.widthMm()
                && frame.bottom() <= sheet.heightMm();
        return within
                ? Optional.empty()
                : Optional.of(new Finding(
                        Finding.Severity.NOTE,
                        "",
                        "the window reaches beyond the sheet, which is " + sheet
                                + "; what lies on the sheet is shown"));
    }

    /** The window on a canvas; none if nothing of it lies on the sheet. */
    Optional<Canvas> on(Canvas whole) {
        return whole.window(frame);
    }

    /** The resolution of a preview. */
    double previewDpi(Deliver.Preview preview, SheetSize sheet) {
        return dpi.orElse(Delivery.previewDpi(preview, sheet));
    }

    private static String plain(double mm) {
        return mm == Math.rint(mm) ? String.format(Locale.ROOT, "%.0f", mm) : Double.toString(mm);
    }
}
