package org.warmvat.heating;

import org.warmvat.design.heating.Collector;
import org.warmvat.design.surroundings.Shading;
import org.warmvat.sun.Plane;
import org.warmvat.sun.SkyModel;
import org.warmvat.sun.SkyView;
import org.warmvat.sun.TiltedIrradiance;
import org.warmvat.weather.Weather;

/**
 * The sun on a collector's plane hour by hour, per square metre: prepared once for a weather file, a plane, what stands in its sky
 * and the optical coefficients, and shared between runs (equations 4.4, 5.1 and 13.1 to 13.3). Immutable.
 */
public final class CollectorSun {

    private final double[] totalWPerM2;
    private final double[] absorbedWPerM2;
    private final double skyFactor;

    /**
     * Prepares the hours of a weather file.
     *
     * @param weather the hourly weather
     * @param collector plane and optics; its area does not matter
     * @param shading what stands in its sky
     * @param groundReflectance of sunlight, 0 to 1
     */
    public CollectorSun(Weather weather, Collector collector, Shading shading, double groundReflectance) {
        Plane plane = new Plane(
                collector.plane().tiltDeg(),
                collector.plane().azimuthDegAt(weather.site().latitudeDeg()));
        SkyModel sky = collector.plane().skyModel();
        IncidenceModifiers modifiers = new IncidenceModifiers(collector.incidence());
        skyFactor = shading.horizon().skyFactor(plane);
        double[] above = weather.sunSharesAbove(shading.horizon());
        totalWPerM2 = new double[weather.hours()];
        absorbedWPerM2 = new double[weather.hours()];
        for (int hour = 0; hour < totalWPerM2.length; hour++) {
            if (weather.globalWPerM2(hour) > 0 || weather.beamWPerM2(hour) > 0 || weather.diffuseWPerM2(hour) > 0) {
                SkyView view = new SkyView(above[hour], skyFactor).behindTrees(shading.shade(weather.month(hour)));
                TiltedIrradiance light =
                        plane.irradiance(sky, groundReflectance, weather.light(hour), weather.sun(hour), view);
                totalWPerM2[hour] = light.totalWPerM2();
                absorbedWPerM2[hour] = collector.eta0() * modifiers.takenWPerM2(plane, weather.sun(hour), light);
            }
        }
    }

    /** Irradiance on the plane, mean of an hour. */
    public double totalWPerM2(int hour) {
        return totalWPerM2[hour];
    }

    /** Sun absorbed per area of collector, mean of an hour, before what wind takes of it. */
    public double absorbedWPerM2(int hour) {
        return absorbedWPerM2[hour];
    }

    /** Share of the isotropic sky light that the horizon leaves on the plane, 0..1. */
    public double skyFactor() {
        return skyFactor;
    }
}
