package org.warmvat.engine;

/** Sums over modes. */
final class Sums {

    private Sums() {}

    /** Adds a multiple of one row to another. */
    static void add(double factor, double[] row, double[] to) {
        for (int i = 0; i < to.length; i++) {
            to[i] += factor * row[i];
        }
    }

    /** The sum of products of two rows, in four partial sums so that they need not wait for each other. */
    static double product(double[] a, double[] b) {
        int length = a.length;
        double s0 = 0;
        double s1 = 0;
        double s2 = 0;
        double s3 = 0;
        int i = 0;
        for (; i < length - 3; i += 4) {
            s0 += a[i] * b[i];
            s1 += a[i + 1] * b[i + 1];
            s2 += a[i + 2] * b[i + 2];
            s3 += a[i + 3] * b[i + 3];
        }
        for (; i < length; i++) {
            s0 += a[i] * b[i];
        }
        return s0 + s1 + (s2 + s3);
    }

    /** Adds multiples of one row to three others. */
    static void add(double[] factors, double[] row, double[] to0, double[] to1, double[] to2) {
        double f0 = factors[0];
        double f1 = factors[1];
        double f2 = factors[2];
        for (int i = 0; i < row.length; i++) {
            to0[i] += f0 * row[i];
            to1[i] += f1 * row[i];
            to2[i] += f2 * row[i];
        }
    }

    /** Sums of products of one row with three others, each in two partial sums. */
    static void products(double[] row, double[] a, double[] b, double[] c, double[] into) {
        double a0 = 0;
        double b0 = 0;
        double c0 = 0;
        double a1 = 0;
        double b1 = 0;
        double c1 = 0;
        int i = 0;
        for (; i < row.length - 1; i += 2) {
            a0 += row[i] * a[i];
            b0 += row[i] * b[i];
            c0 += row[i] * c[i];
            a1 += row[i + 1] * a[i + 1];
            b1 += row[i + 1] * b[i + 1];
            c1 += row[i + 1] * c[i + 1];
        }
        if (i < row.length) {
            a0 += row[i] * a[i];
            b0 += row[i] * b[i];
            c0 += row[i] * c[i];
        }
        into[0] = a0 + a1;
        into[1] = b0 + b1;
        into[2] = c0 + c1;
    }
}
