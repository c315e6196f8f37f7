package org.warmvat.engine.exponential;

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

    WatchIntegrals(Network network, HourRecord record, StarSegment segment, FedStocks stocks, LinearSubsystem around) {
        this.network = network;
        this.record = record;
        this.segment = segment;
        this.stocks = stocks;
        this.around = around;
        watches = network.watches().toArray(Watch[]::new);
        known = network.nodes(Node.Kind.KNOWN);
        seen = network.initialState();
    }

    /** Counts a segment of some length from its beginning to its end; the lines of known nodes belong to a step about a middle. */
    void over(State beginning, State end, double beginS, double lengthS, double stepMiddleS, double stepLengthS) {
        fromS = beginS;
        middleS = stepMiddleS;
        stepS = stepLengthS;
        record.seeSlurry(end.nodeC(Network.SLURRY));
        boolean begun = false;
        for (int i = 0; i < watches.length; i++) {
            double before = watches[i].at(beginning);
            double after = watches[i].at(end);
            record.seeWatch(i, Math.max(before, after));
            if (before > 0 || after > 0) {
                if (!begun) {
                    seen.set(beginning);
                    begun = true;
                }
                double low = before > 0 ? 0 : crossing(watches[i], lengthS, before, after);
                double high = after > 0 ? lengthS : crossing(watches[i], lengthS, before, after);
                record.addWatch(i, high - low);
                addDepth(i, low, high);
            }
        }
    }

    private double margin(Watch watch, double s) {
        segment.look(s, seen);
        stocks.look(s, seen);
        double share = (fromS + s - middleS) / stepS;
        for (int node : known) {
            seen.setNodeC(node, around.lineC(node, share));
        }
        return watch.at(seen);
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
