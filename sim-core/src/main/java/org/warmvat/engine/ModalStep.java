package org.warmvat.engine;

import java.util.Arrays;
import org.warmvat.network.Network;
import org.warmvat.network.State;

/**
 * One step of the whole network by its modes. What the modes leave out, heat into a node beyond its links and its held
 * conductance, follows a {@link Parabola} through its values at three instants, which are found together with the temperatures
 * there.
 */
final class ModalStep {

    /** Error allowed in a step at the slurry, K. */
    private static final double SLURRY_TOLERANCE_K = 1e-6;

    /** Error allowed in a step at the slurry by wrong heat next to the weather, K. */
    private static final double LAYER_TOLERANCE_K = 2e-6;

    /** Error allowed in a step at a circuit, K. */
    private static final double CIRCUIT_TOLERANCE_K = 3e-5;

    /** Error allowed in a step at a circuit at most, K. */
    private static final double MOST_CIRCUIT_TOLERANCE_K = 2e-3;

    /** A circuit may err by this share of what is left to the nearest switching. */
    private static final double SHARE_OF_MARGIN = 2e-3;

    /** Parts are asked again when the slurry is found this far from where they were asked, K. */
    private static final double ASKED_WITHIN_K = 3e-4;

    /** Parts are asked again when a stock's content is found to differ by this share. */
    private static final double STOCK_SHARE = 2e-5;

    /** Heats found together may still move a live node by this, K. */
    private static final double SETTLED_WITHIN_K = 1e-6;

    /** A correction that moves a live node by less than this is not worth carrying out, K. */
    private static final double FORGOTTEN_K = 1e-8;

    /** How much less it matters when a layer next to the weather moves, since little of that reaches the slurry. */
    private static final double LAYER_MATTERS = 0.1;

    /**
     * How much of the difference at the beginning, between a heat and its parabola, tells of the error: what is over within
     * the first instant lasts less than a twentieth of the step; what is smooth cancels nearly in the integral.
     */
    private static final double SHARE_OF_DIFFERENCE = 0.05;

    private static final int INSTANTS = Parabola.INSTANTS;
    private static final int END = Parabola.END;
    private static final int MOST_ROUNDS = 6;
    private static final int MOST_CORRECTIONS = 12;
    private static final double[][] STOCK_WEIGHT = {
        Parabola.weights(Parabola.SHARE[0]), Parabola.weights(Parabola.SHARE[1]), Parabola.WEIGHT
    };

    private final Network network;
    private final Switchboard switchboard;
    private final int liveNodes;
    private final int[] fed;
    private final Moment[] instants = new Moment[INSTANTS];
    private final Moment between;
    private final double[] integralS;
    private final double[] defectKs;
    private final double[] solved = new double[INSTANTS];
    private final double[] margins = new double[INSTANTS];
    private Moment start;
    private Modes modes;
    private Decays decays;
    private OwnResponses responses;
    private double stepS;
    private double slopeOverS;

    /**
     * A step for a network.
     *
     * @param network the network
     * @param switchboard its switches
     * @param like any state of it
     * @param fed nodes that receive heat from elsewhere than their neighbours, the live ones first
     */
    ModalStep(Network network, Switchboard switchboard, State like, int[] fed) {
        this.network = network;
        this.switchboard = switchboard;
        this.fed = fed;
        liveNodes = network.liveNodes();
        start = new Moment(network, like, fed);
        between = new Moment(network, like, fed);
        for (int m = 0; m < INSTANTS; m++) {
            instants[m] = new Moment(network, like, fed);
        }
        integralS = new double[start.content.length];
        defectKs = new double[network.parents().length];
    }

    /** Asks the parts at a state at which a step is to begin; before {@link #begin}. */
    Moment ask(double timeS, State from) {
        start.asked.set(from);
        start.state.set(from);
        start.ask(timeS);
        for (int node = liveNodes, i = liveNodes; node < defectKs.length; node++) {
            if (i < fed.length && fed[i] == node) {
                i++;
            } else if (start.slow.feeds(node)) {
                throw new EngineFailure("node " + node + " receives heat from elsewhere than its neighbours, which"
                        + " it did not at the beginning of the run");
            }
        }
        return start;
    }

    /** Begins at the state last asked, in modes given; their contents are gathered from it unless they are the present ones. */
    void begin(Modes with) {
        if (modes != with) {
            modes = with;
            modes.gather(start.state, start.content);
            slopeOverS = 0;
            start.turnTo(modes);
            for (Moment instant : instants) {
                instant.turnTo(modes);
            }
        }
        start.feed();
        between.takeSwitches(start.state);
        for (Moment instant : instants) {
            instant.takeSwitches(start.state);
        }
    }

    /** Tries a step from the beginning; returns its error over what is allowed, infinite when nothing was found that agrees. */
    double attempt(double timeS, double lengthS) {
        stepS = lengthS;
        decays = modes.over(lengthS);
        responses = modes.responses(decays, fed);
        predict();
        for (int round = 0; round < MOST_ROUNDS; round++) {
            for (int m = 0; m < INSTANTS; m++) {
                instants[m].aim();
                instants[m].ask(timeS + Parabola.SHARE[m] * stepS);
            }
            boolean settled = correct();
            settleStocks();
            if (settled && askedNearEnough()) {
                publish(timeS);
                return error();
            }
        }
        return Double.POSITIVE_INFINITY;
    }

    private void publish(double timeS) {
        for (int m = 0; m < INSTANTS; m++) {
            instants[m].publish();
            margins[m] = switchboard.furthest(timeS + Parabola.SHARE[m] * stepS, instants[m].state);
        }
    }

    /** Contents at the instants if the heats go on as they went in the step before. */
    private void predict() {
        double followed = stepS <= slopeOverS ? 1 : slopeOverS / stepS;
        for (int m = 0; m < INSTANTS; m++) {
            instants[m].follow(start, followed * Parabola.SHARE[m] * stepS);
        }
        double[] push0 = instants[0].push;
        double[] push1 = instants[1].push;
        double[] push2 = instants[2].push;
        for (int m = 0; m < INSTANTS; m++) {
            double[] content = instants[m].content;
            double[] from = start.content;
            double[] left = decays.left[m];
            double[] by0 = decays.by[m][0];
            double[] by1 = decays.by[m][1];
            double[] by2 = decays.by[m][2];
            for (int k = 0; k < content.length; k++) {
                content[k] = left[k] * from[k] + by0[k] * push0[k] + by1[k] * push1[k] + by2[k] * push2[k];
            }
            instants[m].read();
        }
        for (int stock = 0; stock < network.stocks().size(); stock++) {
            double loss = start.slow.lossPerS(stock);
            double rate = start.stockRate(stock, start.state.stock(stock));
            for (int m = 0; m < INSTANTS; m++) {
                double aheadS = Parabola.SHARE[m] * stepS;
                instants[m].state.setStock(stock, start.state.stock(stock) + aheadS * rate * (1 - 0.5 * aheadS * loss));
            }
        }
    }

    /** Finds heats that agree with the temperatures they make; returns whether they do. */
    private boolean correct() {
        for (int round = 0; round < MOST_CORRECTIONS; round++) {
            double movedK = correctOnce();
            if (movedK > FORGOTTEN_K) {
                respond();
            }
            if (movedK < SETTLED_WITHIN_K) {
                return true;
            }
            for (Moment instant : instants) {
                instant.read();
            }
        }
        return false;
    }

    /** Corrects every heat as if no other node's moved; returns by how much this moves temperatures, as far as it matters, K. */
    private double correctOnce() {
        double mostK = 0;
        for (Moment instant : instants) {
            Arrays.fill(instant.change, 0);
        }
        for (int i = 0; i < fed.length; i++) {
            double movedK = responses.solve(i, instants, solved);
            if (fed[i] >= liveNodes) {
                movedK *= LAYER_MATTERS;
            }
            // what is not a number must not be forgotten
            if (!(movedK <= FORGOTTEN_K)) {
                mostK = Math.max(mostK, movedK);
                for (int m = 0; m < INSTANTS; m++) {
                    instants[m].heatW[i] += solved[m];
                    Sums.add(solved[m], modes.shape(fed[i]), instants[m].change);
                }
            }
        }
        return mostK;
    }

    /** Lets the contents follow the changes of the push. */
    private void respond() {
        double[] change0 = instants[0].change;
        double[] change1 = instants[1].change;
        double[] change2 = instants[2].change;
        for (int m = 0; m < INSTANTS; m++) {
            double[] content = instants[m].content;
            double[] by0 = decays.by[m][0];
            double[] by1 = decays.by[m][1];
            double[] by2 = decays.by[m][2];
            for (int k = 0; k < content.length; k++) {
                content[k] += by0[k] * change0[k] + by1[k] * change1[k] + by2[k] * change2[k];
            }
            Sums.add(1, instants[m].change, instants[m].push);
        }
    }

    /** Whether the parts were asked near enough to what was found. */
    private boolean askedNearEnough() {
        for (int m = 0; m < INSTANTS; m++) {
            Moment instant = instants[m];
            if (Math.abs(instant.celsius[0] - instant.asked.nodeC(0)) > ASKED_WITHIN_K) {
                return false;
            }
            for (int stock = 0; stock < network.stocks().size(); stock++) {
                double found = instant.state.stock(stock);
                if (Math.abs(found - instant.asked.stock(stock)) > STOCK_SHARE * Math.abs(found)) {
                    return false;
                }
            }
            for (int i = 1; i < liveNodes; i++) {
                instant.state.setNodeC(i, instant.celsius[i]);
            }
            double errorW = instant.live.slopeErrorW(instant.asked, instant.state);
            for (int i = 1; errorW > 0 && i < liveNodes; i++) {
                if (errorW * responses.lastingKPerW(i) > CIRCUIT_TOLERANCE_K) {
                    return false;
                }
            }
        }
        return true;
    }

    /** Contents of the stocks, their rates following the parabola. */
    private void settleStocks() {
        for (int stock = 0; stock < network.stocks().size(); stock++) {
            double from = start.state.stock(stock);
            for (int round = 0; round < 3; round++) {
                double rate0 = instants[0].stockRate(stock, instants[0].state.stock(stock));
                double rate1 = instants[1].stockRate(stock, instants[1].state.stock(stock));
                double rate2 = instants[2].stockRate(stock, instants[2].state.stock(stock));
                for (int m = 0; m < INSTANTS; m++) {
                    double[] weight = STOCK_WEIGHT[m];
                    instants[m].state.setStock(
                            stock, from + stepS * (weight[0] * rate0 + weight[1] * rate1 + weight[2] * rate2));
                }
            }
        }
    }

    /** Error of letting the heats follow parabolas, over what is allowed. */
    private double error() {
        double margin = Math.max(margins[0], Math.max(margins[1], margins[2]));
        double circuitToleranceK =
                Math.max(CIRCUIT_TOLERANCE_K, Math.min(MOST_CIRCUIT_TOLERANCE_K, SHARE_OF_MARGIN * -margin));
        double w0 = Parabola.at(0, 0);
        double w1 = Parabola.at(1, 0);
        double w2 = Parabola.at(2, 0);
        double slurryKPerW = responses.lastingKPerW(0);
        double error = 0;
        for (int i = 0; i < fed.length; i++) {
            double parabolaW = w0 * instants[0].heatW[i] + w1 * instants[1].heatW[i] + w2 * instants[2].heatW[i];
            double wrongW = SHARE_OF_DIFFERENCE * Math.abs(start.heatW[i] - parabolaW);
            double toleranceK = fed[i] < liveNodes ? SLURRY_TOLERANCE_K : LAYER_TOLERANCE_K;
            error = Math.max(error, wrongW * modes.transfer(fed[i]) * slurryKPerW / toleranceK);
            if (i > 0 && fed[i] < liveNodes) {
                error = Math.max(error, wrongW * responses.forgettingKPerW(i) / circuitToleranceK);
            }
        }
        return error;
    }

    /** State of the live nodes at a time after the beginning of the step last tried; reused by the next call. */
    State after(double sinceS) {
        double share = sinceS / stepS;
        Decays part = modes.overPart(sinceS);
        double[] content = between.content;
        for (int k = 0; k < content.length; k++) {
            content[k] = part.left[END][k] * start.content[k];
        }
        for (int j = 0; j < INSTANTS; j++) {
            double at = share * Parabola.SHARE[j];
            double w0 = Parabola.at(0, at);
            double w1 = Parabola.at(1, at);
            double w2 = Parabola.at(2, at);
            double[] by = part.by[END][j];
            for (int k = 0; k < content.length; k++) {
                content[k] += by[k] * (w0 * instants[0].push[k] + w1 * instants[1].push[k] + w2 * instants[2].push[k]);
            }
        }
        for (int node = 0; node < liveNodes; node++) {
            between.state.setNodeC(node, Sums.product(modes.shape(node), content));
        }
        return between.state;
    }

    /** State at the beginning of the step: slurry, circuits, stocks and switches. */
    State start() {
        return start.state;
    }

    /** The same at an instant of the step last tried. */
    State at(int instant) {
        return instants[instant].state;
    }

    /** Largest margin of any switch at an instant of the step last tried. */
    double margin(int instant) {
        return margins[instant];
    }

    /** Adds what the meters count over the step last tried. */
    void addMeters(double[] totals) {
        double[] leftS = decays.leftS;
        for (int k = 0; k < integralS.length; k++) {
            integralS[k] = leftS[k] * start.content[k];
        }
        for (int m = 0; m < INSTANTS; m++) {
            double weightS = stepS * Parabola.WEIGHT[m];
            instants[m].addMeters(weightS, totals);
            double[] by = decays.sumBy[m];
            double[] push = instants[m].push;
            double[] content = instants[m].content;
            for (int k = 0; k < integralS.length; k++) {
                integralS[k] += by[k] * push[k] - weightS * content[k];
            }
        }
        for (int node : fed) {
            defectKs[node] = Sums.product(modes.shape(node), integralS);
        }
        instants[END].addDefects(defectKs, totals);
    }

    /** Goes on from the end of the step last tried. */
    void advance() {
        Moment end = instants[END];
        end.slopeFrom(instants[END - 1], stepS * (1 - Parabola.SHARE[END - 1]));
        slopeOverS = stepS;
        instants[END] = start;
        start = end;
        instants[END].takeSwitches(start.state);
    }

    /** Temperatures of all nodes where the next step begins. */
    void export(State into) {
        into.set(start.state);
        for (int node = liveNodes; node < defectKs.length; node++) {
            into.setNodeC(node, Sums.product(modes.shape(node), start.content));
        }
        for (int i = 0; i < fed.length; i++) {
            into.setNodeC(fed[i], start.celsius[i]);
        }
    }
}
