package org.warmvat.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.warmvat.network.Gate;
import org.warmvat.network.Margin;
import org.warmvat.network.Network;

/**
 * The limit cycle of a thermostat: {@code t_on = tau ln[(Tinf - Tlo)/(Tinf - Thi)]}, {@code t_off = tau ln[(Thi - Ta)/(Tlo - Ta)]}
 * with {@code Tinf = Ta + P/UA}. 4.18e6 J/K, 12 W/K, 1500 W, 5 °C, 36.5/37.5 °C.
 */
class ThermostatCycleTest {
    private static final double C = Body.CUBIC_METRE_J_PER_K;
    private static final double ON_S = 3745.555802;
    private static final double OFF_S = 10_886.302654;

    private static List<Double> moves(Engines engine, double initialC, int hours) {
        return run(engine, initialC, hours, hour -> true);
    }

    private static List<Double> run(Engines engine, double initialC, int hours, HourSink sink) {
        Body body = new Body(C, initialC).losing(12, timeS -> 5);
        int thermostat = body.assembly
                .switchOf("thermostat")
                .startsWhen(Gate.OPEN, Margin.below(0, 36.5))
                .stopsWhen(Gate.OPEN, Margin.above(0, 37.5))
                .number();
        body.assembly
                .source(Network.SLURRY, body.assembly.meter("heat"), state -> state.isOn(thermostat))
                .set(1500);
        Body.Moves moves = new Body.Moves(thermostat, body.assembly);
        engine.run(body.build(), hours, sink);
        return moves.timesS;
    }

    /** Heating up from 20 °C, the first switching-off comes after 60 356.32 s. */
    @ParameterizedTest
    @EnumSource
    void firstSwitchingOffIsInTime(Engines engine) {
        List<Double> moves = moves(engine, 20, 18);
        assertEquals(0, moves.get(0), 1e-9);
        assertEquals(60_356.32, moves.get(1), 60_356.32 * Math.max(1e-7, engine.withinShareOfTime()));
    }

    /** Over ten cycles every time on and every time off has its closed form: errors do not add up from cycle to cycle. */
    @ParameterizedTest
    @EnumSource
    void everyCycleHasItsTimes(Engines engine) {
        List<Double> moves = moves(engine, 20, 60);
        assertTrue(moves.size() >= 20, moves.toString());
        for (int i = 2; i < moves.size(); i++) {
            double expected = i % 2 == 0 ? OFF_S : ON_S;
            assertEquals(
                    expected,
                    moves.get(i) - moves.get(i - 1),
                    expected * engine.withinShareOfTime(),
                    "move " + i + " of " + moves);
        }
    }

    /** Power times duty over UA is the mean temperature above the air, exactly, for whole cycles: 36.998291718 °C, not 37. */
    @ParameterizedTest
    @EnumSource
    void meanTemperatureFollowsFromTheDuty(Engines engine) {
        List<Double> moves = moves(engine, 20, 60);
        int last = moves.size() - 1 - (moves.size() % 2 == 0 ? 0 : 1);
        double on = 0;
        for (int i = 3; i <= last; i += 2) {
            on += moves.get(i) - moves.get(i - 1);
        }
        double duty = on / (moves.get(last) - moves.get(1));
        assertEquals(0.255986334, duty, 0.256 * engine.withinShareOfTime());
        assertEquals(36.998291718, 5 + 1500 * duty / 12, 32 * engine.withinShareOfTime());
    }

    /** The band is kept to what a switching may be misplaced by: 1e-5 K for the fast engine, far less for the reference. */
    @ParameterizedTest
    @EnumSource
    void temperatureStaysInsideTheBand(Engines engine) {
        double[] extremes = {Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY};
        int[] starts = new int[1];
        run(engine, 37, 60, hour -> {
            extremes[0] = Math.min(extremes[0], hour.slurryLeastC());
            extremes[1] = Math.max(extremes[1], hour.slurryMostC());
            starts[0] += hour.starts(0);
            return true;
        });
        assertEquals(36.5, extremes[0], 2e-5);
        assertEquals(37.5, extremes[1], 2e-5);
        // first half an off-time to cool from 37, then whole periods of 4.06 h
        assertEquals(15, starts[0], 1);
    }
}
