package org.adumbrate.sheetfile.form;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Key paths in steps: {@code figures[3].foot} is {@code figures}, {@code [3]}, {@code foot}. */
public final class Steps {
    private static final Pattern PATH =
            Pattern.compile("[^.\\[\\]]+(?:\\[[0-9]{1,6}\\])*(?:\\.[^.\\[\\]]+(?:\\[[0-9]{1,6}\\])*)*");
    private static final Pattern STEP = Pattern.compile("[^.\\[\\]]+|\\[[0-9]+\\]");

    private Steps() {}

    /** The steps of a path; nothing where it is none. */
    public static Optional<List<String>> of(String path) {
        if (!PATH.matcher(path).matches()) {
            return Optional.empty();
        }
        List<String> steps = new ArrayList<>();
        Matcher step = STEP.matcher(path);
        while (step.find()) {
            steps.add(step.group().startsWith("[") ? item(index(step.group()).orElseThrow()) : step.group());
        }
        return Optional.of(steps);
    }

    /** The path of some steps. */
    public static String path(List<String> steps) {
        return steps.stream().reduce("", Steps::join);
    }

    /** A path and one step more. */
    public static String join(String path, String step) {
        return path.isEmpty() || step.startsWith("[") ? path + step : path + "." + step;
    }

    /** The step to an item. */
    public static String item(int index) {
        return "[" + index + "]";
    }

    /** The index of a step to an item. */
    public static Optional<Integer> index(String step) {
        return step.startsWith("[")
                ? Optional.of(Integer.parseInt(step.substring(1, step.length() - 1)))
                : Optional.empty();
    }
}
