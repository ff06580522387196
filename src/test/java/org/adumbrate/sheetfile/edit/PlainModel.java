package org.adumbrate.sheetfile.edit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.adumbrate.sheetfile.form.Steps;
import org.adumbrate.sheetfile.yaml.YamlText;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.schema.JsonSchema;

/**
 * What an edit should do, told without the edits' own code: of maps, lists and texts as the YAML library loads them. Where a value
 * may stand alone for a list or a mapping, every way to understand a key path counts.
 */
final class PlainModel {
    private static final Pattern NUMBER = Pattern.compile("([-+]?[0-9.]+(?:[eE][-+]?[0-9]+)?)\\s*(\\S*)");

    private static final Map<String, Double> UNITS =
            Map.of("mm", 0.001, "cm", 0.01, "m", 1.0, "in", 0.0254, "\"", 0.0254, "ft", 0.3048, "pt", 0.0254 / 72);

    private PlainModel() {}

    /** A text as maps with texts for keys, lists, and texts for all scalars. */
    static Object loaded(String text) {
        LoadSettings settings =
                LoadSettings.builder().setSchema(new JsonSchema()).build();
        return plain(new Load(settings).loadFromString(YamlText.unmarked(text)));
    }

    private static Object plain(Object value) {
        if (value instanceof Map<?, ?> map) {
            Map<String, Object> copy = new LinkedHashMap<>();
            map.forEach((key, each) -> copy.put(String.valueOf(key), plain(each)));
            return copy;
        }
        if (value instanceof List<?> list) {
            List<Object> copy = new ArrayList<>();
            list.forEach(each -> copy.add(plain(each)));
            return copy;
        }
        return value == null ? null : value.toString();
    }

    /** True where one text is what an edit should make of another. */
    static boolean holds(String before, String after, Edit edit) {
        Object old = loaded(before);
        Object now = loaded(after);
        List<String> steps = Steps.of(edit.key()).orElseThrow();
        if (edit instanceof Edit.Set set) {
            Object wanted = typed(set.value());
            return changed(old, now, steps, (was, is) -> is(was, is, wanted), wanted);
        }
        if (edit instanceof Edit.Add add) {
            return added(old, now, steps, typed(add.value()));
        }
        List<String> holder = steps.subList(0, steps.size() - 1);
        String last = steps.get(steps.size() - 1);
        if (edit instanceof Edit.Remove) {
            return changed(old, now, holder, (was, is) -> isWithout(was, is, last), null);
        }
        if (edit instanceof Edit.Move move) {
            return changed(old, now, holder, (was, is) -> isMoved(was, is, last, move.index()), null);
        }
        String name = ((Edit.Rename) edit).name();
        return isFollowed(renamed(old, holder, last, name), now, last, name);
    }

    private interface Test {
        boolean holds(Object was, Object is);
    }

    private static boolean changed(Object was, Object is, List<String> steps, Test test, Object wanted) {
        if (steps.isEmpty()) {
            return test.holds(was, is);
        }
        String step = steps.get(0);
        List<String> rest = steps.subList(1, steps.size());
        if (was == null) {
            return wanted != null && isNew(is, steps, wanted);
        }
        if (was instanceof Map<?, ?> && step.startsWith("[")) {
            return changed(was, is, rest, test, wanted) || (wanted != null && isWhole(was, is, step, rest, wanted));
        }
        if (was instanceof Map<?, ?> map) {
            if (!(is instanceof Map<?, ?> other)) {
                return false;
            }
            if (!map.containsKey(step)) {
                return wanted != null
                        && other.size() == map.size() + 1
                        && equalBut(map, other, step)
                        && isNew(other.get(step), rest, wanted);
            }
            return map.keySet().equals(other.keySet())
                    && equalBut(map, other, step)
                    && changed(map.get(step), other.get(step), rest, test, wanted);
        }
        return inList(was, is, step, rest, test, wanted)
                || changed(was, is, rest, test, wanted)
                || (wanted != null && isWhole(was, is, step, rest, wanted));
    }

    private static boolean inList(Object was, Object is, String step, List<String> rest, Test test, Object wanted) {
        Optional<Integer> index = Steps.index(step);
        if (index.isEmpty() || !(was instanceof List<?> list) || !(is instanceof List<?> other)) {
            return false;
        }
        int at = index.get();
        if (at == list.size() && wanted != null) {
            return other.size() == at + 1 && other.subList(0, at).equals(list) && isNew(other.get(at), rest, wanted);
        }
        if (at >= list.size() || other.size() != list.size()) {
            return false;
        }
        List<Object> rebuilt = new ArrayList<>(list);
        rebuilt.set(at, other.get(at));
        return rebuilt.equals(other) && changed(list.get(at), other.get(at), rest, test, wanted);
    }

    /** A value that stood alone is now the first of a mapping or a list. */
    private static boolean isWhole(Object was, Object is, String step, List<String> rest, Object wanted) {
        if (is instanceof List<?> list) {
            return step.equals("[1]")
                    && list.size() == 2
                    && Objects.equals(list.get(0), was)
                    && isNew(list.get(1), rest, wanted);
        }
        return is instanceof Map<?, ?> map
                && map.size() == 2
                && map.containsKey(step)
                && map.values().stream().anyMatch(value -> Objects.equals(value, was))
                && isNew(map.get(step), rest, wanted);
    }

    private static boolean isNew(Object is, List<String> steps, Object wanted) {
        if (steps.isEmpty()) {
            return is(null, is, wanted);
        }
        if (is instanceof Map<?, ?> map) {
            return map.size() == 1 && isNew(map.get(steps.get(0)), steps.subList(1, steps.size()), wanted);
        }
        return is instanceof List<?> list
                && list.size() == 1
                && isNew(list.get(0), steps.subList(1, steps.size()), wanted);
    }

    private static boolean equalBut(Map<?, ?> one, Map<?, ?> other, String but) {
        Map<Object, Object> rest = new LinkedHashMap<>(one);
        Map<Object, Object> otherRest = new LinkedHashMap<>(other);
        rest.remove(but);
        otherRest.remove(but);
        return rest.equals(otherRest);
    }

    private static Object typed(String value) {
        return !value.isEmpty() && "[{\"'".indexOf(value.charAt(0)) >= 0 ? loaded(value) : value;
    }

    private static boolean is(Object was, Object is, Object wanted) {
        return is(was, is, wanted, false);
    }

    /** @param isWithin true within a list or mapping that is set as a whole, where a bare number is in the key's first unit */
    private static boolean is(Object was, Object is, Object wanted, boolean isWithin) {
        if (wanted instanceof Map<?, ?> map) {
            Map<?, ?> old = was instanceof Map<?, ?> before ? before : Map.of();
            return is instanceof Map<?, ?> other
                    && other.keySet().equals(map.keySet())
                    && map.keySet().stream().allMatch(key -> is(old.get(key), other.get(key), map.get(key), true));
        }
        if (wanted instanceof List<?> list) {
            List<?> old = was instanceof List<?> before ? before : List.of();
            boolean isSame = is instanceof List<?> other && other.size() == list.size();
            for (int k = 0; isSame && k < list.size(); k++) {
                isSame = is(k < old.size() ? old.get(k) : null, ((List<?>) is).get(k), list.get(k), true);
            }
            boolean isOne = is instanceof List<?> one && one.size() == 1 && !old.isEmpty();
            return isSame || (isOne && is(old.get(0), ((List<?>) is).get(0), wanted, true));
        }
        if (is instanceof List<?> one && was instanceof List<?> before && one.size() == 1) {
            return is(before.isEmpty() ? null : before.get(0), one.get(0), wanted, true);
        }
        return wanted.equals(is) || (is instanceof String text && isNumber(was, text, wanted.toString(), isWithin));
    }

    /** The number typed in the unit that stood there, or the same length in another unit. */
    private static boolean isNumber(Object was, String is, String typed, boolean isWithin) {
        Matcher wanted = NUMBER.matcher(typed.strip());
        Matcher found = NUMBER.matcher(is.strip());
        if (!wanted.matches() || !found.matches()) {
            return false;
        }
        double number = Double.parseDouble(wanted.group(1));
        double other = Double.parseDouble(found.group(1));
        String unit = wanted.group(2);
        if (unit.isEmpty() && isWithin && UNITS.containsKey(found.group(2))) {
            double length = other * UNITS.get(found.group(2));
            return isNear(length, number * 0.001) || isNear(length, number);
        }
        if (unit.isEmpty()) {
            Matcher before = NUMBER.matcher(was instanceof String old ? old.strip() : "");
            boolean isKept = !before.matches() || before.group(2).equals(found.group(2));
            return isKept && number == other;
        }
        if (unit.equals(found.group(2)) || !UNITS.containsKey(unit)) {
            return number == other;
        }
        // a bare number is in mm or in m, whichever the key has
        List<Double> units = found.group(2).isEmpty() ? List.of(0.001, 1.0) : List.of(UNITS.get(found.group(2)));
        double length = number * UNITS.get(unit);
        return units.stream().anyMatch(factor -> isNear(other * factor, length));
    }

    private static boolean isNear(double one, double other) {
        return Math.abs(one - other) <= 1e-12 * Math.max(1e-3, Math.abs(one));
    }

    private static boolean added(Object old, Object now, List<String> steps, Object value) {
        Optional<Integer> index = Steps.index(steps.get(steps.size() - 1));
        List<String> list = index.isPresent() ? steps.subList(0, steps.size() - 1) : steps;
        boolean isItem = changed(old, now, list, (was, is) -> isWith(was, is, index, value), List.of(value))
                || changed(old, now, list, (was, is) -> is(null, is, List.of(was == null ? "" : was, value)), null);
        boolean isKeys = value instanceof Map<?, ?>
                && changed(old, now, steps, (was, is) -> hasMore(was, is, (Map<?, ?>) value), null);
        return isItem || isKeys || changed(old, now, steps, (was, is) -> false, value);
    }

    private static boolean isWith(Object was, Object is, Optional<Integer> index, Object value) {
        List<?> before = was instanceof List<?> list ? list : was == null ? List.of() : List.of(was);
        if (!(is instanceof List<?> list) || list.size() != before.size() + 1) {
            return false;
        }
        int at = index.orElse(before.size());
        List<Object> rest = new ArrayList<>(list);
        Object item = rest.remove(at);
        return rest.equals(before) && is(null, item, value);
    }

    private static boolean hasMore(Object was, Object is, Map<?, ?> more) {
        if (!(is instanceof Map<?, ?> map)) {
            return false;
        }
        Map<Object, Object> rest = new LinkedHashMap<>(map);
        boolean isThere =
                more.entrySet().stream().allMatch(entry -> is(null, rest.remove(entry.getKey()), entry.getValue()));
        return isThere && rest.equals(was == null ? Map.of() : was);
    }

    private static boolean isWithout(Object was, Object is, String step) {
        if (was instanceof Map<?, ?> map) {
            Map<Object, Object> rest = new LinkedHashMap<>(map);
            rest.remove(step);
            return rest.equals(is);
        }
        Optional<Integer> index = Steps.index(step);
        if (index.isEmpty() || !(was instanceof List<?> list) || index.get() >= list.size()) {
            return false;
        }
        List<Object> rest = new ArrayList<>(list);
        rest.remove((int) index.get());
        return rest.equals(is);
    }

    private static boolean isMoved(Object was, Object is, String step, int to) {
        if (was instanceof Map<?, ?> map && is instanceof Map<?, ?> other) {
            List<Object> keys = new ArrayList<>(map.keySet());
            if (keys.remove(step) && to <= keys.size()) {
                keys.add(to, step);
            }
            return map.equals(other) && new ArrayList<>(other.keySet()).equals(keys);
        }
        Optional<Integer> from = Steps.index(step);
        if (from.isEmpty() || !(was instanceof List<?> list) || Math.max(from.get(), to) >= list.size()) {
            return false;
        }
        List<Object> moved = new ArrayList<>(list);
        moved.add(to, moved.remove((int) from.get()));
        return moved.equals(is);
    }

    /** With another key in a mapping. */
    private static Object renamed(Object value, List<String> holder, String old, String name) {
        if (value instanceof Map<?, ?> map) {
            Map<Object, Object> copy = new LinkedHashMap<>();
            map.forEach((key, each) -> {
                boolean isOnTheWay = !holder.isEmpty() && key.equals(holder.get(0));
                copy.put(
                        holder.isEmpty() && key.equals(old) ? name : key,
                        isOnTheWay ? renamed(each, holder.subList(1, holder.size()), old, name) : each);
            });
            return copy;
        }
        if (value instanceof List<?> list && !holder.isEmpty()) {
            List<Object> copy = new ArrayList<>(list);
            Steps.index(holder.get(0))
                    .ifPresent(index ->
                            copy.set(index, renamed(list.get(index), holder.subList(1, holder.size()), old, name)));
            return copy;
        }
        return value;
    }

    /** Equal, but that a text that is the name, or a veil's layer, may be the new one; the reader sees to it that it is. */
    private static boolean isFollowed(Object was, Object is, String old, String name) {
        if (was instanceof Map<?, ?> map && is instanceof Map<?, ?> other) {
            return new ArrayList<>(map.keySet()).equals(new ArrayList<>(other.keySet()))
                    && map.keySet().stream().allMatch(key -> isFollowed(map.get(key), other.get(key), old, name));
        }
        if (was instanceof List<?> list && is instanceof List<?> other) {
            boolean isSame = list.size() == other.size();
            for (int k = 0; isSame && k < list.size(); k++) {
                isSame = isFollowed(list.get(k), other.get(k), old, name);
            }
            return isSame;
        }
        return Objects.equals(was, is)
                || (old.equals(was) && name.equals(is))
                || ((old + "-fill").equals(was) && (name + "-fill").equals(is));
    }
}
