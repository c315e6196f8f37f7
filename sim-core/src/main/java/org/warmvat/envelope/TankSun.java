package org.warmvat.envelope;

import org.warmvat.design.Design;
import org.warmvat.design.surroundings.Shading;
import org.warmvat.design.tank.Shape;
import org.warmvat.sun.Irradiance;
import org.warmvat.sun.SkyView;
import org.warmvat.sun.SunHour;
import org.warmvat.sun.TankFaces;
import org.warmvat.weather.Weather;

/**
 * The sun on a tank's lid and wall hour by hour, behind what stands in its sky (equations 4.5, 13.1 and 13.2): prepared once for a
 * weather file. Immutable.
 */
public final class TankSun {

    private final double[] lidWPerM2;
    private final double[] wallWPerM2;
    private final double lidSkyFactor;
    private final double wallSkyFactor;

    /** Prepares the hours of a weather file. */
    public TankSun(Design design, Weather weather) {
        Shading shading = design.site().surroundings();
        double reflectance = design.site().ground().reflectance();
        lidSkyFactor = shading.horizon().lidSkyFactor();
        wallSkyFactor = shading.horizon().wallSkyFactor();
        double[] above = weather.sunSharesAbove(shading.horizon());
        lidWPerM2 = new double[weather.hours()];
        wallWPerM2 = new double[weather.hours()];
        for (int hour = 0; hour < lidWPerM2.length; hour++) {
            double shade = shading.shade(weather.month(hour));
            Irradiance light = weather.light(hour);
            SunHour sun = weather.sun(hour);
            lidWPerM2[hour] =
                    TankFaces.lidWPerM2(light, sun, new SkyView(above[hour], lidSkyFactor).behindTrees(shade));
            SkyView wall = new SkyView(above[hour], wallSkyFactor).behindTrees(shade);
            wallWPerM2[hour] = design.tank().shape() instanceof Shape.Box box
                    ? TankFaces.boxWallsWPerM2(light, sun, reflectance, box.azimuthDeg(), wall)
                    : TankFaces.cylinderWallWPerM2(light, sun, reflectance, wall);
        }
    }

    /** On the level lid, mean of an hour; also on the ground beside it. */
    public double lidWPerM2(int hour) {
        return lidWPerM2[hour];
    }

    /** On the wall, mean of an hour and of all its sides. */
    public double wallWPerM2(int hour) {
        return wallWPerM2[hour];
    }

    /** Share of its sky that the horizon leaves a level lid, 0..1. */
    public double lidSkyFactor() {
        return lidSkyFactor;
    }

    /** Share of its sky that the horizon leaves an upright wall, 0..1. */
    public double wallSkyFactor() {
        return wallSkyFactor;
    }
}
