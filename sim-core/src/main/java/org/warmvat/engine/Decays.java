package org.warmvat.engine;

/**
 * What becomes of every mode over a step: what is left of it, and what heat makes of it that follows a {@link Parabola}; exact
 * whatever the step and the decay. Both are given as they truly are at the instants of the parabola, and as the parabola fitted
 * to their course stands there. The functions phi behind it are those of exponential integrators (Hochbruck and Ostermann, Acta
 * Numerica 19 (2010) 209-286).
 */
final class Decays {

    /** Below this the series are used, above the closed forms, which would cancel. */
    private static final double SERIES_BELOW = 1;

    /** Beyond this nothing is left. */
    private static final double GONE_ABOVE = 40;

    /** How many functions phi there are. */
    static final int FUNCTIONS = 7;

    /** The last function phi that a content at an instant needs. */
    private static final int LAST_OF_CONTENT = 3;

    private static final int LAST = FUNCTIONS - 1;

    /** Beyond so many terms of the series, the first not among them, nothing counts that is below {@link #SERIES_BELOW}. */
    private static final int MOST_TERMS = 15;

    private static final double[] ONE_OVER_FACTORIAL = oneOverFactorials();
    private static final int INSTANTS = Parabola.INSTANTS;
    private static final int END = Parabola.END;

    /** What is truly left at each instant. */
    final double[][] left = new double[INSTANTS][];

    /** Content truly there at an instant (first index) by a unit of push at an instant (second), s. */
    final double[][][] by = new double[INSTANTS][INSTANTS][];

    /** What is left as fitted, at each instant. */
    final double[][] fittedLeft = new double[INSTANTS][];

    /** Content as fitted, at an instant (first index) by a unit of push at an instant (second), s. */
    final double[][][] fittedBy = new double[INSTANTS][INSTANTS][];

    /** Content as fitted, at an instant by a unit of lasting push, s. */
    final double[][] fittedByLasting = new double[INSTANTS][];

    /**
     * Content at the end by a push that no parabola takes part in: Legendre's polynomial of the third degree, which is 1 at the end
     * and -1 at the beginning, s.
     */
    final double[] byRest;

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
        byRest = new double[count];
        for (int m = 0; m < INSTANTS; m++) {
            left[m] = new double[count];
            fittedLeft[m] = new double[count];
            fittedByLasting[m] = new double[count];
            for (int j = 0; j < INSTANTS; j++) {
                by[m][j] = new double[count];
                fittedBy[m][j] = new double[count];
            }
        }
    }

    private static double[] oneOverFactorials() {
        double[] inverse = new double[LAST + MOST_TERMS + 1];
        inverse[0] = 1;
        for (int n = 1; n < inverse.length; n++) {
            inverse[n] = inverse[n - 1] / n;
        }
        return inverse;
    }

    double stepS() {
        return stepS;
    }

    /** Turns to another length. */
    void set(double lengthS) {
        for (int m = 0; m < END; m++) {
            phi(Parabola.SHARE[m] * lengthS, LAST_OF_CONTENT);
            setInstant(m, lengthS);
        }
        phi(lengthS, LAST);
        setInstant(END, lengthS);
        for (int m = 0; m < INSTANTS; m++) {
            setFitted(m, lengthS);
        }
        for (int i = 0; i < byRest.length; i++) {
            byRest[i] = lengthS * (120 * phi[4][i] - 60 * phi[3][i] + 12 * phi[2][i] - phi[1][i]);
        }
        stepS = lengthS;
    }

    /** Turns to another length, what is truly there at the end only. */
    void setEnd(double lengthS) {
        phi(lengthS, LAST_OF_CONTENT);
        setInstant(END, lengthS);
        stepS = lengthS;
    }

    /** Integral of a parabola against the decay: power d of it gives {@code d! phi_(d+1)}. */
    private void setInstant(int m, double lengthS) {
        System.arraycopy(phi[0], 0, left[m], 0, phi[0].length);
        double[] p1 = phi[1];
        double[] p2 = phi[2];
        double[] p3 = phi[3];
        double share = Parabola.SHARE[m];
        for (int j = 0; j < INSTANTS; j++) {
            double[] coefficient = Parabola.COEFFICIENT[j];
            double c1 = share * lengthS * coefficient[0];
            double c2 = share * share * lengthS * coefficient[1];
            double c3 = 2 * share * share * share * lengthS * coefficient[2];
            double[] into = by[m][j];
            for (int i = 0; i < into.length; i++) {
                into[i] = c1 * p1[i] + c2 * p2[i] + c3 * p3[i];
            }
        }
    }

    /**
     * Integrals of the course {@code s^d phi_d(-z s)} over the step, times 1, s and s squared, are {@code phi_(d+1)}, {@code
     * phi_(d+1) - phi_(d+2)} and {@code phi_(d+1) - 2 phi_(d+2) + 2 phi_(d+3)}, by parts.
     */
    private void setFitted(int m, double lengthS) {
        double[] weight = Parabola.FITTED[m];
        double a = weight[0] + weight[1] + weight[2];
        double b = -weight[1] - 2 * weight[2];
        double c = 2 * weight[2];
        double[] p1 = phi[1];
        double[] p2 = phi[2];
        double[] p3 = phi[3];
        double[] p4 = phi[4];
        double[] p5 = phi[5];
        double[] p6 = phi[6];
        double[] fitted = fittedLeft[m];
        double[] lasting = fittedByLasting[m];
        for (int i = 0; i < fitted.length; i++) {
            fitted[i] = a * p1[i] + b * p2[i] + c * p3[i];
            lasting[i] = lengthS * (a * p2[i] + b * p3[i] + c * p4[i]);
        }
        for (int j = 0; j < INSTANTS; j++) {
            double c0 = lengthS * Parabola.COEFFICIENT[j][0];
            double c1 = lengthS * Parabola.COEFFICIENT[j][1];
            double c2 = 2 * lengthS * Parabola.COEFFICIENT[j][2];
            double[] into = fittedBy[m][j];
            for (int i = 0; i < into.length; i++) {
                into[i] = c0 * a * p2[i]
                        + (c0 * b + c1 * a) * p3[i]
                        + (c0 * c + c1 * b + c2 * a) * p4[i]
                        + (c1 * c + c2 * b) * p5[i]
                        + c2 * c * p6[i];
            }
        }
    }

    /** The functions phi_0 to phi_last of every mode: {@code phi_k(-z) = (1/(k-1)! - phi_(k-1)(-z)) / z}. */
    private void phi(double lengthS, int last) {
        for (int i = 0; i < decayPerS.length; i++) {
            double z = decayPerS[i] * lengthS;
            if (z < SERIES_BELOW) {
                int terms = last + termsOfSeries(z);
                double value = ONE_OVER_FACTORIAL[terms];
                for (int n = terms - 1; n > last; n--) {
                    value = ONE_OVER_FACTORIAL[n] - z * value;
                }
                for (int k = last; k >= 0; k--) {
                    value = ONE_OVER_FACTORIAL[k] - z * value;
                    phi[k][i] = value;
                }
            } else {
                double value = z > GONE_ABOVE ? 0 : Math.exp(-z);
                double oneOverZ = 1 / z;
                phi[0][i] = value;
                for (int k = 1; k <= last; k++) {
                    value = (ONE_OVER_FACTORIAL[k - 1] - value) * oneOverZ;
                    phi[k][i] = value;
                }
            }
        }
    }

    /** How many terms of the series count, beyond the first. */
    private static int termsOfSeries(double z) {
        if (z < 1e-3) {
            return 5;
        }
        return z < 0.06 ? 8 : MOST_TERMS;
    }
}
