package org.warmvat.cli.answer.year;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.warmvat.account.Period;
import org.warmvat.cli.words.Words;
import org.warmvat.heating.BackupPart;
import org.warmvat.question.year.YearResult;
import org.warmvat.tank.KeyFigures;

class FindingsTest {

    @Test
    void seasonsAreWholeMonthsFromDecember() {
        List<Season> seasons = Season.of(SyntheticRun.usual());
        assertEquals(
                List.of(
                        "winter (December, January and February)",
                        "spring (March, April and May)",
                        "summer (June, July and August)",
                        "autumn (September, October and November)"),
                seasons.stream().map(Season::when).toList());
    }

    @Test
    void southOfTheEquatorTheyAreTurnedRound() {
        YearResult south = SyntheticRun.of(
                new SyntheticRun.Case("South", SyntheticRun.at(2025, 1), 8760, -38, true, Optional.of("fuel")));
        List<Season> seasons = Season.of(south);
        assertEquals("winter (June, July and August)", seasons.get(0).when());
        assertEquals("summer (December, January and February)", seasons.get(2).when());
        assertTrue(seasons.get(0).backupKWh() > seasons.get(2).backupKWh(), "winter needs more");
    }

    @Test
    void aShortRunIsToldMonthByMonth() {
        YearResult part = SyntheticRun.of(
                new SyntheticRun.Case("Part", SyntheticRun.at(2025, 3), 61 * 24, 53, true, Optional.empty()));
        assertEquals(
                List.of("March 2025", "April 2025"),
                Season.of(part).stream().map(Season::when).toList());
    }

    @Test
    void noOtherWeekHasMoreBackupHeatThanTheWorst() {
        YearResult run = SyntheticRun.usual();
        WorstWeek worst = WorstWeek.of(run).orElseThrow();
        assertEquals(WorstWeek.Mark.BACKUP_HEAT, worst.mark());
        for (int first = 0; first + 7 <= run.days().size(); first++) {
            double sum = run.days().subList(first, first + 7).stream()
                    .mapToDouble(day -> day.of(BackupPart.HEAT))
                    .sum();
            assertTrue(sum <= worst.backupKWh() + 1e-3, run.days().get(first).label());
        }
    }

    @Test
    void ofTheWeeksBelowTheFloorThroughoutTheColdestIsTheWorst() {
        YearResult run = SyntheticRun.withoutBackup();
        WorstWeek worst = WorstWeek.of(run).orElseThrow();
        assertEquals(WorstWeek.Mark.HOURS_BELOW_FLOOR, worst.mark());
        assertEquals(168, worst.belowFloorHours(), 1e-9);
        assertColdest(run, worst);
    }

    @Test
    void aTankThatWasNeverWarmHasItsColdestWeekForTheWorst() {
        YearResult run = SyntheticRun.neverWarm();
        WorstWeek worst = WorstWeek.of(run).orElseThrow();
        assertEquals(WorstWeek.Mark.COLDEST, worst.mark());
        assertColdest(run, worst);
    }

    private static void assertColdest(YearResult run, WorstWeek worst) {
        for (int first = 0; first + 7 <= run.days().size(); first++) {
            double mean = run.days().subList(first, first + 7).stream()
                    .mapToDouble(day -> day.of(KeyFigures.MEAN_C))
                    .average()
                    .orElseThrow();
            assertTrue(mean >= worst.meanC() - 1e-9, run.days().get(first).label());
        }
    }

    @Test
    void theColdestDayHoldsTheLowestTemperature() {
        YearResult run = SyntheticRun.shortAtTimes();
        LocalDate coldest = Findings.of(run).coldestDay();
        Period day = run.days().stream()
                .filter(d -> d.label().equals(coldest.toString()))
                .findFirst()
                .orElseThrow();
        assertEquals(run.whole().of(KeyFigures.LEAST_C), day.of(KeyFigures.LEAST_C), 0);
    }

    @Test
    void startsOfTheDaysAddUpToThoseOfTheRun() {
        YearResult run = SyntheticRun.usual();
        Starts backup = Findings.of(run).backup().orElseThrow();
        int sum = run.days().stream()
                .mapToInt(day -> (int) day.of(BackupPart.STARTS))
                .sum();
        assertEquals(sum, backup.total());
        assertEquals(sum / 365.0, backup.perDay(), 1e-12);
        assertTrue(run.days().stream().allMatch(day -> day.of(BackupPart.STARTS) <= backup.most()));
    }

    @Test
    void numbersAreRoundedForReading() {
        assertEquals("1230", Words.number(1234.4));
        assertEquals("100", Words.number(99.96));
        assertEquals("99.9", Words.number(99.94));
        assertEquals("10.0", Words.number(9.996));
        assertEquals("9.99", Words.number(9.991));
        assertEquals("-0.00100", Words.number(-0.001));
        assertEquals("0", Words.number(0));
        assertEquals("-12.3", Words.number(-12.34));
        assertEquals("3", Words.hours(3));
        assertEquals("3.2", Words.hours(3.21));
        assertEquals("312", Words.hours(312.4));
    }

    @Test
    void sharesThatRoundToNothingOrAllSaySo() {
        assertEquals("0.0 %", Words.percent(0));
        assertEquals("less than 0.1 %", Words.percent(0.0001));
        assertEquals("3.6 %", Words.percent(0.0356));
        assertEquals("36 %", Words.percent(0.356));
        assertEquals("99.7 %", Words.percent(0.997));
        assertEquals("more than 99.9 %", Words.percent(0.99999));
        assertEquals("100 %", Words.percent(1));
        assertEquals("<0.1 %", Words.percentCell(0.0001));
    }

    @Test
    void listsAndUnitsReadWell() {
        assertEquals("", Words.list(List.of()));
        assertEquals("a", Words.list(List.of("a")));
        assertEquals("a, b and c", Words.list(List.of("a", "b", "c")));
        assertEquals("12\u00a0kWh and 3 days", Words.unbroken("12 kWh and 3 days"));
        assertEquals("14 January 2025", Words.day(LocalDate.of(2025, 1, 14), true));
    }
}
