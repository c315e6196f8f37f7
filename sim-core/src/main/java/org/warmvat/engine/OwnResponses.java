package org.warmvat.engine;

/**
 * How each fed node answers to its own heat over a step of some length: its temperature at an instant, as fitted, by a watt at an
 * instant; and how much comes of heats that no parabola follows.
 */
final class OwnResponses {

    private static final int N = Parabola.INSTANTS;
    private final double[][] kPerW;
    private final double[] lastingKPerW;
    private final double[] restKPerW;
    private final double[] slurryRestKPerW;
    private final double[] row = new double[N];
    private double stepS = Double.NaN;

    OwnResponses(int fed) {
        kPerW = new double[fed][N * N];
        lastingKPerW = new double[fed];
        restKPerW = new double[fed];
        slurryRestKPerW = new double[fed];
    }

    /** Works them out for a step in some modes, always the same ones, unless it is as long as the last. */
    void set(Modes modes, Decays decays, int[] fed) {
        if (decays.stepS() == stepS) {
            return;
        }
        stepS = decays.stepS();
        for (int i = 0; i < fed.length; i++) {
            double[] square = modes.squaredShape(fed[i]);
            double[] own = kPerW[i];
            for (int m = 0; m < N; m++) {
                double[][] by = decays.fittedBy[m];
                Sums.products(square, by[0], by[1], by[2], row);
                row[m] += modes.masslessKPerW(fed[i]);
                System.arraycopy(row, 0, own, N * m, N);
            }
            lastingKPerW[i] = own[N * N - 3] + own[N * N - 2] + own[N * N - 1];
            restKPerW[i] = Math.abs(Sums.product(square, decays.byRest));
            slurryRestKPerW[i] = Math.abs(Sums.product(modes.slurryShape(fed[i]), decays.byRest));
        }
    }

    /** Temperature of a fed node at the end of the step by a lasting watt, K/W. */
    double lastingKPerW(int i) {
        return lastingKPerW[i];
    }

    /** Temperature of a fed node at the end of the step by a lasting watt that was wrong at its beginning only, K/W. */
    double forgettingKPerW(int i) {
        return Math.abs(kPerW[i][N * (N - 1)]) / Parabola.WEIGHT[0];
    }

    /** Temperature of a fed node at the end of the step by a heat that no parabola takes part in and that ends at a watt, K/W. */
    double restKPerW(int i) {
        return restKPerW[i];
    }

    /** The same of the slurry. */
    double slurryRestKPerW(int i) {
        return slurryRestKPerW[i];
    }

    /**
     * Finds how a fed node's heats must change to agree with the temperatures that they make.
     *
     * @param i which fed node
     * @param instants heats as they are and as they are owed
     * @param forgottenK less than this is left as it is, K
     * @param change set to the changes, W
     * @return by how much temperatures move, K, or about so much where it is left
     */
    double solve(int i, Moment[] instants, double forgottenK, double[] change) {
        double[] r = kPerW[i];
        double d0 = instants[0].excessWPerK[i];
        double d1 = instants[1].excessWPerK[i];
        double d2 = instants[2].excessWPerK[i];
        double b0 = instants[0].owedW(i) - instants[0].heatW[i];
        double b1 = instants[1].owedW(i) - instants[1].heatW[i];
        double b2 = instants[2].owedW(i) - instants[2].heatW[i];
        double aboutK = Math.abs(b0 * r[0]) + Math.abs(b1 * r[4]) + Math.abs(b2 * r[8]);
        if (aboutK <= forgottenK) {
            return aboutK;
        }
        double a00 = 1 + d0 * r[0];
        double a01 = d0 * r[1];
        double a02 = d0 * r[2];
        double f1 = d1 * r[3] / a00;
        double a11 = 1 + d1 * r[4] - f1 * a01;
        double a12 = d1 * r[5] - f1 * a02;
        b1 -= f1 * b0;
        double f2 = d2 * r[6] / a00;
        double a21 = d2 * r[7] - f2 * a01;
        double a22 = 1 + d2 * r[8] - f2 * a02;
        b2 -= f2 * b0;
        double f = a21 / a11;
        change[2] = (b2 - f * b1) / (a22 - f * a12);
        change[1] = (b1 - a12 * change[2]) / a11;
        change[0] = (b0 - a01 * change[1] - a02 * change[2]) / a00;
        return Math.abs(change[0] * r[0]) + Math.abs(change[1] * r[4]) + Math.abs(change[2] * r[8]);
    }
}
