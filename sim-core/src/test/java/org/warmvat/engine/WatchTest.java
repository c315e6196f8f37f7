package org.warmvat.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.warmvat.network.Gate;
import org.warmvat.network.Margin;
import org.warmvat.network.meter.Watched;

/** How long a condition held and how far, against the times of closed forms. */
class WatchTest {
    private static final double TAU_S = 40 * Body.HOUR_S;

    private static double[] seconds(Engines engine, Body body, int hours, double[] worst) {
        double[] held = new double[worst.length];
        Arrays.fill(worst, Double.NEGATIVE_INFINITY);
        engine.run(body.build(), hours, hour -> {
            for (int i = 0; i < held.length; i++) {
                held[i] += hour.watchS(i);
                worst[i] = Math.max(worst[i], hour.watchWorst(i));
            }
            return true;
        });
        return held;
    }

    private static void watch(Body body, String name, Margin margin) {
        body.assembly.watch(Watched.of(name), margin);
    }

    /** Cooling from 37 towards 5 °C passes 30 °C after {@code tau ln(32/25)}; the crossing is placed within 0.05 s of the state's. */
    @ParameterizedTest
    @EnumSource
    void timeBelowAMarkIsCountedToTheSecond(Engines engine) {
        Body body = new Body(Body.CUBIC_METRE_J_PER_K, 37).losing(Body.CUBIC_METRE_J_PER_K / TAU_S, timeS -> 5);
        watch(body, "below 30", Margin.below(0, 30));
        watch(body, "above 30", Margin.above(0, 30));
        watch(body, "below 0", Margin.below(0, 0));
        double[] worst = new double[3];
        double[] held = seconds(engine, body, 20, worst);
        double crossingS = TAU_S * Math.log(32.0 / 25);
        double within = engine == Engines.REFERENCE ? 0.01 : 1;
        assertEquals(20 * Body.HOUR_S - crossingS, held[0], within);
        assertEquals(crossingS, held[1], within);
        assertEquals(0, held[2]);
        assertEquals(30 - (5 + 32 * Math.exp(-0.5)), worst[0], engine.withinK());
        assertEquals(7, worst[1], 1e-12);
        assertTrue(worst[2] < 0);
    }

    /** A condition that holds only while a switch is on ends with the switch, not with the step. */
    @ParameterizedTest
    @EnumSource
    void aConditionTiedToASwitchEndsWithIt(Engines engine) {
        Body body = new Body(1e6, 30).heated(1e6 / 3600, "heater");
        int pump = body.assembly
                .switchOf("pump")
                .startsWhen(Gate.OPEN, Margin.below(0, 30.25))
                .stopsWhen(Gate.OPEN, Margin.above(0, 32.5))
                .number();
        body.assembly.watch(Watched.of("hot while on"), state -> state.isOn(pump), Margin.above(0, 31)::at);
        double[] worst = new double[1];
        // 1 K/h from 30 °C with the pump on at once: from 31 to 32.5 °C it counts
        double[] held = seconds(engine, body, 5, worst);
        assertEquals(1.5 * Body.HOUR_S, held[0], 0.2);
        assertEquals(1.5, worst[0], 2e-5);
    }

    /** Two crossings in one hour, at a state that jumps in its slope in between. */
    @ParameterizedTest
    @EnumSource
    void aConditionMayHoldTwiceInAnHour(Engines engine) {
        Body body = new Body(1e6, 30);
        new Steps(new double[] {0, 1800, 3600}, new double[] {-4e6 / 3600, 4e6 / 3600}, "heat", body.assembly);
        watch(body, "above 29", Margin.above(0, 29));
        double[] worst = new double[1];
        // down 4 K/h for half an hour and up again: above 29 °C for a quarter of an hour at each end
        double[] held = seconds(engine, body, 1, worst);
        assertEquals(1800, held[0], 0.2);
        assertEquals(1, worst[0], 1e-9);
    }
}
