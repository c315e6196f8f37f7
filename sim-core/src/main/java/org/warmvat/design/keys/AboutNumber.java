package org.warmvat.design.keys;

/** A record that a file may write as one number; it has a static factory {@code ofNumber(double)}. */
public interface AboutNumber {

    /** The number itself. */
    double middle();

    /** Whether there is nothing beside the number. */
    boolean plain();
}
