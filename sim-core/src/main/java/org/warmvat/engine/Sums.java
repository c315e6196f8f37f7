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
}
