package org.warmvat.design.feeding;

/** How a number that is never known well is taken. */
public enum Estimate {
    /** As a poor batch would have it. */
    LOW,
    /** As it is stated. */
    MIDDLE,
    /** As a rich batch would have it. */
    HIGH
}
