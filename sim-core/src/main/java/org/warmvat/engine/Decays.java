package org.warmvat.engine;

/**
 * What becomes of every mode over a step: what is left of it, and what heat makes of it that follows a {@link Parabola}. Exact
 * whatever the step and the decay. The functions phi behind it are those of exponential integrators (Hochbruck and Ostermann,
 * Acta Numerica 19 (2010) 209-286). Written as plain loops over the modes, which the virtual machine turns into vector
 * instructions.
 */
final class Decays {

    /** Below this the series are used, above the closed forms, which would cancel. */
    private static final double SERIES_BELOW = 0.5;

    /** Beyond this nothing is left. */
    private static final double GONE_ABOVE = 40;

    /** How many functions phi there are. */
    static final int FUNCTIONS = 5;

    private static final int SERIES_TERMS = 12;
    private static final double[] SERIES = series();

    /** What is left at each instant of the parabola. */
    final double[][] left = new double[Parabola.INSTANTS][];

    /** Content at an instant (first index) by a unit of push at an instant (second), s. */
    final double[][][] by = new double[Parabola.INSTANTS][Parabola.INSTANTS][];

    /** Integral over the step of what is left, s. */
    final double[] leftS;

    /** Integral over the step of the content by a unit of push at an instant, s2. */
    final double[][] sumBy = new double[Parabola.INSTANTS][];

    private final double[] decayPerS;
    private final double[][] phi;
    private double stepS = Double.NaN;

    /**
     * For modes in the order of their decays, the slowest first.
     *
     * @param decayPerS how fast each mode decays
     * @param scratch room for {@link #FUNCTIONS} rows of as many numbers, which others may use in between
     */
    Decays(double[] decayPerS, double[][] scratch) {
        this.decayPerS = decayPerS;
        phi = scratch;
        int count = decayPerS.length;
        leftS = new double[count];
        for (int m = 0; m < Parabola.INSTANTS; m++) {
            left[m] = new double[count];
            sumBy[m] = new double[count];
            for (int j = 0; j < Parabola.INSTANTS; j++) {
                by[m][j] = new double[count];
            }
        }
    }

    private static double[] series() {
        double[] terms = new double[SERIES_TERMS];
        double factorial = 24;
        for (int j = 0; j < SERIES_TERMS; j++) {
            terms[j] = (j % 2 == 0 ? 1 : -1) / factorial;
            factorial *= j + 5;
        }
        return terms;
    }

    double stepS() {
        return stepS;
    }

    /** Turns to another length. */
    void set(double lengthS) {
        stepS = lengthS;
        for (int m = 0; m < Parabola.INSTANTS; m++) {
            phi(Parabola.SHARE[m] * lengthS);
            setInstant(m, lengthS);
        }
        double square = lengthS * lengthS;
        for (int i = 0; i < leftS.length; i++) {
            leftS[i] = lengthS * phi[1][i];
        }
        for (int j = 0; j < Parabola.INSTANTS; j++) {
            combine(sumBy[j], 2, square, Parabola.COEFFICIENT[j], 1);
        }
    }

    /** Turns to another length, the end only. */
    void setEnd(double lengthS) {
        stepS = lengthS;
        phi(lengthS);
        setInstant(Parabola.END, lengthS);
    }

    private void setInstant(int m, double lengthS) {
        System.arraycopy(phi[0], 0, left[m], 0, phi[0].length);
        double share = Parabola.SHARE[m];
        for (int j = 0; j < Parabola.INSTANTS; j++) {
            combine(by[m][j], 1, share * lengthS, Parabola.COEFFICIENT[j], share);
        }
    }

    /** Integral of a parabola against the decay: power d of it gives {@code d! phi_(d+first)}. */
    private void combine(double[] into, int first, double factor, double[] coefficient, double share) {
        double c0 = factor * coefficient[0];
        double c1 = factor * coefficient[1] * share;
        double c2 = 2 * factor * coefficient[2] * share * share;
        double[] p0 = phi[first];
        double[] p1 = phi[first + 1];
        double[] p2 = phi[first + 2];
        for (int i = 0; i < into.length; i++) {
            into[i] = c0 * p0[i] + c1 * p1[i] + c2 * p2[i];
        }
    }

    /** The functions phi_0 to phi_4 of every mode: {@code phi_k(-z) = (1/(k-1)! - phi_(k-1)(-z)) / z}. */
    private void phi(double lengthS) {
        double[] p0 = phi[0];
        double[] p1 = phi[1];
        double[] p2 = phi[2];
        double[] p3 = phi[3];
        double[] p4 = phi[4];
        int slow = 0;
        while (slow < p0.length && decayPerS[slow] * lengthS < SERIES_BELOW) {
            slow++;
        }
        for (int i = 0; i < slow; i++) {
            p4[i] = SERIES[SERIES_TERMS - 1];
        }
        for (int j = SERIES_TERMS - 2; j >= 0; j--) {
            double term = SERIES[j];
            for (int i = 0; i < slow; i++) {
                p4[i] = p4[i] * (decayPerS[i] * lengthS) + term;
            }
        }
        for (int i = 0; i < slow; i++) {
            double z = decayPerS[i] * lengthS;
            p3[i] = 1.0 / 6 - z * p4[i];
            p2[i] = 0.5 - z * p3[i];
            p1[i] = 1 - z * p2[i];
            p0[i] = 1 - z * p1[i];
        }
        for (int i = slow; i < p0.length; i++) {
            double z = decayPerS[i] * lengthS;
            double perZ = 1 / z;
            p0[i] = z > GONE_ABOVE ? 0 : Math.exp(-z);
            p1[i] = (1 - p0[i]) * perZ;
            p2[i] = (1 - p1[i]) * perZ;
            p3[i] = (0.5 - p2[i]) * perZ;
            p4[i] = (1.0 / 6 - p3[i]) * perZ;
        }
    }
}
