package org.warmvat.engine;

import org.warmvat.network.Flows;
import org.warmvat.network.Network;
import org.warmvat.network.State;

/**
 * One implicit step of everything slow, the slurry's temperature being known: the steady-starting nodes, which are the
 * envelope's layers, and the stocks. Every stage is one elimination of the tree from its leaves. What comes out is the heat that
 * all of it and everything else without circuits gives to the slurry.
 */
final class SlowStep {

    /** What does not follow the slurry linearly is gathered again when the slurry has moved by more than this, K. */
    private static final double GATHERED_WITHIN_K = 1e-4;

    private final Network network;
    private final int[] parent;
    private final double[] capacity;
    private final int first;
    private final int nodes;
    private final int stocks;
    private final Stage[] stages = new Stage[Tableau.STAGES];
    private final double[] diagonal;
    private final double[] share;
    private final double[] right;
    private final double[] base;

    /** What is known of a stage: what flows, and after solving its temperatures, contents and heats. */
    private final class Stage {
        private final Flows flows = network.newSlowFlows();
        private final double[] heat = new double[nodes];
        private final double[] gain = new double[stocks];
        private final State at;
        private final State gatheredAt;
        private double gatheredS = Double.NaN;
        private double slurryW;

        Stage(State like) {
            at = like.copy();
            gatheredAt = like.copy();
        }

        void gather(double timeS) {
            if (timeS == gatheredS && Math.abs(at.nodeC(0) - gatheredAt.nodeC(0)) < GATHERED_WITHIN_K) {
                return;
            }
            network.surround(timeS, at, flows);
            gatheredAt.setNodeC(0, at.nodeC(0));
            gatheredS = timeS;
        }

        void tellSlurry() {
            double sum = flows.sourceW(0) - flows.conductanceWPerK(0) * at.nodeC(0);
            for (int i = first; i < nodes; i++) {
                if (parent[i] == 0) {
                    sum += flows.linkWPerK(i) * (at.nodeC(i) - at.nodeC(0));
                }
            }
            slurryW = sum;
        }
    }

    SlowStep(Network network, State like) {
        this.network = network;
        parent = network.parents();
        capacity = network.capacitiesJPerK();
        first = network.liveNodes();
        nodes = parent.length;
        stocks = network.stocks().size();
        for (int i = 0; i < stages.length; i++) {
            stages[i] = new Stage(like);
        }
        diagonal = new double[nodes];
        share = new double[nodes];
        right = new double[nodes];
        base = new double[nodes];
    }

    /** Number of stages within a step at which the slurry's temperature must be known, the beginning left out. */
    static int stagesWithin() {
        return Tableau.LAST;
    }

    /** When a stage stands within a step, as a share of it. */
    static double shareOf(int stage) {
        return Tableau.C[stage];
    }

    /** Takes a state as a beginning: something jumped. */
    void begin(double timeS, State from) {
        Stage start = stages[0];
        start.at.set(from);
        start.gatheredS = Double.NaN;
        start.gather(timeS);
        Junctions.settle(network, start.flows, start.at);
        for (int i = first; i < nodes; i++) {
            start.heat[i] = start.flows.sourceW(i) - start.flows.conductanceWPerK(i) * start.at.nodeC(i);
        }
        for (int i = first; i < nodes; i++) {
            double intoParent = start.flows.linkWPerK(i) * (start.at.nodeC(i) - start.at.nodeC(parent[i]));
            start.heat[i] -= intoParent;
            if (parent[i] >= first) {
                start.heat[parent[i]] += intoParent;
            }
        }
        for (int i = 0; i < stocks; i++) {
            start.gain[i] = start.flows.gainPerS(i) - start.flows.lossPerS(i) * start.at.stock(i);
        }
        start.tellSlurry();
        for (int i = 1; i <= Tableau.LAST; i++) {
            stages[i].gatheredS = Double.NaN;
        }
    }

    /**
     * Tries a step.
     *
     * @param timeS its beginning
     * @param stepS its length
     * @param slurryC slurry temperatures at the stages after the first, °C
     */
    void attempt(double timeS, double stepS, double[] slurryC) {
        for (int i = 1; i <= Tableau.LAST; i++) {
            stages[i].at.setNodeC(0, slurryC[i - 1]);
            foreseeStocks(i, stepS);
            stages[i].gather(timeS + Tableau.C[i] * stepS);
            solveStocks(i, stepS);
            solve(i, stepS);
            stages[i].tellSlurry();
        }
    }

    private void foreseeStocks(int index, double stepS) {
        for (int i = 0; i < stocks; i++) {
            stages[index].at.setStock(
                    i, knownStock(index, i, stepS) + Tableau.GAMMA * stepS * stages[index - 1].gain[i]);
        }
    }

    private double knownStock(int index, int stock, double stepS) {
        double sum = 0;
        for (int earlier = 0; earlier < index; earlier++) {
            sum += Tableau.A[index][earlier] * stages[earlier].gain[stock];
        }
        return stages[0].at.stock(stock) + stepS * sum;
    }

    private void solveStocks(int index, double stepS) {
        Stage stage = stages[index];
        double implicitS = Tableau.GAMMA * stepS;
        for (int i = 0; i < stocks; i++) {
            double known = knownStock(index, i, stepS);
            double content = (known + implicitS * stage.flows.gainPerS(i)) / (1 + implicitS * stage.flows.lossPerS(i));
            stage.at.setStock(i, content);
            stage.gain[i] = (content - known) / implicitS;
        }
    }

    private void solve(int index, double stepS) {
        Stage stage = stages[index];
        double[] weights = Tableau.A[index];
        State from = stages[0].at;
        double inverse = 1 / (Tableau.GAMMA * stepS);
        for (int i = first; i < nodes; i++) {
            double sum = 0;
            for (int earlier = 0; earlier < index; earlier++) {
                sum += weights[earlier] * stages[earlier].heat[i];
            }
            base[i] = capacity[i] * from.nodeC(i) + stepS * sum;
            diagonal[i] = capacity[i] * inverse + stage.flows.conductanceWPerK(i);
            right[i] = base[i] * inverse + stage.flows.sourceW(i);
        }
        diagonal[0] = stage.flows.conductanceWPerK(0);
        right[0] = 0;
        for (int i = nodes - 1; i >= first; i--) {
            double link = stage.flows.linkWPerK(i);
            double own = 1 / (diagonal[i] + link);
            double passed = link * own;
            diagonal[parent[i]] += link - link * passed;
            right[parent[i]] += passed * right[i];
            diagonal[i] = own;
            share[i] = passed;
        }
        for (int i = first; i < nodes; i++) {
            double celsius = right[i] * diagonal[i] + share[i] * stage.at.nodeC(parent[i]);
            stage.at.setNodeC(i, celsius);
            stage.heat[i] = (capacity[i] * celsius - base[i]) * inverse;
        }
    }

    /** Heat into the slurry at the beginning, W. */
    double startW() {
        return stages[0].slurryW;
    }

    /** Heat into the slurry at the end of the step just tried, W. */
    double endW() {
        return stages[Tableau.LAST].slurryW;
    }

    /** Mean heat into the slurry over the step just tried, W. */
    double meanW() {
        double sum = 0;
        for (int i = 0; i <= Tableau.LAST; i++) {
            sum += Tableau.B[i] * stages[i].slurryW;
        }
        return sum;
    }

    /** By how much the slurry's temperature, moved by 1 K over the step just tried, is pulled back by everything slow, K. */
    double pullKPerK(double stepS) {
        return Tableau.GAMMA * stepS * diagonal[0] / capacity[0];
    }

    /**
     * Error of the step just tried in the slurry's temperature, K: the difference of both orders, carried through the step's own
     * implicit equations so that what decays quickly does not count.
     */
    double errorK(double stepS) {
        double rootRight = 0;
        for (int j = 0; j <= Tableau.LAST; j++) {
            rootRight += Tableau.ERROR[j] / Tableau.GAMMA * stages[j].slurryW;
        }
        for (int i = first; i < nodes; i++) {
            double sum = 0;
            for (int j = 0; j <= Tableau.LAST; j++) {
                sum += Tableau.ERROR[j] * stages[j].heat[i];
            }
            right[i] = sum / Tableau.GAMMA;
        }
        right[0] = rootRight;
        for (int i = nodes - 1; i >= first; i--) {
            right[parent[i]] += share[i] * right[i];
        }
        return Math.abs(right[0]) / (capacity[0] / (Tableau.GAMMA * stepS) + diagonal[0]);
    }

    /** Adds the integrals of the meters over the step just tried. */
    void addMeters(double stepS, double[] totals) {
        for (int i = 0; i <= Tableau.LAST; i++) {
            Stage stage = stages[i];
            stage.flows.addMeters(stage.at, stage.gatheredAt, parent, Tableau.B[i] * stepS, totals);
        }
    }

    /** Makes the end of the step just tried the beginning of the next, and tells a state of it. */
    void advance(State state) {
        Stage end = stages[Tableau.LAST];
        stages[Tableau.LAST] = stages[0];
        stages[0] = end;
        for (int i = first; i < nodes; i++) {
            state.setNodeC(i, end.at.nodeC(i));
        }
        for (int i = 0; i < stocks; i++) {
            state.setStock(i, end.at.stock(i));
        }
    }
}
