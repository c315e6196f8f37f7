package org.warmvat.design.surroundings;

import org.warmvat.design.keys.Key;
import org.warmvat.design.keys.Ranges;

/**
 * A point of the line above which the sky begins; straight lines lead from point to point, round the circle.
 *
 * @param azimuthDeg clockwise from north, degrees; 360 is 0
 * @param elevationDeg above the level, degrees
 */
public record HorizonPoint(
        @Key(name = "azimuth_deg", says = "Direction, clockwise from north; 360 is 0", range = "0 to 360 deg")
        double azimuthDeg,

        @Key(name = "elevation_deg", says = "Height of the line above the level there", range = "0 to 89.9 deg")
        double elevationDeg) {

    /** Refuses angles out of range. */
    public HorizonPoint {
        Ranges.check(HorizonPoint.class, azimuthDeg, elevationDeg);
    }
}
