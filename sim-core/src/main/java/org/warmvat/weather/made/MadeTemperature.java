package org.warmvat.weather.made;

import java.util.Arrays;
import java.util.function.ToDoubleFunction;
import org.apache.commons.math3.stat.descriptive.moment.Mean;
import org.apache.commons.math3.stat.descriptive.moment.StandardDeviation;
import org.warmvat.weather.Humidity;
import org.warmvat.weather.Quantity;

/**
 * Made air temperature and dew point: the months' means, a persistent wandering from day to day that leans on the days'
 * clearness, and a published daily course whose size follows clearness.
 *
 * <p>How far daily means spread within a month is a convention of this program: {@code (s/9 K)(3.9 K - 0.12 (T - Ta))}, at least 1 K,
 * with T the month's mean, Ta the year's and s the standard deviation of the twelve monthly means. So a place with a great difference
 * between summer and winter is also restless from day to day, most in winter, as both come from the contrast between the air masses of
 * north and south. Chosen on daily records of four places: Seattle and New York 2012 to 2015, and two real typical years (Buffalo,
 * Greensboro); the mean over the year is within 20 % at each.
 */
final class MadeTemperature {
    /** Relative growth of the daily range with the day's clearness index, and of the dew point depression in K. */
    private static final double RANGE_PER_CLEARNESS = 1.5;

    private static final double DEPRESSION_K_PER_CLEARNESS = 12;
    private static final double LEAST_DEPRESSION_K = 0.3;
    private static final double LEAST_DEVIATION_K = 1;
    private static final int PASSES = 20;

    private final Normals normals;
    private final MadeSunlight sunlight;
    /** The months' means as one curve without steps. */
    private final double[] seasonC;
    /** Deviation of the day's mean from the season. */
    private final double[] wanderingK = new double[MonthCurve.HOURS];

    private final double[] airC = new double[MonthCurve.HOURS];
    private final double[] dewPointC = new double[MonthCurve.HOURS];

    /**
     * Makes the year.
     *
     * @param warmth how warm each day is against the others, a series of unit variance
     */
    MadeTemperature(Normals normals, MadeSunlight sunlight, double[] warmth) {
        this.normals = normals;
        this.sunlight = sunlight;
        this.seasonC = MonthCurve.withMeans(monthly(MonthNormals::airC)).hourly();
        wander(warmth);
        fitRangesAndMeans();
        fitDewPoint();
    }

    /** Air temperature at the ends of the hours. */
    double[] airC() {
        return airC;
    }

    /** Dew point at the ends of the hours. */
    double[] dewPointC() {
        return dewPointC;
    }

    private double[] monthly(ToDoubleFunction<MonthNormals> value) {
        return normals.months().stream().mapToDouble(value).toArray();
    }

    /** Wanted standard deviation of the daily means within each month. */
    private double[] dayDeviationK() {
        double[] air = monthly(MonthNormals::airC);
        double swing = new StandardDeviation().evaluate(air);
        double year = new Mean().evaluate(air);
        return Arrays.stream(air)
                .map(month -> Math.max(LEAST_DEVIATION_K, swing / 9 * (3.9 - 0.12 * (month - year))))
                .toArray();
    }

    /** Sizes the wandering until the daily means, the season's drift among them, have the wanted deviation in each month. */
    private void wander(double[] warmth) {
        double[] wanted = dayDeviationK();
        double[] size = wanted.clone();
        for (int pass = 0; pass < 2 * PASSES; pass++) {
            double[] hourly = MonthCurve.through(size).hourly();
            Arrays.setAll(wanderingK, i -> hourly[i] * between(warmth, i + 1.0));
            double[] made = madeDayDeviationsK();
            for (int month = 0; month < 12; month++) {
                double next = size[month] * Math.sqrt(wanted[month] / made[month]);
                size[month] = Math.max(0.2 * wanted[month], Math.min(3 * wanted[month], next));
            }
        }
    }

    private double[] madeDayDeviationsK() {
        double[] dayMean = new double[MadeSunlight.DAYS];
        for (int i = 0; i < MonthCurve.HOURS; i++) {
            dayMean[i / 24] += (seasonC[i] + wanderingK[i]) / 24;
        }
        double[] result = new double[12];
        for (int month = 0; month < 12; month++) {
            int first = MonthCurve.FIRST_HOUR[month] / 24;
            int days = MonthCurve.FIRST_HOUR[month + 1] / 24 - first;
            result[month] = new StandardDeviation(false).evaluate(dayMean, first, days);
        }
        return result;
    }

    /** Value of a daily series at a time in hours, straight between the days' middles; the year closes on itself. */
    private static double between(double[] days, double hour) {
        double position = hour / 24 - 0.5;
        int left = (int) Math.floor(position);
        double share = position - left;
        double a = days[Math.floorMod(left, days.length)];
        double b = days[Math.floorMod(left + 1, days.length)];
        return a + share * (b - a);
    }

    private void fitRangesAndMeans() {
        double[] wanted = monthly(MonthNormals::dailyRangeK);
        double[] size = wanted.clone();
        double[] course = course();
        for (int pass = 0; pass < PASSES; pass++) {
            compose(size, course);
            double[] made = meanDailyRanges();
            for (int month = 0; month < 12; month++) {
                size[month] = Math.max(0, size[month] + 0.8 * (wanted[month] - made[month]));
            }
        }
        double[] made = MonthCurve.means(airC);
        double[] lacking = monthly(MonthNormals::airC);
        for (int month = 0; month < 12; month++) {
            lacking[month] -= made[month];
        }
        double[] correction = MonthCurve.withMeans(lacking).hourly();
        for (int i = 0; i < airC.length; i++) {
            airC[i] += correction[i];
            wanderingK[i] += correction[i];
        }
    }

    /** The daily course of unit range, larger on clear days. */
    private double[] course() {
        double shift = normals.site().longitudeDeg() / 15 - normals.site().utcOffsetH();
        double[] result = new double[MonthCurve.HOURS];
        for (int i = 0; i < result.length; i++) {
            double size = Math.max(0.3, 1 + RANGE_PER_CLEARNESS * clearerThanItsMonth(i));
            result[i] = size * DiurnalShape.at(i % 24 + 1 + shift) / DiurnalShape.PEAK_TO_PEAK;
        }
        return result;
    }

    private double clearerThanItsMonth(int hour) {
        return sunlight.dayClearness(hour / 24) - sunlight.monthClearness(MonthCurve.monthOf(hour));
    }

    private void compose(double[] rangeK, double[] course) {
        Arrays.setAll(airC, i -> seasonC[i] + wanderingK[i] + rangeK[MonthCurve.monthOf(i)] * course[i]);
    }

    private double[] meanDailyRanges() {
        double[] hourly = new double[MonthCurve.HOURS];
        for (int day = 0; day < MadeSunlight.DAYS; day++) {
            double least = Double.POSITIVE_INFINITY;
            double most = Double.NEGATIVE_INFINITY;
            for (int i = 24 * day; i < 24 * day + 24; i++) {
                least = Math.min(least, airC[i]);
                most = Math.max(most, airC[i]);
            }
            Arrays.fill(hourly, 24 * day, 24 * day + 24, most - least);
        }
        return MonthCurve.means(hourly);
    }

    /** Finds the depression of the dew point under the day's mean temperature that gives each month its humidity. */
    private void fitDewPoint() {
        boolean relative = normals.humidity() == Quantity.RELATIVE_HUMIDITY;
        double[] wanted = monthly(MonthNormals::humidity);
        double[] depression = new double[12];
        Arrays.fill(depression, 4);
        for (int pass = 0; pass < PASSES; pass++) {
            double[] made = MonthCurve.means(humidity(depression, relative));
            for (int month = 0; month < 12; month++) {
                // Relative humidity falls by about 0.055 for each kelvin of depression.
                double step = relative ? (made[month] - wanted[month]) / 0.055 : made[month] - wanted[month];
                depression[month] = Math.max(-5, depression[month] + 0.8 * step);
            }
        }
    }

    private double[] humidity(double[] depressionK, boolean relative) {
        double[] result = new double[MonthCurve.HOURS];
        for (int i = 0; i < result.length; i++) {
            double depression =
                    depressionK[MonthCurve.monthOf(i)] + DEPRESSION_K_PER_CLEARNESS * clearerThanItsMonth(i);
            double dayMean = seasonC[i] + wanderingK[i];
            dewPointC[i] = Math.min(airC[i], dayMean - Math.max(LEAST_DEPRESSION_K, depression));
            result[i] = relative ? Humidity.relativeHumidityFraction(airC[i], dewPointC[i]) : dewPointC[i];
        }
        return result;
    }
}
