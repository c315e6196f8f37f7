package org.warmvat.tank;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.warmvat.design.Design;
import org.warmvat.design.feeding.DigestionRate;
import org.warmvat.design.feeding.DilutionWater;
import org.warmvat.design.feeding.FeedTemperature;
import org.warmvat.design.feeding.Feedstock;
import org.warmvat.design.feeding.MethanePotential;
import org.warmvat.design.heating.BackupSource;
import org.warmvat.design.tank.Mixer;
import org.warmvat.engine.Engine;
import org.warmvat.engine.Hours;
import org.warmvat.engine.exponential.ExponentialEngine;
import org.warmvat.engine.reference.ReferenceEngine;
import org.warmvat.feeding.FeedPart;
import org.warmvat.heating.BackupPart;
import org.warmvat.network.KnownRate;
import org.warmvat.sample.InventedWeather;
import org.warmvat.sample.TankPlan;
import org.warmvat.stirring.MixerPart;
import org.warmvat.weather.Weather;

/** Exact: what a log says went into a tank goes in, no more and no less, whatever its design would have done; by hand, in both engines. */
class SuppliedTest {

    private static final double HOUR_S = Hours.HOUR_S;
    private static final int HOURS = 24;
    private static final Weather WEATHER = InventedWeather.steady(5, HOURS);

    static List<Engine> engines() {
        return List.of(new ReferenceEngine(), new ExponentialEngine());
    }

    /** A rate from one hour to another. */
    private record Between(double rate, double fromH, double toH) implements KnownRate {

        @Override
        public double at(double timeS) {
            return timeS > fromH * HOUR_S && timeS < toH * HOUR_S ? rate : 0;
        }

        @Override
        public double nextJumpS(double timeS) {
            return Arrays.stream(new double[] {fromH * HOUR_S, toH * HOUR_S})
                    .filter(edge -> edge > timeS)
                    .findFirst()
                    .orElse(Double.POSITIVE_INFINITY);
        }
    }

    private static Optional<KnownRate> between(double rate, double fromH, double toH) {
        return Optional.of(new Between(rate, fromH, toH));
    }

    /** The slurry's temperature at the end of each hour, and the sum of a meter over each. */
    private record Day(double[] slurryC, double[] meter) {

        static Day of(Design design, Supplied supplied, Engine engine, String meter) {
            TankRun run = new Runner(WEATHER, engine).start(design, 0, 36, supplied, Guest.NONE);
            int number = run.meter(meter);
            Day day = new Day(new double[HOURS], new double[HOURS]);
            run.over(new Hours(0, HOURS), hour -> {
                day.slurryC[hour.hour()] = hour.state().nodeC(0);
                day.meter[hour.hour()] = hour.meter(number);
                return true;
            });
            return day;
        }

        double sum() {
            return Arrays.stream(meter).sum();
        }
    }

    private static Supplied heats(Optional<KnownRate> solarW, Optional<KnownRate> backupW) {
        return new Supplied(
                solarW, backupW, Optional.empty(), Optional.of(KnownRate.NONE), Optional.of(KnownRate.NONE), false);
    }

    @ParameterizedTest
    @MethodSource("engines")
    void measuredHeatsReplaceBothCircuits(Engine engine) {
        // ten times the capacity: what sheets and losses take is next to nothing
        Design design = new TankPlan().build().with("adjust.capacity", 10);
        Supplied both = heats(between(10_000, 0, 2.5), between(40_000, 1, 3));
        Day none = Day.of(
                design, heats(Optional.of(KnownRate.NONE), Optional.of(KnownRate.NONE)), engine, MixerPart.SHAFT_HEAT);
        Day with = Day.of(design, both, engine, MixerPart.SHAFT_HEAT);
        double kelvinPerJ = 1 / design.contentsHeatCapacityJPerK();
        double[] expectedJ = {10_000, 60_000, 105_000, 105_000};
        for (int hour = 0; hour < expectedJ.length; hour++) {
            double warmerK = expectedJ[hour] * HOUR_S * kelvinPerJ;
            assertEquals(warmerK, with.slurryC()[hour] - none.slurryC()[hour], 0.003 * warmerK, "hour " + hour);
        }
    }

    @ParameterizedTest
    @MethodSource("engines")
    void electricityOfACircuitGoesIntoItsWaterAndFromThereIntoTheSlurry(Engine engine) {
        TankPlan plan = new TankPlan().quiet();
        plan.backup = Optional.of(TankPlan.circuit(BackupSource.ELECTRIC, 0.9, 500, 8));
        Design design = plan.build();
        Supplied supplied = new Supplied(
                Optional.empty(),
                Optional.empty(),
                between(0.9 * 300, 0, HOURS),
                Optional.empty(),
                Optional.empty(),
                false);
        Day heat = Day.of(design, supplied, engine, BackupPart.BACKUP_HEAT);
        Day lost = Day.of(design, supplied, engine, BackupPart.BACKUP_AROUND);
        // the water, 8 kg on a coil of some 100 W/K, is steady within minutes and follows the slurry's slow rise
        double riseK = heat.slurryC()[HOURS - 1] - heat.slurryC()[HOURS - 2];
        assertEquals(0.9 * 300 * HOUR_S - 8 * 4186 * riseK, heat.meter()[HOURS - 1] - lost.meter()[HOURS - 1], 60);
        assertEquals(0.9 * 300 * HOUR_S, heat.meter()[HOURS - 1], 0.06 * 270 * HOUR_S);
    }

    @ParameterizedTest
    @MethodSource("engines")
    void loggedFeedCoolsByItsOwnMassWhenItCame(Engine engine) {
        TankPlan plan = new TankPlan().quiet();
        plan.feedstocks = List.of(new Feedstock(
                Optional.empty(), "scraps", 6, 0.25, 0.9, MethanePotential.ofNumber(0.4), DigestionRate.ofNumber(0.1)));
        plan.feedTemperature = new FeedTemperature.Fixed(10);
        plan.water = Optional.of(new DilutionWater(4, new FeedTemperature.Fixed(10)));
        Supplied supplied = new Supplied(
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                between(5 / (2 * HOUR_S), 4, 6),
                Optional.empty(),
                false);
        Day day = Day.of(plan.build(), supplied, engine, FeedPart.FEED_HEAT);
        double solids = 6 * 0.25 / 10;
        double specificJPerKgK = (1 - solids) * 4186 + solids * 1600;
        double slurryC = 0.5 * (day.slurryC()[3] + day.slurryC()[5]);
        double neededJ = 5 * specificJPerKgK * (slurryC - 10);
        assertEquals(neededJ, Math.abs(day.meter()[4] + day.meter()[5]), 1e-3 * neededJ);
        assertEquals(neededJ, Math.abs(day.sum()), 1e-3 * neededJ);
    }

    @ParameterizedTest
    @MethodSource("engines")
    void theMixerTurnsForTheShareLogged(Engine engine) {
        TankPlan plan = new TankPlan().quiet();
        plan.mixer = new Mixer(new Mixer.Given(20), 0.4, 5, 15);
        Supplied supplied = new Supplied(
                Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), between(0.25, 0, HOURS), false);
        // 20 W at the shaft at an efficiency of 0.4 and 5 W idling, for a quarter of the time
        assertEquals(
                0.25 * (20 / 0.4 + 5) * 24 * HOUR_S,
                Day.of(plan.build(), supplied, engine, "mixer_electricity").sum(),
                1e-3);
        assertEquals(
                0.25 * 20 * 24 * HOUR_S,
                Day.of(plan.build(), supplied, engine, MixerPart.SHAFT_HEAT).sum(),
                1e-3);
    }

    @ParameterizedTest
    @MethodSource("engines")
    void loggedAirOfARoomIsThatOfTheRoom(Engine engine) {
        Design design = new TankPlan().quiet().indoors(36).build();
        Supplied logged = new Supplied(
                Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), true);
        Day inARoomOf36 = Day.of(design, Supplied.BY_DESIGN, engine, MixerPart.SHAFT_HEAT);
        Day inARoomOf5 = Day.of(design, logged, engine, MixerPart.SHAFT_HEAT);
        assertEquals(36, inARoomOf36.slurryC()[HOURS - 1], 1e-6);
        double coolsK =
                Conductances.of(design, 0, 5).totalWPerK() * 31 * 24 * HOUR_S / design.contentsHeatCapacityJPerK();
        assertEquals(coolsK, 36 - inARoomOf5.slurryC()[HOURS - 1], 0.15 * coolsK);
    }
}
