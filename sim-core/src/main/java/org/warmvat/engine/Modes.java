package org.warmvat.engine;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.apache.commons.math3.exception.MathIllegalStateException;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.EigenDecomposition;
import org.apache.commons.math3.util.MathArrays;
import org.warmvat.network.Network;
import org.warmvat.network.State;

/**
 * The modes of a network whose conductances are held: each decays by itself, so that a step of any length is exact. A node's
 * temperature is a sum over modes, and heat into a node pushes every mode by the same share, the network being symmetric.
 */
final class Modes {

    /** So many halvings of an hour are remembered as lengths of steps. */
    private static final int HALVINGS_KEPT = 16;

    /** So many other lengths are remembered. */
    private static final int OTHERS_KEPT = 4;

    private static final long MANTISSA = (1L << 52) - 1;

    /** A body that loses nothing at all decays as slowly as this, some ten thousand years, 1/s. */
    private static final double SLOWEST_PER_S = 3e-12;

    private final int[] parent;
    private final double[] linkWPerK;
    private final double[] heldWPerK;
    private final double[] capacityJPerK;
    private final double[] decayPerS;
    private final double[][] shape;
    private final double[] masslessKPerW;
    private final double[] transfer;
    private final double[][] scratch;
    private final double[][] squaredShape;
    private final double[][] slurryShape;
    private final Decays[] decaysOfSteps = new Decays[HALVINGS_KEPT + OTHERS_KEPT];
    private final OwnResponses[] responses = new OwnResponses[HALVINGS_KEPT + OTHERS_KEPT];
    private final Decays decaysOfPart;

    /**
     * Finds the modes.
     *
     * @param network nodes and capacities
     * @param linkWPerK conductance of each node to its parent; copied
     * @param heldWPerK conductance of each node to known temperatures; copied
     */
    Modes(Network network, double[] linkWPerK, double[] heldWPerK) {
        parent = network.parents();
        capacityJPerK = network.capacitiesJPerK();
        this.linkWPerK = linkWPerK.clone();
        this.heldWPerK = heldWPerK.clone();
        masslessKPerW = new double[parent.length];
        double[][] conductance = conductance();
        eliminateMassless(conductance);
        int[] massive = massive();
        decayPerS = new double[massive.length];
        scratch = new double[Decays.FUNCTIONS][massive.length];
        decaysOfPart = new Decays(decayPerS, scratch);
        shape = new double[parent.length][massive.length];
        decompose(conductance, massive);
        shapeMassless(conductance);
        for (int mode = 0; mode < decayPerS.length; mode++) {
            decayPerS[mode] = decayPerS(mode);
        }
        transfer = transfers();
        squaredShape = new double[parent.length][];
        slurryShape = new double[parent.length][];
        for (int i = 0; i < parent.length; i++) {
            squaredShape[i] = MathArrays.ebeMultiply(shape[i], shape[i]);
            slurryShape[i] = MathArrays.ebeMultiply(shape[0], shape[i]);
        }
    }

    private int[] massive() {
        return IntStream.range(0, parent.length)
                .filter(i -> capacityJPerK[i] > 0)
                .toArray();
    }

    private double[][] conductance() {
        double[][] conductance = new double[parent.length][parent.length];
        for (int i = 0; i < parent.length; i++) {
            conductance[i][i] += heldWPerK[i];
            if (i > 0) {
                conductance[i][i] += linkWPerK[i];
                conductance[parent[i]][parent[i]] += linkWPerK[i];
                conductance[i][parent[i]] -= linkWPerK[i];
                conductance[parent[i]][i] -= linkWPerK[i];
            }
        }
        return conductance;
    }

    /** What flows into a junction leaves it at once: its neighbours see each other through it. */
    private void eliminateMassless(double[][] conductance) {
        for (int junction = 0; junction < parent.length; junction++) {
            if (capacityJPerK[junction] == 0) {
                masslessKPerW[junction] = 1 / conductance[junction][junction];
                for (int i = 0; i < parent.length; i++) {
                    for (int j = 0; j < parent.length; j++) {
                        if (i != junction && j != junction) {
                            conductance[i][j] -=
                                    conductance[i][junction] * masslessKPerW[junction] * conductance[junction][j];
                        }
                    }
                }
            }
        }
    }

    private void decompose(double[][] conductance, int[] massive) {
        double[][] scaled = new double[massive.length][massive.length];
        for (int i = 0; i < massive.length; i++) {
            for (int j = 0; j <= i; j++) {
                double mass = Math.sqrt(capacityJPerK[massive[i]] * capacityJPerK[massive[j]]);
                scaled[i][j] = conductance[massive[i]][massive[j]] / mass;
                scaled[j][i] = scaled[i][j];
            }
        }
        double[][] vectors = vectors(scaled);
        for (int i = 0; i < massive.length; i++) {
            double root = Math.sqrt(capacityJPerK[massive[i]]);
            for (int mode = 0; mode < massive.length; mode++) {
                // the library puts the fastest decay first
                shape[massive[i]][massive.length - 1 - mode] = vectors[i][mode] / root;
            }
        }
    }

    private static double[][] vectors(double[][] symmetric) {
        try {
            return new EigenDecomposition(new Array2DRowRealMatrix(symmetric, false))
                    .getV()
                    .getData();
        } catch (MathIllegalStateException e) {
            throw new EngineFailure("the fast engine found no modes of the tank: " + e.getMessage(), e);
        }
    }

    private void shapeMassless(double[][] conductance) {
        for (int junction = 0; junction < parent.length; junction++) {
            for (int i = 0; masslessKPerW[junction] != 0 && i < parent.length; i++) {
                if (i != junction && masslessKPerW[i] == 0) {
                    double share = -conductance[junction][i] * masslessKPerW[junction];
                    Sums.add(share, shape[i], shape[junction]);
                }
            }
        }
    }

    /** How fast a mode decays: heat lost in its shape over heat held, all terms positive, hence exact where it is slow. */
    private double decayPerS(int mode) {
        double lost = 0;
        double held = 0;
        for (int i = 0; i < parent.length; i++) {
            double c = shape[i][mode];
            lost += heldWPerK[i] * c * c;
            held += capacityJPerK[i] * c * c;
            if (i > 0) {
                double fall = c - shape[parent[i]][mode];
                lost += linkWPerK[i] * fall * fall;
            }
        }
        return lost / held;
    }

    /** How many modes there are. */
    int count() {
        return decayPerS.length;
    }

    /** Temperature of a node per unit of each mode, and push of each mode per watt into the node. Shared: read only. */
    double[] shape(int node) {
        return shape[node];
    }

    /** By how much a junction without mass is warmed at once by a watt into it, K/W; 0 for others. */
    double masslessKPerW(int node) {
        return masslessKPerW[node];
    }

    /** Conductance held of a node to known temperatures, W/K. */
    double heldWPerK(int node) {
        return heldWPerK[node];
    }

    /** Whether these are the modes of such conductances. */
    boolean hold(double[] links, double[] held) {
        return Arrays.equals(linkWPerK, links) && Arrays.equals(heldWPerK, held);
    }

    /** Sets the modes' contents from the temperatures of a state. */
    void gather(State state, double[] content) {
        Arrays.fill(content, 0);
        for (int i = 0; i < parent.length; i++) {
            if (capacityJPerK[i] > 0) {
                Sums.add(capacityJPerK[i] * state.nodeC(i), shape[i], content);
            }
        }
    }

    /** Squares of {@link #shape}. Shared: read only. */
    double[] squaredShape(int node) {
        return squaredShape[node];
    }

    /** Products of {@link #shape} with that of the slurry. Shared: read only. */
    double[] slurryShape(int node) {
        return slurryShape[node];
    }

    /** Share of a lasting heat into a node that in the end reaches the slurry. */
    double transfer(int node) {
        return transfer[node];
    }

    private double[] transfers() {
        double[] transfers = new double[parent.length];
        for (int i = 0; i < parent.length; i++) {
            double own = 0;
            for (int mode = 0; mode < decayPerS.length; mode++) {
                double slowness = shape[0][mode] / Math.max(decayPerS[mode], SLOWEST_PER_S);
                transfers[i] += slowness * shape[i][mode];
                own += slowness * shape[0][mode];
            }
            transfers[i] /= own;
        }
        return transfers;
    }

    /** The decays over the length of a step; kept for lengths that come again. */
    Decays over(double stepS) {
        int slot = slot(stepS);
        if (decaysOfSteps[slot] == null) {
            decaysOfSteps[slot] = new Decays(decayPerS, scratch);
        }
        if (decaysOfSteps[slot].stepS() != stepS) {
            decaysOfSteps[slot].set(stepS);
        }
        return decaysOfSteps[slot];
    }

    /** The decays over a part of a step, its end only; reused by the next call. */
    Decays overPart(double lengthS) {
        if (decaysOfPart.stepS() != lengthS) {
            decaysOfPart.setEnd(lengthS);
        }
        return decaysOfPart;
    }

    /** How fed nodes, always the same ones, answer to their own heat over a step. */
    OwnResponses responses(Decays decays, int[] fed) {
        int slot = slot(decays.stepS());
        if (responses[slot] == null) {
            responses[slot] = new OwnResponses(fed.length);
        }
        responses[slot].set(this, decays, fed);
        return responses[slot];
    }

    /** An hour, its half and so on have a slot each, which stays theirs; other lengths, which seldom come again, share a few. */
    private static int slot(double lengthS) {
        long bits = Double.doubleToLongBits(lengthS);
        int halvings = Math.getExponent(Hours.HOUR_S) - Math.getExponent(lengthS);
        boolean halved = (bits & MANTISSA) == (Double.doubleToLongBits(Hours.HOUR_S) & MANTISSA);
        if (halved && halvings >= 0 && halvings < HALVINGS_KEPT) {
            return halvings;
        }
        return HALVINGS_KEPT + (int) (bits >>> 20 & 0x7FFF_FFFF) % OTHERS_KEPT;
    }
}
