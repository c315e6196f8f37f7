package org.warmvat.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.warmvat.design.BackupCircuit;
import org.warmvat.design.Design;
import org.warmvat.engine.FastEngine;
import org.warmvat.engine.Hours;
import org.warmvat.weather.Weather;

class BackupStudyTest {

    private static final Weather WEATHER = StudyTank.april(20, 10, 0);

    private static BackupResult backup(Optional<BackupCircuit> backup, int warmUpDays, int threads)
            throws StudyRefused {
        try (Parallel parallel = new Parallel(threads, Parallel.Progress.SILENT)) {
            BackupStudy.Question question = new BackupStudy.Question(
                    0, new BackupStudy.WarmUp(10, warmUpDays), false, 0, List.of(100.0, 1000.0, 10_000.0));
            return BackupStudy.run(
                    StudyTank.design(Optional.empty(), backup), List.of(WEATHER), new FastEngine(), question, parallel);
        }
    }

    private static double shortHours(double ratedW) {
        Runner runner = new Runner(WEATHER, new FastEngine());
        TankRun run = runner.runIn(StudyTank.design(Optional.empty(), StudyTank.element(ratedW)));
        Tally tally = new Tally(run);
        run.over(new Hours(0, WEATHER.hours()), tally);
        return tally.shortHours();
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

    @Test
    void takesAnElementWhereThereIsNoBackup() throws StudyRefused {
        BackupResult without = backup(Optional.empty(), 7, 1);
        BackupResult element = backup(StudyTank.element(500), 7, 3);
        assertTrue(without.elementAssumed());
        assertEquals(element.need(), without.need());
        assertEquals(element.curve(), without.curve());
    }
}
