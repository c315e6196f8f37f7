package org.warmvat.weather;

import java.util.Arrays;
import java.util.Optional;

/** A column of hourly weather: its name in Warmvat's own file and its physical limits there. */
public enum Quantity {
    /** Dry-bulb air temperature at the stamp. */
    AIR("air_c", -90, 60),
    /** Dew point at the stamp. */
    DEW_POINT("dew_point_c", -110, 45),
    /** Relative humidity at the stamp, a fraction. */
    RELATIVE_HUMIDITY("relative_humidity", 0, 1),
    /** Wind speed at 10 m at the stamp. */
    WIND("wind_m_s", 0, 60),
    /** Air pressure of the row. */
    PRESSURE("pressure_hpa", 400, 1100),
    /** Global irradiance on the horizontal, mean of the hour; a few watts below 0 count as 0. */
    GLOBAL("global_w_m2", -20, 1600),
    /** Beam irradiance facing the sun, mean of the hour. */
    BEAM("beam_w_m2", -20, 1450),
    /** Diffuse irradiance on the horizontal, mean of the hour. */
    DIFFUSE("diffuse_w_m2", -20, 1200),
    /** Cloud cover, a fraction. */
    CLOUD("cloud_fraction", 0, 1),
    /** Downward long-wave irradiance, mean of the hour. */
    LONGWAVE("longwave_w_m2", 40, 700),
    /** Ground temperature at the stamp. */
    GROUND("ground_c", -60, 60);

    private final String key;
    private final double least;
    private final double most;

    Quantity(String key, double least, double most) {
        this.key = key;
        this.least = least;
        this.most = most;
    }

    /** The column's name in Warmvat's own file. */
    public String key() {
        return key;
    }

    /** Lowest value taken. */
    public double least() {
        return least;
    }

    /** Highest value taken. */
    public double most() {
        return most;
    }

    /** Whether the value is a short-wave irradiance, of which small negative values are sensor noise. */
    public boolean isSunlight() {
        return this == GLOBAL || this == BEAM || this == DIFFUSE;
    }

    /** The quantity with a key. */
    public static Optional<Quantity> ofKey(String key) {
        return Arrays.stream(values()).filter(q -> q.key.equals(key)).findFirst();
    }
}
