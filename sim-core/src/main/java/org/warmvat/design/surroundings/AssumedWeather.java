package org.warmvat.design.surroundings;

import org.warmvat.design.keys.Key;
import org.warmvat.design.keys.Ranges;

/**
 * What is taken where the weather file has no column (equation 4.1).
 *
 * @param windMPerS wind at 10 m, m/s
 * @param relativeHumidityFraction relative humidity
 * @param cloudFraction cloud cover
 */
public record AssumedWeather(
        @Key(name = "wind_m_s", says = "Wind at 10 m", range = "0 to 30 m/s", usual = "3")
        double windMPerS,

        @Key(name = "relative_humidity", says = "Relative humidity", range = "0.01 to 1", usual = "0.75")
        double relativeHumidityFraction,

        @Key(name = "cloud_fraction", says = "Cloud cover", range = "0 to 1", usual = "0.5")
        double cloudFraction) {

    /** Refuses numbers out of range. */
    public AssumedWeather {
        Ranges.check(AssumedWeather.class, windMPerS, relativeHumidityFraction, cloudFraction);
    }
}
