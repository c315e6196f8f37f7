package org.warmvat.weather;

import java.util.List;
import org.warmvat.physics.Require;

/**
 * What is taken where a weather file has no column, and conventions about sun and sky (model equations 4.1 to 4.6).
 *
 * @param windMPerS wind at 10 m where the file has none, m/s, 0..30
 * @param relativeHumidityFraction relative humidity where the file has no humidity, 0.01..1
 * @param cloudFraction cloud cover where the file has neither cloud nor long-wave irradiance, 0..1
 * @param cloudFactor how far full cloud closes the gap between clear-sky emissivity and 1, 0..1
 * @param refractionAirC air temperature taken for refraction, °C, -40..40
 * @param leastBeamElevationDeg a lower sun gives no beam on any plane, degrees, 0..10
 */
public record Conventions(
        double windMPerS,
        double relativeHumidityFraction,
        double cloudFraction,
        double cloudFactor,
        double refractionAirC,
        double leastBeamElevationDeg) {

    /** Those of the model page. */
    public static final Conventions USUAL = new Conventions(3, 0.75, 0.5, 0.8, 10, 1);

    /** Refuses numbers out of range. */
    public Conventions {
        Require.within("assumed wind in m/s", windMPerS, 0, 30);
        Require.within("assumed relative humidity", relativeHumidityFraction, 0.01, 1);
        Require.within("assumed cloud fraction", cloudFraction, 0, 1);
        Require.within("cloud factor", cloudFactor, 0, 1);
        Require.within("air temperature for refraction in °C", refractionAirC, -40, 40);
        Require.within("least elevation of beam in degrees", leastBeamElevationDeg, 0, 10);
    }

    /** All of them. Held against each other as numbers, since Java makes the comparison of a record at its first use, for milliseconds. */
    public List<Double> numbers() {
        return List.of(
                windMPerS, relativeHumidityFraction, cloudFraction, cloudFactor, refractionAirC, leastBeamElevationDeg);
    }
}
