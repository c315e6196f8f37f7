package org.warmvat.engine.exponential;

import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import org.warmvat.network.Chain;
import org.warmvat.network.Exchange;
import org.warmvat.network.Network;
import org.warmvat.network.Node;
import org.warmvat.network.Source;
import org.warmvat.network.State;

/**
 * Chains and rooms over a step, exact in time for a slurry and known temperatures that run in straight lines: one of the two subsystems of
 * the waveform relaxation. What the slurry gives them is a linear function of its mean and rise.
 */
final class LinearSubsystem {

    /** The two points of Gauss's rule lie this share of a step from its middle. */
    private static final double GAUSS = 0.5 / Math.sqrt(3);

    /** Newton's method for an exchange that opens: two rounds do, one more where it passes a corner of its ramp. */
    private static final int ROUNDS = 4;

    /** A loss of a circuit that wind changes by no more than this share over a step may stand at its mean. */
    private static final double SWING_SHARE = 0.01;

    /** Short steps in which the quick conductance is found, and how many of them count as the first moment. */
    private static final int QUICK_STEPS = 24;

    private static final int QUICK_FIRST = 4;

    /** Foreseen for a slurry that stays: what it gives, W, and how that rises, W/s; capacity that a straight rise meets, J/K. */
    double meanW;

    double riseWPerS;
    double straightJPerK;
    /** Contents of all modes. */
    final double[] content;

    private final Network network;
    private final ChainLine[] lines;
    private final Exchange[] exchanges;
    /** Exchanges and sources of circuits: they live elsewhere, against what wind and sky do to them in the mean of a step. */
    private final Exchange[] ofCircuits;

    private final Source[] intoCircuits;

    private final OpenedExchange[] opened;
    private final Source[] sources;
    private final RoomEquations equations;
    private final int[] known;
    private final int[] massiveRooms;
    private final double[] capacityJPerK;
    private final double[] meanC;
    private final double[] riseK;
    private final double[] faceWPerK;
    private final double[] exchangeWPerK;
    /** As they stood at first: what belongs to a length of step must not hang on when it is asked for. */
    private final double[] firstWPerK;

    private final double[] circuitWPerK;
    private final double[] intoCircuitsW;
    private final double[] roomExtraW;
    private final State early;
    private final State late;
    private StepLength step;

    LinearSubsystem(Network network) {
        this.network = network;
        List<Chain> chains = network.chains();
        lines = new ChainLine[chains.size()];
        int modes = 0;
        for (int k = 0; k < lines.length; k++) {
            lines[k] = new ChainLine(new ChainModes(chains.get(k)), modes);
            modes += chains.get(k).size();
        }
        content = new double[modes];
        int nodes = network.nodes().size();
        meanC = new double[nodes];
        riseK = new double[nodes];
        equations = new RoomEquations(network, meanC, riseK);
        exchanges = network.exchanges().stream()
                .filter(one -> !is(one.node(), Node.Kind.CIRCUIT))
                .toArray(Exchange[]::new);
        ofCircuits = network.exchanges().stream()
                .filter(one -> is(one.node(), Node.Kind.CIRCUIT))
                .toArray(Exchange[]::new);
        circuitWPerK = new double[ofCircuits.length];
        intoCircuits = sourcesOf(Node.Kind.CIRCUIT);
        intoCircuitsW = new double[intoCircuits.length];
        opened = Arrays.stream(exchanges)
                .map(one -> one.opening().equals(Exchange.Opening.NEVER) ? null : new OpenedExchange(one))
                .toArray(OpenedExchange[]::new);
        sources = sourcesOf(Node.Kind.ROOM);
        known = network.nodes(Node.Kind.KNOWN);
        capacityJPerK = network.capacitiesJPerK();
        massiveRooms = Arrays.stream(network.nodes(Node.Kind.ROOM))
                .filter(room -> capacityJPerK[room] > 0)
                .toArray();
        faceWPerK = new double[lines.length];
        exchangeWPerK = new double[exchanges.length];
        firstWPerK = Arrays.stream(exchanges).mapToDouble(Exchange::wPerK).toArray();
        roomExtraW = new double[nodes];
        early = network.initialState();
        late = network.initialState();
    }

    private boolean is(int node, Node.Kind kind) {
        return node >= 0 && network.nodes().get(node).kind() == kind;
    }

    private Source[] sourcesOf(Node.Kind kind) {
        return network.sources().stream().filter(one -> is(one.node(), kind)).toArray(Source[]::new);
    }

    /** Takes over the layers of a state. */
    void enter(State state) {
        for (ChainLine line : lines) {
            line.modes.enter(state, content, line.at);
        }
    }

    /** Writes the layers into a state. */
    void leave(State state) {
        for (ChainLine line : lines) {
            line.modes.leave(content, line.at, state);
        }
    }

    /** Works out what belongs to a length of step; the contents of the modes are lost. */
    StepLength length(double stepS) {
        double shortS = 0.5 * stepS / QUICK_STEPS;
        step = new StepLength(shortS, responses(shortS), 0);
        Arrays.fill(content, 0);
        Arrays.fill(meanC, 0);
        Arrays.fill(riseK, 0);
        Arrays.fill(roomExtraW, 0);
        for (int k = 0; k < lines.length; k++) {
            faceWPerK[k] = lines[k].modes.outerWPerK;
        }
        System.arraycopy(firstWPerK, 0, exchangeWPerK, 0, exchanges.length);
        Arrays.stream(opened).filter(Objects::nonNull).forEach(one -> one.opens = false);
        equations.begin(null);
        double heat = 0;
        double[] nowhere = new double[network.meters().size()];
        for (int i = 0; i < QUICK_STEPS; i++) {
            assemble();
            heat += i < QUICK_FIRST ? 0 : taken(1, 0);
            accept(1, 0, nowhere, null);
        }
        return new StepLength(stepS, responses(stepS), heat / (shortS * (QUICK_STEPS - QUICK_FIRST)));
    }

    private StepResponse[] responses(double stepS) {
        return Arrays.stream(lines)
                .map(line -> new StepResponse(line.modes, stepS))
                .toArray(StepResponse[]::new);
    }

    /** Temperature of a known node or a room at a share of the step from its middle, -0.5 to 0.5, as foreseen. */
    double lineC(int node, double share) {
        return meanC[node] + share * riseK[node];
    }

    /** Mean of a known node's or a room's temperature over the step as foreseen, °C. */
    double meanC(int node) {
        return meanC[node];
    }

    /** Rise of a known node's or a room's temperature over the step as foreseen, K. */
    double riseK(int node) {
        return riseK[node];
    }

    /**
     * Foresees a step with the slurry as it is.
     *
     * @param middleS middle of the step
     * @param with its length
     * @param state beginning
     * @param fromCircuitsW what circuits give to each room as they stand
     * @return whether shorter steps are wanted: an exchange opens on the way, or wind changes a circuit's loss
     */
    boolean foresee(double middleS, StepLength with, State state, double[] fromCircuitsW) {
        step = with;
        boolean swings = lookOutside(middleS);
        System.arraycopy(fromCircuitsW, 0, roomExtraW, 0, roomExtraW.length);
        for (Source source : sources) {
            if (source.isOn(state)) {
                roomExtraW[source.node()] += source.rate();
            }
        }
        equations.begin(state);
        double slurryC = state.nodeC(Network.SLURRY);
        boolean opens = false;
        boolean settled = false;
        for (int round = 0; !settled && round < ROUNDS; round++) {
            boolean shut = !opens;
            opens = linearise();
            // shut at the beginning says nothing: the sun may open it on the way
            settled = round > 0 && shut && !opens;
            if (!settled) {
                assemble();
                equations.settle(slurryC, 0);
            }
        }
        meanW = equations.a00 * slurryC - equations.j0;
        riseWPerS = (equations.a10 * slurryC - equations.j1) / step.stepS;
        straightJPerK = step.stepS * (0.5 * equations.a00 + equations.a01);
        return opens || swings;
    }

    /** Looks at what is outside; whether wind changes a circuit's loss by more than its mean may stand for. */
    private boolean lookOutside(double middleS) {
        double apartS = GAUSS * step.stepS;
        Arrays.fill(faceWPerK, 0);
        Arrays.fill(exchangeWPerK, 0);
        lookHalf(middleS - apartS, early);
        Arrays.setAll(circuitWPerK, i -> ofCircuits[i].wPerK());
        Arrays.setAll(intoCircuitsW, i -> intoCircuits[i].rate());
        lookHalf(middleS + apartS, late);
        for (int node : known) {
            meanC[node] = 0.5 * (early.nodeC(node) + late.nodeC(node));
            riseK[node] = (late.nodeC(node) - early.nodeC(node)) / (2 * GAUSS);
        }
        return setCircuits();
    }

    /** Looks at one of the two points of Gauss's rule, which stands for half of the step. */
    private void lookHalf(double timeS, State seen) {
        network.look(timeS, seen);
        for (int k = 0; k < lines.length; k++) {
            faceWPerK[k] += 0.5 * lines[k].modes.chain.outerWPerK();
        }
        for (int i = 0; i < exchanges.length; i++) {
            exchangeWPerK[i] += 0.5 * exchanges[i].wPerK();
        }
    }

    private boolean setCircuits() {
        boolean swings = false;
        for (int i = 0; i < ofCircuits.length; i++) {
            double lateWPerK = ofCircuits[i].wPerK();
            double meanWPerK = 0.5 * (circuitWPerK[i] + lateWPerK);
            swings |= Math.abs(lateWPerK - circuitWPerK[i]) > 2 * GAUSS * SWING_SHARE * meanWPerK;
            ofCircuits[i].set(meanWPerK);
        }
        for (int i = 0; i < intoCircuits.length; i++) {
            Source one = intoCircuits[i];
            one.set(0.5 * (intoCircuitsW[i] + one.rate()), one.slopePerK());
        }
        return swings;
    }

    private boolean linearise() {
        boolean opens = false;
        for (int i = 0; i < exchanges.length; i++) {
            opens |= opened[i] != null && opened[i].linearise(exchangeWPerK[i], meanC, riseK);
        }
        return opens;
    }

    /** Puts chains, exchanges and sources into the equations and solves them. */
    private void assemble() {
        equations.clear();
        for (int i = 0; i < exchanges.length; i++) {
            Exchange one = exchanges[i];
            if (opened[i] != null && opened[i].opens) {
                equations.hold(one.node(), opened[i].slopeWPerK);
                equations.drive(one.node(), opened[i].shiftW, opened[i].wPerK * riseK[one.other()]);
            } else {
                equations.exchange(one.node(), one.other(), exchangeWPerK[i]);
            }
        }
        for (int k = 0; k < lines.length; k++) {
            ChainLine line = lines[k];
            StepResponse by = step.ofChain[k];
            line.begin(content, by);
            if (equations.isRoom(line.outside)) {
                equations.between(line, by);
            } else {
                line.meet(by, faceWPerK[k], meanC[line.outside], riseK[line.outside]);
                equations.outwards(line);
            }
        }
        equations.heat(roomExtraW);
        equations.solve(step.stepS);
    }

    /** Heat given over the step by a slurry of some mean and rise, J. */
    double taken(double slurryMeanC, double slurryRiseK) {
        return step.stepS * (equations.a00 * slurryMeanC + equations.a01 * slurryRiseK - equations.j0);
    }

    /**
     * Goes on to the end of the step.
     *
     * @param slurryMeanC mean of the slurry
     * @param slurryRiseK its rise
     * @param meters counted up
     * @param state where the rooms' temperatures are written, null for nowhere
     */
    void accept(double slurryMeanC, double slurryRiseK, double[] meters, State state) {
        double h = step.stepS;
        equations.settle(slurryMeanC, slurryRiseK);
        for (int k = 0; k < lines.length; k++) {
            ChainLine line = lines[k];
            StepResponse by = step.ofChain[k];
            double leavesW = equations.isRoom(line.outside)
                    ? line.accept(
                            content,
                            by,
                            meanC[line.inside],
                            riseK[line.inside],
                            meanC[line.outside],
                            riseK[line.outside])
                    : line.accept(content, by, meanC[line.inside], riseK[line.inside]);
            count(meters, line.meter, -h * leavesW);
        }
        for (int i = 0; i < exchanges.length; i++) {
            double nodeC = meanC[exchanges[i].node()];
            double watts = opened[i] != null && opened[i].opens
                    ? opened[i].shiftW - opened[i].slopeWPerK * nodeC
                    : exchangeWPerK[i] * (meanC[exchanges[i].other()] - nodeC);
            count(meters, exchanges[i].meter(), h * watts);
        }
        for (Source source : sources) {
            if (state != null && source.isOn(state)) {
                count(meters, source.meter(), h * source.rate());
            }
        }
        equations.end(h, state);
    }

    /** Gives the rooms what circuits gave beyond what was foreseen. */
    void correctRooms(double[] givenJ, double[] foreseenW, double stepS, State state) {
        for (int room : massiveRooms) {
            double missedJ = givenJ[room] - foreseenW[room] * stepS;
            state.setNodeC(room, state.nodeC(room) + missedJ / capacityJPerK[room]);
        }
    }

    private static void count(double[] meters, int meter, double joules) {
        if (meter >= 0) {
            meters[meter] += joules;
        }
    }
}
