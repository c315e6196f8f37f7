package org.warmvat.sun;

/**
 * The sun over one hour, taken at the middle of the part of the hour in which it is above the horizon (model equation
 * 4.2).
 *
 * @param sunlitFraction share of the hour with the disc's centre, as seen through the bending air, above 0 degrees
 * @param zenithDeg apparent (refracted) zenith angle at the middle of the sunlit part; 90 when the sun stays down
 * @param azimuthDeg clockwise from north at that time; 0 when the sun stays down
 * @param extraterrestrialNormalWPerM2 irradiance outside the atmosphere, facing the sun
 * @param leastBeamElevationDeg below this apparent elevation the beam is ignored and the sky is taken as isotropic
 */
public record SunHour(
        double sunlitFraction,
        double zenithDeg,
        double azimuthDeg,
        double extraterrestrialNormalWPerM2,
        double leastBeamElevationDeg) {

    /** The usual least elevation of the beam (model equation 4.4). */
    public static final double LEAST_BEAM_ELEVATION_DEG = 1.0;

    /** An hour wholly without sun. */
    public static final SunHour DARK = new SunHour(0, 90, 0, 0);

    /** Checks the ranges. */
    public SunHour {
        if (!(sunlitFraction >= 0 && sunlitFraction <= 1)) {
            throw new IllegalArgumentException("sunlit fraction out of range: " + sunlitFraction);
        }
        if (!(zenithDeg >= 0 && zenithDeg <= 180)) {
            throw new IllegalArgumentException("zenith out of range: " + zenithDeg);
        }
    }

    /** An hour with the usual least elevation of the beam. */
    public SunHour(double sunlitFraction, double zenithDeg, double azimuthDeg, double extraterrestrialNormalWPerM2) {
        this(sunlitFraction, zenithDeg, azimuthDeg, extraterrestrialNormalWPerM2, LEAST_BEAM_ELEVATION_DEG);
    }

    /** Apparent elevation above the horizon, degrees. */
    public double elevationDeg() {
        return 90 - zenithDeg;
    }

    /** Cosine of the apparent zenith angle. */
    public double cosZenith() {
        return Math.cos(Math.toRadians(zenithDeg));
    }

    /** Sine of the apparent zenith angle. */
    public double sinZenith() {
        return Math.sin(Math.toRadians(zenithDeg));
    }

    /** Whether the sun stands high enough for its beam to count: in the sky, and at the least elevation or above. */
    public boolean beamCounts() {
        return sunlitFraction > 0 && elevationDeg() >= leastBeamElevationDeg;
    }

    /** Extraterrestrial normal irradiance as a mean over the whole hour, {@code f I0n}. */
    public double hourMeanNormalWPerM2() {
        return sunlitFraction * extraterrestrialNormalWPerM2;
    }
}
