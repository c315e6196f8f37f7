package org.warmvat.sun;

/**
 * Sky diffuse irradiance by R. Perez, P. Ineichen, R. Seals, J. Michalsky and R. Stewart (1990), "Modeling daylight
 * availability and irradiance components from direct and global irradiance", Solar Energy 44(5) 271-289, table 6 (all
 * sites), with {@link AirMass}. Clearness and brightness are those of the sunlit part of the hour.
 */
final class Perez1990 {
    /** Lower edges of the clearness bins. */
    private static final double[] CLEARNESS_FROM = {1.000, 1.065, 1.230, 1.500, 1.950, 2.800, 4.500, 6.200};
    /** f11, f12, f13, f21, f22, f23 of each bin. */
    private static final double[][] COEFFICIENTS = {
        {-0.008, 0.588, -0.062, -0.060, 0.072, -0.022},
        {0.130, 0.683, -0.151, -0.019, 0.066, -0.029},
        {0.330, 0.487, -0.221, 0.055, -0.064, -0.026},
        {0.568, 0.187, -0.295, 0.109, -0.152, -0.014},
        {0.873, -0.392, -0.362, 0.226, -0.462, 0.001},
        {1.132, -1.237, -0.412, 0.288, -0.823, 0.056},
        {1.060, -1.600, -0.359, 0.264, -1.127, 0.131},
        {0.678, -0.327, -0.250, 0.156, -1.377, 0.251},
    };

    private static final double KAPPA = 1.041;

    private Perez1990() {}

    static double skyDiffuseWPerM2(Plane plane, Irradiance light, SunHour sun, SkyView view) {
        double diffuse = light.diffuseWPerM2();
        if (diffuse <= 0) {
            return 0;
        }
        double zenith = Math.toRadians(sun.zenithDeg());
        double sunlitDiffuse = diffuse / sun.sunlitFraction();
        double cube = KAPPA * zenith * zenith * zenith;
        double clearness = (1 + light.beamWPerM2() / diffuse + cube) / (1 + cube);
        double brightness =
                sunlitDiffuse * AirMass.kastenYoung1989(sun.zenithDeg()) / sun.extraterrestrialNormalWPerM2();
        double[] f = COEFFICIENTS[bin(clearness)];
        double f1 = Math.max(0, f[0] + f[1] * brightness + f[2] * zenith);
        double f2 = f[3] + f[4] * brightness + f[5] * zenith;
        double a = Math.max(0, plane.cosIncidence(sun));
        double c = Math.max(SkyModel.COS_85_DEG, sun.cosZenith());
        double sinTilt = Math.sin(Math.toRadians(plane.tiltDeg()));
        return Math.max(
                0,
                diffuse
                        * ((1 - f1) * plane.skyView() * view.skyShare()
                                + f1 * a / c * view.sunShare()
                                + f2 * sinTilt * view.skyShare()));
    }

    static int bin(double clearness) {
        int bin = CLEARNESS_FROM.length - 1;
        while (bin > 0 && clearness < CLEARNESS_FROM[bin]) {
            bin--;
        }
        return bin;
    }
}
