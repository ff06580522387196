package org.adumbrate.report.page;

import java.util.Locale;
import org.adumbrate.geometry.Length;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.SheetSize;

/** Numbers in words. */
final class Words {
    private Words() {}

    /** A number with so many decimals. */
    static String number(double value, int decimals) {
        String text = String.format(Locale.ROOT, "%." + decimals + "f", value);
        return text.matches("-0(\\.0*)?") ? text.substring(1) : text;
    }

    /** Such as {@code 17 x 11 in (431.8 x 279.4 mm)}. */
    static String sheet(SheetSize sheet) {
        double width = sheet.widthMm() / Length.MM_PER_INCH;
        double height = sheet.heightMm() / Length.MM_PER_INCH;
        String mm = sheet.toString().replace(" x ", " × ");
        boolean inches = isWhole(2 * width) && isWhole(2 * height);
        return inches ? trimmed(width) + " × " + trimmed(height) + " in (" + mm + ")" : mm;
    }

    private static boolean isWhole(double value) {
        return Math.abs(value - Math.rint(value)) < 1e-6;
    }

    private static String trimmed(double value) {
        return isWhole(value) ? number(value, 0) : number(value, 1);
    }

    /** Such as {@code no warnings}, {@code 1 warning}, {@code 3 warnings}. */
    static String counted(long count, String one, String more) {
        return count == 0 ? "No " + more : count + " " + (count == 1 ? one : more);
    }

    /** A place of the sheet. */
    static String place(SheetPoint point) {
        return number(point.x(), 0) + " mm from the left and " + number(point.y(), 0) + " mm from the top";
    }

    /** Such as {@code 1.6 MB}. */
    static String bytes(long bytes) {
        if (bytes < 1000) {
            return bytes + " bytes";
        }
        return bytes < 1_000_000 ? number(bytes / 1e3, 0) + " kB" : number(bytes / 1e6, 1) + " MB";
    }
}
