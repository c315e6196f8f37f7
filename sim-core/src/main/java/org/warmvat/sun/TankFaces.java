package org.warmvat.sun;

/**
 * Irradiance on the faces of a tank, hour means, by closed forms (model equation 4.5). The sky is isotropic here; the
 * beam counts from 1 degree of elevation.
 */
public final class TankFaces {
    private TankFaces() {}

    /** On a horizontal lid behind a horizon and trees: the global irradiance less what they take of beam and sky. */
    public static double lidWPerM2(Irradiance light, SunHour sun, SkyView view) {
        return Math.max(
                0,
                light.globalWPerM2()
                        - (1 - view.sunShare()) * light.beamWPerM2() * sun.cosZenith()
                        - (1 - view.skyShare()) * light.diffuseWPerM2());
    }

    /**
     * On the wall of an upright cylinder, mean over its circumference: {@code DNI sin z/pi + DHI/2 + rho GHI/2}, behind a horizon and
     * trees; what the ground throws back stays.
     */
    public static double cylinderWallWPerM2(Irradiance light, SunHour sun, double groundReflectance, SkyView view) {
        double beam = sun.beamCounts() ? light.beamWPerM2() * sun.sinZenith() / Math.PI * view.sunShare() : 0;
        return beam + upright(light, groundReflectance, view);
    }

    /**
     * On the walls of a box, mean of the four sides, behind a horizon and trees; what the ground throws back stays.
     *
     * @param azimuthDeg how far the box is turned clockwise from north
     */
    public static double boxWallsWPerM2(
            Irradiance light, SunHour sun, double groundReflectance, double azimuthDeg, SkyView view) {
        double turn = Math.toRadians(sun.azimuthDeg() - azimuthDeg);
        double seen = (Math.abs(Math.cos(turn)) + Math.abs(Math.sin(turn))) / 4;
        double beam = sun.beamCounts() ? light.beamWPerM2() * sun.sinZenith() * seen * view.sunShare() : 0;
        return beam + upright(light, groundReflectance, view);
    }

    private static double upright(Irradiance light, double groundReflectance, SkyView view) {
        return light.diffuseWPerM2() / 2 * view.skyShare() + groundReflectance * light.globalWPerM2() / 2;
    }
}
