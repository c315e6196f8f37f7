package org.warmvat.question.carry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.warmvat.design.Design;
import org.warmvat.engine.exponential.ExponentialEngine;
import org.warmvat.question.Parallel;
import org.warmvat.question.Window;
import org.warmvat.sample.InventedWeather;
import org.warmvat.sample.StudyTank;
import org.warmvat.tank.StudyRefused;
import org.warmvat.weather.Weather;

class CarryStudyTest {

    private static final Weather WEATHER = StudyTank.april(30, 10, 600);

    private static CarryResult carry(double areaM2, int threads) throws StudyRefused {
        Design design = StudyTank.design(StudyTank.collector(areaM2), StudyTank.element(500));
        try (Parallel parallel = new Parallel(threads, Parallel.Progress.SILENT)) {
            return CarryStudy.run(
                    design,
                    WEATHER,
                    Window.of(WEATHER, MonthDay.of(4, 2), MonthDay.of(4, 25)),
                    new ExponentialEngine(),
                    new CarryStudy.Question(0, OptionalDouble.of(10)),
                    parallel);
        }
    }

    @Test
    void getsNothingFromACollectorWithoutArea() throws StudyRefused {
        CarryResult result = carry(0, 1);
        assertEquals(
                0, Arrays.stream(result.withBackup().course().heat().solarW()).sum());
        assertEquals(CarryResult.Verdict.NO, result.alone().warmth().verdict());
        assertEquals(Optional.empty(), result.carriesFrom());
        // all that the tank needed came from the backup but for what its own heat gave
        double need = Arrays.stream(result.withBackup().course().heat().needW()).sum() / 1000;
        assertEquals(need, result.withBackup().shortfallKWh(), 1.5);
    }

    @Test
    void findsAnAreaThatIsJustEnough() throws StudyRefused {
        double needed = carry(1, 1).area().smallestM2().orElseThrow();
        assertEquals(CarryResult.Verdict.YES, carry(needed, 1).alone().warmth().verdict());
        assertEquals(
                CarryResult.Verdict.YES,
                carry(1.01 * needed, 1).alone().warmth().verdict());
        assertTrue(carry(0.99 * needed, 1).alone().warmth().shortHours() > 0);
        assertTrue(carry(1, 1).area().monotone());
    }

    /** A high limit 20 K higher lets the sun heat the slurry beyond what digests; its price says so. */
    @Test
    void aHigherLimitKillsDigestionInSummer() throws StudyRefused {
        Weather june = InventedWeather.days(150, 40);
        Design design = Design.usual().with("solar.area_m2", 12);
        try (Parallel parallel = new Parallel(2, Parallel.Progress.SILENT)) {
            CarryResult result = CarryStudy.run(
                    design,
                    june,
                    Window.of(june, MonthDay.of(6, 2), MonthDay.of(6, 30)),
                    new ExponentialEngine(),
                    new CarryStudy.Question(0, OptionalDouble.of(12)),
                    parallel);
            CarryResult.Price asIs = result.limits().get(0).price();
            CarryResult.Price higher = result.limits().stream()
                    .filter(one -> one.what() == CarryResult.Limit.HIGH_LIMIT)
                    .findFirst()
                    .orElseThrow()
                    .price();
            assertFalse(asIs.killsDigestion(asIs), asIs.toString());
            assertTrue(higher.killsDigestion(asIs), higher.toString());
            assertTrue(higher.mostC() > 46 && higher.tooHotHours() > 0, higher.toString());
            assertTrue(higher.methaneNm3().orElseThrow() < asIs.methaneNm3().orElseThrow());
        }
    }

    @Test
    void aTenthLessGasIsNoRemedy() {
        CarryResult.Price asIs = new CarryResult.Price(40, OptionalDouble.of(100), 0, 0);
        assertFalse(new CarryResult.Price(44, OptionalDouble.of(90), 0, 50).killsDigestion(asIs));
        assertTrue(new CarryResult.Price(44, OptionalDouble.of(89), 0, 0).killsDigestion(asIs));
        assertTrue(new CarryResult.Price(47, OptionalDouble.empty(), 1, 0).killsDigestion(asIs));
    }

    @Test
    void carriesFromTheFirstDayWhereItCarriesAtAll() throws StudyRefused {
        CarryResult result = carry(10, 1);
        assertEquals(Optional.of(LocalDate.of(2025, 4, 2)), result.carriesFrom());
        assertEquals(Optional.empty(), result.alone().firstDayBelow());
        assertEquals(24, result.alone().warmth().warmDays());
    }

    @Test
    void cutsTheWindowIntoHalvesThatAddUp() throws StudyRefused {
        CarryResult result = carry(0.5, 1);
        assertEquals(2, result.withBackup().halves().size());
        assertEquals(
                LocalDate.of(2025, 4, 15), result.withBackup().halves().get(0).lastDay());
        double shortHours = result.withBackup().halves().stream()
                .mapToDouble(CarryResult.Half::shortHoursAlone)
                .sum();
        assertEquals(result.alone().warmth().shortHours(), shortHours, 1e-9);
    }

    @Test
    void relaxesOneThingAtATime() throws StudyRefused {
        CarryResult result = carry(0.5, 1);
        assertEquals(5, result.limits().size());
        assertEquals(result.alone().warmth(), result.limits().get(0).warmth());
        // 10 m2 carries it, so the collector is the limit that binds
        assertEquals(CarryResult.Verdict.YES, result.limits().get(1).warmth().verdict());
        double foam = result.limits().get(4).warmth().leastC();
        assertTrue(foam > result.alone().warmth().leastC(), "twice the foam keeps it warmer");
    }

    @Test
    void doesNotDependOnThreads() throws StudyRefused {
        CarryResult one = carry(0.5, 1);
        CarryResult three = carry(0.5, 3);
        assertEquals(one.area(), three.area());
        assertEquals(one.limits(), three.limits());
        assertEquals(one.withBackup().halves(), three.withBackup().halves());
    }

    @Test
    void refusesADesignWithoutSolarCircuit() {
        Design design = StudyTank.design(Optional.empty(), StudyTank.element(500));
        try (Parallel parallel = new Parallel(1, Parallel.Progress.SILENT)) {
            StudyRefused refused = assertThrows(
                    StudyRefused.class,
                    () -> CarryStudy.run(
                            design,
                            WEATHER,
                            Window.of(WEATHER, MonthDay.of(4, 2), MonthDay.of(4, 25)),
                            new ExponentialEngine(),
                            new CarryStudy.Question(0, OptionalDouble.empty()),
                            parallel));
            assertFalse(refused.faults().isEmpty());
        }
    }
}
