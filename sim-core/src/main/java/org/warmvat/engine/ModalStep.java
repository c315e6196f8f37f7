package org.warmvat.engine;

import java.util.Arrays;
import org.warmvat.network.Network;
import org.warmvat.network.State;

/**
 * One step of the whole network by its modes. What the modes leave out, heat into a node beyond its links and its held
 * conductance, follows a {@link Parabola}, which is found together with the temperatures: heats are taken at the parabolas
 * fitted to the temperatures' courses, so that the heat of what decays within minutes counts too.
 */
final class ModalStep {

    /** Live parts are asked again when the slurry is found this far from where they were asked, K. */
    private static final double ASKED_WITHIN_K = 2e-3;

    /** Live parts are asked again when a stock's content is found to differ by this share. */
    private static final double STOCK_SHARE = 2e-4;

    /** Heats found together may still move a live node by this, K. */
    private static final double SETTLED_WITHIN_K = 2e-6;

    /** A correction that moves a live node by less than this is not worth carrying out, K. */
    private static final double FORGOTTEN_K = 1e-9;

    /** How much less it matters when a layer next to the weather moves, since little of that reaches the slurry. */
    private static final double LAYER_MATTERS = 0.1;

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
    private final State between;
    private final double[] contentBetween;
    private final double[][] truth;
    private final double[] endC;
    private final double[] solved = new double[INSTANTS];
    private final double[] margins = new double[INSTANTS];
    private final StepError stepError;
    private Moment start;
    private Modes modes;
    private Decays decays;
    private OwnResponses responses;
    private double stepS;

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
        between = like.copy();
        for (int m = 0; m < INSTANTS; m++) {
            instants[m] = new Moment(network, like, fed);
        }
        contentBetween = new double[start.content.length];
        truth = new double[INSTANTS][start.content.length];
        endC = new double[fed.length];
        stepError = new StepError(network, fed, instants, endC);
    }

    /** Asks the parts at a state at which a step is to begin; before {@link #begin}. */
    Moment ask(double timeS, State from) {
        start.asked.set(from);
        start.state.set(from);
        start.look(timeS);
        start.ask(timeS);
        for (int node = liveNodes, i = liveNodes; node < network.parents().length; node++) {
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
            start.turnTo(modes);
            for (Moment instant : instants) {
                instant.turnTo(modes);
            }
        }
        start.noteLayers();
        start.noteLive();
        start.settle();
        for (int i = 0; i < network.switches().size(); i++) {
            between.setOn(i, start.state.isOn(i));
        }
        for (Moment instant : instants) {
            instant.takeSwitches(start.state);
        }
    }

    /** Tries a step from the beginning; returns its error over what is allowed, infinite when nothing was found that agrees. */
    double attempt(double timeS, double lengthS) {
        stepS = lengthS;
        decays = modes.over(lengthS);
        responses = modes.responses(decays, fed);
        for (int m = 0; m < INSTANTS; m++) {
            instants[m].look(timeS + Parabola.SHARE[m] * stepS);
            instants[m].noteLayers();
        }
        predict();
        for (int round = 0; round < MOST_ROUNDS; round++) {
            for (int m = 0; m < INSTANTS; m++) {
                instants[m].aim();
                instants[m].ask(timeS + Parabola.SHARE[m] * stepS);
                instants[m].noteLive();
            }
            boolean settled = correct();
            settleStocks();
            if (settled && askedNearEnough()) {
                findTruth(timeS);
                double marginK = -Math.max(margins[0], Math.max(margins[1], margins[2]));
                return stepError.of(start, modes, responses, stepS, marginK);
            }
        }
        return Double.POSITIVE_INFINITY;
    }

    /** Contents at the instants if the heats stay as they are at the beginning. */
    private void predict() {
        double[] from = start.content;
        double[] push = start.push;
        for (int m = 0; m < INSTANTS; m++) {
            instants[m].follow(start);
            double[] content = instants[m].content;
            double[] left = decays.fittedLeft[m];
            double[] by = decays.fittedByLasting[m];
            for (int k = 0; k < content.length; k++) {
                content[k] = left[k] * from[k] + by[k] * push[k];
            }
        }
        read();
        for (int stock = 0; stock < network.stocks().size(); stock++) {
            double loss = start.live.lossPerS(stock);
            double rate = start.stockRate(stock, start.state.stock(stock));
            for (int m = 0; m < INSTANTS; m++) {
                double aheadS = Parabola.SHARE[m] * stepS;
                instants[m].state.setStock(stock, start.state.stock(stock) + aheadS * rate * (1 - 0.5 * aheadS * loss));
            }
        }
    }

    /** Finds heats that agree with the temperatures they make; returns whether they do. */
    private boolean correct() {
        double beforeK = 0;
        for (int round = 0; round < MOST_CORRECTIONS; round++) {
            double movedK = correctOnce();
            if (movedK <= FORGOTTEN_K) {
                return true;
            }
            respond();
            read();
            // each correction moves less than the one before, by about the same share
            if (movedK * Math.min(1, movedK / beforeK) < SETTLED_WITHIN_K) {
                return true;
            }
            beforeK = movedK;
        }
        return false;
    }

    /** Temperatures of the fed nodes from the contents at the instants. */
    private void read() {
        for (int i = 0; i < fed.length; i++) {
            Sums.products(modes.shape(fed[i]), instants[0].content, instants[1].content, instants[2].content, solved);
            double atOnce = modes.masslessKPerW(fed[i]);
            for (int m = 0; m < INSTANTS; m++) {
                instants[m].celsius[i] = solved[m] + atOnce * instants[m].heatW[i];
            }
        }
    }

    /** Corrects every heat as if no other node's moved; returns by how much this moves temperatures, as far as it matters, K. */
    private double correctOnce() {
        double mostK = 0;
        for (Moment instant : instants) {
            Arrays.fill(instant.change, 0);
        }
        for (int i = 0; i < fed.length; i++) {
            double matters = i < liveNodes ? 1 : LAYER_MATTERS;
            double movedK = responses.solve(i, instants, FORGOTTEN_K / matters, solved);
            // what is not a number must not be forgotten
            if (!(movedK <= FORGOTTEN_K / matters)) {
                mostK = Math.max(mostK, matters * movedK);
                for (int m = 0; m < INSTANTS; m++) {
                    instants[m].heatW[i] += solved[m];
                }
                Sums.add(solved, modes.shape(fed[i]), instants[0].change, instants[1].change, instants[2].change);
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
            double[] by0 = decays.fittedBy[m][0];
            double[] by1 = decays.fittedBy[m][1];
            double[] by2 = decays.fittedBy[m][2];
            for (int k = 0; k < content.length; k++) {
                content[k] += by0[k] * change0[k] + by1[k] * change1[k] + by2[k] * change2[k];
            }
            Sums.add(1, instants[m].change, instants[m].push);
        }
    }

    /** Whether the live parts were asked near enough to what was found; publishes that. */
    private boolean askedNearEnough() {
        for (Moment instant : instants) {
            instant.publish();
            if (Math.abs(instant.celsius[0] - instant.asked.nodeC(0)) > ASKED_WITHIN_K) {
                return false;
            }
            for (int stock = 0; stock < network.stocks().size(); stock++) {
                double found = instant.state.stock(stock);
                if (Math.abs(found - instant.asked.stock(stock)) > STOCK_SHARE * Math.abs(found)) {
                    return false;
                }
            }
            double errorW = instant.live.slopeErrorW(instant.asked, instant.fitted);
            for (int i = 1; errorW > 0 && i < liveNodes; i++) {
                if (errorW * responses.lastingKPerW(i) > StepError.CIRCUIT_TOLERANCE_K) {
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

    /** The live nodes as they truly are at the instants, with the switches' margins there, and all fed nodes at the end. */
    private void findTruth(double timeS) {
        double[] from = start.content;
        double[] push0 = instants[0].push;
        double[] push1 = instants[1].push;
        double[] push2 = instants[2].push;
        for (int m = 0; m < INSTANTS; m++) {
            double[] content = truth[m];
            double[] left = decays.left[m];
            double[] by0 = decays.by[m][0];
            double[] by1 = decays.by[m][1];
            double[] by2 = decays.by[m][2];
            for (int k = 0; k < content.length; k++) {
                content[k] = left[k] * from[k] + by0[k] * push0[k] + by1[k] * push1[k] + by2[k] * push2[k];
            }
        }
        for (int node = 0; node < liveNodes; node++) {
            Sums.products(modes.shape(node), truth[0], truth[1], truth[2], solved);
            for (int m = 0; m < INSTANTS; m++) {
                instants[m].state.setNodeC(node, solved[m]);
            }
            endC[node] = solved[END];
        }
        for (int m = 0; m < INSTANTS; m++) {
            margins[m] = switchboard.furthest(timeS + Parabola.SHARE[m] * stepS, instants[m].state);
        }
        for (int i = liveNodes; i < fed.length; i++) {
            endC[i] = instants[END].truthC(i, truth[END]);
        }
    }

    /** State of the live nodes at a time after the beginning of the step last tried; reused by the next call. */
    State after(double sinceS) {
        double share = sinceS / stepS;
        Decays part = modes.overPart(sinceS);
        double[] content = contentBetween;
        double[] left = part.left[END];
        for (int k = 0; k < content.length; k++) {
            content[k] = left[k] * start.content[k];
        }
        double[] push0 = instants[0].push;
        double[] push1 = instants[1].push;
        double[] push2 = instants[2].push;
        for (int j = 0; j < INSTANTS; j++) {
            double at = share * Parabola.SHARE[j];
            double w0 = Parabola.at(0, at);
            double w1 = Parabola.at(1, at);
            double w2 = Parabola.at(2, at);
            double[] by = part.by[END][j];
            for (int k = 0; k < content.length; k++) {
                content[k] += by[k] * (w0 * push0[k] + w1 * push1[k] + w2 * push2[k]);
            }
        }
        for (int node = 0; node < liveNodes; node++) {
            between.setNodeC(node, Sums.product(modes.shape(node), content));
        }
        return between;
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

    /** Adds what the meters count over the step last tried: fitted parabolas have the integrals of what they are fitted to. */
    void addMeters(double[] totals) {
        for (int m = 0; m < INSTANTS; m++) {
            instants[m].addMeters(stepS * Parabola.WEIGHT[m], totals);
        }
    }

    /** Goes on from the end of the step last tried. */
    void advance() {
        Moment end = instants[END];
        instants[END] = start;
        start = end;
        start.goOn(truth[END], endC);
        instants[END].takeSwitches(start.state);
    }

    /** Temperatures of all nodes where the next step begins. */
    void export(State into) {
        into.set(start.state);
        for (int node = liveNodes; node < network.parents().length; node++) {
            into.setNodeC(node, Sums.product(modes.shape(node), start.content));
        }
        for (int i = 0; i < fed.length; i++) {
            into.setNodeC(fed[i], start.celsius[i]);
        }
    }
}
