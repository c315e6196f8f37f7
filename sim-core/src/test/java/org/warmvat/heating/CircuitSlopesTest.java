package org.warmvat.heating;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.warmvat.design.Design;
import org.warmvat.network.Flows;
import org.warmvat.network.Interval;
import org.warmvat.network.Network;
import org.warmvat.network.State;
import org.warmvat.network.Surroundings;
import org.warmvat.sample.InventedWeather;
import org.warmvat.sample.TankPlan;
import org.warmvat.weather.Weather;

/** The slopes that the parts hand to the fast engine, against differences of the heat that they contribute. */
class CircuitSlopesTest {

    private static final Design DESIGN = new TankPlan().build();
    private static final Weather WEATHER = InventedWeather.steady(10, 1);
    private static final double STEP_K = 1e-3;

    /**
     * Heat into the circuit's node at its temperature, W, the conductance that the slope amounts to, W/K, how fast the slope changes,
     * W/K2, and whether the slope is said to jump nearby.
     */
    private record Heat(double watts, double conductanceWPerK, double bendWPerK2, boolean corner) {}

    private static Heat at(Network network, double circuitC) {
        State state = network.initialState();
        for (int i = 0; i < network.switches().size(); i++) {
            state.setOn(i, network.switches().get(i).name().equals(BackupPart.DEMAND));
        }
        state.setNodeC(1, circuitC);
        network.enter(new Interval(0, 3600, 0));
        Flows flows = network.newLiveFlows();
        network.contribute(0, state, flows);
        double conductance = flows.conductanceWPerK(1);
        State away = state.copy();
        away.setNodeC(1, circuitC + 1);
        boolean corner = flows.slopeErrorW(state, away) > 0.5 * Math.abs(flows.bendWPerK2(1));
        return new Heat(flows.sourceW(1) - conductance * circuitC, conductance, flows.bendWPerK2(1), corner);
    }

    private static void slopeIsThatOfTheHeat(Network network, double circuitC) {
        double above = at(network, circuitC + STEP_K).watts();
        double below = at(network, circuitC - STEP_K).watts();
        Heat here = at(network, circuitC);
        assertEquals((below - above) / (2 * STEP_K), here.conductanceWPerK(), 1e-4);
        double steeper = at(network, circuitC + STEP_K).conductanceWPerK()
                - at(network, circuitC - STEP_K).conductanceWPerK();
        assertEquals(-steeper / (2 * STEP_K), here.bendWPerK2(), 1e-6);
    }

    private static Network.Assembly slurry() {
        Network.Assembly assembly = new Network.Assembly();
        assembly.node(new Network.Node("slurry", 1e6, -1, 20, false));
        return assembly;
    }

    /** Below, inside and above the band under the flow limit of 50 °C. */
    @ParameterizedTest
    @ValueSource(doubles = {30, 44, 46, 47.5, 49, 51, 60})
    void theHeaterFadesTowardsItsLimit(double waterC) {
        Network.Assembly assembly = slurry();
        assembly.part(new BackupPart(DESIGN, new Surroundings(WEATHER, t -> 8), () -> true, assembly, 0));
        slopeIsThatOfTheHeat(assembly.build(), waterC);
    }

    /** The slope jumps at 45 and 50 °C, which is said within a band's width of either. */
    @Test
    void theHeaterTellsOfItsCorners() {
        Network.Assembly assembly = slurry();
        assembly.part(new BackupPart(DESIGN, new Surroundings(WEATHER, t -> 8), () -> true, assembly, 0));
        Network network = assembly.build();
        assertFalse(at(network, 39).corner());
        assertTrue(at(network, 41).corner());
        assertTrue(at(network, 47).corner());
        assertTrue(at(network, 54).corner());
        assertFalse(at(network, 56).corner());
    }

    /** Warmer and colder than the air of 10 °C. */
    @ParameterizedTest
    @ValueSource(doubles = {-30, 5, 15, 60, 150})
    void theCollectorsLossSteepens(double collectorC) {
        slopeIsThatOfTheHeat(solar(), collectorC);
    }

    private static Network solar() {
        Network.Assembly assembly = slurry();
        CollectorSun sun =
                new CollectorSun(WEATHER, DESIGN.solar().orElseThrow().collector(), 0.2);
        assembly.part(new SolarPart(DESIGN, sun, new Surroundings(WEATHER, t -> 8), () -> true, assembly, 0));
        return assembly.build();
    }

    /** At 60 °C, 50 K above the air: 2 m2 of 3.6 and 0.012, pipes of 0.8 W/K. */
    @Test
    void theCollectorsLossByHand() {
        assertEquals(
                -(2 * (3.6 * 50 + 0.012 * 2500) + 0.8 * 50), at(solar(), 60).watts(), 1e-9);
    }
}
