package org.adumbrate.sheetfile.edit;

import java.util.ArrayList;
import java.util.List;
import org.adumbrate.sheetfile.complaint.Place;
import org.adumbrate.sheetfile.yaml.YamlText;

/** Line and column of chars of a text, which are asked for in any order. */
final class Places {
    private final String text;
    private final int[] starts;
    private final int first;

    Places(String text) {
        this.text = text;
        this.first = text.length() - YamlText.unmarked(text).length();
        List<Integer> lines = new ArrayList<>(List.of(first));
        Lines all = new Lines(text);
        int next = all.next(0);
        while (next < text.length()) {
            lines.add(next);
            next = all.next(next);
        }
        if (text.length() > first
                && all.next(text.length()) == text.length()
                && all.start(text.length()) == text.length()) {
            lines.add(text.length());
        }
        this.starts = lines.stream().mapToInt(Integer::intValue).toArray();
    }

    Place at(int index) {
        int found = java.util.Arrays.binarySearch(starts, index);
        int line = found >= 0 ? found : Math.max(0, -found - 2);
        return new Place(line + 1, 1 + text.codePointCount(starts[line], Math.max(index, starts[line])));
    }
}
