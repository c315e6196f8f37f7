package org.warmvat.engine;

import java.util.Arrays;
import org.warmvat.network.Flows;
import org.warmvat.network.Network;
import org.warmvat.network.State;

/**
 * One implicit step of the live nodes, slurry and circuits, the heat of everything slow being known: every stage is a linear system on
 * a small tree. Heats that are not linear are linearised about the stage's own temperatures by repeating the stage until they
 * stand.
 */
final class LiveStep {

    /** A stage is repeated while following the slope of a heat gets more than this wrong, W. */
    private static final double SLOPE_ERROR_W = 0.005;

    private static final int MOST_REPEATS = 8;

    private final Network network;
    private final Flows flows;
    private final SlowHeat slow;
    private final int[] parent;
    private final double[] capacity;
    private final int nodes;
    private final double[] diagonal;
    private final double[] right;
    private final double[][] heat;
    private final double[] base;
    private final double[] error;
    private final State linearised;
    private final State result;
    private final double[] meteredWithin;
    private double[] startMeterPerS;
    private double slowW;
    private double[] endMeterPerS;

    LiveStep(Network network, State like, SlowHeat slow) {
        this.network = network;
        this.slow = slow;
        flows = network.newLiveFlows();
        parent = network.parents();
        capacity = network.capacitiesJPerK();
        nodes = network.liveNodes();
        diagonal = new double[nodes];
        right = new double[nodes];
        heat = new double[Tableau.STAGES][nodes];
        base = new double[nodes];
        error = new double[nodes];
        linearised = like.copy();
        result = like.copy();
        meteredWithin = new double[network.meters().size()];
        startMeterPerS = new double[meteredWithin.length];
        endMeterPerS = new double[meteredWithin.length];
    }

    /** The state at the end of the step just tried. */
    State result() {
        return result;
    }

    /** Adds the integrals of the meters over the step just tried. */
    void addMeters(double stepS, double[] totals) {
        double startS = Tableau.B[0] * stepS;
        double endS = Tableau.B[Tableau.LAST] * stepS;
        for (int i = 0; i < totals.length; i++) {
            totals[i] += meteredWithin[i] + startS * startMeterPerS[i] + endS * endMeterPerS[i];
        }
    }

    /** Rate of a node at the beginning of the step just tried, K/s. */
    double startRateKPerS(int node) {
        return heat[0][node] / capacity[node];
    }

    /** Rate of a node at the end of the step just tried, K/s. */
    double endRateKPerS(int node) {
        return heat[Tableau.LAST][node] / capacity[node];
    }

    /**
     * Error of the step just tried in every node, K: the difference of both orders, carried through the step's own implicit
     * equations so that what decays quickly or only changes places between a circuit and the slurry does not count.
     */
    void findErrors() {
        for (int i = 0; i < nodes; i++) {
            double sum = 0;
            for (int stage = 0; stage <= Tableau.LAST; stage++) {
                sum += Tableau.ERROR[stage] * heat[stage][i];
            }
            right[i] = sum / Tableau.GAMMA;
        }
        for (int i = nodes - 1; i >= 1; i--) {
            right[parent[i]] += flows.linkWPerK(i) * diagonal[i] * right[i];
        }
        error[0] = right[0] / diagonal[0];
        for (int i = 1; i < nodes; i++) {
            error[i] = (right[i] + flows.linkWPerK(i) * error[parent[i]]) * diagonal[i];
        }
    }

    /** What {@link #findErrors} found at a node, K. */
    double errorK(int node) {
        return Math.abs(error[node]);
    }

    /** Makes the end of the step just taken the beginning of the next. */
    void advance() {
        double[] heatBefore = heat[0];
        heat[0] = heat[Tableau.LAST];
        heat[Tableau.LAST] = heatBefore;
        double[] metersBefore = startMeterPerS;
        startMeterPerS = endMeterPerS;
        endMeterPerS = metersBefore;
    }

    /** Takes a state as a beginning after something jumped or switched. */
    void begin(double timeS, State from) {
        gather(timeS, from);
        for (int i = 0; i < nodes; i++) {
            heat[0][i] = flows.sourceW(i) - flows.conductanceWPerK(i) * from.nodeC(i);
        }
        heat[0][0] += slowW;
        for (int i = 1; i < nodes; i++) {
            double intoParent = flows.linkWPerK(i) * (from.nodeC(i) - from.nodeC(parent[i]));
            heat[0][i] -= intoParent;
            heat[0][parent[i]] += intoParent;
        }
        Arrays.fill(startMeterPerS, 0);
        flows.addMeters(from, from, parent, 1, startMeterPerS);
    }

    /** Tries a step from the state last begun with or advanced to. */
    void attempt(double timeS, double stepS, State from) {
        result.setLive(from, nodes);
        Arrays.fill(meteredWithin, 0);
        for (int stage = 1; stage < Tableau.STAGES; stage++) {
            stage(stage, timeS + Tableau.C[stage] * stepS, stepS, from);
        }
    }

    private void gather(double timeS, State at) {
        network.contribute(timeS, at, flows);
        slowW = slow.wattsAt(timeS);
    }

    private void meter(int stage, double stepS) {
        if (stage == Tableau.LAST) {
            Arrays.fill(endMeterPerS, 0);
            flows.addMeters(result, linearised, parent, 1, endMeterPerS);
        } else if (Tableau.B[stage] != 0) {
            flows.addMeters(result, linearised, parent, Tableau.B[stage] * stepS, meteredWithin);
        }
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
        predict(stage, implicitS);
        int repeats = 0;
        do {
            linearised.setLive(result, nodes);
            gather(timeS, linearised);
            solveTree(implicitS);
        } while (flows.slopeErrorW(linearised, result) > SLOPE_ERROR_W && ++repeats < MOST_REPEATS);
        double[] rate = heat[stage];
        for (int i = 0; i < nodes; i++) {
            rate[i] = (capacity[i] * result.nodeC(i) - base[i]) / implicitS;
        }
        meter(stage, stepS);
    }

    /** Foresees a stage by the rates of the stage before, so that what is not linear needs fewer repeats. */
    private void predict(int stage, double implicitS) {
        for (int i = 0; i < nodes; i++) {
            result.setNodeC(i, (base[i] + implicitS * heat[stage - 1][i]) / capacity[i]);
        }
    }

    /** Solves {@code (C T - base)/(gamma h) = source - conductance T + links} on the tree. */
    private void solveTree(double implicitS) {
        double inverse = 1 / implicitS;
        for (int i = 0; i < nodes; i++) {
            diagonal[i] = capacity[i] * inverse + flows.conductanceWPerK(i);
            right[i] = base[i] * inverse + flows.sourceW(i);
        }
        right[0] += slowW;
        for (int i = nodes - 1; i >= 1; i--) {
            double link = flows.linkWPerK(i);
            double own = 1 / (diagonal[i] + link);
            double share = link * own;
            int up = parent[i];
            diagonal[up] += link - link * share;
            right[up] += share * right[i];
            diagonal[i] = own;
        }
        result.setNodeC(0, right[0] / diagonal[0]);
        for (int i = 1; i < nodes; i++) {
            result.setNodeC(i, (right[i] + flows.linkWPerK(i) * result.nodeC(parent[i])) * diagonal[i]);
        }
    }
}
