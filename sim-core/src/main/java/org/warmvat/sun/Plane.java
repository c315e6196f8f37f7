package org.warmvat.sun;

/**
 * A flat surface outdoors (model equation 4.4).
 *
 * @param tiltDeg from the horizontal, 0 facing up, 90 upright, to 180
 * @param azimuthDeg of its normal, clockwise from north
 */
public record Plane(double tiltDeg, double azimuthDeg) {
    /** Checks the ranges. */
    public Plane {
        if (!(tiltDeg >= 0 && tiltDeg <= 180)) {
            throw new IllegalArgumentException("tilt out of range: " + tiltDeg);
        }
        if (!(Math.abs(azimuthDeg) <= 720)) {
            throw new IllegalArgumentException("azimuth out of range: " + azimuthDeg);
        }
    }

    /** Share of the sky seen by the plane, {@code (1 + cos b)/2}. */
    public double skyView() {
        return (1 + Math.cos(Math.toRadians(tiltDeg))) / 2;
    }

    /** Cosine of the angle between the beam and the normal; negative when the sun is behind the plane. */
    public double cosIncidence(SunHour sun) {
        double tilt = Math.toRadians(tiltDeg);
        double turn = Math.toRadians(sun.azimuthDeg() - azimuthDeg);
        double cosine = sun.cosZenith() * Math.cos(tilt) + sun.sinZenith() * Math.sin(tilt) * Math.cos(turn);
        return Math.max(-1, Math.min(1, cosine));
    }

    /**
     * Irradiance on the plane in one hour. A horizon and trees take from the beam, from the light of the sun's direction and from the sky;
     * what the ground throws back stays, and so do the sky model's own numbers, which are those of the open site.
     *
     * @param sky how the sky's light is spread; isotropic whatever is chosen when the sun is below 1 degree
     * @param groundReflectance 0 to 1
     * @param light the hour's irradiance
     * @param sun the hour's sun
     * @param view what is left of sun and sky
     * @return beam (nothing below 1 degree), sky and ground parts
     */
    public TiltedIrradiance irradiance(
            SkyModel sky, double groundReflectance, Irradiance light, SunHour sun, SkyView view) {
        boolean up = sun.beamCounts();
        double cosIncidence = sun.sunlitFraction() > 0 ? cosIncidence(sun) : 0;
        double beam = up ? light.beamWPerM2() * Math.max(0, cosIncidence) * view.sunShare() : 0;
        double diffuse = (up ? sky : SkyModel.ISOTROPIC).skyDiffuseWPerM2(this, light, sun, view);
        double ground = groundReflectance * light.globalWPerM2() * (1 - skyView());
        return new TiltedIrradiance(beam, diffuse, ground, Math.toDegrees(Math.acos(cosIncidence)));
    }
}
