package org.warmvat.weather;

/** Sky temperature in time: a step for each hour, or straight lines between stamps (model equation 4.6). */
sealed interface SkySeries {
    /** Temperature in an hour at a time in seconds since the weather's start. */
    double atC(int hour, double secondsSinceStart);

    /** From hour-mean long-wave irradiance. */
    record Stepped(double[] hourC) implements SkySeries {
        @Override
        public double atC(int hour, double secondsSinceStart) {
            return hourC[hour];
        }
    }

    /** From air, dew point and cloud at the stamps. */
    record Sloped(Linear stampC) implements SkySeries {
        @Override
        public double atC(int hour, double secondsSinceStart) {
            return stampC.at(secondsSinceStart);
        }
    }
}
