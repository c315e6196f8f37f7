package org.warmvat.engine.exponential;

import java.util.Arrays;
import org.warmvat.engine.EngineFailure;
import org.warmvat.engine.HourRecord;
import org.warmvat.engine.Hours;
import org.warmvat.engine.Switchboard;
import org.warmvat.network.Interval;
import org.warmvat.network.Network;
import org.warmvat.network.Node;
import org.warmvat.network.Source;
import org.warmvat.network.State;
import org.warmvat.network.Stock;

/** Slurry, circuits, sources and stocks over an interval, segment after segment. */
final class LiveSubsystem {

    /** A linearised quadratic loss may be wrong over a segment by what moves the slurry by this, K; so often it is done again. */
    private static final double LINEARISED_K = 5e-5;

    private static final int MOST_LINEARISATIONS = 2;

    /** More segments than this in one interval mean that something chatters. */
    private static final int MOST_SEGMENTS = 100_000;

    /** Integral of the slurry's temperature since it was last reset, K s. */
    double slurryKs;
    /** Heat given by circuits to every room since it was last reset, J. */
    final double[] toRoomJ;

    private final Network network;
    private final HourRecord record;
    private final LinearSubsystem around;
    private final LiveCircuit[] circuits;
    private final StarSegment segment;
    private final EventLocation events;
    private final Switchboard switchboard;
    private final WatchIntegrals watches;
    private final FedStocks fed;
    private final Source[] sources;
    private final Source[] slurrySources;
    private final Stock[] stocks;
    /** Whether no circuit gives heat to a room. */
    private final boolean lossless;

    private final int[] lined;
    private final double slurryJPerK;
    private final double[] content;
    private final double[] meanContent;
    private final State end;
    /** How long gates and switches have stood as they are, and the integral over that of how far the slurry stands from where it began. */
    private double standS;

    private double standKs;
    private double sourcesW;
    private double slopeWPerK;
    /** Integral over an interval of how far the slurry stands from where it began, K s. */
    private double deviationKs;

    private double takesW;
    private double takesWPerS;
    private double middleS;
    private double stepS;
    private double aboutC;
    private double quickWPerK;

    LiveSubsystem(Network network, HourRecord record, LinearSubsystem around) {
        this.network = network;
        this.record = record;
        this.around = around;
        circuits = network.circuits().stream()
                .map(one -> new LiveCircuit(network, one))
                .toArray(LiveCircuit[]::new);
        segment = new StarSegment(circuits);
        fed = new FedStocks(network, circuits);
        events = new EventLocation(network, segment, fed);
        switchboard = new Switchboard(network);
        watches = new WatchIntegrals(network, record, segment, fed, around);
        sources = network.sources().stream()
                .filter(one -> one.node() < 0 || network.nodes().get(one.node()).kind() != Node.Kind.ROOM)
                .toArray(Source[]::new);
        slurrySources = network.sources().stream()
                .filter(one -> one.node() == Network.SLURRY)
                .toArray(Source[]::new);
        stocks = network.stocks().toArray(Stock[]::new);
        lossless = network.exchanges().stream()
                .noneMatch(one -> network.nodes().get(one.node()).kind() == Node.Kind.CIRCUIT
                        && network.nodes().get(one.other()).kind() == Node.Kind.ROOM);
        lined = network.nodes(Node.Kind.KNOWN, Node.Kind.ROOM);
        slurryJPerK = network.nodes().get(Network.SLURRY).capacityJPerK();
        content = new double[stocks.length];
        meanContent = new double[stocks.length];
        toRoomJ = new double[network.nodes().size()];
        end = network.initialState();
    }

    /** What circuits give to every room as they stand, W. */
    void toRoomsNow(State state, double[] watts) {
        if (lossless) {
            return;
        }
        Arrays.fill(watts, 0);
        for (LiveCircuit one : circuits) {
            one.toRoomsNow(state, watts);
        }
    }

    /** Meets chains and rooms whose heat over a step has been foreseen for a slurry that stays. */
    void meet(double stepMiddleS, StepLength length, double slurryC, double quickJPerK) {
        takesW = around.meanW;
        takesWPerS = around.riseWPerS;
        middleS = stepMiddleS;
        stepS = length.stepS;
        aboutC = slurryC;
        quickWPerK = length.quickWPerK;
        segment.slurryJPerK = slurryJPerK + quickJPerK;
        slurryKs = 0;
        if (!lossless) {
            Arrays.fill(toRoomJ, 0);
        }
    }

    /** Goes on over an interval in which nothing scheduled jumps. */
    void over(Interval interval, State state) {
        double lengthS = interval.endS() - interval.startS();
        double startC = state.nodeC(Network.SLURRY);
        ask(interval, state, lengthS);
        for (LiveCircuit one : circuits) {
            one.enter(around, stepS);
        }
        settle(interval.startS(), state, 0);
        deviationKs = 0;
        double now = interval.startS();
        for (int count = 0; now < interval.endS(); count++) {
            if (count > MOST_SEGMENTS) {
                throw new EngineFailure("switches chatter at hour " + (int) (now / Hours.HOUR_S));
            }
            double leftS = interval.endS() - now;
            double s = segment(state, now, leftS, startC);
            now = s >= leftS ? interval.endS() : now + s;
            if (events.mover != null) {
                switchboard.move(events.mover.number(), state, record);
            }
            if (s < leftS) {
                settle(now, state, EventLocation.HAIR_K);
            }
        }
        countSources(state);
        slurryKs += startC * lengthS + deviationKs;
        double shareOfMiddle = (interval.middleS() - middleS) / stepS;
        for (LiveCircuit one : circuits) {
            one.leave(around, lengthS, shareOfMiddle, record.meters(), toRoomJ);
        }
        react(state, lengthS);
        network.reached(interval.endS(), state);
    }

    /** Asks the parts with stocks at their mean over the interval, to second order. */
    private void ask(Interval interval, State state, double lengthS) {
        lay(interval.middleS(), state);
        network.decay(state);
        for (Stock stock : stocks) {
            int i = stock.number();
            content[i] = state.stock(i);
            double fallsBy = stock.lossPerS() * lengthS;
            meanContent[i] =
                    content[i] + 0.5 * lengthS * (stock.gainPerS() - stock.lossPerS() * content[i]) * (1 - fallsBy / 3);
            state.setStock(i, meanContent[i]);
        }
        network.ask(interval.middleS(), state);
        for (int i = 0; i < content.length; i++) {
            state.setStock(i, content[i]);
        }
    }

    private void react(State state, double lengthS) {
        for (Stock stock : stocks) {
            int i = stock.number();
            state.setStock(
                    i,
                    state.stock(i)
                            + lengthS * (stock.gainPerS() - stock.lossPerS() * meanContent[i])
                            - stock.lossPerSPerK() * meanContent[i] * deviationKs);
        }
    }

    /** Lets every switch move that wants to, and asks what stands by their positions. */
    private void settle(double timeS, State state, double hairK) {
        lay(timeS, state);
        switchboard.settle(timeS, state, record, hairK);
        for (LiveCircuit one : circuits) {
            one.position(state);
        }
        end.setSwitches(state);
        sourcesW = 0;
        slopeWPerK = 0;
        for (Source source : slurrySources) {
            if (source.isOn(state)) {
                sourcesW += source.rate();
                slopeWPerK += source.slopePerK();
            }
        }
    }

    /** Counts what sources gave since gates and switches last moved. */
    private void countSources(State state) {
        double[] meters = record.meters();
        for (Source source : sources) {
            if (source.meter() >= 0 && source.isOn(state)) {
                double ofSlope = source.node() <= Network.SLURRY ? source.slopePerK() * standKs : 0;
                meters[source.meter()] += source.rate() * standS + ofSlope;
            }
        }
        standS = 0;
        standKs = 0;
    }

    /** Puts known nodes and rooms on their lines. */
    private void lay(double timeS, State state) {
        double share = (timeS - middleS) / stepS;
        for (int node : lined) {
            state.setNodeC(node, around.lineC(node, share));
        }
    }

    /** One segment, up to the first switching; returns its length. */
    private double segment(State state, double now, double leftS, double askedC) {
        double slurryC = state.nodeC(Network.SLURRY);
        segment.slurryC = slurryC;
        segment.lossWPerK = quickWPerK - slopeWPerK;
        segment.heatWPerS = -takesWPerS;
        segment.heatW = sourcesW
                + slopeWPerK * (slurryC - askedC)
                - takesW
                - takesWPerS * (now - middleS)
                - quickWPerK * (slurryC - aboutC);
        for (LiveCircuit one : circuits) {
            one.begin(state.nodeC(one.node), slurryC, now - middleS);
        }
        fed.begin(state, slurryC - askedC, record.meters());
        double s = closedForm(state, leftS);
        // before the watches, which look back along the segment and so lose its integrals
        count(state, s, leftS, slurryC - askedC);
        lay(now + s, end);
        watches.over(state, end, now, s, middleS, stepS);
        state.setNodeC(Network.SLURRY, end.nodeC(Network.SLURRY));
        for (LiveCircuit one : circuits) {
            state.setNodeC(one.node, end.nodeC(one.node));
        }
        fed.end(state, record.meters());
        return s;
    }

    private double closedForm(State state, double leftS) {
        boolean again = true;
        double s = leftS;
        for (int pass = 0; again && pass <= MOST_LINEARISATIONS; pass++) {
            segment.prepare();
            s = events.first(state, leftS, end);
            again = false;
            for (LiveCircuit one : circuits) {
                again |= pass < MOST_LINEARISATIONS && one.linearisesAgain(s, LINEARISED_K * slurryJPerK);
            }
        }
        return s;
    }

    private void count(State state, double s, double leftS, double aboutK) {
        double[] meters = record.meters();
        standS += s;
        standKs += s * aboutK + segment.slurryKs;
        deviationKs += s * aboutK + segment.slurryKs;
        if (fed.isSome() || s < leftS) {
            countSources(state);
        }
        for (LiveCircuit one : circuits) {
            one.count(s, segment.slurryC, segment.slurryKs, meters);
        }
    }
}
