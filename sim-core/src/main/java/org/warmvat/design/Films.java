package org.warmvat.design;

/**
 * Surface coefficients inside and outside, W/(m2 K).
 *
 * @param wetWPerM2K slurry to wetted wall and floor, 1..5000 (equation 2.3)
 * @param surfaceWPerM2K slurry surface to headspace, 0.1..1000
 * @param dryWPerM2K headspace to lid and dry wall, 0.1..1000
 * @param outerStillWPerM2K outer convection in still air, 0.1..100 (equation 2.4)
 * @param outerPerWindJPerM3K rise of outer convection per m/s of wind at the tank, W/(m2 K) per m/s, 0..50
 * @param indoorWPerM2K whole outer coefficient in a room, 0.1..100
 */
public record Films(
        double wetWPerM2K,
        double surfaceWPerM2K,
        double dryWPerM2K,
        double outerStillWPerM2K,
        double outerPerWindJPerM3K,
        double indoorWPerM2K) {

    /** Refuses coefficients out of range. */
    public Films {
        Ranges.within("wet film in W/m2K", wetWPerM2K, 1, 5000);
        Ranges.within("surface film in W/m2K", surfaceWPerM2K, 0.1, 1000);
        Ranges.within("dry film in W/m2K", dryWPerM2K, 0.1, 1000);
        Ranges.within("outer still-air film in W/m2K", outerStillWPerM2K, 0.1, 100);
        Ranges.within("outer film per m/s of wind in W/m2K", outerPerWindJPerM3K, 0, 50);
        Ranges.within("indoor film in W/m2K", indoorWPerM2K, 0.1, 100);
    }
}
