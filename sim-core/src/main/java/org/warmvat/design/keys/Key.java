package org.warmvat.design.keys;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * What there is to say about one key of the design file, beside the component that holds its value.
 *
 * <p>Without a name the component is a record, or one of several, whose keys stand in the same block as those around it.
 */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.RECORD_COMPONENT)
public @interface Key {

    /** Its name in the file; empty for a component whose own keys stand in this block. */
    String name() default "";

    /** Another spelling of the name; empty for none. */
    String also() default "";

    /** What it is and why it matters, one sentence without a full stop. */
    String says() default "";

    /** What a number may be, in the file's unit, and that unit, as messages say it: {@code 0 to 1000 m2}; empty for what is no number. */
    String range() default "";

    /** The record holds the file's number divided by this: 1000 for millimetres held in metres. */
    double per() default 1;

    /** The record holds the file's number times this: 3600 for hours held in seconds. */
    double times() default 1;

    /**
     * Default as the file would write it, in one line: {@code 2.0}, {@code legs}, {@code [00:00-24:00]}; of a block the defaults that
     * are other here than elsewhere, {@code {}} for none. Empty for none: the key is then required, unless it may be absent.
     */
    String usual() default "";

    /** What holds, in words, where the key is absent and has no fixed default; empty where absence means nothing. */
    String otherwise() default "";

    /** Pattern a text must match; empty for none. */
    String pattern() default "";

    /** What such a text looks like, for messages. */
    String form() default "";

    /** Least number of entries of a list. */
    int entries() default 0;

    /** A word that may stand for the value: of a number for {@link #means}, of anything else for its absence; empty for none. */
    String word() default "";

    /** The number that the word stands for. */
    double means() default Double.NaN;

    /** Whether its default, or those of the keys of its block, are left untold. */
    boolean quiet() default false;

    /** Of a named record: whether its keys may stand in this block in place of the name. */
    boolean beside() default false;

    /** Of a choice by a word: whether keys of another choice may stay in the file, with a caution that they have no effect. */
    boolean idle() default false;
}
