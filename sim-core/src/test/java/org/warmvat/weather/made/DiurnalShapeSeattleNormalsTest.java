package org.warmvat.weather.made;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * The daily course of temperature against measured normals of a real city, month by month: hourly normals of Seattle 1981 to 2010
 * (U.S. government data; origin in the head of the excerpt). Both are brought to a mean of 0 and a range of 1.
 *
 * <p>The difference is 0.04 to 0.06 of the range (rms) from February to September and up to 0.11 in winter, when the night is long
 * and flat and the day's hump short: the shape of Erbs, Klein and Beckman is the same in all months. A winter range there is 3 K, so
 * that 0.11 of it is 0.3 K.
 */
class DiurnalShapeSeattleNormalsTest {
    private static final double LONGITUDE_DEG = -122.3;
    private static final double UTC_OFFSET_H = -8;

    @Test
    void shapeMonthByMonth() throws IOException {
        List<String> rows = excerpt();
        assertEquals(12 * 24, rows.size());
        for (int month = 0; month < 12; month++) {
            double rms = rms(month, rows);
            boolean winter = month == 0 || month >= 9;
            assertTrue(rms < (winter ? 0.115 : 0.065), "month " + (month + 1) + " differs by " + rms);
        }
    }

    /** Coldest near sunrise, warmest in the afternoon: within two hours in every month. */
    @Test
    void hoursOfTheExtremes() throws IOException {
        List<String> rows = excerpt();
        for (int month = 0; month < 12; month++) {
            double[] air = day(month, rows);
            int coldest = 0;
            int warmest = 0;
            for (int hour = 0; hour < 24; hour++) {
                coldest = air[hour] < air[coldest] ? hour : coldest;
                warmest = air[hour] > air[warmest] ? hour : warmest;
            }
            assertEquals(6, coldest, 2, "coldest of month " + (month + 1));
            assertEquals(15, warmest, 2, "warmest of month " + (month + 1));
        }
    }

    private static double rms(int month, List<String> rows) {
        double[] air = day(month, rows);
        double mean = Arrays.stream(air).average().orElseThrow();
        double range = Arrays.stream(air).max().orElseThrow()
                - Arrays.stream(air).min().orElseThrow();
        double sum = 0;
        for (int hour = 0; hour < 24; hour++) {
            double solarHour = hour + LONGITUDE_DEG / 15 - UTC_OFFSET_H;
            double made = DiurnalShape.at(solarHour) / DiurnalShape.PEAK_TO_PEAK;
            double difference = (air[hour] - mean) / range - made;
            sum += difference * difference / 24;
        }
        return Math.sqrt(sum);
    }

    private static double[] day(int month, List<String> rows) {
        return rows.subList(24 * month, 24 * month + 24).stream()
                .mapToDouble(row -> Double.parseDouble(row.substring(row.indexOf(',') + 1)))
                .toArray();
    }

    private static List<String> excerpt() throws IOException {
        try (InputStream in =
                DiurnalShapeSeattleNormalsTest.class.getResourceAsStream("seattle-hourly-normals-excerpt.csv")) {
            String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            return text.lines().filter(line -> line.startsWith("2010")).toList();
        }
    }
}
