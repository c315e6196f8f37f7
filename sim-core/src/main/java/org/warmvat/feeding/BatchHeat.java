package org.warmvat.feeding;

import org.warmvat.design.feeding.Hygienisation;

/**
 * Heat that a batch takes before it is fed (equation 15.1), per kg of the stream that is heated.
 *
 * @param hygienisation how it is heated
 * @param stream what is heated
 */
public record BatchHeat(Hygienisation hygienisation, FeedStream stream) {

    /** Heat passed on by the batch before, J/kg, to feed of some temperature. */
    public double recoveredJPerKg(double feedC) {
        double riseK = hygienisation.heat().temperatureC() - Math.max(feedC, 0);
        return hygienisation.recovery() * stream.specificHeatJPerKgK() * riseK;
    }

    /** Heat to be supplied after recovery, J/kg, without the vessel's loss. */
    public double heatJPerKg(double feedC) {
        return stream.enthalpyJPerKg(hygienisation.heat().temperatureC())
                - stream.enthalpyJPerKg(feedC)
                - recoveredJPerKg(feedC);
    }
}
