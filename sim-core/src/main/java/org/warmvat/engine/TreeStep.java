package org.warmvat.engine;

import java.util.Arrays;
import org.warmvat.network.Flows;
import org.warmvat.network.Network;
import org.warmvat.network.State;

/**
 * One implicit step of the method: every stage is a linear system on a tree, solved from the leaves to the slurry and back.
 * Heats that are not linear are linearised about the stage's own temperatures by repeating the stage until they stand.
 */
final class TreeStep {

    /** A stage is repeated while following the slope of a heat gets more than this wrong, W. */
    private static final double SLOPE_ERROR_W = 0.005;

    private static final int MOST_REPEATS = 8;

    private final int[] parent;
    private final double[] capacity;
    private final int nodes;
    private final int stocks;
    private final Equations equations;
    private final Flows flows;
    private final double[] diagonal;
    private final double[] right;
    private final double[][] heat;
    private final double[][] gain;
    private final double[] base;
    private final State linearised;
    private final State result;
    private final double[][] meterRate;
    private boolean firstStageKnown;

    TreeStep(Network network, State state) {
        parent = network.parents();
        capacity = network.capacitiesJPerK();
        nodes = parent.length;
        stocks = network.stocks().size();
        equations = new Equations(network);
        flows = equations.flows();
        diagonal = new double[nodes];
        right = new double[nodes];
        heat = new double[Tableau.STAGES][nodes];
        gain = new double[Tableau.STAGES][stocks];
        base = new double[nodes];
        linearised = state.copy();
        result = state.copy();
        meterRate = new double[Tableau.STAGES][network.meters().size()];
    }

    /** Forgets the first stage: something jumped or switched. */
    void restart() {
        firstStageKnown = false;
    }

    /** The state at the end of the step just tried. */
    State result() {
        return result;
    }

    /** Adds the integrals of the meters over the step just tried. */
    void addMeters(double stepS, double[] totals) {
        for (int stage = 0; stage < Tableau.STAGES; stage++) {
            double weight = Tableau.B[stage] * stepS;
            double[] rate = meterRate[stage];
            for (int i = 0; i < totals.length; i++) {
                totals[i] += weight * rate[i];
            }
        }
    }

    /** Rate of a node at the beginning (stage 0) or the end (last stage) of the step just tried, K/s. */
    double rateKPerS(int stage, int node) {
        return heat[stage][node] / capacity[node];
    }

    /** Difference between the step's two orders at a node, K. */
    double errorK(int node, double stepS) {
        double sum = 0;
        for (int stage = 0; stage < Tableau.STAGES; stage++) {
            sum += (Tableau.B[stage] - Tableau.B_LOWER[stage]) * heat[stage][node];
        }
        return Math.abs(sum) * stepS / capacity[node];
    }

    /** Makes the end of the step just taken the beginning of the next. */
    void advance() {
        int last = Tableau.STAGES - 1;
        System.arraycopy(heat[last], 0, heat[0], 0, nodes);
        System.arraycopy(gain[last], 0, gain[0], 0, stocks);
        System.arraycopy(meterRate[last], 0, meterRate[0], 0, meterRate[0].length);
    }

    /** Tries a step from a state. */
    void attempt(double timeS, double stepS, State from) {
        if (!firstStageKnown) {
            firstStage(timeS, from);
            firstStageKnown = true;
        }
        result.set(from);
        for (int stage = 1; stage < Tableau.STAGES; stage++) {
            stage(stage, timeS + Tableau.C[stage] * stepS, stepS, from);
        }
    }

    /** The explicit stage: rates at the beginning. */
    private void firstStage(double timeS, State from) {
        equations.evaluate(timeS, from);
        equations.settleJunctions(from);
        equations.heat(from, heat[0]);
        for (int i = 0; i < stocks; i++) {
            gain[0][i] = flows.gainPerS(i) - flows.lossPerS(i) * from.stock(i);
        }
        keepMeters(0, from, from);
    }

    private void keepMeters(int stage, State at, State contributed) {
        double[] rate = meterRate[stage];
        Arrays.fill(rate, 0);
        flows.addMeters(at, contributed, parent, 1, rate);
    }

    private void stage(int stage, double timeS, double stepS, State from) {
        double[] weights = Tableau.A[stage];
        for (int i = 0; i < nodes; i++) {
            double sum = 0;
            for (int earlier = 0; earlier < stage; earlier++) {
                sum += weights[earlier] * heat[earlier][i];
            }
            base[i] = capacity[i] * from.nodeC(i) + stepS * sum;
        }
        double implicitS = Tableau.GAMMA * stepS;
        predict(stage, stepS);
        int repeats = 0;
        do {
            linearised.set(result);
            equations.evaluate(timeS, linearised);
            solveStocks(stage, weights, stepS, implicitS, from);
            solveTree(implicitS);
        } while (flows.slopeErrorW(linearised, result) > SLOPE_ERROR_W && ++repeats < MOST_REPEATS);
        double[] rate = heat[stage];
        for (int i = 0; i < nodes; i++) {
            rate[i] = (capacity[i] * result.nodeC(i) - base[i]) / implicitS;
        }
        keepMeters(stage, result, linearised);
    }

    /** Foresees the slow states at a stage, so that rates that depend on them need no repeat: slurry and stocks. */
    private void predict(int stage, double stepS) {
        double aheadS = (Tableau.C[stage] - Tableau.C[stage - 1]) * stepS;
        result.setNodeC(0, result.nodeC(0) + aheadS * heat[stage - 1][0] / capacity[0]);
        for (int i = 0; i < stocks; i++) {
            result.setStock(i, result.stock(i) + aheadS * gain[stage - 1][i]);
        }
    }

    private void solveStocks(int stage, double[] weights, double stepS, double implicitS, State from) {
        for (int i = 0; i < stocks; i++) {
            double known = from.stock(i);
            for (int earlier = 0; earlier < stage; earlier++) {
                known += stepS * weights[earlier] * gain[earlier][i];
            }
            double content = (known + implicitS * flows.gainPerS(i)) / (1 + implicitS * flows.lossPerS(i));
            result.setStock(i, content);
            gain[stage][i] = (content - known) / implicitS;
        }
    }

    /** Solves {@code (C T - base)/(gamma h) = source - conductance T + links} on the tree. */
    private void solveTree(double implicitS) {
        double inverse = 1 / implicitS;
        double[] conductance = equations.conductanceWPerK();
        double[] source = equations.sourceW();
        double[] link = equations.linkWPerK();
        for (int i = 0; i < nodes; i++) {
            diagonal[i] = capacity[i] * inverse + conductance[i];
            right[i] = base[i] * inverse + source[i];
        }
        for (int i = nodes - 1; i >= 1; i--) {
            double own = 1 / (diagonal[i] + link[i]);
            double share = link[i] * own;
            int up = parent[i];
            diagonal[up] += link[i] - link[i] * share;
            right[up] += share * right[i];
            diagonal[i] = own;
        }
        result.setNodeC(0, right[0] / diagonal[0]);
        for (int i = 1; i < nodes; i++) {
            result.setNodeC(i, (right[i] + link[i] * result.nodeC(parent[i])) * diagonal[i]);
        }
    }
}
