package org.warmvat.weather.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.warmvat.weather.Quantity;
import org.warmvat.weather.Site;
import org.warmvat.weather.Stamp;
import org.warmvat.weather.Weather;
import org.warmvat.weather.WeatherRefused;

/** The open layout of NREL/TP-581-43156 with invented numbers. */
class Tmy3Test {
    private static final String LEAD = """
            999001,"THORNACRE (INVENTED)",ZZ,-5.0,42.900,-78.700,215
            Date (MM/DD/YYYY),Time (HH:MM),ETR (W/m^2),GHI (W/m^2),GHI source,DNI (W/m^2),DHI (W/m^2),TotCld (tenths),Dry-bulb (C),Dew-point (C),RHum (%),Pressure (mbar),Wspd (m/s)
            """;

    private static String row(LocalDateTime end, String values) {
        LocalDateTime hour = end.minusHours(1);
        String date = hour.format(DateTimeFormatter.ofPattern("MM/dd/yyyy", Locale.ROOT));
        return String.format(Locale.ROOT, "%s,%02d:00,%s\n", date, hour.getHour() + 1, values);
    }

    private static String month(int year, int month, String values) {
        StringBuilder text = new StringBuilder();
        LocalDateTime first = LocalDateTime.of(year, month, 1, 1, 0);
        for (int i = 0; i < 24 * (month == 2 ? 28 : 31); i++) {
            text.append(row(first.plusHours(i), values));
        }
        return text.toString();
    }

    private static Weather read(String text) throws WeatherRefused {
        return WeatherFiles.parse("typical.csv", text);
    }

    @Test
    void twoMonthsOfDifferentYears() throws WeatherRefused {
        String text = LEAD
                + month(1980, 1, "0,0,1,0,0,7,-2.0,-5.0,80,990,3.1")
                + month(1996, 2, "0,0,1,0,0,4,1.5,0,89,991,4");
        Weather weather = read(text);
        assertEquals(new Site("THORNACRE (INVENTED) ZZ", 42.9, -78.7, 215, -5), weather.site());
        assertEquals(LocalDateTime.of(2025, 1, 1, 0, 0), weather.start());
        assertEquals(LocalDateTime.of(2025, 3, 1, 0, 0), weather.end());
        assertEquals(Stamp.HOUR_END, weather.stamp());
        assertEquals(-2, weather.airC().value(743));
        assertEquals(1.5, weather.airC().value(744));
        assertEquals(-5, weather.dewPointC().value(0));
        assertEquals(990, weather.pressureHPa(0));
        assertEquals(3.1, weather.windMPerS().value(0));
        assertEquals(0.7, weather.table().columns().get(Quantity.CLOUD)[0]);
        assertEquals(
                List.of(
                        "Read as a typical year in the TMY3 layout: a row's time is the end of its hour, local standard time.",
                        "The weather is a typical year whose months come from different years: it was laid onto 2025."),
                weather.assumptions());
    }

    /** A typical year keeps 28 days of February even where all its months happen to be of one leap year. */
    @Test
    void monthsOfOneLeapYear() throws WeatherRefused {
        String values = "0,0,1,0,0,7,-2.0,-5.0,80,990,3.1";
        Weather weather = read(LEAD + month(1996, 2, values) + month(1996, 3, values));
        assertEquals(24 * 59, weather.hours());
    }

    @Test
    void missingCodesAreGaps() throws WeatherRefused {
        String text = LEAD + month(1980, 1, "0,0,1,0,0,7,-2.0,-5.0,80,990,3.1");
        String gap = text.replace("01/03/1980,05:00,0,0,1,0,0,7,-2.0", "01/03/1980,05:00,0,0,1,0,0,-9900,-9900.000");
        Weather weather = read(gap);
        assertEquals(-2, weather.airC().value(52));
        assertTrue(weather.assumptions()
                .containsAll(List.of(
                        "1 missing values of air_c were filled by straight lines; the longest gap was 1 h.",
                        "1 missing values of cloud_fraction were filled by straight lines; the longest gap was 1 h.")));
    }

    @Test
    void faultsNameLineColumnAndWhatIsAllowed() {
        String text = LEAD + month(1980, 1, "0,0,1,0,0,7,-2.0,-5.0,80,990,3.1");
        String broken = text.replace("01/01/1980,02:00,0,0,1,0,0,7,-2.0", "01/01/1980,02:00,0,0,1,0,0,17,-200")
                .replace("01/01/1980,03:00,0", "01-01-1980,03:00,0")
                .replace("01/01/1980,04:00,0,0,1,0,0,7,-2.0,-5.0,80,990,3.1", "01/01/1980,04:00,0,0,1,0,0,seven,-2.0");
        assertEquals(
                List.of(
                        "typical.csv line 4: air_c \"-200\", expected -90 to 60",
                        "typical.csv line 4: cloud_fraction \"17\", expected 0 to 1 (a fraction: is this percent, tenths or eighths?)",
                        "typical.csv line 5: time \"01-01-1980 03:00\", expected the form MM/DD/YYYY hh:mm",
                        "typical.csv line 6: 9 cells, expected at least 13"),
                assertThrows(WeatherRefused.class, () -> read(broken)).faults());
    }

    @Test
    void theStationLineIsChecked() {
        String text = LEAD.replace("-5.0,42.900", "-15,latitude") + month(1980, 1, "0,0,1,0,0,7,-2.0,-5.0,80,990,3.1");
        assertEquals(
                List.of(
                        "typical.csv line 1: latitude_deg \"latitude\", expected a number from -90 to 90",
                        "typical.csv line 1: utc_offset_h \"-15\", expected a number from -12 to 14"),
                assertThrows(WeatherRefused.class, () -> read(text)).faults());
        String short1 = "1,2\n" + LEAD.substring(LEAD.indexOf('\n') + 1);
        assertEquals(
                List.of(
                        "typical.csv line 1: 2 cells, but latitude_deg is said to stand in cell 5",
                        "typical.csv line 1: 2 cells, but longitude_deg is said to stand in cell 6",
                        "typical.csv line 1: 2 cells, but elevation_m is said to stand in cell 7",
                        "typical.csv line 1: 2 cells, but utc_offset_h is said to stand in cell 4"),
                assertThrows(WeatherRefused.class, () -> read(short1)).faults());
    }

    @Test
    void neededColumnsAreNamed() {
        String text = LEAD.replace("Dry-bulb (C)", "Dry bulb") + month(1980, 1, "0,0,1,0,0,7,-2.0,-5.0,80,990,3.1");
        assertEquals(
                List.of(
                        "typical.csv line 2: no column \"Dry-bulb (C)\", expected one of Date (MM/DD/YYYY), Time (HH:MM), ETR (W/m^2), GHI (W/m^2),"
                                + " GHI source, DNI (W/m^2), DHI (W/m^2), TotCld (tenths), Dry bulb, Dew-point (C), RHum (%), Pressure (mbar),"
                                + " Wspd (m/s)"),
                assertThrows(WeatherRefused.class, () -> read(text)).faults());
    }
}
