package org.warmvat.question.year;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.warmvat.design.RunIn;
import org.warmvat.design.feeding.DigestionRate;
import org.warmvat.design.feeding.Feedstock;
import org.warmvat.design.feeding.MethanePotential;
import org.warmvat.design.gas.AirDosing;
import org.warmvat.design.gas.CardinalTemperatures;
import org.warmvat.design.gas.Gas;
import org.warmvat.design.heating.BackupSource;
import org.warmvat.design.heating.Control;
import org.warmvat.design.season.DailySchedule;
import org.warmvat.design.season.Minimum;
import org.warmvat.engine.HourSink;
import org.warmvat.engine.exponential.ExponentialEngine;
import org.warmvat.engine.reference.ReferenceEngine;
import org.warmvat.gas.GasPart;
import org.warmvat.heating.BackupPart;
import org.warmvat.network.Warning;
import org.warmvat.sample.InventedWeather;
import org.warmvat.sample.TankPlan;
import org.warmvat.tank.KeyFigures;
import org.warmvat.tank.Runner;
import org.warmvat.tank.StudyRefused;
import org.warmvat.weather.Weather;

/** What a run warns of: whole sentences with counts and worst values that closed forms tell. */
class WarningsTest {

    private static TankPlan plan() {
        TankPlan plan = new TankPlan().quiet();
        plan.runIn = new RunIn.Days(0);
        return plan;
    }

    private static YearResult run(TankPlan plan, Weather weather) throws StudyRefused {
        return YearStudy.run(plan.build(), new Runner(weather, new ReferenceEngine()), HourSink.IGNORE);
    }

    private static List<String> kinds(YearResult result) {
        return result.warnings().stream().map(Warning::key).toList();
    }

    private static Warning of(YearResult result, String kind) {
        return result.warnings().stream()
                .filter(warning -> warning.key().equals(kind))
                .findFirst()
                .orElseThrow(() -> new AssertionError(kind + " not among " + kinds(result)));
    }

    /** Without a decimal where they are many, or whole. */
    private static String hours(double hours) {
        return text(hours >= 9.95 || hours == Math.rint(hours) ? "%.0f" : "%.1f", hours);
    }

    private static String text(String format, Object... values) {
        return String.format(Locale.ROOT, format, values);
    }

    @Test
    void aWarmTankInMildWeatherIsNotWarnedOf() throws StudyRefused {
        TankPlan plan = plan();
        plan.backup = Optional.of(TankPlan.immersed(900, DailySchedule.continuous()));
        assertEquals(List.of(), run(plan, InventedWeather.steady(15, 72)).warnings());
    }

    /** A bare tank cools by itself: below the floor, then below freezing, each with its hours and its lowest. */
    @Test
    void coolingIsToldWithHoursAndLowest() throws StudyRefused {
        TankPlan plan = plan().uninsulated();
        plan.gas = Optional.empty();
        YearResult result = run(plan, InventedWeather.steady(-15, 480));
        double lowest = result.hourly().orZero("slurry_c")[479];
        assertTrue(lowest < 0, "lowest " + lowest);
        Warning floor = of(result, "below_floor");
        assertEquals(
                text(
                        "The slurry stood below the minimum temperature of 34 °C for %s h; the lowest was %.1f °C.",
                        hours(floor.count()), lowest),
                floor.sentence());
        assertEquals(lowest, floor.worst(), 1e-9);
        assertEquals(result.whole().of(KeyFigures.BELOW_FLOOR_HOURS), floor.count(), 1e-9);
        Warning freezing = of(result, "slurry_freezing");
        assertEquals(
                text(
                        "The slurry stood below 0 °C for %s h, the lowest %.1f °C: freezing is not modelled, so the results"
                                + " are no longer valid from there.",
                        hours(freezing.count()), lowest),
                freezing.sentence());
        assertTrue(freezing.count() < floor.count());
        // once below it stays below: the hours after the first hour end that is below tell the count to within an hour
        int firstBelow = 0;
        while (result.hourly().orZero("slurry_c")[firstBelow] >= 0) {
            firstBelow++;
        }
        assertEquals(480 - firstBelow - 0.5, freezing.count(), 0.5);
    }

    /** Midnight against midnight: falls that shrink from many kelvin a day to less than one, counted by both marks. */
    @Test
    void dailyChangesAreCountedAtMidnights() throws StudyRefused {
        YearResult result = run(plan().uninsulated(), InventedWeather.steady(9, 20 * 24));
        double[] slurry = result.hourly().orZero("slurry_c");
        int noticed = 0;
        int warned = 0;
        for (int day = 0; day < 20; day++) {
            double fall = (day == 0 ? 36 : slurry[24 * day - 1]) - slurry[24 * day + 23];
            noticed += fall > 1 ? 1 : 0;
            warned += fall > 2 ? 1 : 0;
        }
        assertTrue(warned > 0 && noticed > warned && noticed < 20, noticed + " " + warned);
        Warning change = of(result, "daily_change");
        double first = 36 - slurry[23];
        assertEquals(noticed, change.count());
        assertEquals(first, change.worst(), 1e-9);
        assertEquals(
                text(
                        "On %d days the slurry stood more than 1 K, and on %d of them more than 2 K, from 24 h before; the"
                                + " largest change was %.1f K (guidance from 0.5 K to 3 K a day is in use: common practice, no"
                                + " single source).",
                        noticed, warned, first),
                change.sentence());
    }

    @Test
    void gasKnowsItsTemperatures() throws StudyRefused {
        TankPlan cold = new TankPlan();
        cold.runIn = plan().runIn;
        cold.gas = Optional.of(new Gas(
                40,
                0.58,
                new CardinalTemperatures(35, 50, 60),
                Optional.empty(),
                0,
                1440,
                Optional.empty(),
                List.of(),
                Optional.empty()));
        cold.solar = false;
        cold.backup = Optional.empty();
        YearResult result = run(cold, InventedWeather.steady(0, 72));
        Warning tooCold = of(result, "too_cold_to_digest");
        assertEquals(
                text(
                        "The slurry stood below the minimum of digestion, 35 °C, for %s h; the lowest was %.1f °C.",
                        hours(tooCold.count()), tooCold.worst()),
                tooCold.sentence());
        TankPlan hot = new TankPlan();
        hot.runIn = plan().runIn;
        hot.gas = Optional.of(new Gas(
                30,
                0.58,
                new CardinalTemperatures(8, 30, 35.75),
                Optional.empty(),
                0,
                1440,
                Optional.empty(),
                List.of(),
                Optional.empty()));
        hot.backup = Optional.of(TankPlan.immersed(900, DailySchedule.continuous()));
        YearResult heated = run(hot, InventedWeather.steady(5, 48));
        Warning tooHot = of(heated, "too_hot_to_digest");
        assertEquals(
                text(
                        "The slurry stood above the maximum of digestion, 35.75 °C, for %s h; the highest was 36.5"
                                + " °C.",
                        hours(tooHot.count())),
                tooHot.sentence());
        assertEquals(36.5, tooHot.worst(), 1e-4);
    }

    /** Air dosed into little gas and into none. */
    @Test
    void dosedAirIsToldOfWithItsShare() throws StudyRefused {
        TankPlan plan = new TankPlan();
        plan.runIn = plan().runIn;
        plan.gas = Optional.of(new Gas(
                35,
                0.58,
                new CardinalTemperatures(8, 38, 46),
                Optional.of(new AirDosing(10, 1, 2, 0.06)),
                0,
                1440,
                Optional.empty(),
                List.of(),
                Optional.empty()));
        YearResult result = run(plan, InventedWeather.days(95, 2));
        Warning air = of(result, "air_share");
        double most = result.whole().of(GasPart.HIGHEST_AIR_SHARE);
        double least =
                Arrays.stream(result.hourly().orZero("methane_nm3_h")).min().orElseThrow();
        assertEquals(0.010 / (least / 0.58), most, 1e-9);
        assertEquals(
                text(
                        "The dosed air was above 6 %% of the dry biogas for 48 h; the highest share was %.1f %%. Air and biogas"
                                + " can form an explosive mixture: stop dosing when the gas stops.",
                        100 * most),
                air.sentence());
        plan.feedstocks = List.of(new Feedstock(
                Optional.empty(), "sand", 5, 0.5, 0, MethanePotential.ofNumber(0), DigestionRate.ofNumber(0)));
        assertEquals(
                "The dosed air was above 6 % of the dry biogas for 48 h; in some hours no gas was made at all. Air and biogas"
                        + " can form an explosive mixture: stop dosing when the gas stops.",
                of(run(plan, InventedWeather.days(95, 2)), "air_share").sentence());
    }

    @Test
    void burningMoreThanIsMadeIsToldOf() throws StudyRefused {
        TankPlan plan = new TankPlan();
        plan.runIn = plan().runIn;
        plan.solar = false;
        plan.uninsulated();
        plan.backup = Optional.of(TankPlan.circuit(BackupSource.OWN_GAS, 0.8, 4000, 8));
        plan.control = new Control(36, 1, new Minimum.At(20), 3, new Control.DailyChange(20, 20), 10);
        YearResult result = YearStudy.run(
                plan.build(), new Runner(InventedWeather.days(20, 3), new ExponentialEngine()), HourSink.IGNORE);
        double worst = result.days().stream()
                .mapToDouble(day -> day.of(BackupPart.BOUGHT) - day.of(GasPart.GAS_ENERGY))
                .max()
                .orElseThrow();
        assertEquals(
                text(
                        "On 3 days the backup burnt more of the tank's own gas than the tank made; the worst day was short of"
                                + " %.1f kWh. Stored gas or another fuel must fill the gap.",
                        worst),
                of(result, "own_gas_short").sentence());
    }
}
