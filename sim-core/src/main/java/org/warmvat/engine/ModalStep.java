package org.warmvat.engine;

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

    /** An end that is to move by no more than this share of the step does so without asking again. */
    static final double NEARBY = 0.005;

    private static final int INSTANTS = Parabola.INSTANTS;
    private static final int END = Parabola.END;
    private static final int MOST_ROUNDS = 6;
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
    private final double[] triedEndC;
    private final double[] solved = new double[INSTANTS];
    private final double[] margins = new double[INSTANTS];
    private final Corrections corrections;
    private final StepError stepError;
    private Moment start;
    private Modes modes;
    private Decays decays;
    private OwnResponses responses;
    private double triedS;
    private double lengthS;

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
        triedEndC = new double[fed.length];
        corrections = new Corrections(fed, instants);
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
    double attempt(double timeS, double stepS) {
        triedS = stepS;
        lengthS = stepS;
        decays = modes.over(stepS);
        responses = modes.responses(decays, fed);
        for (int m = 0; m < INSTANTS; m++) {
            instants[m].look(timeS + Parabola.SHARE[m] * stepS);
            instants[m].noteLayers();
        }
        corrections.foresee(start, modes, decays, responses);
        foreseeStocks();
        for (int round = 0; round < MOST_ROUNDS; round++) {
            for (int m = 0; m < INSTANTS; m++) {
                instants[m].aim();
                instants[m].ask(timeS + Parabola.SHARE[m] * stepS);
                instants[m].noteLive();
            }
            boolean settled = corrections.agree();
            settleStocks();
            if (settled && askedNearEnough()) {
                findTruth(timeS);
                double marginK = -Math.max(margins[0], Math.max(margins[1], margins[2]));
                return stepError.of(start, modes, responses, stepS, marginK);
            }
        }
        return Double.POSITIVE_INFINITY;
    }

    /** Contents of the stocks at the instants if their rates stay as they are at the beginning. */
    private void foreseeStocks() {
        for (int stock = 0; stock < network.stocks().size(); stock++) {
            double loss = start.live.lossPerS(stock);
            double rate = start.stockRate(stock, start.state.stock(stock));
            for (int m = 0; m < INSTANTS; m++) {
                double aheadS = sinceS(m);
                instants[m].state.setStock(stock, start.state.stock(stock) + aheadS * rate * (1 - 0.5 * aheadS * loss));
            }
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
                            stock, from + triedS * (weight[0] * rate0 + weight[1] * rate1 + weight[2] * rate2));
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
            margins[m] = switchboard.furthest(timeS + sinceS(m), instants[m].state);
        }
        for (int i = liveNodes; i < fed.length; i++) {
            endC[i] = instants[END].truthC(i, truth[END]);
        }
    }

    /** State of the live nodes at a time after the beginning of the step last tried; reused by the next call. */
    State after(double sinceS) {
        follow(sinceS, contentBetween);
        for (int node = 0; node < liveNodes; node++) {
            between.setNodeC(node, Sums.product(modes.shape(node), contentBetween));
        }
        return between;
    }

    /** Contents at a time after the beginning of the step last tried, as they truly are. */
    private void follow(double sinceS, double[] content) {
        double share = sinceS / triedS;
        Decays part = modes.overPart(sinceS);
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
    }

    /**
     * Ends the step last tried elsewhere: nearby by letting its heats follow their parabolas, else by trying it anew; returns whether
     * heats and temperatures were found that agree.
     */
    boolean endAt(double timeS, double toS) {
        if (Math.abs(toS - triedS) > NEARBY * triedS) {
            return attempt(timeS, toS) < Double.POSITIVE_INFINITY;
        }
        if (lengthS == triedS) {
            System.arraycopy(endC, 0, triedEndC, 0, endC.length);
        }
        Moment end = instants[END];
        for (int stock = 0; stock < network.stocks().size(); stock++) {
            double content = end.state.stock(stock);
            end.state.setStock(stock, content + (toS - lengthS) * end.stockRate(stock, content));
        }
        lengthS = toS;
        follow(toS, truth[END]);
        for (int i = 0; i < fed.length; i++) {
            endC[i] = end.truthC(i, truth[END]);
            if (i < liveNodes) {
                end.state.setNodeC(i, endC[i]);
            }
        }
        margins[END] = switchboard.furthest(timeS + toS, end.state);
        return true;
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

    /** How long after the beginning of the step last tried an instant is, s. */
    double sinceS(int instant) {
        return instant == END ? lengthS : Parabola.SHARE[instant] * triedS;
    }

    /** Adds what the meters count over the step last tried: fitted parabolas have the integrals of what they are fitted to. */
    void addMeters(double[] totals) {
        for (int m = 0; m < INSTANTS; m++) {
            instants[m].addMeters(triedS * Parabola.WEIGHT[m], totals);
        }
        if (lengthS != triedS) {
            instants[END].turnToTruth(triedEndC, endC);
            instants[END].addMeters(lengthS - triedS, totals);
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
        for (int node = liveNodes, i = liveNodes; node < network.parents().length; node++) {
            boolean isFed = i < fed.length && fed[i] == node;
            into.setNodeC(node, isFed ? start.celsius[i++] : Sums.product(modes.shape(node), start.content));
        }
    }
}
