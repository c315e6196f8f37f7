package org.warmvat.regression;

/**
 * Something to be fitted.
 *
 * @param name what it is called
 * @param start where the search starts
 * @param least no less is tried
 * @param most no more is tried
 * @param step by which it is moved to see what the model makes of it, small against what matters, large against the model's
 *     own noise
 */
public record Parameter(String name, double start, double least, double most, double step) {

    /** Checks the order of the bounds. */
    public Parameter {
        if (!(least <= start && start <= most && step > 0 && least < most)) {
            throw new IllegalArgumentException(
                    name + ": start " + start + ", expected " + least + " to " + most + ", and a step above 0");
        }
    }

    double held(double value) {
        return Math.max(least, Math.min(most, value));
    }
}
