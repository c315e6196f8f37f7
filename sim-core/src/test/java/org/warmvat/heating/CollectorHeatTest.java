package org.warmvat.heating;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.warmvat.design.Collector;
import org.warmvat.design.Plane;
import org.warmvat.design.SkyModel;
import org.warmvat.sun.TiltedIrradiance;

/** What the collector takes and loses (equation 5.1). */
class CollectorHeatTest {
    private final CollectorHeat heat = new CollectorHeat(new Collector(
            2,
            new Plane(60, OptionalDouble.empty(), SkyModel.ISOTROPIC),
            0.78,
            3.6,
            0.012,
            7000,
            new Collector.Incidence(0.14, 0.9, 85)));

    /** 1 - 0.14 (1/cos 60° - 1) = 0.86; the modifier that data sheets state at 50° is 0.9222. */
    @Test
    void theBeamsModifierFallsWithIncidence() {
        assertEquals(1, heat.beamModifier(0));
        assertEquals(0.86, heat.beamModifier(60), 1e-12);
        assertEquals(0.9222, heat.beamModifier(50), 5e-5);
    }

    /** Past 85° nothing; before it never below nothing (1/cos 84.9° = 11.2 would give -0.43). */
    @Test
    void theModifierIsNeverNegativeAndEndsAtItsLimit() {
        assertEquals(0, heat.beamModifier(84.9));
        assertEquals(0, heat.beamModifier(85));
        assertEquals(0, heat.beamModifier(120));
        assertEquals(1 - 0.14 * (1 / Math.cos(Math.toRadians(80)) - 1), heat.beamModifier(80), 1e-12);
    }

    @Test
    void absorbedSunWeighsBeamAndDiffuse() {
        TiltedIrradiance light = new TiltedIrradiance(500, 120, 30, 60);
        assertEquals(0.78 * (0.86 * 500 + 0.9 * 150), heat.absorbedWPerM2(light), 1e-12);
    }

    /** The quadratic loss changes its sign with the difference, so that a collector below the air gains. */
    @Test
    void theQuadraticTermIsOdd() {
        assertEquals(-2 * 0.012 * 900, heat.quadraticW(30), 1e-12);
        assertEquals(2 * 0.012 * 900, heat.quadraticW(-30), 1e-12);
        double slope = (heat.quadraticW(30.001) - heat.quadraticW(29.999)) / 0.002;
        assertEquals(slope, heat.quadraticSlopeWPerK(30), 1e-8);
        assertEquals(heat.quadraticSlopeWPerK(30), heat.quadraticSlopeWPerK(-30));
        assertEquals(7.2, heat.linearWPerK(), 1e-12);
    }
}
