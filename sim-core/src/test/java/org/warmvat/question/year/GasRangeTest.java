package org.warmvat.question.year;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.warmvat.design.Design;
import org.warmvat.design.feeding.Estimate;
import org.warmvat.design.gas.Gas;
import org.warmvat.design.heating.BackupCircuit;
import org.warmvat.design.heating.BackupSource;
import org.warmvat.engine.exponential.ExponentialEngine;
import org.warmvat.gas.GasAlong;
import org.warmvat.gas.GasPart;
import org.warmvat.question.GasRange;
import org.warmvat.sample.InventedWeather;
import org.warmvat.sample.TankPlan;
import org.warmvat.tank.KeyFigures;
import org.warmvat.tank.Runner;
import org.warmvat.tank.StudyRefused;
import org.warmvat.weather.Weather;

/** Low and high gas beside a run (equation 19.4). */
class GasRangeTest {

    private static final Weather WEATHER = InventedWeather.days(20, 25);

    /** At the set-point and fed without a pause the solids stay as they are: methane is B0 k S V, by hand. */
    @Test
    void atTheSteadyStateMethaneIsTheClosedForm() {
        Design design = Design.usual();
        double setpointC = design.control().setpointC();
        double day = 0;
        GasAlong along = new GasAlong(design, Estimate.MIDDLE);
        LocalDateTime start = LocalDateTime.of(2025, 3, 1, 0, 0);
        // forty days on, the daily windows repeat themselves and the mean is the steady one
        for (int hour = 0; hour < 41 * 24; hour++) {
            double made = along.ofHour(start.plusHours(hour), setpointC)[0];
            day += hour < 40 * 24 ? 0 : made;
        }
        double kgVs = 10 * 0.22 * 0.88;
        double digested =
                design.steadyDigestedFraction(design.feed().feedstocks().get(0));
        assertEquals(0.42 * kgVs * digested, day, 2e-3 * day);
    }

    /** The middle, summed anew along the hourly temperatures, is the run's own gas, calendar and windows and all. */
    @Test
    void theMiddleSummedAnewIsTheRunsOwnGas() throws StudyRefused {
        Design exact = same(new TankPlan().build());
        BriefYear year = BriefYear.run(exact, new Runner(WEATHER, new ExponentialEngine()));
        GasRange range = year.gas().orElseThrow();
        double own = year.year().of(GasPart.GAS_ENERGY);
        assertEquals(own, range.whole().low().gasKWh(), 2e-5 * own);
        assertEquals(own, range.whole().high().gasKWh(), 2e-5 * own);
        assertEquals(year.year().of(KeyFigures.NET), range.whole().low().netKWh(), 2e-5 * own);
        assertEquals(2, range.months().size());
        assertEquals(
                own,
                range.months().stream()
                        .mapToDouble(month -> month.low().gasKWh())
                        .sum(),
                2e-5 * own);
        assertFalse(range.ownRuns());
    }

    /** A number that does not say how far it may be off is a fifth off in potential, two fifths in rate. */
    @Test
    void lowAndHighAreWhatTheirDesignsMakeAtTheSameTemperatures() throws StudyRefused {
        Design design = new TankPlan().build();
        Runner runner = new Runner(WEATHER, new ExponentialEngine());
        BriefYear middle = BriefYear.run(design, runner);
        GasRange.Ends whole = middle.gas().orElseThrow().whole();
        for (Estimate estimate : List.of(Estimate.LOW, Estimate.HIGH)) {
            double alone = BriefYear.run(design.at(estimate), runner).year().of(GasPart.GAS_ENERGY);
            GasRange.Yield end = estimate == Estimate.LOW ? whole.low() : whole.high();
            // the heat carried off by the gas moves the slurry a little
            assertEquals(alone, end.gasKWh(), 1e-3 * alone);
            assertEquals(
                    middle.year().of(KeyFigures.NET) - middle.year().of(GasPart.GAS_ENERGY) + end.gasKWh(),
                    end.netKWh(),
                    1e-9);
        }
        assertTrue(whole.low().gasKWh() < 0.8 * middle.year().of(GasPart.GAS_ENERGY));
    }

    /** With own gas low and high are runs of their own, what is bought with them. */
    @Test
    void ownGasTakesRunsOfItsOwn() throws StudyRefused {
        Design design = ownGas(new TankPlan().build());
        Runner runner = new Runner(WEATHER, new ExponentialEngine());
        GasRange range = BriefYear.run(design, runner).gas().orElseThrow();
        assertTrue(range.ownRuns());
        assertEquals(
                BriefYear.run(design.at(Estimate.LOW), runner).year().of(KeyFigures.NET),
                range.whole().low().netKWh());
    }

    @Test
    void withoutGasThereIsNoRange() throws StudyRefused {
        Design design = new TankPlan().build().without(Gas.class);
        assertEquals(
                Optional.empty(),
                BriefYear.run(design, new Runner(WEATHER, new ExponentialEngine()))
                        .gas());
    }

    private static Design ownGas(Design design) {
        BackupCircuit backup = design.backup().orElseThrow();
        return design.with(new BackupCircuit(
                BackupSource.OWN_GAS, 0.85, backup.ratedW(), backup.allowedHours(), backup.through()));
    }

    /** Low and high are the middle itself. */
    private static Design same(Design design) {
        Design now = design;
        for (int i = 0; i < design.feed().feedstocks().size(); i++) {
            String path = "feed.feedstocks[" + i + "].";
            double potential = design.feed().feedstocks().get(i).methaneNm3PerKgVs();
            double rate = design.feed().feedstocks().get(i).ratePerDay();
            now = now.with(Map.of(
                    path + "methane_nm3_per_kg_vs.low", potential,
                    path + "methane_nm3_per_kg_vs.high", potential,
                    path + "rate_per_day.low", rate,
                    path + "rate_per_day.high", rate));
        }
        return now;
    }
}
