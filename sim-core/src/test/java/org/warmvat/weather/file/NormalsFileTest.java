package org.warmvat.weather.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.warmvat.weather.Quantity;
import org.warmvat.weather.WeatherRefused;
import org.warmvat.weather.made.MonthNormals;
import org.warmvat.weather.made.Normals;

/** Files of monthly normals and every refusal in full. */
class NormalsFileTest {
    private static String good() {
        StringBuilder text = new StringBuilder("""
                # warmvat normals 1
                # site: Thornacre (invented)
                # latitude_deg: 53.1
                # longitude_deg: -2.4
                # elevation_m: 120
                # utc_offset_h: 0
                # seed: 11
                month,air_c,daily_range_k,global_kwh_m2_day,relative_humidity,wind_m_s
                """);
        for (int month = 1; month <= 12; month++) {
            text.append(month).append(",9,7,2.5,0.8,4\n");
        }
        return text.toString();
    }

    private static List<String> faults(String text) {
        return assertThrows(WeatherRefused.class, () -> NormalsFile.parse("n.csv", text))
                .faults();
    }

    @Test
    void reads() throws WeatherRefused {
        Normals normals = NormalsFile.parse("n.csv", good());
        assertEquals(11, normals.seed());
        assertEquals(Quantity.RELATIVE_HUMIDITY, normals.humidity());
        assertEquals(new MonthNormals(9, 7, 2.5, 0.8, 4), normals.months().get(11));
        Normals dew = NormalsFile.parse("n.csv", good().replace("relative_humidity", "dew_point_c"));
        assertEquals(Quantity.DEW_POINT, dew.humidity());
    }

    @Test
    void refusesWithPlaceFactAndExpectation() {
        String broken = good().replace("# seed: 11", "# seed: 1.5")
                .replace("\n3,9,7", "\n3,nine,70")
                .replace("\n5,9,7,2.5,0.8,4", "\n5,9,7,2.5,80,4,1")
                .replace("\n7,", "\n8,")
                .replace("\n12,9,7,2.5,0.8,4", "");
        assertEquals(List.of("n.csv: seed, expected a whole number from 0 to 1000000000"), faults(broken));
        assertEquals(
                List.of(
                        "n.csv line 11: air_c \"nine\", expected -60 to 45",
                        "n.csv line 11: daily_range_k \"70\", expected 1 to 30",
                        "n.csv line 13: 7 cells, expected 6 as in the line of column names",
                        "n.csv line 14: month \"6\", expected 5",
                        "n.csv line 15: month \"8\", expected 6",
                        "n.csv line 16: month \"8\", expected 7",
                        "n.csv line 17: month \"9\", expected 8",
                        "n.csv line 18: month \"10\", expected 9",
                        "n.csv line 19: month \"11\", expected 10",
                        "n.csv: 10 months, expected 12"),
                faults(broken.replace("1.5", "1")));
    }

    @Test
    void refusesAMonthTooManyAndSemicolons() {
        assertEquals(List.of("n.csv: 13 months, expected 12"), faults(good() + "12,4,5,1,0.8,4\n"));
        assertEquals(
                List.of("n.csv line 8: semicolons between the names, expected commas, and points in the numbers (as a"
                        + " spreadsheet saves it under English settings)"),
                faults(good().replace(',', ';')));
    }

    @Test
    void refusesColumns() {
        assertEquals(
                List.of(
                        "n.csv line 8: unknown column \"daily_rnge_k\", expected one of air_c, daily_range_k, dew_point_c,"
                                + " global_kwh_m2_day, global_kwh_m2_month, month, month_sd_k, relative_humidity, wind_m_s (did you mean daily_range_k?)",
                        "n.csv line 8: no column daily_range_k, which is required",
                        "n.csv line 8: expected one of the columns relative_humidity and dew_point_c"),
                faults(good().replace("daily_range_k", "daily_rnge_k").replace(",relative_humidity", "")));
    }

    @Test
    void refusesOtherKinds() {
        assertTrue(faults("month,air_c\n").get(0).startsWith("n.csv line 1: expected \"# warmvat normals 1\", lines"));
    }

    /** Sums of months are divided by their days; a sum under the name of a day's mean is refused with the other name. */
    @Test
    void sumsOfMonths() throws WeatherRefused {
        String sums = good().replace("global_kwh_m2_day", "global_kwh_m2_month");
        assertEquals(
                NormalsFile.parse("n.csv", good()).months().get(1).globalKWhPerM2Day() / 28,
                NormalsFile.parse("n.csv", sums).months().get(1).globalKWhPerM2Day(),
                1e-12);
        String mixed = good().replaceFirst("(?m)^1,([^,]*),([^,]*),([^,]*),", "1,$1,$2,31,");
        assertEquals(
                List.of("n.csv line 9: global_kwh_m2_day \"31\", expected 0 to 12 (a month's sum? name the column"
                        + " global_kwh_m2_month)"),
                faults(mixed));
    }

    @Test
    void theSpreadOfMonthsMayBeGiven() throws WeatherRefused {
        assertTrue(
                NormalsFile.parse("n.csv", good()).months().get(3).airSpreadK().isEmpty());
        String given = good().replace("wind_m_s", "wind_m_s,month_sd_k").replaceAll("(?m)^(\\d+,.*)$", "$1,1.7");
        assertEquals(
                1.7,
                NormalsFile.parse("n.csv", given).months().get(3).airSpreadK().orElseThrow());
    }
}
