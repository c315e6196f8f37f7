package org.warmvat.engine.exponential;

import static java.util.stream.Collectors.groupingBy;
import static java.util.stream.Collectors.toList;

import java.util.Arrays;
import java.util.TreeMap;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.warmvat.engine.HourRecord;
import org.warmvat.network.Network;
import org.warmvat.network.Node;
import org.warmvat.network.State;
import org.warmvat.network.Watch;

/** Times the watched conditions over segments; a beginning or end is placed on the segment's closed form. */
final class WatchIntegrals {

    /** Beginnings and ends are placed to this, s. */
    private static final double PLACED_S = 0.05;

    private final Watch[] watches;
    private final NodeWatches[] ofNodes;
    /** All others, and when they look. */
    private final int[] others;

    private final OpenGates gates;
    private final int[] looks;
    private final Network network;
    private final HourRecord record;
    private final StarSegment segment;
    private final FedStocks stocks;
    private final LinearSubsystem around;
    private final int[] known;
    private final State seen;
    private double fromS;
    private double middleS;
    private double stepS;

    WatchIntegrals(
            Network network,
            HourRecord record,
            OpenGates gates,
            StarSegment segment,
            FedStocks stocks,
            LinearSubsystem around) {
        this.network = network;
        this.gates = gates;
        this.record = record;
        this.segment = segment;
        this.stocks = stocks;
        this.around = around;
        watches = network.watches().toArray(Watch[]::new);
        known = network.nodes(Node.Kind.KNOWN);
        seen = network.initialState();
        ofNodes =
                numbers(node -> node >= 0)
                        .collect(groupingBy(i -> watches[i].alwaysAt(), TreeMap::new, toList()))
                        .entrySet()
                        .stream()
                        .map(one -> new NodeWatches(one.getKey(), one.getValue(), watches))
                        .toArray(NodeWatches[]::new);
        others = numbers(node -> node < 0).mapToInt(i -> i).toArray();
        looks = Arrays.stream(others).map(i -> gates.number(watches[i].gate())).toArray();
    }

    private Stream<Integer> numbers(IntPredicate alwaysAt) {
        return IntStream.range(0, watches.length)
                .filter(i -> alwaysAt.test(watches[i].alwaysAt()))
                .boxed();
    }

    /** Begins a step about a middle, to which the lines of known nodes belong. */
    void begin(double stepMiddleS, double stepLengthS) {
        middleS = stepMiddleS;
        stepS = stepLengthS;
        for (NodeWatches one : ofNodes) {
            one.begin();
        }
    }

    /** Counts a segment of some length from its beginning to its end. */
    void over(State beginning, State end, double beginS, double lengthS) {
        fromS = beginS;
        record.seeSlurry(end.nodeC(Network.SLURRY));
        for (NodeWatches one : ofNodes) {
            if (one.passes(beginning, end)) {
                for (int number : one.numbers()) {
                    over(number, beginning, end, lengthS);
                }
            }
        }
        for (int i = 0; i < others.length; i++) {
            if (gates.isOpen(looks[i])) {
                over(others[i], beginning, end, lengthS);
            }
        }
    }

    /** Ends the step. */
    void end() {
        for (NodeWatches one : ofNodes) {
            one.tell(record);
        }
    }

    private void over(int index, State beginning, State end, double lengthS) {
        double before = watches[index].margin(beginning);
        double after = watches[index].margin(end);
        record.seeWatch(index, before > after ? before : after);
        if (before > 0 || after > 0) {
            seen.set(beginning);
            holds(index, lengthS, before, after);
        }
    }

    private void holds(int index, double lengthS, double before, double after) {
        double low = before > 0 ? 0 : crossing(watches[index], lengthS, before, after);
        double high = after > 0 ? lengthS : crossing(watches[index], lengthS, before, after);
        record.addWatch(index, high - low);
        addDepth(index, low, high);
    }

    private double margin(Watch watch, double s) {
        segment.look(s, seen);
        stocks.look(s, seen);
        double share = (fromS + s - middleS) / stepS;
        for (int node : known) {
            seen.setNodeC(node, around.lineC(node, share));
        }
        return watch.margin(seen);
    }

    /** Where a margin changes sign, by false position safeguarded by bisection. */
    private double crossing(Watch watch, double lengthS, double before, double after) {
        double low = 0;
        double high = lengthS;
        double lowK = before;
        double highK = after;
        while (high - low > PLACED_S) {
            double share = Math.min(0.9, Math.max(0.1, lowK / (lowK - highK)));
            double at = low + share * (high - low);
            double k = margin(watch, at);
            if (k > 0 == before > 0) {
                low = at;
                lowK = k;
            } else {
                high = at;
                highK = k;
            }
        }
        return 0.5 * (low + high);
    }

    /** Depth of a watch over the time in which it holds, by Simpson's rule: a segment is nearly a parabola. */
    private void addDepth(int index, double low, double high) {
        int meter = network.depthMeter(index);
        if (meter >= 0 && high > low) {
            Watch watch = watches[index];
            double sum = margin(watch, low) + 4 * margin(watch, 0.5 * (low + high)) + margin(watch, high);
            record.meters()[meter] += Math.max(0, sum / 6 * (high - low));
        }
    }
}
