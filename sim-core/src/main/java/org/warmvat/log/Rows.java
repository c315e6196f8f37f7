package org.warmvat.log;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** The times of rows, and which of them count as one: finer than ten minutes, those of the same ten minutes. */
final class Rows {

    private static final double TOGETHER_S = 600;
    private static final int SECONDS_PER_MINUTE = 60;

    private final double[] timeS;
    private final int[] bin;

    private Rows(double[] timeS, int[] bin) {
        this.timeS = timeS;
        this.bin = bin;
    }

    /** Rows at rising times, the first at 0. */
    static Rows of(double[] timeS) {
        // loggers are late by seconds: a step of 9 min 58 s is one of ten minutes
        boolean fine = Math.round(medianStepS(timeS) / SECONDS_PER_MINUTE) * SECONDS_PER_MINUTE < TOGETHER_S;
        int[] bin = IntStream.range(0, timeS.length)
                .map(row -> fine ? (int) (timeS[row] / TOGETHER_S) : row)
                .toArray();
        return new Rows(timeS, bin);
    }

    static double medianStepS(double[] timeS) {
        double[] steps = IntStream.range(1, timeS.length)
                .mapToDouble(i -> timeS[i] - timeS[i - 1])
                .sorted()
                .toArray();
        return steps.length == 0 ? TOGETHER_S : steps[steps.length / 2];
    }

    boolean isAveraged() {
        return IntStream.range(1, bin.length).anyMatch(row -> bin[row] == bin[row - 1]);
    }

    /** Values at rows, NaN for none; empty where there is none at all. */
    Optional<Readings> readings(double[] values) {
        List<double[]> means = new ArrayList<>();
        int row = 0;
        while (row < values.length) {
            double time = 0;
            double sum = 0;
            int count = 0;
            int first = row;
            for (; row < values.length && bin[row] == bin[first]; row++) {
                if (!Double.isNaN(values[row])) {
                    time += timeS[row];
                    sum += values[row];
                    count++;
                }
            }
            if (count > 0) {
                means.add(new double[] {time / count, sum / count});
            }
        }
        return means.isEmpty() ? Optional.empty() : Optional.of(new Readings(column(means, 0), column(means, 1)));
    }

    /** Rates over the steps that end at rows with a value; empty where there is none after the first row. */
    Optional<Steps> steps(double[] values, LogColumn.Kind kind) {
        List<double[]> steps = new ArrayList<>();
        double from = 0;
        double last = 0;
        double amount = 0;
        for (int row = 1; row < values.length; row++) {
            if (!Double.isNaN(values[row])) {
                amount += kind == LogColumn.Kind.SUM ? values[row] : values[row] * (timeS[row] - last);
                last = timeS[row];
            }
            boolean ends = row + 1 == values.length || bin[row + 1] != bin[row];
            if (ends && last > from) {
                steps.add(new double[] {last, amount / (last - from)});
                from = last;
                amount = 0;
            }
        }
        return steps.isEmpty() ? Optional.empty() : Optional.of(new Steps(column(steps, 0), column(steps, 1)));
    }

    private static double[] column(List<double[]> rows, int index) {
        return rows.stream().mapToDouble(row -> row[index]).toArray();
    }
}
