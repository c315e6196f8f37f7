package org.warmvat.sun;

/**
 * What falls on a plane, as means of the hour (model equation 4.4).
 *
 * @param beamWPerM2 straight from the sun
 * @param skyDiffuseWPerM2 from the sky
 * @param groundWPerM2 thrown back by the ground
 * @param incidenceDeg between the beam and the plane's normal, 0 to 180; 90 when the sun stays down
 */
public record TiltedIrradiance(double beamWPerM2, double skyDiffuseWPerM2, double groundWPerM2, double incidenceDeg) {
    /** Beam, sky and ground together. */
    public double totalWPerM2() {
        return beamWPerM2 + skyDiffuseWPerM2 + groundWPerM2;
    }
}
