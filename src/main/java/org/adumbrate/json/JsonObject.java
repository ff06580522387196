package org.adumbrate.json;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * An object that was read. Whatever is asked of it is there and of the kind that was asked for, or a fault says what was
 * expected where.
 *
 * @param members by name; values are maps, lists, texts, doubles, truth values and null
 */
public record JsonObject(Map<String, Object> members) {
    static JsonObject of(Object value, String where) throws JsonFault {
        if (value instanceof Map<?, ?> map) {
            @SuppressWarnings("unchecked") // the reader makes no other maps
            Map<String, Object> members = (Map<String, Object>) map;
            return new JsonObject(members);
        }
        throw new JsonFault(where + ": expected an object");
    }

    /** Whether there is a member of that name which is not null. */
    public boolean has(String name) {
        return members.get(name) != null;
    }

    /** A text. */
    public String text(String name) throws JsonFault {
        return (String) of(name, String.class, "a text");
    }

    /** A truth value; false where it is missing. */
    public boolean flag(String name) throws JsonFault {
        return has(name) && (Boolean) of(name, Boolean.class, "true or false");
    }

    /** A whole number. */
    public long whole(String name) throws JsonFault {
        double number = (Double) of(name, Double.class, "a whole number");
        if (number != Math.rint(number) || Math.abs(number) > 1L << 53) {
            throw new JsonFault(name + ": expected a whole number");
        }
        return (long) number;
    }

    /** An object, if it is there. */
    public Optional<JsonObject> object(String name) throws JsonFault {
        return has(name) ? Optional.of(of(members.get(name), name)) : Optional.empty();
    }

    /** The objects of a list. */
    public List<JsonObject> objects(String name) throws JsonFault {
        List<JsonObject> objects = new ArrayList<>();
        for (Object item : items(name)) {
            objects.add(of(item, name));
        }
        return objects;
    }

    /** The texts of a list; none where it is missing. */
    public List<String> texts(String name) throws JsonFault {
        List<String> texts = new ArrayList<>();
        for (Object item : has(name) ? items(name) : List.of()) {
            if (!(item instanceof String text)) {
                throw new JsonFault(name + ": expected a list of texts");
            }
            texts.add(text);
        }
        return texts;
    }

    /**
     * The numbers of a list.
     *
     * @param count how many there must be
     */
    public double[] numbers(String name, int count) throws JsonFault {
        List<?> items = items(name);
        double[] numbers = new double[items.size()];
        for (int k = 0; k < numbers.length; k++) {
            if (!(items.get(k) instanceof Double number)) {
                throw new JsonFault(name + ": expected a list of numbers");
            }
            numbers[k] = number;
        }
        if (numbers.length != count) {
            throw new JsonFault(name + ": expected " + count + " numbers, and found " + numbers.length);
        }
        return numbers;
    }

    private List<?> items(String name) throws JsonFault {
        return (List<?>) of(name, List.class, "a list");
    }

    private Object of(String name, Class<?> type, String expected) throws JsonFault {
        Object value = members.get(name);
        if (!type.isInstance(value)) {
            throw new JsonFault(name + ": expected " + expected);
        }
        return value;
    }
}
