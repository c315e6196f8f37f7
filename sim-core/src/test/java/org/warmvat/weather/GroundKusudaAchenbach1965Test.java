package org.warmvat.weather;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** The annual wave in the ground and its fit to hourly air, against properties of the equation of Kusuda and Achenbach. */
class GroundKusudaAchenbach1965Test {
    private final KusudaAchenbach1965 ground = new KusudaAchenbach1965(10, 8, 30);

    @Test
    void theSurfaceIsColdestOnItsDay() {
        assertEquals(2, ground.temperatureC(0, 30), 1e-12);
        assertEquals(18, ground.temperatureC(0, 30 + 182.5), 1e-12);
    }

    /** By hand at 0.5 m and 0.05 m2/day: damping exp(-0.5 sqrt(pi/18.25)) = 0.8127, lag 0.25 sqrt(365/(0.05 pi)) = 12.05 d. */
    @Test
    void halfAMetreDownByHand() {
        double lag = 12.051;
        assertEquals(10 - 8 * 0.81263, ground.temperatureC(0.5, 30 + lag), 1e-3);
        assertEquals(10, ground.temperatureC(0.5, 30 + lag + 365.0 / 4), 1e-3);
    }

    @Test
    void deepGroundStandsAtTheMean() {
        assertEquals(10, ground.temperatureC(30, 100), 1e-3);
    }

    /** The wave obeys heat conduction: dT/dt = a d2T/dz2, by central differences. */
    @Test
    void obeysConduction() {
        double dz = 0.01;
        double dt = 0.01;
        double a = ground.diffusivityM2PerDay();
        double change = (ground.temperatureC(0.7, 50 + dt) - ground.temperatureC(0.7, 50 - dt)) / (2 * dt);
        double bend = (ground.temperatureC(0.7 + dz, 50)
                        - 2 * ground.temperatureC(0.7, 50)
                        + ground.temperatureC(0.7 - dz, 50))
                / (dz * dz);
        assertEquals(change, a * bend, 1e-5);
    }

    @Test
    void theFitRecoversAPureWaveNorthAndSouth() {
        for (double coldest : new double[] {22.5, 200}) {
            KusudaAchenbach1965 truth = new KusudaAchenbach1965(9.1, 12.3, coldest);
            double[] days = new double[8760];
            double[] air = new double[8760];
            for (int i = 0; i < days.length; i++) {
                days[i] = (i + 1) / 24.0;
                double dailySwing = 5 * Math.sin(2 * Math.PI * days[i]);
                air[i] = truth.temperatureC(0, days[i]) + dailySwing;
            }
            KusudaAchenbach1965 fit = AnnualHarmonic.fit(days, air);
            assertEquals(9.1, fit.meanC(), 1e-9);
            assertEquals(12.3, fit.amplitudeK(), 1e-9);
            assertEquals(coldest, fit.coldestDay(), 1e-8);
        }
    }

    @Test
    void refusesNonsense() {
        assertThrows(IllegalArgumentException.class, () -> new KusudaAchenbach1965(10, -1, 0));
        assertThrows(IllegalArgumentException.class, () -> new KusudaAchenbach1965(Double.NaN, 1, 0));
        assertThrows(IllegalArgumentException.class, () -> new KusudaAchenbach1965(10, 1, 0, 0));
        assertTrue(new KusudaAchenbach1965(10, 0, 0).temperatureC(1, 77) == 10);
    }
}
