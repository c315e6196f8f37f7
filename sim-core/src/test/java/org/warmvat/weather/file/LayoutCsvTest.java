package org.warmvat.weather.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.warmvat.weather.Quantity;
import org.warmvat.weather.Site;
import org.warmvat.weather.Stamp;
import org.warmvat.weather.Weather;
import org.warmvat.weather.WeatherRefused;
import org.warmvat.weather.layout.Layout;
import org.warmvat.weather.layout.RowTime;
import org.warmvat.weather.layout.TimeForm;

/** Foreign hourly texts by their layouts. */
class LayoutCsvTest {
    private static final Layout.SiteSource TYPED = new Layout.SiteSource(
            Layout.Source.of("Somewhere (invented)"),
            Layout.Source.of("48.2"),
            Layout.Source.of("11.5"),
            Layout.Source.of("520"),
            Layout.Source.of("1"));

    private static Weather read(String text, Layout layout) throws WeatherRefused {
        return WeatherFiles.read("foreign.txt", text.getBytes(StandardCharsets.UTF_8), Reading.by(layout));
    }

    private static Layout.Column plain(String heading) {
        return new Layout.Column(new Layout.ByHeading(heading), 1, 0);
    }

    /** A service's file: semicolons, decimal commas, one column of digits for the time, J/cm2, missing -999. */
    @Test
    void semicolonsAndDecimalCommas() throws WeatherRefused {
        Layout layout = new Layout(
                new Layout.Text(1, true, ';', ','),
                new Layout.Time(
                        List.of(new Layout.ByHeading("ZEIT")),
                        new TimeForm("YYYYMMDDhh"),
                        Stamp.HOUR_START,
                        Layout.Clock.LOCAL,
                        false),
                Map.of(
                        Quantity.AIR, plain("TT"),
                        Quantity.RELATIVE_HUMIDITY, new Layout.Column(new Layout.ByHeading("RF"), 0.01, 0),
                        Quantity.GLOBAL, new Layout.Column(new Layout.ByHeading("GS"), 10_000 / 3600.0, 0)),
                Set.of("-999"),
                TYPED);
        String text =
                "Stunde, erfunden\nZEIT;TT;RF;GS\n2024022823; -1,5;100;0\n2024022824;-2,0;-999,0;0\n2024022901;-2,5;96;0\n";
        Weather weather = read(text, layout);
        assertEquals(LocalDateTime.of(2024, 2, 28, 23, 0), weather.start());
        assertEquals(-1.5, weather.airC().value(0));
        assertEquals(1, weather.table().columns().get(Quantity.RELATIVE_HUMIDITY)[0]);
        assertTrue(
                weather.assumptions()
                        .contains(
                                "1 missing values of relative_humidity were filled by straight lines; the longest gap was 1 h."));
        String points = text.replace(" -1,5", "-1.5");
        assertEquals(
                List.of(
                        "foreign.txt line 3: air_c \"-1.5\", expected a number with a decimal comma, nothing or a missing-value"
                                + " code"),
                assertThrows(WeatherRefused.class, () -> read(points, layout)).faults());
    }

    /** Universal time, stamped mid-hour, three irradiances, place in the lead-in. */
    @Test
    void universalTimeInTheMiddleOfTheHour() throws WeatherRefused {
        Layout layout = new Layout(
                new Layout.Text(2, true, ',', '.'),
                new Layout.Time(
                        List.of(new Layout.ByHeading("t")), TimeForm.ISO, Stamp.HOUR_MIDDLE, Layout.Clock.UTC, false),
                Map.of(
                        Quantity.AIR, new Layout.Column(new Layout.ByHeading("K"), 1, -273.15),
                        Quantity.GLOBAL, plain("g"),
                        Quantity.BEAM, plain("b"),
                        Quantity.DIFFUSE, plain("d")),
                Set.of(),
                new Layout.SiteSource(
                        Layout.Source.at(1, 2),
                        Layout.Source.at(2, 1),
                        Layout.Source.at(2, 2),
                        Layout.Source.of("1500"),
                        Layout.Source.of("-6.5")));
        String text = """
                site,"High Place"
                39.5, -98.25
                t,K,g,b,d
                2025-06-01T17:30,293.15,500,600,100
                2025-06-01T18:30,294.15,510,600,100
                """;
        Weather weather = read(text, layout);
        assertEquals(new Site("High Place", 39.5, -98.25, 1500, -6.5), weather.site());
        assertEquals(LocalDateTime.of(2025, 6, 1, 10, 30), weather.start());
        assertEquals(1800, weather.airC().firstStampS());
        assertEquals(20, weather.airC().value(0), 1e-9);
        assertEquals(600, weather.beamWPerM2(1));
    }

    /** Fixed order without headings; date parts in columns; a year typed in pieces. */
    @Test
    void numberedColumnsAndPartsOfTheTime() throws WeatherRefused {
        Layout layout = new Layout(
                new Layout.Text(3, false, '\t', '.'),
                new Layout.Time(
                        List.of(
                                new Layout.ByNumber(1),
                                new Layout.ByNumber(2),
                                new Layout.ByNumber(3),
                                new Layout.ByNumber(4)),
                        new TimeForm("YYYY MM DD hh"),
                        Stamp.HOUR_END,
                        Layout.Clock.LOCAL,
                        true),
                Map.of(
                        Quantity.AIR, new Layout.Column(new Layout.ByNumber(5), 0.1, 0),
                        Quantity.GLOBAL, new Layout.Column(new Layout.ByNumber(6), 1, 0)),
                Set.of("9999", "*"),
                TYPED);
        String text =
                "a\nb\nc\n1999\t1\t31\t23\t35\t0\n1999\t1\t31\t24\t*\t0\n2003\t2\t1\t1\t39\t9999.0\n2003\t2\t1\t2\t41\t0\n";
        Weather weather = read(text, layout);
        assertEquals(LocalDateTime.of(2025, 1, 31, 22, 0), weather.start());
        assertEquals(4, weather.hours());
        assertEquals(3.7, weather.airC().value(1), 1e-9);
    }

    @Test
    void faultsNameThePlace() {
        Layout layout = new Layout(
                new Layout.Text(1, true, ',', '.'),
                new Layout.Time(
                        List.of(new Layout.ByHeading("time")),
                        new TimeForm("DD.MM.YYYY hh:mm"),
                        Stamp.HOUR_END,
                        Layout.Clock.LOCAL,
                        false),
                Map.of(Quantity.AIR, plain("temp"), Quantity.GLOBAL, plain("sun")),
                Set.of(),
                new Layout.SiteSource(
                        Layout.Source.of("x"),
                        Layout.Source.at(1, 1),
                        Layout.Source.at(1, 9),
                        Layout.Source.at(7, 1),
                        Layout.Source.of("99")));
        assertEquals(
                List.of(
                        "foreign.txt line 1: latitude_deg \"north\", expected a number from -90 to 90",
                        "foreign.txt line 1: 2 cells, but longitude_deg is said to stand in cell 9",
                        "foreign.txt: elevation_m is said to stand in line 7, but 1 lead-in lines are skipped",
                        "foreign.txt: utc_offset_h \"99\", expected a number from -12 to 14"),
                assertThrows(WeatherRefused.class, () -> read("north,2\ntime,temp,sun\n", layout))
                        .faults());
        Layout placed = new Layout(layout.text(), layout.time(), layout.columns(), Set.of(), TYPED);
        assertEquals(
                List.of("foreign.txt line 2: no column \"sun\", expected one of time, temp, son (did you mean son?)"),
                assertThrows(WeatherRefused.class, () -> read("a\ntime,temp,son\n", placed))
                        .faults());
        assertEquals(
                List.of(
                        "foreign.txt line 3: time \"2025-01-01 01:00\", expected the form DD.MM.YYYY hh:mm",
                        "foreign.txt line 4: 2 cells, expected at least 3",
                        "foreign.txt line 5: air_c \"99\", expected -90 to 60 (is this Fahrenheit?)"),
                assertThrows(
                                WeatherRefused.class,
                                () -> read(
                                        "a\ntime,temp,sun\n2025-01-01 01:00,1,0\n01.01.2025 02:00,1\n1.1.2025 3:00,99,0\n",
                                        placed))
                        .faults());
    }

    @Test
    void formsOfTime() {
        long noon = RowTime.isoMinutes("2025-03-04T12:00").orElseThrow();
        assertEquals(OptionalLong.of(noon), TimeForm.ISO.minutes("2025-03-04T12:00:00"));
        assertEquals(OptionalLong.of(noon), new TimeForm("M/D/YYYY h:mm").minutes("3/4/2025 12:00"));
        assertEquals(OptionalLong.of(noon), new TimeForm("YYYYMMDD:hhmm").minutes("20250304:1200"));
        assertEquals(OptionalLong.of(noon + 30), new TimeForm("YYYYMMDDhhmm").minutes("202503041230"));
        assertEquals(OptionalLong.of(noon), new TimeForm("YYYY MM DD hh").minutes("2025 3 4 12"));
        assertEquals(OptionalLong.of(noon + 720), new TimeForm("DD.MM.YYYY hh:mm").minutes("04.03.2025 24:00"));
        assertEquals(OptionalLong.empty(), new TimeForm("DD.MM.YYYY hh:mm").minutes("04.13.2025 12:00"));
        assertEquals(OptionalLong.empty(), TimeForm.ISO.minutes("2025-03-04T12:00Z"));
        assertEquals(OptionalLong.empty(), new TimeForm("YYYYMMDDhh").minutes("202503041"));
        assertThrows(IllegalArgumentException.class, () -> new TimeForm("YYYY-MM"));
        assertThrows(IllegalArgumentException.class, () -> new TimeForm("YYYY-MM-DD hh YY"));
    }
}
