package org.warmvat.heating;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.warmvat.design.heating.Coil;

/** The coil between a flow and a mixed vessel (equations 5.2, 5.4). */
class CoilFlowTest {
    private static final Coil COIL = new Coil(1, 100, Optional.of(60.0), 0.0005);

    /** 100 W/m2K on 1 m2 with 0.0005 m2K/W of fouling: 100/1.05; still 60/1.03. */
    @Test
    void foulingTakesItsShare() {
        assertEquals(95.238095, COIL.uaWPerK(true), 5e-7);
        assertEquals(58.252427, COIL.uaWPerK(false), 5e-7);
    }

    @Test
    void effectivenessIsThatOfACoilInAMixedVessel() {
        CoilFlow flow = new CoilFlow(COIL, 1, 148);
        assertEquals(1 - Math.exp(-95.238095 / 148), flow.effectiveness(true), 1e-8);
        assertEquals(1 - Math.exp(-58.252427 / 148), flow.effectiveness(false), 1e-8);
    }

    /** With inlet and outlet either side of the mean, heat by the mean's conductance is heat by the inlet's effectiveness. */
    @Test
    void theMeansConductanceGivesTheInletsHeat() {
        CoilFlow flow = new CoilFlow(COIL, 1, 148);
        double heatW = flow.conductanceWPerK(true) * (50 - 36);
        double inletC = flow.inletC(50, heatW, heatW);
        assertEquals(50 + heatW / 296, inletC, 1e-12);
        assertEquals(flow.effectiveness(true) * 148 * (inletC - 36), heatW, 1e-9);
        // and the outlet has come e of the way down to the slurry
        double outletC = inletC - heatW / 148;
        assertEquals(Math.exp(-95.238095 / 148), (outletC - 36) / (inletC - 36), 1e-8);
    }

    /** At a pump start the heat comes out of the loop's own store: the inlet is no hotter than the loop and what the sun adds. */
    @Test
    void theLoopsOwnStoreMakesNoHotterWater() {
        CoilFlow flow = new CoilFlow(COIL, 1, 148);
        assertEquals(90, flow.inletC(90, 4000, -200));
        assertEquals(90 + 500 / 296.0, flow.inletC(90, 4000, 500), 1e-12);
        assertEquals(20, flow.inletC(20, -300, 500));
    }

    /** A flood of water leaves only the coil's own conductance; a trickle gives all it can: twice its rate per mean kelvin. */
    @Test
    void floodAndTrickleAreTheLimits() {
        assertEquals(COIL.uaWPerK(true), new CoilFlow(COIL, 1, 1e8).conductanceWPerK(true), 1e-4);
        assertEquals(2 * 0.5, new CoilFlow(COIL, 1, 0.5).conductanceWPerK(true), 1e-12);
    }
}
