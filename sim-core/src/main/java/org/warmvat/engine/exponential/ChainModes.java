package org.warmvat.engine.exponential;

import org.warmvat.network.Chain;
import org.warmvat.network.State;

/**
 * A chain in its own modes, each of which decays by itself, for the film that the chain has when the engine is set up: {@code dz/dt =
 * -rate z + in Tin + out Tout}. The heat from inside is {@code G0 Tin - sum in z}, that from the outermost node outwards {@code sum out z
 * - Gref Tout}.
 */
final class ChainModes {

    final Chain chain;
    final double[] ratePerS;
    final double[] in;
    final double[] out;
    /** Reference conductance from the outermost node outwards, W/K. */
    final double outerWPerK;

    private final double[][] vector;
    private final double[] root;

    ChainModes(Chain chain) {
        this.chain = chain;
        int n = chain.size();
        outerWPerK = chain.outerWPerK();
        ratePerS = new double[n];
        in = new double[n];
        out = new double[n];
        vector = new double[n][n];
        root = new double[n];
        double[][] matrix = new double[n][n];
        for (int i = 0; i < n; i++) {
            root[i] = Math.sqrt(chain.capacityJPerK(i));
        }
        for (int i = 0; i < n; i++) {
            double outwards = i + 1 < n ? chain.linkWPerK(i + 1) : outerWPerK;
            matrix[i][i] = (chain.linkWPerK(i) + outwards) / chain.capacityJPerK(i);
            if (i + 1 < n) {
                matrix[i][i + 1] = -outwards / (root[i] * root[i + 1]);
                matrix[i + 1][i] = matrix[i][i + 1];
            }
        }
        JacobiRotations.diagonalise(matrix, vector, n);
        for (int m = 0; m < n; m++) {
            ratePerS[m] = matrix[m][m];
            in[m] = vector[0][m] * chain.linkWPerK(0) / root[0];
            out[m] = vector[n - 1][m] * outerWPerK / root[n - 1];
        }
    }

    /** Contents of the modes at the nodes' temperatures. */
    void enter(State state, double[] content, int at) {
        for (int m = 0; m < ratePerS.length; m++) {
            double sum = 0;
            for (int i = 0; i < root.length; i++) {
                sum += vector[i][m] * root[i] * state.nodeC(chain.first() + i);
            }
            content[at + m] = sum;
        }
    }

    /** The nodes' temperatures at some contents of the modes. */
    void leave(double[] content, int at, State state) {
        for (int i = 0; i < root.length; i++) {
            double sum = 0;
            for (int m = 0; m < ratePerS.length; m++) {
                sum += vector[i][m] * content[at + m];
            }
            state.setNodeC(chain.first() + i, sum / root[i]);
        }
    }
}
