package org.warmvat.weather;

import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;

/**
 * What a month of a weather file amounts to.
 *
 * @param month which
 * @param airC mean, least and most air temperature
 * @param globalKWhPerM2Day mean daily irradiation on the horizontal
 * @param windMPerS mean at 10 m
 * @param relativeHumidityFraction mean
 * @param hours how many hours of the month are in the file, and of these how many had to be filled somewhere
 */
public record MonthSummary(
        YearMonth month,
        Spread airC,
        double globalKWhPerM2Day,
        double windMPerS,
        double relativeHumidityFraction,
        Hours hours) {
    /**
     * How a quantity spread over the hours of a month.
     *
     * @param mean mean of the hours
     * @param least least of the hours
     * @param most largest of the hours
     */
    public record Spread(double mean, double least, double most) {}

    /**
     * What the file holds of a month.
     *
     * @param present hours in the file
     * @param filled hours of these in which a value was missing and filled
     */
    public record Hours(int present, int filled) {}

    /** All months of the file in order, also parts of months. */
    public static List<MonthSummary> of(Weather weather) {
        List<MonthSummary> result = new ArrayList<>();
        int from = 0;
        while (from < weather.hours()) {
            int to = endOfMonth(weather, from);
            result.add(of(weather, from, to));
            from = to;
        }
        return List.copyOf(result);
    }

    /** The first hour after the month in which an hour lies, or the end of the file. */
    public static int endOfMonth(Weather weather, int hour) {
        YearMonth month = YearMonth.from(weather.start().plusHours(hour));
        int end = hour;
        while (end < weather.hours()
                && YearMonth.from(weather.start().plusHours(end)).equals(month)) {
            end++;
        }
        return end;
    }

    private static MonthSummary of(Weather weather, int from, int to) {
        int hours = to - from;
        double air = 0;
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        double global = 0;
        double wind = 0;
        double humidity = 0;
        for (int hour = from; hour < to; hour++) {
            double airC = weather.airC().value(hour);
            air += airC / hours;
            least = Math.min(least, airC);
            most = Math.max(most, airC);
            global += weather.globalWPerM2(hour) * 24 / 1000 / hours;
            wind += weather.windMPerS().value(hour) / hours;
            double dewC = weather.dewPointC().value(hour);
            humidity += Math.min(1, Humidity.relativeHumidityFraction(airC, dewC)) / hours;
        }
        int filled = weather.table().filledHours().get(from, to).cardinality();
        return new MonthSummary(
                YearMonth.from(weather.start().plusHours(from)),
                new Spread(air, least, most),
                global,
                wind,
                humidity,
                new Hours(hours, filled));
    }
}
