package org.adumbrate.cli;

import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.format.DateTimeParseException;
import java.util.regex.Pattern;
import org.adumbrate.geometry.Frame;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.Srgb;
import org.adumbrate.perspective.SunSample;
import org.adumbrate.sheetfile.Metres;
import org.adumbrate.sheetfile.form.MetresText;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads what the desk writes on the command line: points, lengths in the model, colours, places, times, shadows. */
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

    /** A part of the sheet, such as {@code 270,180,60,45}. */
    static final class Window implements ITypeConverter<Frame> {
        @Override
        public Frame convert(String text) {
            String[] parts = text.split(",", -1);
            try {
                if (parts.length == 4) {
                    return new Frame(
                            Double.parseDouble(parts[0].strip()),
                            Double.parseDouble(parts[1].strip()),
                            Double.parseDouble(parts[2].strip()),
                            Double.parseDouble(parts[3].strip()));
                }
            } catch (IllegalArgumentException e) {
                // told below
            }
            throw new TypeConversionException("'" + text
                    + "' is no part of the sheet; write left, top, width and height in mm, such as 270,180,60,45");
        }
    }

    /** A place on the earth, such as {@code 41.5,-30.25}. */
    static final class Place implements ITypeConverter<SunCommand.LatitudeLongitude> {
        @Override
        public SunCommand.LatitudeLongitude convert(String text) {
            String wanted = "a latitude from -90 to 90 and a longitude from -180 to 180, such as 41.5,-30.25";
            double[] pair = pair(text, wanted);
            if (Math.abs(pair[0]) > 90 || Math.abs(pair[1]) > 180) {
                throw new TypeConversionException("'" + text + "' is not " + wanted);
            }
            return new SunCommand.LatitudeLongitude(pair[0], pair[1]);
        }
    }

    /** A time with its offset, such as {@code 2026-06-21T15:00+02:00}. */
    static final class Time implements ITypeConverter<OffsetDateTime> {
        @Override
        public OffsetDateTime convert(String text) {
            try {
                return OffsetDateTime.parse(text);
            } catch (DateTimeParseException e) {
                throw new TypeConversionException(complaint(text));
            }
        }

        private static String complaint(String text) {
            try {
                LocalDateTime.parse(text);
            } catch (DateTimeParseException e) {
                return "'" + text + "' is no date and time; write 2026-06-21T15:00+02:00";
            }
            return "'" + text + "' does not say its offset from UTC, and the sun moves 15 degrees an hour; write "
                    + text + "+02:00, or " + text + "Z for UTC itself";
        }
    }

    /** An upright and its shadow, such as {@code "334.8,228.3 334.8,195.4 354.8,214"}. */
    static final class Shadow implements ITypeConverter<SunSample> {
        private static final String WANTED =
                "foot, head and shadow tip in mm of the sheet, such as \"334.8,228.3 334.8,195.4 354.8,214\"";

        @Override
        public SunSample convert(String text) {
            String[] points = text.strip().split("\\s+");
            if (points.length != 3) {
                throw new TypeConversionException("'" + text + "' is not " + WANTED);
            }
            return new SunSample(point(points[0]), point(points[1]), point(points[2]));
        }

        private static SheetPoint point(String text) {
            double[] pair = pair(text, "a point of " + WANTED);
            return new SheetPoint(pair[0], pair[1]);
        }
    }

    /** A length in the model, such as {@code 1.65m}. */
    static final class ModelLength implements ITypeConverter<Metres> {
        @Override
        public Metres convert(String text) {
            return MetresText.parse(text)
                    .orElseThrow(() ->
                            new TypeConversionException("'" + text + "' is no length; write 1.65m, 165cm or 5.5ft"));
        }
    }

    /** A word as it is. */
    static final class Word implements ITypeConverter<String> {
        @Override
        public String convert(String text) {
            return text.strip();
        }
    }

    /** A colour, such as {@code #e60028}. */
    static final class Color implements ITypeConverter<Srgb> {
        @Override
        public Srgb convert(String text) {
            return Srgb.parse(text)
                    .orElseThrow(() -> new TypeConversionException("'" + text
                            + "' is no colour; write it as \"#e60028\", in quotes where the shell needs them"));
        }
    }
}
