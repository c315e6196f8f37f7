package org.warmvat.design.heating;

import java.util.OptionalDouble;
import org.warmvat.design.keys.Key;
import org.warmvat.design.keys.Ranges;
import org.warmvat.sun.SkyModel;

/**
 * The collector's plane.
 *
 * @param tiltDeg tilt from level, degrees
 * @param azimuthDeg where it faces, degrees clockwise from north; absent: towards the equator of the weather's site
 * @param skyModel model of diffuse light
 */
public record Mounting(
        @Key(name = "tilt_deg", says = "Tilt from level", range = "0 to 90 deg", usual = "60")
        double tiltDeg,

        @Key(
                name = "azimuth_deg",
                says = "Where the collector faces, clockwise from north",
                range = "-360 to 360 deg",
                otherwise = "towards the equator")
        OptionalDouble azimuthDeg,

        @Key(
                name = "sky_model",
                says =
                        "Model of diffuse light on the collector: alike from everywhere, Hay and Davies (1980) or Perez et al. (1990)",
                usual = "hay_davies")
        SkyModel skyModel) {

    /** Refuses angles out of range. */
    public Mounting {
        Ranges.check(Mounting.class, tiltDeg, azimuthDeg, skyModel);
    }

    /** Where it faces at a site, degrees clockwise from north: as given, else towards the equator (180 north of it, 0 south). */
    public double azimuthDegAt(double latitudeDeg) {
        return azimuthDeg.orElse(latitudeDeg >= 0 ? 180 : 0);
    }
}
