package org.warmvat.question;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.warmvat.design.Design;
import org.warmvat.design.heating.SolarCircuit;
import org.warmvat.engine.exponential.ExponentialEngine;
import org.warmvat.sample.InventedWeather;
import org.warmvat.tank.Runner;

/** A steady tank stores no sun above its set-point and pays for it by the backup heater. */
class SteadinessTest {

    private static final Runner RUNNER = new Runner(InventedWeather.days(90, 40), new ExponentialEngine());

    private static Optional<Steadiness> of(Design design) {
        try (Parallel parallel = new Parallel(2, Parallel.Progress.SILENT)) {
            return Steadiness.of(design, RUNNER, parallel);
        }
    }

    @Test
    void aTighterLimitIsSteadierAndTakesMoreBackup() {
        Steadiness found = of(Design.usual()).orElseThrow();
        assertEquals(3.5, found.limitK());
        assertTrue(found.steady().daysOver() < found.asIs().daysOver(), found.toString());
        assertTrue(found.steady().heatKWh() > found.asIs().heatKWh(), found.toString());
    }

    @Test
    void nothingIsSaidWhereTheTankIsSteadyAlreadyOrHasNoSun() {
        assertEquals(Optional.empty(), of(Design.usual().with("solar.limit_above_setpoint_k", 1)));
        assertEquals(Optional.empty(), of(Design.usual().without(SolarCircuit.class)));
    }
}
