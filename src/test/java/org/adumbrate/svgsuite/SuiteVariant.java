package org.adumbrate.svgsuite;

import java.util.Locale;
import java.util.regex.Pattern;

/** How a file of the suite is changed before anybody draws it. Texts are bytes as characters, so that any encoding stays. */
enum SuiteVariant {
    /** As it is. */
    PLAIN,
    /** What was filled is stroked and the other way round, as most of the suite's files fill; its frame is left out. */
    SWAPPED;

    private static final Pattern FRAME = Pattern.compile("<rect id=\"frame\"[^>]*/>");
    private static final Pattern PAINT = Pattern.compile("(?<![-\\w])(fill|stroke)(-opacity)?(?=\\s*[=:])");
    private static final Pattern MITRES = Pattern.compile("stroke-miterlimit(?=\\s*[=:])");
    private static final Pattern CONTEXT = Pattern.compile("context-(fill|stroke)");
    private static final Pattern ROOT = Pattern.compile("<((?:\\w+:)?)svg\\b");
    private static final Pattern END = Pattern.compile("</((?:\\w+:)?)svg\\s*>\\s*$");

    /** The text that is drawn; without limits of mitres, which are the pens' of a sheet and not taken from a file. */
    String of(String text) {
        String limited = MITRES.matcher(text).replaceAll("data-miterlimit");
        if (this == PLAIN) {
            return limited;
        }
        String framed = FRAME.matcher(limited).replaceAll("");
        String painted = PAINT.matcher(framed).replaceAll(paint -> other(paint.group(1)) + suffix(paint.group(2)));
        String swapped = CONTEXT.matcher(painted).replaceAll(context -> "context-" + other(context.group(1)));
        int root = rootAt(swapped);
        if (root < 0) {
            return swapped;
        }
        int tagEnd = swapped.indexOf('>', root);
        String tag = swapped.substring(root, tagEnd);
        String initial =
                (tag.contains("fill=") ? "" : " fill=\"none\"") + (tag.contains("stroke=") ? "" : " stroke=\"black\"");
        int nameEnd = root + tag.indexOf("svg") + 3;
        return swapped.substring(0, nameEnd) + initial + swapped.substring(nameEnd);
    }

    /** A text without any stroke that is seen; its paint stays, as areas may ask for it. */
    static String bare(String text) {
        return END.matcher(text).replaceFirst("<$1style>* { stroke-opacity: 0 !important }</$1style></$1svg>");
    }

    /** For names of files. */
    String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    private static int rootAt(String text) {
        var root = ROOT.matcher(text);
        return root.find() ? root.start() : -1;
    }

    private static String other(String paint) {
        return paint.equals("fill") ? "stroke" : "fill";
    }

    private static String suffix(String suffix) {
        return suffix == null ? "" : suffix;
    }
}
