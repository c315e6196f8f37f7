package org.warmvat.design.keys;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** The word of the file that chooses this record among its like; a record whose first component is a word of its own has none. */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.TYPE)
public @interface Word {

    /** The word, lower case. */
    String value();
}
