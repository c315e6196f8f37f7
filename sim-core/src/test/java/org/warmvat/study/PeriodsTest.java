package org.warmvat.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDateTime;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.warmvat.design.RunIn;
import org.warmvat.engine.HourSink;
import org.warmvat.engine.exponential.ExponentialEngine;
import org.warmvat.result.Period;
import org.warmvat.result.RunResult;
import org.warmvat.sample.InventedWeather;
import org.warmvat.sample.TankPlan;
import org.warmvat.tank.StudyRefused;
import org.warmvat.weather.Quantity;
import org.warmvat.weather.file.WeatherFiles;

/** Days and months cut from a run: they add up to it, and scheduled flows have their exact totals in each. */
class PeriodsTest {
    private static RunResult result;

    @BeforeAll
    static void runFiftyDays() throws StudyRefused {
        TankPlan plan = new TankPlan();
        plan.runIn = new RunIn.Days(5);
        result = YearStudy.run(plan.build(), InventedWeather.days(70, 50), new ExponentialEngine(), HourSink.IGNORE);
    }

    /** Day 70 of a common year is 12 March; fifty days end with 30 April. */
    @Test
    void monthsAreCutAtTheirEnds() {
        assertEquals(
                List.of("2025-03", "2025-04"),
                result.months().stream().map(Period::label).toList());
        assertEquals(20 * 24, result.months().get(0).hours());
        assertEquals(30 * 24, result.months().get(1).hours());
        assertEquals("2025-03-12", result.days().get(0).label());
        assertEquals("2025-04-30", result.days().get(49).label());
        assertEquals("year", result.year().label());
        assertEquals(1200, result.year().hours());
    }

    @Test
    void daysAndMonthsAddUpToTheRun() {
        List<ToDoubleFunction<Period>> figures = List.of(
                period -> period.heats().solarKWh(),
                period -> period.heats().backupKWh(),
                period -> period.heats().feedKWh(),
                period -> period.heats().gasKWh(),
                period -> period.losses().totalKWh(),
                period -> period.circuits().collectorLossKWh(),
                period -> period.stored().slurryKWh(),
                period -> period.stored().envelopeKWh(),
                period -> period.electricity().totalKWh(),
                period -> period.gas().methaneNm3(),
                period -> period.gas().netEnergyKWh(),
                period -> period.counts().belowFloorHours(),
                period -> period.counts().solarPumpStarts());
        for (ToDoubleFunction<Period> figure : figures) {
            double whole = figure.applyAsDouble(result.year());
            double byDay = result.days().stream().mapToDouble(figure).sum();
            double byMonth = result.months().stream().mapToDouble(figure).sum();
            assertEquals(whole, byDay, 1e-9 * (1 + Math.abs(whole)));
            assertEquals(whole, byMonth, 1e-9 * (1 + Math.abs(whole)));
        }
    }

    /** 10 kg a day at 4 and 10 Wh/kg, a mixer at 8.0944 W all day, 3 W of controls, 2 W of air pump. */
    @Test
    void scheduledConsumersHaveTheirExactDays() {
        for (Period day : result.days()) {
            assertEquals(0.040, day.electricity().augerKWh(), 1e-12);
            assertEquals(0.100, day.electricity().shredderKWh(), 1e-12);
            double mixerW = 2 * Math.PI * 4 / 3600 * 60 / 0.2 + 6;
            assertEquals(0.024 * mixerW, day.electricity().mixerKWh(), 1e-9);
            assertEquals(0.024 * 3, day.electricity().electronicsKWh(), 1e-12);
            assertEquals(0.024 * 2, day.electricity().airPumpKWh(), 1e-12);
            assertEquals(0.024 * (mixerW - 6) * 0.2, day.heats().shaftKWh(), 1e-9);
        }
    }

    /** Net energy is gas less what was bought less electricity, each once; weighted, both electricities times 2.5. */
    @Test
    void netEnergyCountsEverythingOnce() {
        for (Period month : result.months()) {
            double gas = month.gas().methaneNm3() * 35.8e6 / 3.6e6;
            assertEquals(gas, month.gas().gasEnergyKWh(), 1e-9);
            double electricity = month.electricity().totalKWh();
            double bought = month.circuits().backupBoughtKWh();
            assertEquals(gas - bought - electricity, month.gas().netEnergyKWh(), 1e-9);
            assertEquals(gas - 2.5 * (bought + electricity), month.gas().netEnergyWeightedKWh(), 1e-9);
            assertEquals(month.gas().methaneNm3() / 0.58, month.gas().biogasNm3(), 1e-9);
        }
    }

    @Test
    void temperaturesLieInOrder() {
        for (Period day : result.days()) {
            assertTrue(day.slurry().leastC() <= day.slurry().meanC());
            assertTrue(day.slurry().meanC() <= day.slurry().mostC());
        }
        double least = result.days().stream()
                .mapToDouble(day -> day.slurry().leastC())
                .min()
                .orElseThrow();
        assertEquals(least, result.year().slurry().leastC());
    }

    /** Hourly powers are means whose sum is the run's energy; temperatures stand at the hours' ends. */
    @Test
    void hourlySeriesAddUpToo() {
        double solar = 0;
        double loss = 0;
        for (int hour = 0; hour < 1200; hour++) {
            solar += result.hourly().solarHeatW().orElseThrow()[hour] / 1000;
            loss += result.hourly().lossW()[hour] / 1000;
        }
        assertEquals(result.year().heats().solarKWh(), solar, 1e-8);
        assertEquals(result.year().losses().totalKWh() + result.year().heats().gasKWh(), loss, 1e-8);
        assertEquals(LocalDateTime.of(2025, 3, 12, 1, 0), result.hourly().end(0));
        double[] air = WeatherFiles.demonstration().table().columns().get(Quantity.AIR);
        assertEquals(air[70 * 24 + 5], result.hourly().airC()[5], 1e-12);
    }
}
