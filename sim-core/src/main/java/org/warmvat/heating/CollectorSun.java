package org.warmvat.heating;

import org.warmvat.design.Collector;
import org.warmvat.sun.TiltedIrradiance;
import org.warmvat.weather.Weather;

/**
 * The sun on a collector's plane hour by hour, per square metre: prepared once for a weather file, a plane and the optical
 * coefficients, and shared between runs (equations 4.4 and 5.1). Immutable.
 */
public final class CollectorSun {

    private final double[] totalWPerM2;
    private final double[] absorbedWPerM2;

    /**
     * Prepares the hours of a weather file.
     *
     * @param weather the hourly weather
     * @param collector plane and optics; its area does not matter
     * @param groundReflectance of sunlight, 0 to 1
     */
    public CollectorSun(Weather weather, Collector collector, double groundReflectance) {
        org.warmvat.sun.Plane plane = new org.warmvat.sun.Plane(
                collector.plane().tiltDeg(),
                collector.plane().azimuthDegAt(weather.site().latitudeDeg()));
        org.warmvat.sun.SkyModel sky =
                org.warmvat.sun.SkyModel.valueOf(collector.plane().skyModel().name());
        CollectorHeat heat = new CollectorHeat(collector);
        totalWPerM2 = new double[weather.hours()];
        absorbedWPerM2 = new double[weather.hours()];
        for (int hour = 0; hour < totalWPerM2.length; hour++) {
            if (weather.globalWPerM2(hour) > 0 || weather.beamWPerM2(hour) > 0 || weather.diffuseWPerM2(hour) > 0) {
                TiltedIrradiance light =
                        plane.irradiance(sky, groundReflectance, weather.light(hour), weather.sun(hour));
                totalWPerM2[hour] = light.totalWPerM2();
                absorbedWPerM2[hour] = heat.absorbedWPerM2(light);
            }
        }
    }

    /** Irradiance on the plane, mean of an hour. */
    public double totalWPerM2(int hour) {
        return totalWPerM2[hour];
    }

    /** Sun absorbed per area of collector, mean of an hour. */
    public double absorbedWPerM2(int hour) {
        return absorbedWPerM2[hour];
    }
}
