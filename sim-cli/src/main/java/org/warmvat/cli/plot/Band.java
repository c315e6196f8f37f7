package org.warmvat.cli.plot;

import java.util.Arrays;

/**
 * A band with a line in it. The arrays are shared, not copied: read only.
 *
 * @param x along; along time, hours since the left end of the chart
 * @param least its lower edge
 * @param middle the line
 * @param most its upper edge
 */
@SuppressWarnings("ArrayRecordComponent") // handed through once to the chart
public record Band(double[] x, double[] least, double[] middle, double[] most) {

    /** Lowest, mean and highest of each so many hours. */
    public static Band ofEach(int hoursEach, double... values) {
        int count = (values.length + hoursEach - 1) / hoursEach;
        Band band = new Band(new double[count], new double[count], new double[count], new double[count]);
        for (int i = 0; i < count; i++) {
            int from = i * hoursEach;
            int to = Math.min(from + hoursEach, values.length);
            double[] part = Arrays.copyOfRange(values, from, to);
            band.x[i] = (from + to) / 2.0;
            band.least[i] = Arrays.stream(part).min().orElseThrow();
            band.middle[i] = Arrays.stream(part).average().orElseThrow();
            band.most[i] = Arrays.stream(part).max().orElseThrow();
        }
        return band;
    }
}
