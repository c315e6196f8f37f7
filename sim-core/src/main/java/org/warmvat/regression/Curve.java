package org.warmvat.regression;

/** A model of a series: what it makes of some parameters at the times of the observations. */
@FunctionalInterface
public interface Curve {

    /**
     * The series for some parameters.
     *
     * @param parameters in the order in which they were declared; not to be changed
     * @return as many values as there are observations
     */
    double[] at(double[] parameters);
}
