package org.warmvat.heating;

import org.warmvat.design.heating.Collector;
import org.warmvat.design.heating.WindAndSkyLoss;
import org.warmvat.physics.PhysicalConstants;

/**
 * What a collector loses to the air (equation 5.1; coefficients as in ISO 9806).
 *
 * @param collector the collector
 */
public record CollectorHeat(Collector collector) {

    /** Linear loss of the whole collector, W/K. */
    public double linearWPerK() {
        return collector.areaM2() * collector.a1WPerM2K();
    }

    /** Linear loss of the whole collector at a wind in the file, W/K (equation 13.4). */
    public double linearWPerK(double windMPerS) {
        return collector.areaM2()
                * (collector.a1WPerM2K() + collector.windAndSky().a3JPerM3K() * aboveReference(windMPerS));
    }

    /** Sun that the wind takes from what is absorbed, W: negative in more wind than that of the test (equation 13.4). */
    public double takenByWindW(double windMPerS, double irradianceWPerM2) {
        return -collector.areaM2() * collector.windAndSky().a6SPerM() * aboveReference(windMPerS) * irradianceWPerM2;
    }

    private double aboveReference(double windMPerS) {
        return collector.windAndSky().exposureFactor() * windMPerS - WindAndSkyLoss.REFERENCE_WIND_M_PER_S;
    }

    /**
     * Heat received from the sky beside what the air gives, W: negative under a clear one (equation 13.4).
     *
     * @param skyFactor share of its sky that the horizon leaves it
     */
    public double skyW(double skyFactor, double airC, double skyC) {
        double view = skyFactor * (1 + Math.cos(Math.toRadians(collector.plane().tiltDeg()))) / 2;
        double difference = Math.pow(PhysicalConstants.kelvin(skyC), 4) - Math.pow(PhysicalConstants.kelvin(airC), 4);
        return collector.areaM2()
                * collector.windAndSky().a4()
                * PhysicalConstants.STEFAN_BOLTZMANN_W_PER_M2_K4
                * view
                * difference;
    }

    /** Quadratic loss of the whole collector, W/K2. */
    public double quadraticWPerK2() {
        return collector.areaM2() * collector.a2WPerM2K2();
    }
}
