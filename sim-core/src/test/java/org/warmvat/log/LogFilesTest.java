package org.warmvat.log;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDateTime;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.warmvat.weather.WeatherRefused;
import org.warmvat.weather.layout.Layout;
import org.warmvat.weather.layout.TimeForm;

/** Exact: what rows of a log become, and what is said of those that cannot be used. */
class LogFilesTest {

    private static LogFiles.Source file(String name, String... lines) {
        return new LogFiles.Source(name, String.join("\n", lines) + "\n");
    }

    private static Log read(String... lines) throws WeatherRefused {
        return LogFiles.read(List.of(file("log.csv", lines)), Optional.empty(), Optional.empty());
    }

    private static List<String> refused(String... lines) {
        return assertThrows(WeatherRefused.class, () -> read(lines)).faults();
    }

    @Test
    void valuesStandAtRowsAndRatesOverTheStepsThatEndThere() throws WeatherRefused {
        Log log = read(
                "# warmvat log 1",
                "# utc_offset_h: 2",
                "# origin: invented",
                "time,slurry_c,air_c,backup_heat_w,feed_kg",
                "2025-03-01T06:00,,1,900,9",
                "2025-03-01T07:00,30.0,2,100,3",
                "2025-03-01T08:00,30.5,4,200,",
                "2025-03-01T10:30,31.5,9,300,4.5");
        assertEquals(LocalDateTime.of(2025, 3, 1, 7, 0), log.start());
        assertEquals(OptionalDouble.of(2), log.utcOffsetH());
        assertArrayEquals(new double[] {0, 3600, 12_600}, log.slurryC().timesS(), 0);
        assertEquals(12_600, log.spanS(), 0);
        assertEquals(3, log.readings(LogColumn.AIR).orElseThrow().at(1800), 1e-12);
        assertEquals(9, log.readings(LogColumn.AIR).orElseThrow().at(99_999), 0);
        Steps heat = log.steps(LogColumn.BACKUP_HEAT).orElseThrow();
        assertEquals(200, heat.at(1), 0);
        assertEquals(300, heat.at(3601), 0);
        assertEquals(3600, heat.nextEdgeS(0), 0);
        assertEquals(12_600, heat.nextEdgeS(3600), 0);
        assertEquals(0, heat.at(12_601), 0);
        assertEquals(250, heat.mean(1800, 5400), 1e-12);
        assertEquals(200 * 3600 + 300 * 9000, heat.total(), 1e-6);
        assertEquals(4.5, log.steps(LogColumn.FEED).orElseThrow().total(), 1e-12);
        assertEquals(List.of(), log.notes());
    }

    @Test
    void finerRowsAreAveragedAndNothingIsLost() throws WeatherRefused {
        String[] lines = new String[32];
        lines[0] = "time,slurry_c,backup_electric_w,feed_kg";
        for (int minute = 0; minute <= 30; minute++) {
            lines[minute + 1] = String.format(
                    java.util.Locale.ROOT, "2025-03-01 07:%02d:00,%d,%d,0.1", minute, minute, minute <= 15 ? 60 : 0);
        }
        Log log = read(lines);
        assertArrayEquals(new double[] {270, 870, 1470, 1800}, log.slurryC().timesS(), 1e-9);
        assertArrayEquals(new double[] {4.5, 14.5, 24.5, 30}, log.slurryC().values(), 1e-12);
        assertEquals(
                15 * 3600, log.steps(LogColumn.BACKUP_ELECTRIC).orElseThrow().total(), 1e-6);
        assertEquals(3.0, log.steps(LogColumn.FEED).orElseThrow().total(), 1e-12);
        assertEquals(List.of("Rows finer than ten minutes are averaged over ten minutes."), log.notes());
    }

    @Test
    void severalSensorsAreMeantOrOneIsNamed() throws WeatherRefused {
        String[] lines = {
            "time,slurry_top_c,slurry_low_c", "2025-03-01T07:00,32,30", "2025-03-01T08:00,,30", "2025-03-01T09:00,34,31"
        };
        Log mean = read(lines);
        assertArrayEquals(new double[] {31, 32.5}, mean.slurryC().values(), 0);
        assertEquals(
                List.of("The slurry is taken as the mean of the sensors low, top, where all have a value."),
                mean.notes());
        List<LogFiles.Source> sources = List.of(file("log.csv", lines));
        Log low = LogFiles.read(sources, Optional.empty(), Optional.of("low"));
        assertArrayEquals(new double[] {30, 30, 31}, low.slurryC().values(), 0);
        assertEquals(
                List.of("--sensor middle: the log has no such sensor, expected one of low, top"),
                assertThrows(
                                WeatherRefused.class,
                                () -> LogFiles.read(sources, Optional.empty(), Optional.of("middle")))
                        .faults());
    }

    @Test
    void aSensorThatDiedIsNamedWithTheOthers() {
        assertEquals(
                List.of(
                        "log.csv: the sensors low, top have values in 1, 3 rows, and their mean is known only where all have one;"
                                + " expected --sensor with the name of one that lived"),
                refused(
                        "time,slurry_top_c,slurry_low_c",
                        "2025-03-01T07:00,32,30",
                        "2025-03-01T08:00,31,",
                        "2025-03-01T09:00,30,"));
    }

    @Test
    void filesFollowOneAnotherInTime() throws WeatherRefused {
        LogFiles.Source late = file("b.csv", "time,slurry_c", "2025-03-02T07:00,30", "2025-03-02T08:00,29");
        LogFiles.Source early = file("a.csv", "time,slurry_c,air_c", "2025-03-01T07:00,33,5", "2025-03-01T08:00,32,6");
        Log log = LogFiles.read(List.of(late, early), Optional.empty(), Optional.empty());
        assertArrayEquals(new double[] {33, 32, 30, 29}, log.slurryC().values(), 0);
        assertEquals(
                List.of(
                        "The slurry's readings have 1 gap of more than three steps, the longest 23.0 h; after each the tank"
                                + " starts afresh.",
                        "air_c is empty over 1.0 h in all: the weather file's stands in where there is one, else what the"
                                + " rows about it say."),
                log.notes());
        LogFiles.Source over = file("c.csv", "time,slurry_c", "2025-03-01T08:00,30");
        assertEquals(
                List.of("c.csv line 2: begins before a.csv ends (line 3), expected files that follow one another"),
                assertThrows(
                                WeatherRefused.class,
                                () -> LogFiles.read(List.of(early, over), Optional.empty(), Optional.empty()))
                        .faults());
    }

    @Test
    void clocksOfSeveralFilesBecomeThatOfTheFirst() throws WeatherRefused {
        LogFiles.Source one =
                file("a.csv", "# warmvat log 1", "# utc_offset_h: 0", "time,slurry_c", "2025-03-01T07:00,33");
        LogFiles.Source two =
                file("b.csv", "# warmvat log 1", "# utc_offset_h: 1", "time,slurry_c", "2025-03-01T09:30,32");
        Log log = LogFiles.read(List.of(one, two), Optional.empty(), Optional.empty());
        assertArrayEquals(new double[] {0, 1.5 * 3600}, log.slurryC().timesS(), 0);
        LogFiles.Source none = file("c.csv", "time,slurry_c", "2025-03-01T09:30,32");
        assertEquals(
                List.of("c.csv: utc_offset_h is stated in one of a.csv and c.csv only, expected in both or in none"),
                assertThrows(
                                WeatherRefused.class,
                                () -> LogFiles.read(List.of(one, none), Optional.empty(), Optional.empty()))
                        .faults());
    }

    @Test
    void allFaultsAreToldAtOnce() {
        assertEquals(
                List.of(
                        "log.csv line 1: unknown column \"air\", expected one of time, slurry_c, slurry_NAME_c, air_c,"
                                + " global_w_m2, wind_m_s, backup_electric_w, backup_heat_w, solar_heat_w, feed_kg, mixer_on"
                                + " (did you mean air_c?); any other text is read with --log-layout",
                        "log.csv line 1: column \"time\" stands twice",
                        "log.csv line 1: no column slurry_c (or slurry_NAME_c for several sensors), which is required;"
                                + " any other text is read with --log-layout"),
                refused("time,air,time", "2025-03-01T07:00,1,1"));
        assertEquals(
                List.of(
                        "log.csv line 2: mixer_on \"5\", expected 0 to 1",
                        "log.csv line 2: slurry_c \"warm\", expected a number with a decimal point or nothing",
                        "log.csv line 3: time \"1.3.2025\", expected the form YYYY-MM-DDThh:mm:ss or YYYY-MM-DDThh:mm or"
                                + " YYYY-MM-DD hh:mm:ss or YYYY-MM-DD hh:mm",
                        "log.csv line 4: time \"2025-03-01T07:00\", expected one after that of the row before",
                        "log.csv line 5: 2 cells, expected at least 3"),
                refused(
                        "time,slurry_c,mixer_on",
                        "2025-03-01T07:00,warm,5",
                        "1.3.2025,30,0",
                        "2025-03-01T07:00,30,0",
                        "2025-03-01T08:00,30"));
        assertEquals(
                List.of("log.csv: no row has a value of slurry_c, expected readings of the slurry"),
                refused("time,slurry_c", "2025-03-01T07:00,"));
        assertEquals(List.of("log.csv: no rows, expected readings of the slurry"), refused("time,slurry_c"));
    }

    @Test
    void blankLinesAndNamesWrittenAgainAreNoRows() throws WeatherRefused {
        Log log = read(
                "time,slurry_c,air_c",
                "2025-03-01T07:00,30,1",
                "time,slurry_c,air_c",
                "  ",
                "2025-03-01T08:00,29,2  ",
                ",,",
                "");
        assertArrayEquals(new double[] {30, 29}, log.slurryC().values(), 0);
        assertEquals(
                List.of("log.csv line 3: 1 cell, expected at least 2"),
                refused("time,slurry_c", "2025-03-01T07:00,30", "# restarted"));
    }

    @Test
    void aClockPutBackFromSummerTimeIsNamed() {
        List<String> said = refused(
                "time,slurry_c",
                "2025-10-26T02:30,30",
                "2025-10-26T02:00,30",
                "2025-10-26T00:30,30",
                "2025-10-26T00:30,30");
        assertEquals(
                List.of(
                        "log.csv line 3: time \"2025-10-26T02:00\", expected one after that of the row before (a clock put back"
                                + " from summer time does this: log by one clock all year)",
                        "log.csv line 4: time \"2025-10-26T00:30\", expected one after that of the row before",
                        "log.csv line 5: time \"2025-10-26T00:30\", expected one after that of the row before"),
                said);
    }

    /** A value tells of its own step only where it comes after more than three steps without one. */
    @Test
    void aHeatThatIsNotWrittenDownIsNotKnown() throws WeatherRefused {
        String[] lines = new String[26];
        lines[0] = "time,slurry_c,backup_electric_w,global_w_m2";
        for (int hour = 1; hour <= 24; hour++) {
            boolean night = hour > 7 && hour < 16;
            lines[hour] = String.format(
                    Locale.ROOT, "2025-03-01T%02d:00,%d,%s,%s", hour, 40 - hour, night ? "" : "100", night ? "" : "50");
        }
        lines[25] = "2025-03-02T01:00,15,,60";
        Log log = read(lines);
        Steps heat = log.steps(LogColumn.BACKUP_ELECTRIC).orElseThrow();
        assertTrue(heat.isKnown(5.5 * 3600));
        assertFalse(heat.isKnown(6.5 * 3600));
        assertFalse(heat.isKnown(13.9 * 3600));
        assertTrue(heat.isKnown(14.1 * 3600));
        assertFalse(heat.isKnown(23.5 * 3600));
        assertTrue(log.steps(LogColumn.GLOBAL).orElseThrow().isKnown(23.5 * 3600));
        assertEquals(
                List.of(
                        "global_w_m2 is empty over 8.0 h in all: the weather file's stands in where there is one, else what the"
                                + " rows about it say.",
                        "backup_electric_w is empty over 9.0 h in all: what went in then is not known, and the log is left out"
                                + " there. Write 0 where nothing went in."),
                log.notes());
        List<Log> stretches = log.stretches(4, 1e9);
        assertEquals(
                List.of(7, 10),
                stretches.stream().map(stretch -> stretch.slurryC().size()).toList());
        Steps later = stretches.get(1).steps(LogColumn.BACKUP_ELECTRIC).orElseThrow();
        assertTrue(later.isKnown(1) && later.isKnown(9 * 3600 - 1));
        assertFalse(later.isKnown(9 * 3600 + 1));
    }

    /** A single row that is missing does harm only where the heat changed; between uneven rows none is missing. */
    @Test
    void missingRowsCutTheLogWhereAHeatChanged() throws WeatherRefused {
        String heading = "time,slurry_c,solar_heat_w";
        String[] hours = {"01", "02", "03", "04", "06", "07", "08", "09"};
        int[] changing = {0, 0, 0, 0, 500, 500, 500, 500};
        String[] steady = new String[9];
        String[] changed = new String[9];
        steady[0] = heading;
        changed[0] = heading;
        for (int i = 0; i < 8; i++) {
            steady[i + 1] = "2025-03-01T" + hours[i] + ":00,30,500";
            changed[i + 1] = "2025-03-01T" + hours[i] + ":00,30," + changing[i];
        }
        assertEquals(1, read(steady).stretches(4, 1e5).size());
        assertEquals(2, read(changed).stretches(4, 1e5).size());
        assertEquals(1, read(changed).stretches(4, 1e7).size());
        assertEquals(
                1,
                read(
                                heading,
                                "2025-03-01T01:00,30,0",
                                "2025-03-01T01:20,30,0",
                                "2025-03-01T02:00,30,0",
                                "2025-03-01T02:30,30,0",
                                "2025-03-01T03:30,30,500",
                                "2025-03-01T03:50,30,500",
                                "2025-03-01T04:40,30,500")
                        .stretches(4, 1e5)
                        .size());
    }

    @Test
    void readingsAreKnownNearThemOnly() {
        Readings air = new Readings(new double[] {0, 10, 20, 60}, new double[] {1, 2, 3, 4});
        assertTrue(air.isKnown(0) && air.isKnown(5) && air.isKnown(60) && air.isKnown(90) && air.isKnown(-30));
        assertFalse(air.isKnown(21) || air.isKnown(59) || air.isKnown(91) || air.isKnown(-31));
    }

    @Test
    void anyTextIsReadByItsLayout() throws WeatherRefused {
        LogLayout layout = new LogLayout(
                new Layout.Text(1, true, ';', ','),
                List.of(new Layout.ByHeading("Date"), new Layout.ByNumber(2)),
                List.of(new TimeForm("M/D/YY hh:mm:ss"), new TimeForm("YYYY/MM/DD hh:mm:ss")),
                OptionalDouble.of(3),
                Map.of(
                        "slurry_c",
                        LogLayout.Column.of(new Layout.Column(new Layout.ByHeading("T2"), 1, 0)),
                        "air_c",
                        new LogLayout.Column(
                                new Layout.Column(new Layout.ByHeading("T3"), 5.0 / 9, -32 * 5.0 / 9), 0, 40)),
                Set.of("#NAME?", "-OL", "-99"));
        LogFiles.Source source = file(
                "l.txt",
                "logger 7",
                "Date;Time;T2;T3",
                "5/11/24;15:44:17;56,9;50",
                "2024/05/11;16:04:17;-OL;59",
                "2024/05/11;16:14:17;-99,0;-200",
                "2024/05/11;16:24:17;55,9;#NAME?");
        Log log = LogFiles.read(List.of(source), Optional.of(layout), Optional.empty());
        assertEquals(LocalDateTime.of(2024, 5, 11, 15, 44, 17), log.start());
        assertArrayEquals(new double[] {0, 2400}, log.slurryC().timesS(), 0);
        assertArrayEquals(new double[] {56.9, 55.9}, log.slurryC().values(), 1e-12);
        assertArrayEquals(
                new double[] {10, 15}, log.readings(LogColumn.AIR).orElseThrow().values(), 1e-9);
        assertTrue(Arrays.stream(log.readings(LogColumn.AIR).orElseThrow().timesS())
                .allMatch(t -> t <= 1200));
    }
}
