package org.adumbrate.cli;

import java.util.regex.Pattern;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.Srgb;
import org.adumbrate.sheetfile.Metres;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads what the desk writes on the command line: points, lengths in the model, colours. */
final class Converters {
    private static final Pattern PAIR = Pattern.compile("\\s*([^\\s,]+)\\s*,\\s*([^\\s,]+)\\s*");

    private Converters() {}

    /** Two numbers with a comma between. */
    static double[] pair(String text, String wanted) {
        var parts = PAIR.matcher(text);
        try {
            if (parts.matches()) {
                double[] pair = {Double.parseDouble(parts.group(1)), Double.parseDouble(parts.group(2))};
                if (Double.isFinite(pair[0] + pair[1])) {
                    return pair;
                }
            }
        } catch (NumberFormatException e) {
            // told below
        }
        throw new TypeConversionException("'" + text + "' is not " + wanted);
    }

    /** A point of the sheet, such as {@code 212.5,188}. */
    static final class Point implements ITypeConverter<SheetPoint> {
        @Override
        public SheetPoint convert(String text) {
            double[] pair = pair(text, "a point in mm of the sheet, such as 212.5,188");
            return new SheetPoint(pair[0], pair[1]);
        }
    }

    /** A length in the model, such as {@code 1.65m}. */
    static final class ModelLength implements ITypeConverter<Metres> {
        @Override
        public Metres convert(String text) {
            return Metres.parse(text)
                    .orElseThrow(() ->
                            new TypeConversionException("'" + text + "' is no length; write 1.65m, 165cm or 5.5ft"));
        }
    }

    /** A colour, such as {@code #e60028}. */
    static final class Color implements ITypeConverter<Srgb> {
        @Override
        public Srgb convert(String text) {
            return Srgb.parse(text)
                    .orElseThrow(() -> new TypeConversionException(
                            "'" + text + "' is no colour; write it as \"#e60028\", in quotes where the shell needs them"));
        }
    }
}
