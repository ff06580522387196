package org.adumbrate.editing;

import java.util.ArrayList;
import java.util.List;
import org.adumbrate.fault.Shown;
import org.adumbrate.sheetfile.edit.EditResult;

/** A change of a text as a unified diff, by lines (the format of POSIX diff -u, IEEE Std 1003.1-2017). */
public final class LineDiff {
    private static final int AROUND = 2;

    private LineDiff() {}

    /** Lines of the old text and of the new one: from, to, from, to; counted from 0. */
    private record Hunk(int oldFrom, int oldTo, int newFrom, int newTo) {}

    /**
     * The diff, a line for each of its lines; nothing where the texts are equal.
     *
     * @param spans where they differ
     */
    public static List<String> of(String name, String before, String after, List<EditResult.Span> spans) {
        List<String> old = lines(before);
        List<String> now = lines(after);
        List<String> diff = new ArrayList<>();
        if (spans.isEmpty()) {
            return diff;
        }
        diff.add("--- " + name);
        diff.add("+++ " + name);
        List<Hunk> hunks = new ArrayList<>();
        for (EditResult.Span span : spans) {
            add(hunks, hunk(before, after, old, now, span));
        }
        for (int k = 0; k < hunks.size(); ) {
            int next = k + 1;
            while (next < hunks.size()
                    && hunks.get(next).oldFrom() - hunks.get(next - 1).oldTo() <= 2 * AROUND) {
                next++;
            }
            print(diff, old, now, hunks.subList(k, next));
            k = next;
        }
        return diff;
    }

    private static Hunk hunk(String before, String after, List<String> old, List<String> now, EditResult.Span span) {
        int oldFrom = line(before, span.oldFrom());
        int newFrom = line(after, span.newFrom());
        int oldTo = Math.min(old.size(), line(before, span.oldTo()) + 1);
        int newTo = Math.min(now.size(), line(after, span.newTo()) + 1);
        while (oldFrom < oldTo && newFrom < newTo && old.get(oldFrom).equals(now.get(newFrom))) {
            oldFrom++;
            newFrom++;
        }
        while (oldFrom < oldTo && newFrom < newTo && old.get(oldTo - 1).equals(now.get(newTo - 1))) {
            oldTo--;
            newTo--;
        }
        return new Hunk(oldFrom, oldTo, newFrom, newTo);
    }

    private static void add(List<Hunk> hunks, Hunk hunk) {
        Hunk last = hunks.isEmpty() ? null : hunks.get(hunks.size() - 1);
        if (last == null || (last.oldTo() <= hunk.oldFrom() && last.newTo() <= hunk.newFrom())) {
            hunks.add(hunk);
            return;
        }
        hunks.set(
                hunks.size() - 1,
                new Hunk(
                        Math.min(last.oldFrom(), hunk.oldFrom()),
                        Math.max(last.oldTo(), hunk.oldTo()),
                        Math.min(last.newFrom(), hunk.newFrom()),
                        Math.max(last.newTo(), hunk.newTo())));
    }

    private static void print(List<String> diff, List<String> old, List<String> now, List<Hunk> hunks) {
        Hunk first = hunks.get(0);
        Hunk last = hunks.get(hunks.size() - 1);
        int lead = Math.min(AROUND, first.oldFrom());
        int tail = Math.min(AROUND, old.size() - last.oldTo());
        int oldFrom = first.oldFrom() - lead;
        int newFrom = first.newFrom() - lead;
        diff.add("@@ -" + range(oldFrom, last.oldTo() + tail) + " +" + range(newFrom, last.newTo() + tail) + " @@");
        int at = oldFrom;
        for (Hunk hunk : hunks) {
            old.subList(at, hunk.oldFrom()).forEach(line -> line(diff, " ", line));
            old.subList(hunk.oldFrom(), hunk.oldTo()).forEach(line -> line(diff, "-", line));
            now.subList(hunk.newFrom(), hunk.newTo()).forEach(line -> line(diff, "+", line));
            at = hunk.oldTo();
        }
        old.subList(at, last.oldTo() + tail).forEach(line -> line(diff, " ", line));
    }

    private static String range(int from, int to) {
        int count = to - from;
        return (count == 0 ? from : from + 1) + (count == 1 ? "" : "," + count);
    }

    /** Control characters are written out, so that no file commands a terminal. */
    private static void line(List<String> diff, String mark, String line) {
        diff.add(mark + Shown.lines(line.replaceFirst("\\r?\\n$|\\r$", "")));
        if (!line.endsWith("\n") && !line.endsWith("\r")) {
            diff.add("\\ No newline at end of file");
        }
    }

    private static List<String> lines(String text) {
        List<String> lines = new ArrayList<>();
        int start = 0;
        while (start < text.length()) {
            int end = text.indexOf('\n', start);
            int next = end < 0 ? text.length() : end + 1;
            lines.add(text.substring(start, next));
            start = next;
        }
        return lines;
    }

    private static int line(String text, int at) {
        return (int) text.substring(0, at).chars().filter(c -> c == '\n').count();
    }
}
