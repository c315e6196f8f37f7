package org.warmvat.sun;

/**
 * Irradiance of one hour as its mean over the whole hour (model section 4.3).
 *
 * @param globalWPerM2 on the horizontal
 * @param beamWPerM2 facing the sun
 * @param diffuseWPerM2 from the sky on the horizontal
 */
public record Irradiance(double globalWPerM2, double beamWPerM2, double diffuseWPerM2) {
    /** Darkness. */
    public static final Irradiance NONE = new Irradiance(0, 0, 0);

    /** Checks that nothing is negative. */
    public Irradiance {
        if (!(globalWPerM2 >= 0 && beamWPerM2 >= 0 && diffuseWPerM2 >= 0)) {
            throw new IllegalArgumentException(
                    "negative irradiance: " + globalWPerM2 + ", " + beamWPerM2 + ", " + diffuseWPerM2);
        }
    }

    /** Splits global irradiance by Erbs, Klein and Duffie (1982); below 1 degree all is diffuse (equation 4.3). */
    public static Irradiance ofGlobal(double globalWPerM2, SunHour sun) {
        if (!sun.beamCounts()) {
            return new Irradiance(globalWPerM2, 0, globalWPerM2);
        }
        double clearness = globalWPerM2 / (sun.hourMeanNormalWPerM2() * sun.cosZenith());
        return ofGlobalAndDiffuse(globalWPerM2, globalWPerM2 * Erbs1982.hourlyDiffuseFraction(clearness), sun);
    }

    /**
     * Closes {@code GHI = DNI cos z + DHI} for the beam. The beam never exceeds what arrives outside the atmosphere, the
     * rest then being diffuse; below 1 degree all is diffuse, since there the division would only magnify errors.
     */
    public static Irradiance ofGlobalAndDiffuse(double globalWPerM2, double diffuseWPerM2, SunHour sun) {
        if (!sun.beamCounts()) {
            return new Irradiance(globalWPerM2, 0, globalWPerM2);
        }
        double beam = Math.max(0, (globalWPerM2 - diffuseWPerM2) / sun.cosZenith());
        double most = sun.hourMeanNormalWPerM2();
        return beam > most
                ? new Irradiance(globalWPerM2, most, Math.max(0, globalWPerM2 - most * sun.cosZenith()))
                : new Irradiance(globalWPerM2, beam, diffuseWPerM2);
    }

    /** Closes {@code GHI = DNI cos z + DHI} for the diffuse part, which is never below 0. */
    public static Irradiance ofGlobalAndBeam(double globalWPerM2, double beamWPerM2, SunHour sun) {
        double horizontal = sun.sunlitFraction() > 0 ? beamWPerM2 * Math.max(0, sun.cosZenith()) : 0;
        return new Irradiance(globalWPerM2, beamWPerM2, Math.max(0, globalWPerM2 - horizontal));
    }

    /** Closes {@code GHI = DNI cos z + DHI} for the global irradiance. */
    public static Irradiance ofBeamAndDiffuse(double beamWPerM2, double diffuseWPerM2, SunHour sun) {
        double horizontal = sun.sunlitFraction() > 0 ? beamWPerM2 * Math.max(0, sun.cosZenith()) : 0;
        return new Irradiance(horizontal + diffuseWPerM2, beamWPerM2, diffuseWPerM2);
    }
}
