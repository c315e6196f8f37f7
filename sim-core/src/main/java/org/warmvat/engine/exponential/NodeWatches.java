package org.warmvat.engine.exponential;

import java.util.List;
import org.warmvat.engine.HourRecord;
import org.warmvat.network.Margin;
import org.warmvat.network.State;
import org.warmvat.network.Watch;

/** Watches that always look at one and the same node: while it stays between their thresholds its extremes tell what they all saw. */
final class NodeWatches {

    private final int node;
    private final int[] numbers;
    private final Margin[] margins;
    private double fromC = Double.NEGATIVE_INFINITY;
    private double toC = Double.POSITIVE_INFINITY;
    private double leastC;
    private double mostC;

    NodeWatches(int node, List<Integer> numbers, Watch[] watches) {
        this.node = node;
        this.numbers = numbers.stream().mapToInt(Integer::intValue).toArray();
        margins = numbers.stream().map(i -> watches[i].linear()).toArray(Margin[]::new);
        for (Margin margin : margins) {
            if (margin.weight() > 0) {
                toC = Math.min(toC, -margin.of(0));
            } else {
                fromC = Math.max(fromC, margin.of(0));
            }
        }
    }

    void begin() {
        leastC = Double.POSITIVE_INFINITY;
        mostC = Double.NEGATIVE_INFINITY;
    }

    /** Sees both ends of a segment; whether a threshold lies within or before it. */
    boolean passes(State beginning, State end) {
        double before = beginning.nodeC(node);
        double after = end.nodeC(node);
        double low = before < after ? before : after;
        double high = before < after ? after : before;
        leastC = low < leastC ? low : leastC;
        mostC = high > mostC ? high : mostC;
        return low < fromC || high > toC;
    }

    int[] numbers() {
        return numbers;
    }

    /** Tells the largest margins since it began. */
    void tell(HourRecord record) {
        for (int i = 0; i < numbers.length; i++) {
            record.seeWatch(numbers[i], margins[i].of(margins[i].weight() > 0 ? mostC : leastC));
        }
    }
}
