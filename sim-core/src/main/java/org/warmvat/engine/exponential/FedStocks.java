package org.warmvat.engine.exponential;

import org.warmvat.network.Network;
import org.warmvat.network.Source;
import org.warmvat.network.State;
import org.warmvat.network.Stock;

/** Stocks that meters change, such as the gas in a holder: straight lines within a segment, afterwards what the meters counted. */
final class FedStocks {

    private final Stock[] stocks;
    private final Source[] sources;
    private final LiveCircuit[] circuits;
    private final double[] ratePerS;
    private final double[] begun;
    private final double[] before;

    FedStocks(Network network, LiveCircuit[] circuits) {
        stocks = network.stocks().stream()
                .filter(one -> !one.inflows().isEmpty())
                .toArray(Stock[]::new);
        sources = network.sources().toArray(Source[]::new);
        this.circuits = circuits;
        ratePerS = new double[stocks.length];
        begun = new double[stocks.length];
        before = new double[stocks.length == 0 ? 0 : network.meters().size()];
    }

    /** Whether there are any. */
    boolean isSome() {
        return stocks.length > 0;
    }

    /**
     * Takes the beginning of a segment.
     *
     * @param aboutK how far the slurry stands from where the sources were asked
     */
    void begin(State state, double aboutK, double[] meters) {
        for (int i = 0; i < stocks.length; i++) {
            double rate = 0;
            for (Stock.Inflow inflow : stocks[i].inflows()) {
                rate += inflow.factor() * rate(inflow.meter(), state, aboutK);
            }
            ratePerS[i] = isFull(stocks[i], state) ? Math.min(0, rate) : rate;
            begun[i] = state.stock(stocks[i].number());
        }
        System.arraycopy(meters, 0, before, 0, before.length);
    }

    private double rate(int meter, State state, double aboutK) {
        double rate = 0;
        for (Source source : sources) {
            if (source.meter() == meter && source.isOn(state)) {
                rate += source.rate() + source.slopePerK() * aboutK;
            }
        }
        for (LiveCircuit one : circuits) {
            rate += one.circuit.heater().meter() == meter ? one.powerW : 0;
        }
        return rate;
    }

    private static boolean isFull(Stock stock, State state) {
        return stock.bound().full() >= 0 && state.isOn(stock.bound().full());
    }

    /** Content a time after the beginning, by the straight line. */
    void look(double s, State seen) {
        for (int i = 0; i < stocks.length; i++) {
            seen.setStock(stocks[i].number(), begun[i] + s * ratePerS[i]);
        }
    }

    /** How fast the contents move. */
    void speeds(State perS) {
        for (int i = 0; i < stocks.length; i++) {
            perS.setStock(stocks[i].number(), ratePerS[i]);
        }
    }

    /** Takes what the meters have counted since the beginning; what does not fit in overflows. */
    void end(State state, double[] meters) {
        for (int i = 0; i < stocks.length; i++) {
            Stock stock = stocks[i];
            double content = begun[i];
            for (Stock.Inflow inflow : stock.inflows()) {
                content += inflow.factor() * (meters[inflow.meter()] - before[inflow.meter()]);
            }
            double kept = Math.min(
                    content, isFull(stock, state) ? begun[i] : stock.bound().most());
            if (stock.bound().surplus() >= 0) {
                meters[stock.bound().surplus()] += content - kept;
            }
            state.setStock(stock.number(), kept);
        }
    }
}
