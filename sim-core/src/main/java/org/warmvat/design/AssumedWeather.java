package org.warmvat.design;

/**
 * What is taken where the weather file has no column (equation 4.1).
 *
 * @param windMPerS wind at 10 m, m/s, 0..30
 * @param relativeHumidityFraction relative humidity, 0.01..1
 * @param cloudFraction cloud cover, 0..1
 */
public record AssumedWeather(double windMPerS, double relativeHumidityFraction, double cloudFraction) {

    /** Refuses numbers out of range. */
    public AssumedWeather {
        Ranges.within("assumed wind in m/s", windMPerS, 0, 30);
        Ranges.within("assumed relative humidity", relativeHumidityFraction, 0.01, 1);
        Ranges.within("assumed cloud fraction", cloudFraction, 0, 1);
    }
}
