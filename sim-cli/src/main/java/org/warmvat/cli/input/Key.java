package org.warmvat.cli.input;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** What the schema and the documentation say about one key of the design file. */
@Retention(RetentionPolicy.RUNTIME)
@Target({ElementType.FIELD, ElementType.RECORD_COMPONENT})
@interface Key {

    /** What it is and why it matters, one sentence without a full stop. */
    String says();

    /** Its unit as printed in messages; empty for none. */
    String unit() default "";

    /** Least allowed number; NaN for no bound. */
    double least() default Double.NaN;

    /** Number it must be above; NaN for no such bound. */
    double above() default Double.NaN;

    /** Most allowed number; NaN for no bound. */
    double most() default Double.NaN;

    /** Default as JSON text; empty for none. */
    String usual() default "";

    /**
     * When the default holds, as terms joined by {@code " and "}: {@code KEY absent}, {@code KEY is VALUE}, {@code KEY is not VALUE}, the
     * keys being neighbours that stand before this one; empty for always.
     */
    String when() default "";

    /** What holds, in words, where the key is absent and has no fixed default; empty where absence means nothing. */
    String otherwise() default "";

    /** Pattern a text must match; empty for none. */
    String pattern() default "";

    /** What such a text looks like, for messages. */
    String form() default "";

    /** Least number of entries of a list. */
    int entries() default 0;
}
