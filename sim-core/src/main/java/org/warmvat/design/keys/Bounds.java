package org.warmvat.design.keys;

/**
 * What a number may be by its key alone, in the file's unit.
 *
 * @param least least allowed
 * @param most most allowed
 * @param whole whether it must be a whole number
 */
public record Bounds(double least, double most, boolean whole) {

    /** The nearest number that is allowed. */
    public double nearest(double value) {
        double within = Math.max(least, Math.min(most, value));
        return whole ? Math.rint(within) : within;
    }

    /** Whether a number lies within the ends. */
    public boolean holds(double value) {
        return value >= least && value <= most;
    }
}
