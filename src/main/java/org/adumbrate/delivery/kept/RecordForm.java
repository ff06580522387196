package org.adumbrate.delivery.kept;

import java.lang.reflect.AccessibleObject;
import java.lang.reflect.Constructor;
import java.lang.reflect.Method;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** How records of one class are taken apart and put together again, by way of their own checks. */
final class RecordForm {
    private final Constructor<?> maker;
    private final List<Method> accessors = new ArrayList<>();

    private RecordForm(Constructor<?> maker) {
        this.maker = maker;
    }

    /** @param type a class of records */
    static RecordForm of(Class<?> type) throws ReflectiveOperationException {
        RecordComponent[] components = type.getRecordComponents();
        Class<?>[] types =
                Arrays.stream(components).map(RecordComponent::getType).toArray(Class<?>[]::new);
        RecordForm form = new RecordForm(opened(type.getDeclaredConstructor(types)));
        for (RecordComponent component : components) {
            form.accessors.add(opened(component.getAccessor()));
        }
        return form;
    }

    private static <T extends AccessibleObject> T opened(T member) {
        member.setAccessible(true);
        return member;
    }

    /** How many components a record has. */
    int size() {
        return accessors.size();
    }

    /** A component of a record. */
    Object component(Object instance, int k) throws ReflectiveOperationException {
        return accessors.get(k).invoke(instance);
    }

    /** A record of its components. */
    Object make(Object... components) throws ReflectiveOperationException {
        return maker.newInstance(components);
    }
}
