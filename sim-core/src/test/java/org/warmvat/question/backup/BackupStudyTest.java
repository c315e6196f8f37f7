package org.warmvat.question.backup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.warmvat.account.Account;
import org.warmvat.design.Design;
import org.warmvat.design.heating.BackupCircuit;
import org.warmvat.engine.HourSink;
import org.warmvat.engine.Hours;
import org.warmvat.engine.exponential.ExponentialEngine;
import org.warmvat.question.ColdSpell;
import org.warmvat.question.Parallel;
import org.warmvat.question.Variations;
import org.warmvat.question.hold.HoldResult;
import org.warmvat.sample.StudyTank;
import org.warmvat.tank.Conductances;
import org.warmvat.tank.KeyFigures;
import org.warmvat.tank.Runner;
import org.warmvat.tank.StudyRefused;
import org.warmvat.tank.TankRun;
import org.warmvat.weather.Weather;

class BackupStudyTest {

    private static final Weather WEATHER = StudyTank.april(20, 10, 0);

    private static BackupResult backup(Optional<BackupCircuit> backup, int warmUpDays, int threads)
            throws StudyRefused {
        try (Parallel parallel = new Parallel(threads, Parallel.Progress.SILENT)) {
            BackupStudy.Question question = new BackupStudy.Question(
                    0, new BackupStudy.WarmUp(10, warmUpDays), false, 0, List.of(100.0, 1000.0, 10_000.0));
            return BackupStudy.run(
                    StudyTank.design(Optional.empty(), backup),
                    List.of(WEATHER),
                    new ExponentialEngine(),
                    question,
                    parallel);
        }
    }

    private static double shortHours(double ratedW) {
        Runner runner = new Runner(WEATHER, new ExponentialEngine());
        return runner.runIn(StudyTank.design(Optional.empty(), StudyTank.element(ratedW)))
                .account(new Hours(0, WEATHER.hours()), Account.Keep.SUMS)
                .whole()
                .of(KeyFigures.BELOW_FLOOR_HOURS);
    }

    /** The floor is held from the found power on; the warm-up is the closed form of a body heated at P. */
    @Test
    void findsTheSmallestHeater() throws StudyRefused {
        BackupResult result = backup(StudyTank.element(500), 7, 2);
        double floorW = result.need().forFloorW().orElseThrow();
        assertEquals(0, shortHours(floorW));
        assertEquals(0, shortHours(1.01 * floorW));
        assertTrue(shortHours(0.99 * floorW) > 0);
        Design design = StudyTank.design(Optional.empty(), StudyTank.element(500));
        double ua = Conductances.of(design, 3, 10).totalWPerK();
        double x = Math.exp(-7 * 86_400 * ua / design.contentsHeatCapacityJPerK());
        double expectedW = ua * ((36 - StudyTank.ROOM_C) + (StudyTank.ROOM_C - 10) * x) / (1 - x);
        assertEquals(expectedW, result.need().forWarmUpW().orElseThrow(), 3e-3 * expectedW);
        assertEquals(OptionalDouble.of(1000), result.need().commonW());
    }

    @Test
    void isNeverShorterWithMorePower() throws StudyRefused {
        BackupResult result = backup(StudyTank.element(500), 7, 2);
        List<BackupResult.Point> points = result.curve().points();
        for (int i = 1; i < points.size(); i++) {
            // switching may shift the last moments below the floor by an hour
            assertTrue(points.get(i).shortHours() <= points.get(i - 1).shortHours() + 1);
        }
        assertTrue(result.curve().monotone());
        assertTrue(points.get(0).shortHours() > 100);
    }

    /** However large the heater, a coil of 10 W/K at 45 °C passes 90 W at the set-point, too little for a week's warm-up. */
    @Test
    void namesTheCoilAsTheLimit() throws StudyRefused {
        BackupResult result = backup(StudyTank.coil(500, 45, 0.1), 7, 2);
        assertTrue(result.coil().isLimit());
        assertFalse(result.need().smallestW().isPresent());
        double needed = result.coil().neededM2().orElseThrow();
        assertTrue(needed > 0.1);
        assertFalse(backup(StudyTank.coil(500, 45, 1.01 * needed), 7, 2).coil().isLimit());
        assertTrue(backup(StudyTank.coil(500, 45, 0.99 * needed), 7, 2).coil().isLimit());
    }

    private static BackupResult elementIn(List<Weather> files, double coldSpellK, int threads) throws StudyRefused {
        return elementIn(files, coldSpellK, 7, threads);
    }

    private static BackupResult elementIn(List<Weather> files, double coldSpellK, int days, int threads)
            throws StudyRefused {
        try (Parallel parallel = new Parallel(threads, Parallel.Progress.SILENT)) {
            BackupStudy.Question question = new BackupStudy.Question(
                    0, new BackupStudy.WarmUp(10, days), false, coldSpellK, List.of(100.0, 1000.0, 10_000.0));
            return BackupStudy.run(outdoors(), files, new ExponentialEngine(), question, parallel);
        }
    }

    /** The study tank in open air, so that the weather matters. */
    private static Design outdoors() {
        return StudyTank.outdoors(Optional.empty(), StudyTank.element(500));
    }

    @Test
    void eachOfSeveralFilesCountsAndTheWorstDecides() throws StudyRefused {
        Weather mild = StudyTank.april(20, 12, 0);
        Weather cold = StudyTank.april(21, -8, 0);
        BackupResult inMild = elementIn(List.of(mild), 0, 2);
        BackupResult inCold = elementIn(List.of(cold), 0, 2);
        BackupResult both = elementIn(List.of(mild, cold), 0, 2);
        assertTrue(inCold.need().forFloorW().orElseThrow()
                > inMild.need().forFloorW().orElseThrow());
        // the ladder of both is the cold file's, and every other power fails or holds with it alone
        assertEquals(inCold.need(), both.need());
        assertEquals(inCold.handbook(), both.handbook());
        assertEquals(1, both.spell().file());
        assertEquals(0, elementIn(List.of(cold, mild), 0, 1).spell().file());
        assertEquals(2, both.warmUps().size());
        assertEquals(
                hours(inCold.warmUps().get(0)), hours(both.warmUps().get(1)), "each file's warm-up is its own run");
        List<BackupResult.Point> files = both.curve().chosen();
        assertEquals(2, files.size());
        // with the chosen heater each file has the hours and the energy that it has alone
        assertEquals(inCold.curve().chosen().get(0), files.get(1));
        assertTrue(files.get(0).boughtKWh() < files.get(1).boughtKWh());
        // a tenth less than the floor asks for is short in the file that decides alone
        assertEquals(0, both.spell().smallerShortHours().get(0));
        assertTrue(both.spell().smallerShortHours().get(1) > 0);
        assertEquals(
                inCold.spell().smallerShortHours().get(0),
                both.spell().smallerShortHours().get(1));
    }

    private static double hours(HoldResult.WarmUp warmUp) {
        return warmUp.hours().orElseThrow();
    }

    @Test
    void theOrderOfTheFilesAndTheThreadsDoNotMatter() throws StudyRefused {
        Weather mild = StudyTank.april(20, 12, 0);
        Weather cold = StudyTank.april(21, -8, 0);
        BackupResult one = elementIn(List.of(mild, cold), 0, 1);
        BackupResult other = elementIn(List.of(cold, mild), 0, 3);
        assertEquals(one.need(), other.need());
        assertEquals(one.curve().points(), other.curve().points());
        assertEquals(one.curve().chosen().get(0), other.curve().chosen().get(1));
        assertEquals(one.handbook(), other.handbook());
    }

    /** Each kelvin off the coldest week asks for more, by the tank's own conductance where that week decides. */
    @Test
    void aColderSpellNeverNeedsASmallerHeater() throws StudyRefused {
        Weather file = StudyTank.april(20, 5, 0);
        double before = 0;
        double beforeWarmUp = 0;
        for (double spellK : List.of(0.0, 5.0, 10.0, 20.0)) {
            BackupResult.Need need = elementIn(List.of(file), spellK, 2).need();
            double floorW = need.forFloorW().orElseThrow();
            double warmUpW = need.forWarmUpW().orElseThrow();
            // found to a thousandth, so one that asks for more may come out that much lower
            assertTrue(floorW >= 0.999 * before, spellK + " K: " + floorW + " W after " + before + " W");
            assertTrue(warmUpW >= 0.999 * beforeWarmUp, spellK + " K: " + warmUpW + " W after " + beforeWarmUp);
            before = floorW;
            beforeWarmUp = warmUpW;
        }
        assertTrue(beforeWarmUp
                > 1.2 * elementIn(List.of(file), 0, 2).need().forWarmUpW().orElseThrow());
    }

    /** The coldest week of a short file counts only where the warm-up still has its days. */
    @Test
    void aFileThatEndsTooSoonIsNoReasonForALargerHeater() throws StudyRefused {
        // the same air all along, but for a last week a kelvin colder
        Weather falling = StudyTank.aprilIn(480, hour -> hour < 312 ? 5 : 4);
        int days = 10;
        BackupResult result = elementIn(List.of(falling), 0, 10, 2);
        HoldResult.WarmUp warmUp = result.warmUps().get(0);
        assertTrue(
                !warmUp.from().isAfter(falling.end().minusDays(days)),
                warmUp.from().toString());
        assertTrue(warmUp.hours().orElseThrow() <= days * 24);
    }

    @Test
    void refusesAFileShorterThanTheWarmUp() {
        StudyRefused refused =
                assertThrows(StudyRefused.class, () -> elementIn(List.of(StudyTank.april(20, 5, 0)), 0, 21, 1));
        assertEquals("weather: covers 480 hours, expected at least the 21 days of the warm-up", refused.getMessage());
    }

    @Test
    void theSpellLowersTheColdestWeekAndNothingElse() {
        Weather file = StudyTank.april(20, 5, 0);
        assertEquals(file, ColdSpell.colder(file, 0));
        Weather colder = ColdSpell.colder(file, 7);
        int from = ColdSpell.coldestWeekFrom(file, file.hours());
        for (int hour = 1; hour <= file.hours(); hour++) {
            boolean inWeek = hour > from && hour <= from + 168;
            assertEquals(inWeek ? -2 : 5, colder.airC().at(3600.0 * hour), 1e-9, "hour " + hour);
        }
    }

    /** However large the heater, its water stands at the flow limit and the coil passes what it passes (equations 5.2 and 5.4). */
    @Test
    void anEndlessHeaterGivesWhatTheCoilPasses() throws StudyRefused {
        Weather weather = StudyTank.april(30, 10, 0);
        Design design =
                Variations.withBackupPower(StudyTank.design(Optional.empty(), StudyTank.coil(500, 45, 0.02)), 1e6);
        TankRun run = new Runner(weather, new ExponentialEngine()).start(design, 0, 20);
        run.over(new Hours(0, weather.hours()), HourSink.IGNORE);
        double exchanged = 1 - Math.exp(-0.02 * 100 / (0.05 * 4186));
        double passesWPerK = exchanged * 0.05 * 4186 / (1 - exchanged / 2);
        double lossWPerK = Conductances.of(design, 3, 10).totalWPerK();
        double steadyC = (passesWPerK * 45 + lossWPerK * StudyTank.ROOM_C) / (passesWPerK + lossWPerK);
        double timeH = design.contentsHeatCapacityJPerK() / (passesWPerK + lossWPerK) / 3600;
        double expectedC = steadyC + (20 - steadyC) * Math.exp(-weather.hours() / timeH);
        assertTrue(expectedC < 35.5, "the thermostat never cuts in: " + expectedC);
        // the water first warms up, and its throttle of 5 K over a million watts stands a hair below the limit
        assertEquals(expectedC, run.slurryC(), 0.01);
    }

    @Test
    void takesAnElementWhereThereIsNoBackup() throws StudyRefused {
        BackupResult without = backup(Optional.empty(), 7, 1);
        BackupResult element = backup(StudyTank.element(500), 7, 3);
        assertTrue(without.elementAssumed());
        assertEquals(element.need(), without.need());
        assertEquals(element.curve(), without.curve());
    }
}
