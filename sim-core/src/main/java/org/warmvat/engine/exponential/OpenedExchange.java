package org.warmvat.engine.exponential;

import org.warmvat.network.Exchange;

/** An exchange that opens with its node's temperature, linearised over a step: heat {@code shift - slope T} into the node. */
final class OpenedExchange {

    boolean opens;
    double slopeWPerK;
    double shiftW;
    double wPerK;

    private final Exchange exchange;

    OpenedExchange(Exchange exchange) {
        this.exchange = exchange;
    }

    /**
     * Linearises about the mean as foreseen so far (Newton's method).
     *
     * @param shutWPerK conductance while it is not opened
     * @param meanC mean of every node
     * @param riseK rise of every node
     * @return whether it opens on the way
     */
    boolean linearise(double shutWPerK, double[] meanC, double[] riseK) {
        Exchange.Opening opening = exchange.opening();
        double nodeC = meanC[exchange.node()];
        opens = nodeC + 0.5 * Math.abs(riseK[exchange.node()]) > opening.fromC();
        if (opens) {
            double warmerK = nodeC - meanC[exchange.other()];
            double more = Math.max(0, opening.mostWPerK() - shutWPerK);
            double share = warmerK > 0 ? Math.max(0, Math.min(1, (nodeC - opening.fromC()) / opening.overK())) : 0;
            double perK = share > 0 && share < 1 ? more / opening.overK() : 0;
            wPerK = shutWPerK + share * more;
            slopeWPerK = wPerK + perK * warmerK;
            shiftW = slopeWPerK * nodeC - wPerK * warmerK;
        }
        return opens;
    }
}
