package org.warmvat.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.warmvat.account.Books;
import org.warmvat.design.Design;
import org.warmvat.design.heating.Control;
import org.warmvat.design.heating.HighLimit;
import org.warmvat.design.heating.PumpControl;
import org.warmvat.design.season.DailySchedule;
import org.warmvat.design.season.Minimum;
import org.warmvat.design.surroundings.Exposure;
import org.warmvat.design.surroundings.Place;
import org.warmvat.design.surroundings.StandsOn;
import org.warmvat.design.tank.Mixer;
import org.warmvat.design.tank.Shape;
import org.warmvat.engine.HourSink;
import org.warmvat.engine.exponential.ExponentialEngine;
import org.warmvat.heating.SolarPart;
import org.warmvat.question.year.YearResult;
import org.warmvat.question.year.YearStudy;
import org.warmvat.sample.InventedWeather;
import org.warmvat.sample.TankPlan;
import org.warmvat.tank.Conductances;
import org.warmvat.tank.DerivedFigures;
import org.warmvat.tank.Lines;
import org.warmvat.tank.Runner;
import org.warmvat.tank.StudyRefused;
import org.warmvat.weather.Quantity;
import org.warmvat.weather.Weather;

/** What holds for any tank, tried on tanks as chance makes them. */
class RandomTanksTest {

    private static YearResult run(Design design, Weather weather) {
        try {
            return YearStudy.run(design, new Runner(weather, new ExponentialEngine()), HourSink.IGNORE);
        } catch (StudyRefused e) {
            throw new IllegalStateException(e);
        }
    }

    /** The three balances close to 1e-4 of the heat that passed through, as the model page demands. */
    @Test
    void everyLedgerCloses() {
        RandomTanks.each(seed -> {
            YearResult run = run(RandomTanks.plan(seed).build(), RandomTanks.weather(seed));
            double residual = run.whole().of(Books.RESIDUAL_FRACTION);
            assertTrue(residual < 1e-4, "tank " + seed + ": " + residual);
        });
    }

    /** A tank left alone in the dark only ever cools while it is warmer than its surroundings, and never below them. */
    @Test
    void noHeatGoesFromColdToHot() {
        RandomTanks.each(seed -> {
            Random random = new Random(seed);
            TankPlan plan = RandomTanks.plan(seed).quiet();
            plan.standsOn = StandsOn.LEGS;
            double[] air = new double[144];
            for (int hour = 0; hour < air.length; hour++) {
                air[hour] = RandomTanks.between(random, -15, 20);
            }
            if (plan.place instanceof Place.Indoors) {
                plan.indoors(12);
            }
            Map<Quantity, double[]> columns = InventedWeather.columns(144, hour -> air[hour]);
            YearResult run = run(plan.build(), InventedWeather.of(columns));
            double before = plan.control.setpointC();
            for (int hour = 0; hour < 144; hour++) {
                double now = run.hourly().orZero("slurry_c")[hour];
                double most = Math.max(before, 20);
                assertTrue(now <= most + 1e-6 && now > -15, "tank " + seed + ", hour " + hour + ": " + now);
                before = now;
            }
        });
    }

    /** Twice the foam: less steady conductance, and less heat lost by a tank that is held at its temperature. */
    @Test
    void moreFoamLosesLess() {
        RandomTanks.each(seed -> {
            Random random = new Random(seed);
            double foamM = RandomTanks.between(random, 0.01, 0.15);
            Design thin = held(seed, foamM);
            Design thick = held(seed, 2 * foamM);
            assertTrue(Conductances.of(thick, 3, 5).totalWPerK()
                    < Conductances.of(thin, 3, 5).totalWPerK());
            Weather weather = RandomTanks.weather(seed);
            double thinKWh = Lines.lossKWh(run(thin, weather).whole());
            double thickKWh = Lines.lossKWh(run(thick, weather).whole());
            assertTrue(thickKWh < thinKWh, "tank " + seed + ": " + thickKWh + " and " + thinKWh);
        });
    }

    /** Foam all round, no sun on it, and an element that is always strong enough. */
    private static Design held(int seed, double foamM) {
        TankPlan plan = RandomTanks.plan(seed).quiet();
        plan.place = new Place.Outdoors(Exposure.UNDER_ROOF, Optional.of(0.25), 0.25);
        plan.wall = TankPlan.insulated(foamM);
        plan.lid = plan.wall;
        plan.floor = plan.wall;
        plan.control = new Control(40, 0.2, new Minimum.At(20), 0, new Control.DailyChange(1, 2), 10);
        plan.backup = Optional.of(TankPlan.immersed(5000, DailySchedule.continuous()));
        return plan.build();
    }

    /** In a tank too big to notice, the sun's coil gives the same whether or not the other one is there. */
    @Test
    void theCircuitsMeetOnlyInTheSlurry() {
        RandomTanks.each(seed -> {
            TankPlan plan = RandomTanks.plan(seed);
            plan.shape = new Shape.UprightCylinder(20);
            plan.depthM = 20;
            plan.solar = true;
            plan.control = new Control(30, 1, new Minimum.At(20), 3, new Control.DailyChange(1, 2), 10);
            plan.pumpControl = new PumpControl(8, 2, new HighLimit.At(80), 1, 95);
            plan.backup = Optional.empty();
            Weather weather = RandomTanks.weather(seed);
            double alone = run(plan.build(), weather).whole().of(SolarPart.HEAT);
            plan.backup = Optional.of(TankPlan.immersed(1500, DailySchedule.continuous()));
            double together = run(plan.build(), weather).whole().of(SolarPart.HEAT);
            // 1 Wh: the element warms the slurry by less than a thousandth of a kelvin, which moves a start of the pump
            // by seconds.
            assertEquals(alone, together, 1e-3 * alone + 1e-3, "tank " + seed);
        });
    }

    /**
     * A box and its enlarged image under the same layers, edges left out: conductance as the square, contents as the cube,
     * time constant as the length. A paddle's heat and a feed's do not come in.
     */
    @Test
    void surfacesGrowAsTheSquareAndContentsAsTheCube() {
        RandomTanks.each(seed -> {
            Random random = new Random(seed);
            double scale = RandomTanks.between(random, 1.1, 4);
            double[] sides = {
                RandomTanks.between(random, 0.5, 2),
                RandomTanks.between(random, 0.5, 2),
                RandomTanks.between(random, 0.5, 2)
            };
            Design small = box(seed, sides, 1);
            Design large = box(seed, sides, scale);
            double ua = Conductances.of(small, 3, 5).totalWPerK();
            assertEquals(scale * scale * ua, Conductances.of(large, 3, 5).totalWPerK(), 1e-9 * scale * scale * ua);
            double hours = DerivedFigures.of(small, 3, 5, -10).timeConstantH();
            assertEquals(scale * hours, DerivedFigures.of(large, 3, 5, -10).timeConstantH(), 1e-9 * scale * hours);
        });
    }

    private static Design box(int seed, double[] sides, double scale) {
        TankPlan plan = RandomTanks.plan(seed).quiet();
        plan.shape = new Shape.Box(scale * sides[0], scale * sides[1], 0);
        plan.depthM = scale * sides[2];
        plan.headspaceM = scale * 0.2;
        plan.rules = Chains.withoutEdges();
        return plan.build();
    }

    /** In a room, twice the difference to the room is twice the loss of a tank held where it is. */
    @Test
    void lossGoesWithTheDifference() {
        RandomTanks.each(seed -> {
            TankPlan plan = RandomTanks.plan(seed).quiet().indoors(15);
            plan.standsOn = StandsOn.LEGS;
            Weather weather = InventedWeather.steady(15, 48);
            double near = inRoomKWh(plan, 25, weather);
            double far = inRoomKWh(plan, 35, weather);
            assertEquals(2 * near, far, 1e-3 * far, "tank " + seed);
        });
    }

    /** Loss in two days of a tank that starts steady and is held within a hundredth of a kelvin by its paddle alone. */
    private static double inRoomKWh(TankPlan plan, double setpointC, Weather weather) {
        plan.control = new Control(setpointC, 1, new Minimum.At(10), 0, new Control.DailyChange(1, 2), 10);
        plan.mixer = new Mixer(new Mixer.Given(0), 1, 0, 0);
        double holdingW = Conductances.of(plan.build(), 0, 15).totalWPerK() * (setpointC - 15);
        plan.mixer = new Mixer(new Mixer.Given(holdingW), 1, 0, 60);
        return Lines.lossKWh(run(plan.build(), weather).whole());
    }
}
