package org.warmvat.question.year;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDateTime;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.warmvat.account.Period;
import org.warmvat.design.RunIn;
import org.warmvat.engine.HourSink;
import org.warmvat.engine.exponential.ExponentialEngine;
import org.warmvat.envelope.EnvelopePart;
import org.warmvat.feeding.FeedPart;
import org.warmvat.gas.GasPart;
import org.warmvat.heating.BackupPart;
import org.warmvat.heating.SolarPart;
import org.warmvat.network.meter.Meter;
import org.warmvat.sample.InventedWeather;
import org.warmvat.sample.TankPlan;
import org.warmvat.stirring.MixerPart;
import org.warmvat.tank.KeyFigures;
import org.warmvat.tank.Lines;
import org.warmvat.tank.Runner;
import org.warmvat.tank.StudyRefused;
import org.warmvat.weather.Quantity;
import org.warmvat.weather.file.WeatherFiles;

/** Days and months cut from a run: they add up to it, and scheduled flows have their exact totals in each. */
class PeriodsTest {
    private static YearResult result;

    @BeforeAll
    static void runFiftyDays() throws StudyRefused {
        TankPlan plan = new TankPlan();
        plan.runIn = new RunIn.Days(5);
        result = YearStudy.run(
                plan.build(), new Runner(InventedWeather.days(70, 50), new ExponentialEngine()), HourSink.IGNORE);
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
        assertEquals("year", result.whole().label());
        assertEquals(1200, result.whole().hours());
    }

    @Test
    void daysAndMonthsAddUpToTheRun() {
        List<ToDoubleFunction<Period>> figures = List.of(
                period -> period.of(SolarPart.HEAT),
                period -> period.of(BackupPart.HEAT),
                period -> period.of(FeedPart.FEED),
                period -> period.of(GasPart.GAS_LOSS),
                period -> Lines.lossKWh(period),
                period -> period.of(SolarPart.LOSS),
                period -> period.of(KeyFigures.STORED),
                period -> period.of(EnvelopePart.STORED),
                period -> period.of(Meter.ELECTRICITY),
                period -> period.of(GasPart.METHANE_MADE),
                period -> period.of(KeyFigures.NET),
                period -> period.of(KeyFigures.BELOW_FLOOR_HOURS),
                period -> period.of(SolarPart.STARTS));
        for (ToDoubleFunction<Period> figure : figures) {
            double whole = figure.applyAsDouble(result.whole());
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
            assertEquals(0.040, day.of(Lines.AUGER), 1e-12);
            assertEquals(0.100, day.of(Lines.SHREDDER), 1e-12);
            double mixerW = 2 * Math.PI * 4 / 3600 * 60 / 0.2 + 6;
            assertEquals(0.024 * mixerW, day.of(Lines.MIXER), 1e-9);
            assertEquals(0.024 * 3, day.of(Lines.ELECTRONICS), 1e-12);
            assertEquals(0.024 * 2, day.of(Lines.AIR_PUMP), 1e-12);
            assertEquals(0.024 * (mixerW - 6) * 0.2, day.of(MixerPart.SHAFT), 1e-9);
        }
    }

    /** Net energy is gas less what was bought less electricity, each once; weighted, both electricities times 2.5. */
    @Test
    void netEnergyCountsEverythingOnce() {
        for (Period month : result.months()) {
            double gas = month.of(GasPart.METHANE_MADE) * 35.8e6 / 3.6e6;
            assertEquals(gas, month.of(GasPart.GAS_ENERGY), 1e-9);
            double electricity = month.of(Meter.ELECTRICITY);
            double bought = month.of(BackupPart.BOUGHT);
            assertEquals(gas - bought - electricity, month.of(KeyFigures.NET), 1e-9);
            assertEquals(gas - 2.5 * (bought + electricity), month.of(KeyFigures.NET_WEIGHTED), 1e-9);
            assertEquals(month.of(GasPart.METHANE_MADE) / 0.58, month.of(GasPart.BIOGAS), 1e-9);
        }
    }

    @Test
    void temperaturesLieInOrder() {
        for (Period day : result.days()) {
            assertTrue(day.of(KeyFigures.LEAST_C) <= day.of(KeyFigures.MEAN_C));
            assertTrue(day.of(KeyFigures.MEAN_C) <= day.of(KeyFigures.MOST_C));
        }
        double least = result.days().stream()
                .mapToDouble(day -> day.of(KeyFigures.LEAST_C))
                .min()
                .orElseThrow();
        assertEquals(least, result.whole().of(KeyFigures.LEAST_C));
    }

    /** Hourly powers are means whose sum is the run's energy; temperatures stand at the hours' ends. */
    @Test
    void hourlySeriesAddUpToo() {
        double solar = 0;
        double loss = 0;
        for (int hour = 0; hour < 1200; hour++) {
            solar += result.hourly().column("solar_heat_w").orElseThrow()[hour] / 1000;
            loss += result.hourly().orZero("loss_w")[hour] / 1000;
        }
        assertEquals(result.whole().of(SolarPart.HEAT), solar, 1e-8);
        assertEquals(Lines.lossKWh(result.whole()) + result.whole().of(GasPart.GAS_LOSS), loss, 1e-8);
        assertEquals(LocalDateTime.of(2025, 3, 12, 1, 0), result.hourly().end(0));
        double[] air = WeatherFiles.demonstration().table().columns().get(Quantity.AIR);
        assertEquals(air[70 * 24 + 5], result.hourly().orZero("air_c")[5], 1e-12);
    }
}
