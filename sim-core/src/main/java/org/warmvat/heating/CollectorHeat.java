package org.warmvat.heating;

import org.warmvat.design.Collector;
import org.warmvat.sun.TiltedIrradiance;

/**
 * What a collector takes from the sun and loses to the air (equation 5.1; coefficients as in ISO 9806).
 *
 * @param collector the collector
 */
public record CollectorHeat(Collector collector) {

    /** Modifier of the beam, {@code max(0, 1 - b0 (1/cos th - 1))}, 0 past the limit of incidence. */
    public double beamModifier(double incidenceDeg) {
        Collector.Incidence incidence = collector.incidence();
        if (incidenceDeg >= incidence.limitDeg()) {
            return 0;
        }
        return Math.max(0, 1 - incidence.b0() * (1 / Math.cos(Math.toRadians(incidenceDeg)) - 1));
    }

    /** Sun absorbed per area of the collector, W/m2. */
    public double absorbedWPerM2(TiltedIrradiance light) {
        double effective = beamModifier(light.incidenceDeg()) * light.beamWPerM2()
                + collector.incidence().kd() * (light.skyDiffuseWPerM2() + light.groundWPerM2());
        return collector.eta0() * effective;
    }

    /** Linear loss of the whole collector, W/K. */
    public double linearWPerK() {
        return collector.areaM2() * collector.a1WPerM2K();
    }

    /** Heat received by the quadratic term at a difference to the air, W: negative when warmer than the air. */
    public double quadraticW(double differenceK) {
        return -collector.areaM2() * collector.a2WPerM2K2() * differenceK * Math.abs(differenceK);
    }

    /** Slope of {@link #quadraticW} by the collector's temperature, W/K. */
    public double quadraticSlopeWPerK(double differenceK) {
        return -2 * collector.areaM2() * collector.a2WPerM2K2() * Math.abs(differenceK);
    }

    /** How fast that slope changes with the collector's temperature, W/K2. */
    public double quadraticBendWPerK2(double differenceK) {
        return -2 * collector.areaM2() * collector.a2WPerM2K2() * Math.signum(differenceK);
    }
}
