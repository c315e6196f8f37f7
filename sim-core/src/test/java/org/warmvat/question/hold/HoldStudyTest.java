package org.warmvat.question.hold;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.MonthDay;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.warmvat.design.Design;
import org.warmvat.engine.exponential.ExponentialEngine;
import org.warmvat.question.Parallel;
import org.warmvat.sample.InventedWeather;
import org.warmvat.sample.StudyTank;
import org.warmvat.tank.StudyRefused;
import org.warmvat.weather.Weather;

class HoldStudyTest {

    private static final Design HEATED = StudyTank.design(Optional.empty(), StudyTank.element(500));
    private static final Weather WEATHER = StudyTank.april(30, 5, 500);

    private static HoldResult hold(HoldStudy.When when, int threads) throws StudyRefused {
        try (Parallel parallel = new Parallel(threads, Parallel.Progress.SILENT)) {
            HoldStudy.Question question = new HoldStudy.Question(when, List.of(34.0, 30.0, 20.0), 10);
            return HoldStudy.run(HEATED, WEATHER, new ExponentialEngine(), question, parallel);
        }
    }

    /** Everything constant, an envelope without heat: cooling is exponential with the computed time constant. */
    @Test
    void coolsWithTheTimeConstant() throws StudyRefused {
        HoldResult result = hold(new HoldStudy.At(MonthDay.of(4, 3)), 1);
        for (HoldResult.Failure failure : result.failures()) {
            for (int i = 0; i < result.temperaturesC().size(); i++) {
                double goalC = result.temperaturesC().get(i);
                double expected = result.timeConstantH()
                        * Math.log((failure.startC() - StudyTank.ROOM_C) / (goalC - StudyTank.ROOM_C));
                // a straight line within the hour, and foam of 100 J/(m3 K) instead of none: 0.1 %
                assertEquals(expected, failure.hours().get(i).orElseThrow(), 1e-3 * expected + 0.01);
            }
        }
    }

    /** The worst moment is when the thermostat is about to switch on: no start can be sooner. */
    @Test
    void findsTheSoonestOfAllStarts() throws StudyRefused {
        HoldResult all = hold(new HoldStudy.Anytime(), 2);
        HoldResult.Failure worst = all.failures().get(0);
        for (int day = 2; day < 20; day += 3) {
            HoldResult one = hold(new HoldStudy.At(MonthDay.of(4, day)), 1);
            assertTrue(one.failures().get(0).hours().get(0).orElseThrow()
                    >= worst.hours().get(0).orElseThrow());
        }
        assertEquals(720, worst.usual().starts());
        assertEquals(
                worst.hours().get(0).orElseThrow(),
                worst.usual().worstByMonth().get(3).orElseThrow());
        assertTrue(worst.usual().worstByMonth().get(0).isEmpty());
    }

    /** Each temperature is followed from the start from which it comes soonest: no start at a midnight is sooner. */
    @Test
    void eachTemperatureHasAWorstMomentOfItsOwn() throws StudyRefused {
        Design design = StudyTank.outdoors(Optional.empty(), StudyTank.element(500));
        Weather january = InventedWeather.days(2, 25);
        List<Double> goals = List.of(35.0, 31.0, 27.0);
        try (Parallel parallel = new Parallel(2, Parallel.Progress.SILENT)) {
            List<HoldResult.Moment> worst = HoldStudy.run(
                            design,
                            january,
                            new ExponentialEngine(),
                            new HoldStudy.Question(new HoldStudy.Anytime(), goals, 10),
                            parallel)
                    .failures()
                    .get(0)
                    .worst();
            assertFalse(worst.get(2).from().equals(worst.get(0).from()), worst.toString());
            for (int day = 4; day < 24; day++) {
                HoldResult.Failure one = HoldStudy.run(
                                design,
                                january,
                                new ExponentialEngine(),
                                new HoldStudy.Question(new HoldStudy.At(MonthDay.of(1, day)), goals, 10),
                                parallel)
                        .failures()
                        .get(0);
                for (int i = 0; i < goals.size(); i++) {
                    assertTrue(one.hours().get(i).orElse(1e9)
                            >= worst.get(i).hours().orElseThrow());
                }
            }
        }
    }

    @Test
    void doesNotDependOnThreads() throws StudyRefused {
        HoldResult one = hold(new HoldStudy.Anytime(), 1);
        HoldResult three = hold(new HoldStudy.Anytime(), 3);
        for (int i = 0; i < one.failures().size(); i++) {
            assertEquals(one.failures().get(i).hours(), three.failures().get(i).hours());
            assertEquals(one.failures().get(i).from(), three.failures().get(i).from());
            assertEquals(one.failures().get(i).usual(), three.failures().get(i).usual());
        }
    }

    /** Warm-up at constant power: the closed form of a body heated at P with loss UA. */
    @Test
    void warmsUpAsTheClosedFormSays() throws StudyRefused {
        HoldResult result = hold(new HoldStudy.At(MonthDay.of(4, 3)), 1);
        HoldResult.WarmUp warmUp = result.warmUps().get(0);
        double uaWPerK = HEATED.contentsHeatCapacityJPerK() / (3600 * result.timeConstantH());
        double endC = StudyTank.ROOM_C + 500 / uaWPerK;
        double expected = result.timeConstantH() * Math.log((endC - 10) / (endC - 36));
        assertEquals(expected, warmUp.hours().orElseThrow(), 1e-3 * expected + 0.01);
        // to the end of the hour: up to 0.5 kWh more than until the set-point, which is within the band
        assertEquals(0.5 * expected, warmUp.heat().backupKWh(), 0.5);
        assertEquals(warmUp.heat().backupKWh(), warmUp.heat().boughtKWh(), 1e-6);
    }

    @Test
    void refusesADayOutsideTheFile() {
        StudyRefused refused = assertThrows(StudyRefused.class, () -> hold(new HoldStudy.At(MonthDay.of(6, 1)), 1));
        assertEquals(
                "weather: goes from 2025-04-01T00:00 to 2025-05-01T00:00, which does not hold the time asked for; expected a"
                        + " file that does",
                refused.getMessage());
    }
}
