package org.warmvat.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.warmvat.network.Network;
import org.warmvat.network.State;
import org.warmvat.weather.Linear;

/** A single body against the closed forms of a first-order store, on both engines. Numbers were worked out independently. */
class LumpedBodyTest {
    private static final double C = Body.CUBIC_METRE_J_PER_K;
    private static final double TAU_S = 40 * Body.HOUR_S;
    private static final double UA = C / TAU_S;

    @ParameterizedTest
    @EnumSource
    void coolsExponentially(Engines engine) {
        Network body = new Body(C, 37).losing(UA, timeS -> 5).build();
        assertEquals(22.561972355, engine.run(body, 24).nodeC(0), engine.withinK());
        assertEquals(14.638214781, engine.run(body, 48).nodeC(0), engine.withinK());
    }

    @ParameterizedTest
    @EnumSource
    void followsARampWithALag(Engines engine) {
        Network body =
                new Body(C, 37).losing(UA, timeS -> 37 - timeS / Body.HOUR_S).build();
        assertEquals(31.047534556, engine.run(body, 24).nodeC(0), engine.withinK());
    }

    /** {@code T = Tm + g A sin(w t - lag) + (T0 - Tm + g A sin lag) exp(-t/tau)}, {@code g = 1/sqrt(1 + (w tau)^2)}. */
    @ParameterizedTest
    @EnumSource
    void answersASinusoidalDay(Engines engine) {
        double w = 2 * Math.PI / 86_400;
        Network body = new Body(C, 37)
                .losing(UA, timeS -> 10 + 8 * Math.sin(w * timeS))
                .build();
        double gain = 8 / Math.hypot(1, w * TAU_S);
        double lag = Math.atan(w * TAU_S);
        assertEquals(5.636346, lag / w / 3600, 1e-6);
        double t = 60 * Body.HOUR_S;
        double expected = 10 + gain * Math.sin(w * t - lag) + (27 + gain * Math.sin(lag)) * Math.exp(-t / TAU_S);
        assertEquals(16.950473204, expected, 1e-8);
        assertEquals(expected, engine.run(body, 60).nodeC(0), engine.withinK());
    }

    /**
     * Hourly values joined by straight lines, as weather comes: exact hour by hour. Against the smooth wave the lines alone make
     * 5.3e-3 K at 60 h, so this is the form to test the engine by.
     */
    @ParameterizedTest
    @EnumSource
    void followsHourlyWeatherExactly(Engines engine) {
        double[] air = new double[61];
        for (int i = 0; i < air.length; i++) {
            air[i] = 10 + 8 * Math.sin(2 * Math.PI * i / 24);
        }
        Linear line = new Linear(0, air);
        double[] seen = new double[60];
        engine.run(new Body(C, 37).losing(UA, line::at).build(), 60, hour -> {
            seen[hour.hour()] = hour.state().nodeC(0);
            return true;
        });
        double expected = 37;
        for (int hour = 0; hour < 60; hour++) {
            double slopePerS = (air[hour + 1] - air[hour]) / Body.HOUR_S;
            double settled = slopePerS * TAU_S;
            expected = air[hour + 1] - settled + (expected - air[hour] + settled) * Math.exp(-Body.HOUR_S / TAU_S);
            assertEquals(expected, seen[hour], engine.withinK(), "hour " + hour);
        }
        assertEquals(16.950473204 - 5.3e-3, expected, 1e-4);
    }

    /** Without losses the temperature rises along a straight line: any method of order 1 is exact, up to rounding. */
    @ParameterizedTest
    @EnumSource
    void chargesInAStraightLine(Engines engine) {
        Network body = new Body(C, 20).heated(1500, "heater").build();
        assertEquals(20 + 10 * 1.291866029, engine.run(body, 10).nodeC(0), 1e-8);
    }

    /** What the meter counted is what the body lost: both are integrals by the same weights, so only rounding lies between. */
    @ParameterizedTest
    @EnumSource
    void metersCloseWithTheStoredHeat(Engines engine) {
        Network body =
                new Body(C, 37).losing(UA, timeS -> 5).heated(80, "heater").build();
        double[] counted = new double[2];
        State end = engine.run(body, 30, hour -> {
            counted[0] += hour.meter(0);
            counted[1] += hour.meter(1);
            return true;
        });
        assertEquals(80 * 30 * Body.HOUR_S, counted[1], 1e-3);
        assertEquals(C * (end.nodeC(0) - 37), counted[0] + counted[1], 1e-6 * C);
    }

    /**
     * A film {@code h = h_i (dT/dT_i)^n}: {@code (1 + n h_i A t/C)^(-1/n)} of the first difference (Bejan and Kraus, Heat Transfer
     * Handbook, equation 3.286, as seen in a transcription); n 0.25, h_i 5 W/m2K, 2 m2, 2e5 J/K, 10 h.
     */
    @ParameterizedTest
    @EnumSource
    void coolsThroughANaturalConvectionFilm(Engines engine) {
        Body body = new Body(2e5, 30);
        body.receiving(celsius -> {
            double differenceK = Math.max(1e-9, celsius);
            return -10 * Math.pow(differenceK / 30, 0.25) * differenceK;
        });
        assertEquals(30 * 0.2262184, engine.run(body.build(), 10).nodeC(0), Math.max(3e-6, 10 * engine.withinK()));
    }

    /**
     * Convection and radiation to 0 K: {@code ln[(1 + x y^3)/((1 + x) y^3)]/3 = h A t/C}, y = T/T_i, x = sigma T_i^3/h (the same
     * handbook, equation 3.284); 350 K, 8 W/m2K, 1.2e5 J/m2K, 1 h.
     */
    @ParameterizedTest
    @EnumSource
    void coolsByConvectionAndRadiation(Engines engine) {
        double sigma = 5.670374419e-8;
        Body body = new Body(1.2e5, 350 - 273.15);
        body.receiving(celsius -> -8 * (celsius + 273.15) - sigma * Math.pow(celsius + 273.15, 4));
        double y = (engine.run(body.build(), 1).nodeC(0) + 273.15) / 350;
        double x = sigma * 350 * 350 * 350 / 8;
        double left = Math.log((1 + x * y * y * y) / ((1 + x) * y * y * y)) / 3;
        assertEquals(8 * 3600 / 1.2e5, left, engine == Engines.REFERENCE ? 1e-8 : 2e-4);
    }
}
