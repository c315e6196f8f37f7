package org.warmvat.weather.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.warmvat.sun.EquationOfTime;
import org.warmvat.weather.Quantity;
import org.warmvat.weather.Stamp;
import org.warmvat.weather.Weather;
import org.warmvat.weather.WeatherRefused;
import org.warmvat.weather.doubt.Doubts;
import org.warmvat.weather.layout.Layout;
import org.warmvat.weather.layout.TimeForm;

/** Layouts of texts that are not plain hours: ends, patterns, shorter steps, other clocks, files beside. */
class LayoutsLearnTest {
    private static final Layout.SiteSource SITE = new Layout.SiteSource(
            Layout.Source.of("Moorbach (invented)"),
            Layout.Source.found("Breite: ([0-9.]+)"),
            Layout.Source.found("Laenge: ([0-9.]+)"),
            Layout.Source.of("55"),
            Layout.Source.of("1"));
    private static final String LEAD = "Breite: 52.4 Grad\nLaenge: 9.7 Grad\n";

    private static Layout.Column plain(String heading) {
        return new Layout.Column(new Layout.ByHeading(heading), 1, 0);
    }

    private static Layout.Time time(Stamp stamp, int step, OptionalDouble instant) {
        return new Layout.Time(
                List.of(new Layout.ByHeading("t")), TimeForm.ISO, stamp, Layout.Clock.LOCAL, false, step, instant);
    }

    private static Layout layout(Layout.Time time, Optional<String> until, Layout.Beside... beside) {
        return new Layout(
                new Layout.Text(2, true, ',', '.', until, false),
                time,
                Map.of(Quantity.AIR, plain("a"), Quantity.GLOBAL, plain("g")),
                Set.of(),
                SITE,
                List.of(beside));
    }

    private static Weather read(String text, Layout layout, Map<String, String> others) throws WeatherRefused {
        Reading reading =
                new Reading(Optional.of(layout), 0, name -> others.get(name).getBytes(StandardCharsets.UTF_8));
        return WeatherFiles.read("hours.txt", text.getBytes(StandardCharsets.UTF_8), reading);
    }

    @Test
    void rowsEndBeforeTheFirstLineOfAPatternAndTheSiteIsFoundByOthers() throws WeatherRefused {
        String text = LEAD + "t,a,g\n2025-06-01T11:00,10,500\n2025-06-01T12:00,11,520\n\nand,what,follows\n";
        Weather weather =
                read(text, layout(time(Stamp.HOUR_END, 60, OptionalDouble.empty()), Optional.of("^\\s*$")), Map.of());
        assertEquals(2, weather.hours());
        assertEquals(9.7, weather.site().longitudeDeg());
        String marked = text.replace("\n\nand", "\nend data\nand");
        assertEquals(
                2,
                read(marked, layout(time(Stamp.HOUR_END, 60, OptionalDouble.empty()), Optional.of("^end")), Map.of())
                        .hours());
        assertThrows(
                WeatherRefused.class,
                () -> read(
                        marked, layout(time(Stamp.HOUR_END, 60, OptionalDouble.empty()), Optional.empty()), Map.of()));
        assertEquals(
                List.of(
                        "hours.txt: no line of the 2 lead-in lines holds latitude_deg by the pattern \"Breite: ([0-9.]+)\"; a layout may"
                                + " state it (\"warmvat weather layout FILE\" writes one)"),
                assertThrows(
                                WeatherRefused.class,
                                () -> read(
                                        text.replace("Breite", "lat"),
                                        layout(time(Stamp.HOUR_END, 60, OptionalDouble.empty()), Optional.of("^$")),
                                        Map.of()))
                        .faults());
    }

    /** Four means of irradiance make the hour's; temperatures at the ends of quarters run straight between them. */
    @Test
    void quartersOfAnHour() throws WeatherRefused {
        StringBuilder text = new StringBuilder(LEAD + "t,a,g\n");
        LocalDateTime first = LocalDateTime.of(2025, 6, 1, 10, 0);
        for (int i = 1; i <= 12; i++) {
            text.append(first.plusMinutes(15L * i))
                    .append(',')
                    .append(i)
                    .append(',')
                    .append(100 * i)
                    .append('\n');
        }
        Weather weather = read(
                text.toString(), layout(time(Stamp.HOUR_END, 15, OptionalDouble.empty()), Optional.empty()), Map.of());
        assertEquals(LocalDateTime.of(2025, 6, 1, 10, 0), weather.start());
        assertEquals(3, weather.hours());
        assertEquals(Stamp.HOUR_MIDDLE, weather.stamp());
        assertEquals(250, weather.globalWPerM2(0), 1e-9);
        assertEquals(650, weather.globalWPerM2(1), 1e-9);
        // from 4 at 11:00 to 8 at 12:00
        assertEquals(6, weather.airC().value(1), 1e-9);
    }

    @Test
    void anHourThatIsNotWhollyCoveredIsAHole() throws WeatherRefused {
        StringBuilder text = new StringBuilder(LEAD + "t,a,g\n");
        LocalDateTime first = LocalDateTime.of(2025, 6, 1, 10, 0);
        for (int i = 0; i < 20; i++) {
            text.append(first.plusMinutes(30L * i))
                    .append(",5,")
                    .append(i == 5 ? "" : "300")
                    .append('\n');
        }
        Weather weather = read(
                text.toString(),
                layout(time(Stamp.HOUR_START, 30, OptionalDouble.empty()), Optional.empty()),
                Map.of());
        assertEquals(10, weather.hours());
        assertTrue(weather.assumptions().stream().anyMatch(a -> a.startsWith("1 missing values of global_w_m2")));
    }

    /**
     * Temperature in one file by universal time at the hour's start, radiation in another by true solar time at the hour's end: the
     * year they were made of comes back, its energy to the last, its light where the sun is.
     */
    @Test
    void temperatureAndRadiationOfTwoFilesInTwoClocks() throws WeatherRefused, IOException {
        Weather year = WeatherFiles.read(Path.of("..", "weather-samples", "cool-maritime-hills.csv"));
        double minutesPerDegree = 4;
        StringBuilder air = new StringBuilder("t;a\n");
        StringBuilder light = new StringBuilder("t;g\n");
        double sum = 0;
        int hours = 24 * 120;
        for (int i = 0; i < hours; i++) {
            LocalDateTime begin = year.start().plusHours(i);
            air.append(begin)
                    .append(';')
                    .append(form(year.airC().at(3600.0 * i)))
                    .append('\n');
        }
        for (int i = 1; i < hours - 1; i++) {
            // the hour of the sundial from i to i + 1, each minute with its hour's share of the light outside the air
            LocalDateTime begin = year.start().plusHours(i);
            double shift = EquationOfTime.minutes(begin.getDayOfYear())
                    + minutesPerDegree * year.site().longitudeDeg()
                    - 60 * year.site().utcOffsetH();
            double mean = meanBetween(year, 60 * i - shift, 60 * (i + 1) - shift);
            sum += mean;
            light.append(begin.plusHours(1))
                    .append(';')
                    .append(form(mean * 0.36))
                    .append('\n');
        }
        Layout beside = new Layout(
                new Layout.Text(0, true, ';', '.'),
                new Layout.Time(
                        List.of(new Layout.ByHeading("t")), TimeForm.ISO, Stamp.HOUR_END, Layout.Clock.SOLAR, false),
                Map.of(Quantity.GLOBAL, new Layout.Column(new Layout.ByHeading("g"), 1 / 0.36, 0)),
                Set.of(),
                SITE);
        Layout main = new Layout(
                new Layout.Text(0, true, ';', '.'),
                new Layout.Time(
                        List.of(new Layout.ByHeading("t")), TimeForm.ISO, Stamp.HOUR_START, Layout.Clock.UTC, false),
                Map.of(Quantity.AIR, plain("a")),
                Set.of(),
                typed(year),
                List.of(new Layout.Beside("light.txt", beside)));
        Weather read = read(air.toString(), main, Map.of("light.txt", light.toString()));
        assertEquals(
                year.start().plusHours(1),
                read.start().minusHours(read.start().equals(year.start().plusHours(2)) ? 1 : 0));
        double back = 0;
        for (int hour = 0; hour < read.hours(); hour++) {
            back += read.globalWPerM2(hour);
        }
        assertEquals(sum, back, 0.002 * sum);
        assertEquals(List.of(), Doubts.of(read));
        int noon = 24 * 60 + 12;
        int at = (int) java.time.Duration.between(read.start(), year.start().plusHours(noon))
                .toHours();
        assertEquals(year.airC().at(3600.0 * noon), read.airC().at(3600.0 * at), 0.006);
    }

    private static Layout.SiteSource typed(Weather year) {
        return new Layout.SiteSource(
                Layout.Source.of("x"),
                Layout.Source.of(Double.toString(year.site().latitudeDeg())),
                Layout.Source.of(Double.toString(year.site().longitudeDeg())),
                Layout.Source.of(Double.toString(year.site().elevationM())),
                Layout.Source.of(Double.toString(year.site().utcOffsetH())));
    }

    private static String form(double value) {
        return String.format(Locale.ROOT, "%.3f", value);
    }

    private static double meanBetween(Weather year, double fromMin, double toMin) {
        double sum = 0;
        for (double t = fromMin + 0.5; t < toMin; t++) {
            sum += year.globalWPerM2((int) Math.floor(t / 60));
        }
        return sum / 60;
    }

    @Test
    void filesThatDoNotFitAreNamed() {
        Layout.Time time = time(Stamp.HOUR_END, 60, OptionalDouble.empty());
        Layout same = layout(time, Optional.empty(), new Layout.Beside("b.txt", layout(time, Optional.empty())));
        String text = LEAD + "t,a,g\n2025-06-01T11:00,10,500\n2025-06-01T12:00,11,520\n";
        assertEquals(
                List.of(
                        "hours.txt: global_w_m2 is taken from two files, expected one",
                        "hours.txt: air_c is taken from two files, expected one"),
                assertThrows(WeatherRefused.class, () -> read(text, same, Map.of("b.txt", text))).faults().stream()
                        .sorted(java.util.Comparator.reverseOrder())
                        .toList());
        Layout wind =
                new Layout(new Layout.Text(2, true, ',', '.'), time, Map.of(Quantity.WIND, plain("a")), Set.of(), SITE);
        Layout joined = layout(time, Optional.empty(), new Layout.Beside("b.txt", wind));
        String later = text.replace("2025-06", "2026-06");
        assertEquals(
                List.of("hours.txt: the files that are to be joined have no hour in common"),
                assertThrows(WeatherRefused.class, () -> read(text, joined, Map.of("b.txt", later)))
                        .faults());
        assertTrue(assertThrows(
                        WeatherRefused.class,
                        () -> read(text, joined, Map.of("b.txt", text.replace("11:00,10", "11:00,x"))))
                .getMessage()
                .startsWith("b.txt line 4: wind_m_s \"x\", expected a number"));
    }

    /** A row that stands twice is told with the name of its own file. */
    @Test
    void aFileBesideOutOfOrderIsNamed() {
        Layout.Time time = time(Stamp.HOUR_END, 60, OptionalDouble.empty());
        Layout wind =
                new Layout(new Layout.Text(2, true, ',', '.'), time, Map.of(Quantity.WIND, plain("a")), Set.of(), SITE);
        String text = LEAD + "t,a,g\n2025-06-01T11:00,10,500\n2025-06-01T12:00,11,520\n";
        assertEquals(
                List.of("b.txt line 6: time 2025-06-01T12:00 does not follow the row before"),
                assertThrows(
                                WeatherRefused.class,
                                () -> read(
                                        text,
                                        layout(time, Optional.empty(), new Layout.Beside("b.txt", wind)),
                                        Map.of("b.txt", text + "2025-06-01T12:00,11,520\n")))
                        .faults());
    }

    /** Universal time and a place whose clock is half an hour off the full: both files come onto the hours of the place. */
    @Test
    void clocksOfHalfHoursAreJoinedWithoutLoss() throws WeatherRefused {
        StringBuilder air = new StringBuilder("t,a,g\n");
        StringBuilder wind = new StringBuilder("t,a,g\n");
        for (int i = 0; i < 48; i++) {
            LocalDateTime t = LocalDateTime.of(2025, 6, 1, 0, 0).plusHours(i);
            air.append(t).append(',').append(i).append(",0\n");
            wind.append(t.plusHours(5)).append(',').append(i / 10.0).append(",0\n");
        }
        Layout.SiteSource delhi = new Layout.SiteSource(
                Layout.Source.of("x"),
                Layout.Source.of("28.6"),
                Layout.Source.of("77.2"),
                Layout.Source.of("216"),
                Layout.Source.of("5.5"));
        Layout.Time utc = new Layout.Time(
                List.of(new Layout.ByHeading("t")), TimeForm.ISO, Stamp.HOUR_START, Layout.Clock.UTC, false);
        Layout.Text plain = new Layout.Text(0, true, ',', '.');
        Layout beside = new Layout(
                plain,
                time(Stamp.HOUR_START, 60, OptionalDouble.empty()),
                Map.of(Quantity.WIND, plain("a")),
                Set.of(),
                delhi);
        Layout main = new Layout(
                plain,
                utc,
                Map.of(Quantity.AIR, plain("a"), Quantity.GLOBAL, plain("g")),
                Set.of(),
                delhi,
                List.of(new Layout.Beside("wind.txt", beside)));
        Weather read = read(air.toString(), main, Map.of("wind.txt", wind.toString()));
        assertEquals(LocalDateTime.of(2025, 6, 1, 5, 0), read.start());
        assertEquals(0.5, read.airC().value(1), 1e-9);
        assertEquals(0.1, read.windMPerS().value(1), 1e-9);
    }
}
