package org.warmvat.design;

import java.util.OptionalDouble;

/**
 * The collector's plane.
 *
 * @param tiltDeg tilt from level, degrees, 0..90
 * @param azimuthDeg where it faces, degrees clockwise from north, -360..360; absent: towards the equator of the weather's site
 * @param skyModel model of diffuse light
 */
public record Plane(double tiltDeg, OptionalDouble azimuthDeg, SkyModel skyModel) {

    /** Refuses angles out of range. */
    public Plane {
        Ranges.within("tilt in degrees", tiltDeg, 0, 90);
        azimuthDeg.ifPresent(azimuth -> Ranges.within("azimuth in degrees", azimuth, -360, 360));
    }

    /** Where it faces at a site, degrees clockwise from north: as given, else towards the equator (180 north of it, 0 south). */
    public double azimuthDegAt(double latitudeDeg) {
        return azimuthDeg.orElse(latitudeDeg >= 0 ? 180 : 0);
    }
}
