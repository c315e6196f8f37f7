package org.warmvat.engine.exponential;

/**
 * Eigenvalues and eigenvectors of a small symmetric matrix by Jacobi's rotations, which always converge and keep small eigenvalues of
 * graded matrices accurate (Golub and Van Loan, Matrix Computations, section 8.5).
 */
final class JacobiRotations {

    /** Convergence is quadratic: six sweeps do, more than this never happened. */
    private static final int MOST_SWEEPS = 60;

    /** An element this small beside its diagonal elements is nothing. */
    private static final double NOTHING = 1e-16;

    private JacobiRotations() {}

    /**
     * Leaves the eigenvalues on the diagonal of a and the eigenvectors in the columns of v.
     *
     * @param a symmetric; overwritten
     * @param v overwritten
     * @param n order, no more than the arrays hold
     */
    static void diagonalise(double[][] a, double[][] v, int n) {
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                v[i][j] = i == j ? 1 : 0;
            }
        }
        boolean rotated = true;
        for (int sweep = 0; sweep < MOST_SWEEPS && rotated; sweep++) {
            rotated = false;
            for (int i = 0; i < n; i++) {
                for (int j = i + 1; j < n; j++) {
                    if (a[i][j] * a[i][j] > NOTHING * NOTHING * Math.abs(a[i][i] * a[j][j])) {
                        rotate(a, v, i, j, n);
                        rotated = true;
                    }
                }
            }
        }
    }

    private static void rotate(double[][] a, double[][] v, int i, int j, int n) {
        double theta = (a[j][j] - a[i][i]) / (2 * a[i][j]);
        double tangent = Math.copySign(1, theta) / (Math.abs(theta) + Math.sqrt(theta * theta + 1));
        double cosine = 1 / Math.sqrt(tangent * tangent + 1);
        double sine = tangent * cosine;
        double moved = tangent * a[i][j];
        a[i][i] -= moved;
        a[j][j] += moved;
        a[i][j] = 0;
        a[j][i] = 0;
        for (int k = 0; k < n; k++) {
            if (k != i && k != j) {
                double x = a[k][i];
                double y = a[k][j];
                a[k][i] = cosine * x - sine * y;
                a[k][j] = sine * x + cosine * y;
                a[i][k] = a[k][i];
                a[j][k] = a[k][j];
            }
            double x = v[k][i];
            double y = v[k][j];
            v[k][i] = cosine * x - sine * y;
            v[k][j] = sine * x + cosine * y;
        }
    }
}
