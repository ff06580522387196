package org.adumbrate.sheetfile;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * What one key of the sheet file means and may hold. The key is the component's name with hyphens; the reader and the
 * JSON Schema both follow what is said here and nothing else.
 */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.RECORD_COMPONENT)
public @interface Key {
    /** What it means, for whoever writes the key; a sentence. */
    String value();

    /** What holds where the key is left out, as one would write it; without it the key must be given. */
    String byDefault() default "";

    /** For a key that holds a mapping: another default for one of the keys in it, such as {@code opacity: 45}. */
    String innerDefault() default "";

    /** The least number allowed, in the measure's own unit. */
    double min() default Double.NEGATIVE_INFINITY;

    /** A number that must be exceeded, in the measure's own unit. */
    double above() default Double.NEGATIVE_INFINITY;

    /** The greatest number allowed, in the measure's own unit. */
    double max() default Double.POSITIVE_INFINITY;

    /** The only whole numbers allowed; empty for no such limit. */
    int[] choices() default {};

    /** The least length of a list. */
    int atLeast() default 0;

    /** True where a list of one may be written as its item alone. */
    boolean oneOrMany() default false;

    /** The unit that may follow a whole number. */
    String unit() default "";

    /** For a file to be written: the endings that it may have. A file without endings is read, and so must exist. */
    String[] ends() default {};
}
