package org.warmvat.weather.made;

import org.warmvat.weather.Humidity;
import org.warmvat.weather.Weather;

/** Monthly means of a year of hours that began on 1 January: the normals it would yield. */
public final class MonthStatistics {
    private MonthStatistics() {}

    /**
     * The means of a month of the first year.
     *
     * @param weather begins at midnight of 1 January and has no leap day in its first year
     * @param month 0 for January
     * @return the means, with relative humidity as humidity
     */
    public static MonthNormals of(Weather weather, int month) {
        int from = MonthCurve.FIRST_HOUR[month];
        int to = MonthCurve.FIRST_HOUR[month + 1];
        double air = 0;
        double range = 0;
        double global = 0;
        double humidity = 0;
        double wind = 0;
        for (int day = from; day < to; day += 24) {
            double least = Double.POSITIVE_INFINITY;
            double most = Double.NEGATIVE_INFINITY;
            for (int hour = day; hour < day + 24; hour++) {
                double airC = weather.airC().value(hour);
                least = Math.min(least, airC);
                most = Math.max(most, airC);
                air += airC;
                global += weather.globalWPerM2(hour);
                humidity += Math.min(
                        1,
                        Humidity.relativeHumidityFraction(
                                airC, weather.dewPointC().value(hour)));
                wind += weather.windMPerS().value(hour);
            }
            range += most - least;
        }
        int hours = to - from;
        return new MonthNormals(
                air / hours, range / hours * 24, global / hours * 24 / 1000, humidity / hours, wind / hours);
    }
}
