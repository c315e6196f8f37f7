package org.warmvat.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.EigenDecomposition;
import org.junit.jupiter.api.Test;
import org.warmvat.envelope.LayerChain;

/**
 * Published: Y. A. Cengel, Heat and Mass Transfer, table 4-2, slab: first eigenvalue and coefficient by Biot number. Seen.
 * Conditions: one plane layer cut into sub-nodes, film on one face, nothing through the other; the slowest mode of its
 * conductances and capacities at 25 and at 50 sub-nodes, extrapolated as a second-order error (the chain's own claim). The whole
 * column of Biot numbers is held against {@code z tan z = Bi} besides. Tolerance: half the last printed digit.
 */
class SlabEigenvaluesCengel42Test implements Published {

    /** z and A of a Biot number. */
    private record Mode(double eigenvalue, double coefficient) {}

    @Override
    public Source source() {
        return new Source(
                Topic.CONDUCTION,
                "Cengel",
                "Y. A. Cengel, Heat and Mass Transfer, table 4-2 (slab)",
                "One layer of 25 and of 50 sub-nodes, film on one face; slowest mode extrapolated to infinitely many.",
                Source.HALF_DIGIT);
    }

    @Override
    public void fill(Sheet sheet) {
        double[][] printed = {
            {0.1, 0.3111, 1.0161},
            {1, 0.8603, 1.1191},
            {10, 1.4289, 1.2620},
            {0.01, 0.0998, 1.0017},
            {0.5, 0.6533, 1.0701}
        };
        Sheet.Table table = sheet.table(Provenance.SEEN);
        for (double[] row : printed) {
            Mode mode = extrapolated(row[0]);
            table.value("first eigenvalue at Bi = " + row[0], row[1], mode.eigenvalue(), 5e-5);
            table.value("first coefficient at Bi = " + row[0], row[2], mode.coefficient(), 5e-5);
        }
        Mode five = extrapolated(5);
        table.value("first eigenvalue at Bi = 5", 1.3138, five.eigenvalue(), 5e-5)
                .notReproduced(
                        "first coefficient at Bi = 5",
                        1.2403,
                        five.coefficient(),
                        5e-5,
                        "a tie of rounding: 1.24025 to five decimals.");
    }

    /** Every Biot number of the printed table, against the equation that defines the eigenvalue. */
    @Test
    void theWholeColumn() {
        double[] biot = {
            0.01, 0.02, 0.04, 0.06, 0.08, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10,
            20, 30, 40, 50, 100
        };
        for (double bi : biot) {
            double exact = Chains.solve(z -> z * Math.tan(z), bi, 1e-6, Math.PI / 2 - 1e-9);
            double coefficient = 4 * Math.sin(exact) / (2 * exact + Math.sin(2 * exact));
            Mode mode = extrapolated(bi);
            assertEquals(exact, mode.eigenvalue(), 5e-5, "Bi = " + bi);
            assertEquals(coefficient, mode.coefficient(), 5e-5, "Bi = " + bi);
        }
    }

    private static Mode extrapolated(double bi) {
        Mode coarse = slowest(bi, 25);
        Mode fine = slowest(bi, 50);
        return new Mode(
                fine.eigenvalue() + (fine.eigenvalue() - coarse.eigenvalue()) / 3,
                fine.coefficient() + (fine.coefficient() - coarse.coefficient()) / 3);
    }

    /** The slowest mode of a layer of 1 m, 1 W/mK and 1 J/m3K in units of its own, by its symmetric matrix. */
    private static Mode slowest(double bi, int nodes) {
        LayerChain chain = Chains.plane(Chains.layer(1, 1, 10, 100, nodes));
        double[] capacity = chain.slices().stream()
                .mapToDouble(s -> s.capacityJPerK() / 1000)
                .toArray();
        double[][] matrix = new double[nodes][nodes];
        for (int i = 1; i < nodes; i++) {
            double link = chain.betweenWPerK(i);
            matrix[i - 1][i - 1] += link / capacity[i - 1];
            matrix[i][i] += link / capacity[i];
            matrix[i - 1][i] = -link / Math.sqrt(capacity[i - 1] * capacity[i]);
            matrix[i][i - 1] = matrix[i - 1][i];
        }
        matrix[nodes - 1][nodes - 1] += 1 / (chain.outerHalfKPerW() + 1 / bi) / capacity[nodes - 1];
        EigenDecomposition modes = new EigenDecomposition(new Array2DRowRealMatrix(matrix));
        double[] shape = modes.getEigenvector(nodes - 1).toArray();
        double projection = 0;
        for (int i = 0; i < nodes; i++) {
            projection += shape[i] * Math.sqrt(capacity[i]);
        }
        return new Mode(Math.sqrt(modes.getRealEigenvalue(nodes - 1)), projection * shape[0] / Math.sqrt(capacity[0]));
    }
}
