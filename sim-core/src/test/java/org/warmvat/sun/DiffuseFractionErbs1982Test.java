package org.warmvat.sun;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/**
 * Published: D. G. Erbs, S. A. Klein and J. A. Duffie, Solar Energy 28 (1982) 293-302. The three hourly splits are reference
 * numbers of an open library's tests (second hand, solar constant 1366.1); the grid is recomputed from the published
 * polynomials and so only guards against a slip of the pen.
 */
class DiffuseFractionErbs1982Test {
    /** Global, zenith, day, then clearness, diffuse and beam as quoted. */
    @Test
    void hourlySplitsOfTheReferenceTests() {
        check(50, 85, 1, 0.40572, 41.570, 96.719);
        check(1000, 10, 1, 0.71813, 217.860, 794.206);
        check(1000, 10, 171, 0.76821, 170.790, 842.002);
    }

    private static void check(double global, double zenith, int day, double clearness, double diffuse, double beam) {
        double normal = 1366.1 * Extraterrestrial.eccentricity(day);
        SunHour sun = new SunHour(1, zenith, 180, normal);
        Irradiance light = Irradiance.ofGlobal(global, sun);
        // The quoted clearness has five digits and differs in its last two by the eccentricity used there.
        assertEquals(clearness, global / (normal * sun.cosZenith()), 2e-4);
        assertEquals(diffuse, light.diffuseWPerM2(), 2e-3 * diffuse);
        assertEquals(beam, light.beamWPerM2(), 2e-3 * beam);
    }

    @Test
    void hourlyGrid() {
        assertEquals(0.9910, Erbs1982.hourlyDiffuseFraction(0.1), 5e-5);
        assertEquals(0.9486, Erbs1982.hourlyDiffuseFraction(0.3), 5e-5);
        assertEquals(0.4395, Erbs1982.hourlyDiffuseFraction(0.6), 5e-5);
        assertEquals(0.2440, Erbs1982.hourlyDiffuseFraction(0.7), 5e-5);
        assertEquals(0.165, Erbs1982.hourlyDiffuseFraction(0.9));
    }

    /** The published curve jumps by 0.00027 at both joints. */
    @Test
    void jointsNearlyMeet() {
        for (double joint : new double[] {0.22, 0.80}) {
            double jump = Erbs1982.hourlyDiffuseFraction(joint + 1e-9) - Erbs1982.hourlyDiffuseFraction(joint);
            assertEquals(0, jump, 3e-4);
        }
    }

    @Test
    void dailyGrid() {
        assertEquals(0.8920, Erbs1982.dailyDiffuseFraction(0.3, 70), 5e-5);
        assertEquals(0.5688, Erbs1982.dailyDiffuseFraction(0.5, 70), 5e-5);
        assertEquals(0.1641, Erbs1982.dailyDiffuseFraction(0.7, 70), 5e-5);
        assertEquals(0.8778, Erbs1982.dailyDiffuseFraction(0.3, 95), 5e-5);
        assertEquals(0.6083, Erbs1982.dailyDiffuseFraction(0.5, 95), 5e-5);
        assertEquals(0.2357, Erbs1982.dailyDiffuseFraction(0.7, 95), 5e-5);
    }

    @Test
    void monthlyGrid() {
        assertEquals(0.6423, Erbs1982.monthlyDiffuseFraction(0.3, 70), 5e-5);
        assertEquals(0.3911, Erbs1982.monthlyDiffuseFraction(0.5, 70), 5e-5);
        assertEquals(0.2186, Erbs1982.monthlyDiffuseFraction(0.7, 70), 5e-5);
        assertEquals(0.6637, Erbs1982.monthlyDiffuseFraction(0.3, 95), 5e-5);
        assertEquals(0.4291, Erbs1982.monthlyDiffuseFraction(0.5, 95), 5e-5);
        assertEquals(0.2502, Erbs1982.monthlyDiffuseFraction(0.7, 95), 5e-5);
    }

    /** Book example 2.11.1 (from memory): St Louis, 3 September, daily clearness 0.69 gives 0.26. */
    @Test
    void dailyShareOfStLouis() {
        assertEquals(0.26, Erbs1982.dailyDiffuseFraction(0.69, 95), 5e-3);
    }

    @Test
    void theSplitClosesUpToTheBeamsCeiling() {
        SunHour sun = new SunHour(1, 60, 180, 1361);
        for (double global = 1; global < 1300; global += 7) {
            Irradiance light = Irradiance.ofGlobal(global, sun);
            assertEquals(global, light.beamWPerM2() * sun.cosZenith() + light.diffuseWPerM2(), 1e-9);
            assertTrue(light.beamWPerM2() <= 1361);
        }
    }
}
