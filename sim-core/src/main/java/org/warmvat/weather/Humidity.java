package org.warmvat.weather;

/**
 * Dew point and relative humidity over water by the Magnus formula of WMO No. 8 (Guide to Instruments and Methods of
 * Observation), {@code e_s = 611.2 exp(17.62 T/(243.12 + T))} Pa; good to about 0.5 % from -45 to 60 degrees C.
 */
public final class Humidity {
    private static final double A = 17.62;
    private static final double B = 243.12;
    /** Drier air than this is not told apart: the dew point of nothing would be minus infinity. */
    private static final double LEAST_FRACTION = 0.001;

    private Humidity() {}

    /** Saturation vapour pressure over water, Pa. */
    public static double saturationPa(double temperatureC) {
        return 611.2 * Math.exp(A * temperatureC / (B + temperatureC));
    }

    /**
     * Dew point.
     *
     * @param airC air temperature
     * @param relativeHumidityFraction 0 to 1; below 0.001 it counts as 0.001
     */
    public static double dewPointC(double airC, double relativeHumidityFraction) {
        double x = Math.log(Math.max(LEAST_FRACTION, relativeHumidityFraction)) + A * airC / (B + airC);
        return B * x / (A - x);
    }

    /** Relative humidity, a fraction; above 1 when the dew point is above the air temperature. */
    public static double relativeHumidityFraction(double airC, double dewPointC) {
        return saturationPa(dewPointC) / saturationPa(airC);
    }
}
