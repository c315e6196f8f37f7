package org.warmvat.weather.made;

import java.util.Arrays;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.LUDecomposition;

/**
 * A yearly curve of straight lines between the middles of the months of 2025, so chosen that each month of hours has a wanted
 * mean: twelve linear equations. It has no steps where the months meet.
 */
final class MonthCurve {
    /** Hours before each month of a year of 365 days, and of the whole year. */
    static final int[] FIRST_HOUR = new int[13];

    static final int HOURS = 8760;

    private static final int[] MONTH_OF_DAY = new int[HOURS / 24];

    static {
        int[] days = {31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};
        for (int m = 0; m < 12; m++) {
            FIRST_HOUR[m + 1] = FIRST_HOUR[m] + 24 * days[m];
            Arrays.fill(MONTH_OF_DAY, FIRST_HOUR[m] / 24, FIRST_HOUR[m + 1] / 24, m);
        }
    }

    private final double[] middle;

    private MonthCurve(double[] middle) {
        this.middle = middle;
    }

    /** The curve whose months have these means. */
    static MonthCurve withMeans(double[] means) {
        double[][] weights = new double[12][12];
        for (int hour = 0; hour < HOURS; hour++) {
            Place place = place(hour + 0.5);
            int month = monthOf(hour);
            double share = 1.0 / (FIRST_HOUR[month + 1] - FIRST_HOUR[month]);
            weights[month][place.left] += share * (1 - place.share);
            weights[month][(place.left + 1) % 12] += share * place.share;
        }
        return new MonthCurve(new LUDecomposition(new Array2DRowRealMatrix(weights, false))
                .getSolver()
                .solve(new ArrayRealVector(means))
                .toArray());
    }

    /** The curve through these values at the middles of the months. */
    static MonthCurve through(double[] middle) {
        return new MonthCurve(middle.clone());
    }

    /** Value at a time in hours since the year began. */
    double at(double hour) {
        Place place = place(hour);
        return middle[place.left] + place.share * (middle[(place.left + 1) % 12] - middle[place.left]);
    }

    /** Values at the middles of all hours of the year. */
    double[] hourly() {
        double[] result = new double[HOURS];
        Arrays.setAll(result, hour -> at(hour + 0.5));
        return result;
    }

    /** Month of an hour, January as 0. */
    static int monthOf(int hour) {
        return MONTH_OF_DAY[hour / 24];
    }

    /** Means of the months of an hourly year. */
    static double[] means(double[] hourly) {
        double[] result = new double[12];
        for (int month = 0; month < 12; month++) {
            for (int hour = FIRST_HOUR[month]; hour < FIRST_HOUR[month + 1]; hour++) {
                result[month] += hourly[hour];
            }
            result[month] /= FIRST_HOUR[month + 1] - FIRST_HOUR[month];
        }
        return result;
    }

    private static double middleHour(int month) {
        return (FIRST_HOUR[month] + FIRST_HOUR[month + 1]) / 2.0;
    }

    private static Place place(double hour) {
        int left = 11;
        while (left >= 0 && middleHour(left) > hour) {
            left--;
        }
        double from = left < 0 ? middleHour(11) - HOURS : middleHour(left);
        double to = left < 0 ? middleHour(0) : left == 11 ? middleHour(0) + HOURS : middleHour(left + 1);
        return new Place(left < 0 ? 11 : left, (hour - from) / (to - from));
    }

    private record Place(int left, double share) {}
}
