package org.warmvat.cli.plot;

import java.util.Arrays;

/**
 * Points of a line, from left to right. Along time, x is hours since the left end of the chart. The arrays are shared, not
 * copied: read only. A value that is not a number leaves a gap.
 *
 * @param x along
 * @param y up
 */
@SuppressWarnings("ArrayRecordComponent") // handed through once to the chart
public record Points(double[] x, double[] y) {

    /** Hourly values, each at the end of its hour. */
    public static Points ends(double... values) {
        double[] x = new double[values.length];
        Arrays.setAll(x, hour -> hour + 1.0);
        return new Points(x, values);
    }

    /** Hourly values, each at the end of its hour, after a first one at 0. */
    public static Points from(double first, double... values) {
        double[] x = new double[values.length + 1];
        Arrays.setAll(x, hour -> hour);
        double[] y = new double[x.length];
        y[0] = first;
        System.arraycopy(values, 0, y, 1, values.length);
        return new Points(x, y);
    }

    /** Hourly means as steps, each the mean of so many hours. */
    public static Points means(double[] values, int hoursEach) {
        int steps = (values.length + hoursEach - 1) / hoursEach;
        double[] x = new double[2 * steps];
        double[] y = new double[2 * steps];
        for (int step = 0; step < steps; step++) {
            int from = step * hoursEach;
            int to = Math.min(values.length, from + hoursEach);
            x[2 * step] = from;
            x[2 * step + 1] = to;
            y[2 * step] = Arrays.stream(values, from, to).average().orElseThrow();
            y[2 * step + 1] = y[2 * step];
        }
        return new Points(x, y);
    }

    /**
     * As many points as can be told apart: in each of so many columns from one x to another the first, the lowest, the highest
     * and the last. A line through them looks the same.
     */
    Points thinned(double from, double to, int columns) {
        if (x.length <= 4 * columns || !(to > from)) {
            return this;
        }
        double[] keptX = new double[x.length];
        double[] keptY = new double[x.length];
        int kept = 0;
        for (int first = 0; first < x.length; ) {
            long column = column(x[first], from, to, columns);
            int next = first + 1;
            int least = first;
            int most = first;
            while (next < x.length && column(x[next], from, to, columns) == column) {
                least = y[next] < y[least] ? next : least;
                most = y[next] > y[most] ? next : most;
                next++;
            }
            int[] corners = {first, Math.min(least, most), Math.max(least, most), next - 1};
            for (int i = 0; i < corners.length; i++) {
                if (i == 0 || corners[i] != corners[i - 1]) {
                    keptX[kept] = x[corners[i]];
                    keptY[kept++] = y[corners[i]];
                }
            }
            first = next;
        }
        return new Points(Arrays.copyOf(keptX, kept), Arrays.copyOf(keptY, kept));
    }

    private static long column(double at, double from, double to, int columns) {
        return (long) Math.floor((at - from) / (to - from) * columns);
    }
}
