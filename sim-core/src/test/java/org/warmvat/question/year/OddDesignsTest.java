package org.warmvat.question.year;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.warmvat.account.Books;
import org.warmvat.account.Period;
import org.warmvat.design.RunIn;
import org.warmvat.design.envelope.EnvelopeRules;
import org.warmvat.design.heating.BackupSource;
import org.warmvat.design.season.DailySchedule;
import org.warmvat.design.surroundings.Exposure;
import org.warmvat.design.surroundings.Ground;
import org.warmvat.design.surroundings.GroundWave;
import org.warmvat.design.surroundings.Place;
import org.warmvat.design.surroundings.StandsOn;
import org.warmvat.design.tank.Shape;
import org.warmvat.engine.HourSink;
import org.warmvat.engine.exponential.ExponentialEngine;
import org.warmvat.engine.reference.ReferenceEngine;
import org.warmvat.heating.SolarPart;
import org.warmvat.sample.InventedWeather;
import org.warmvat.sample.TankPlan;
import org.warmvat.tank.Runner;
import org.warmvat.tank.StudyRefused;
import org.warmvat.weather.HourlyTable;
import org.warmvat.weather.Site;
import org.warmvat.weather.Weather;
import org.warmvat.weather.file.WeatherFiles;

/** The ledger of odd designs in odd weather: every balance closes to far below 1e-4 of the heat that passed through. */
class OddDesignsTest {
    /** What the results may not exceed anywhere. */
    private static final double ALLOWED = 1e-4;
    /** Meters and temperatures have the same integrals; left is by how far heats and temperatures need not agree in a step. */
    private static final double EXPECTED = 1e-7;

    private static final Weather DEMONSTRATION = WeatherFiles.demonstration();

    /** A design and its weather under a name. */
    record Case(String name, TankPlan plan, Weather weather) {
        @Override
        public String toString() {
            return name;
        }
    }

    private static Weather april() {
        return InventedWeather.days(95, 12);
    }

    private static Case with(String name, Consumer<TankPlan> change) {
        TankPlan plan = new TankPlan();
        plan.runIn = new RunIn.Days(3);
        change.accept(plan);
        return new Case(name, plan, april());
    }

    static List<Case> cases() {
        List<Case> cases = new ArrayList<>();
        cases.add(with("as it comes", plan -> {}));
        cases.add(with("box", plan -> plan.shape = new Shape.Box(1.4, 0.7, 30)));
        cases.add(with("no solar", plan -> plan.solar = false));
        cases.add(with("no backup", plan -> plan.backup = Optional.empty()));
        cases.add(with("no gas", plan -> plan.gas = Optional.empty()));
        cases.add(with("nothing but a tank", TankPlan::quiet));
        cases.add(with(
                "immersed at night",
                plan -> plan.backup = Optional.of(TankPlan.immersed(900, TankPlan.window(22, 8)))));
        cases.add(with("indoors", plan -> plan.indoors(14)));
        cases.add(with("on the ground", plan -> {
            plan.standsOn = StandsOn.GROUND;
            plan.ground = new Ground(Optional.of(new GroundWave(9, 7, 30)), 0.05, 0.5, 0.2);
        }));
        cases.add(with("no insulation at all", TankPlan::uninsulated));
        cases.add(with(
                "under a roof", plan -> plan.place = new Place.Outdoors(Exposure.UNDER_ROOF, Optional.of(0.25), 0.25)));
        cases.add(with("own gas, merged sheets", plan -> {
            plan.backup = Optional.of(TankPlan.circuit(BackupSource.OWN_GAS, 0.8, 2000, 15));
            plan.rules = new EnvelopeRules(0.1, 3, 0.54, true, 0.5);
            plan.feedTimes = DailySchedule.continuous();
        }));
        cases.add(with("hundred litres", plan -> {
            plan.shape = new Shape.UprightCylinder(0.5);
            plan.depthM = 0.5;
        }));
        return cases;
    }

    @ParameterizedTest
    @MethodSource("cases")
    void ledgersCloseByDayMonthAndRun(Case one) throws StudyRefused {
        for (var engine : List.of(new ExponentialEngine(), new ReferenceEngine())) {
            YearResult result = YearStudy.run(one.plan.build(), new Runner(one.weather, engine), HourSink.IGNORE);
            check(result.whole());
            result.months().forEach(OddDesignsTest::check);
            result.days().forEach(OddDesignsTest::check);
        }
    }

    private static void check(Period period) {
        double residual = period.of(Books.RESIDUAL_FRACTION);
        assertTrue(residual < EXPECTED && residual < ALLOWED, period.label() + ": " + residual);
        assertTrue(period.of(Books.PASSED_THROUGH) > 0, period.label());
    }

    @Test
    void theDemonstrationsYearClosesInEveryMonth() throws StudyRefused {
        YearResult result = run(DEMONSTRATION);
        assertEquals(12, result.months().size());
        assertEquals(365, result.days().size());
        check(result.whole());
        result.months().forEach(OddDesignsTest::check);
        result.days().forEach(OddDesignsTest::check);
    }

    @Test
    void aLeapYearHasItsDay() throws StudyRefused {
        YearResult result = run(new Weather(InventedWeather.leapYear()));
        assertEquals(366, result.days().size());
        assertEquals("2024-02-29", result.days().get(59).label());
        assertEquals(8784, result.whole().hours());
        check(result.whole());
    }

    /** South of the equator, with the seasons half a year on, the collector faces north and the year is much the same. */
    @Test
    void aSouthernYearMirrorsTheNorthern() throws StudyRefused {
        HourlyTable north = DEMONSTRATION.table();
        Site site = north.site();
        Site mirrored = new Site(
                "Mirror (invented)", -site.latitudeDeg(), site.longitudeDeg(), site.elevationM(), site.utcOffsetH());
        Weather south =
                new Weather(InventedWeather.moved(north, mirrored, north.start().plusDays(181)));
        YearResult result = run(south);
        check(result.whole());
        YearResult northern = run(DEMONSTRATION);
        // the sun's distance and the equation of time differ: a few per cent
        double sun = northern.whole().of(SolarPart.HEAT);
        assertEquals(sun, result.whole().of(SolarPart.HEAT), 0.05 * sun);
        // the run starts in July: its coldest month is the same calendar distance away
        assertEquals("2025-07", result.months().get(0).label());
    }

    private static YearResult run(Weather weather) throws StudyRefused {
        return YearStudy.run(new TankPlan().build(), new Runner(weather, new ExponentialEngine()), HourSink.IGNORE);
    }
}
