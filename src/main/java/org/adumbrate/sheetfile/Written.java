package org.adumbrate.sheetfile;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** How a record is written, where it is not just a mapping of its keys. */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.TYPE)
public @interface Written {
    /** As a list: of its components in their order or, where its only component is a list, as that list. */
    boolean asList() default false;

    /** The first component alone may stand for the whole; the others must have defaults. */
    boolean orFirstAlone() default false;

    /** True for a record that occurs in many places: the JSON Schema tells it once, by its name. */
    boolean shared() default false;

    /** How many of its keys must be given. */
    int atLeast() default 0;

    /** Keys that are given all or none. */
    String[] together() default {};

    /** Keys of which at most one may be given. */
    String[] notTogether() default {};

    /** A key, and others that may be given only beside it. */
    String[] onlyWith() default {};
}
