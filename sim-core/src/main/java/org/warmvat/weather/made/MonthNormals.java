package org.warmvat.weather.made;

import java.util.OptionalDouble;

/**
 * The long-term means of one month, as handbooks give them.
 *
 * @param airC mean air temperature, -60 to 45
 * @param dailyRangeK mean of each day's highest less its lowest hourly temperature, 1 to 30
 * @param globalKWhPerM2Day mean daily global irradiation on the horizontal, 0 to 12
 * @param humidity mean relative humidity (0.05 to 1) or mean dew point (C), as {@link Normals#humidity()} says
 * @param windMPerS mean wind at 10 m, 0 to 25
 * @param airSpreadK standard deviation of the month's mean air temperature from year to year, 0 to 10; absent where it is not known
 */
public record MonthNormals(
        double airC,
        double dailyRangeK,
        double globalKWhPerM2Day,
        double humidity,
        double windMPerS,
        OptionalDouble airSpreadK) {
    /** Means whose spread from year to year is not known. */
    public MonthNormals(double airC, double dailyRangeK, double globalKWhPerM2Day, double humidity, double windMPerS) {
        this(airC, dailyRangeK, globalKWhPerM2Day, humidity, windMPerS, OptionalDouble.empty());
    }
}
