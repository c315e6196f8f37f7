package org.warmvat.network;

import java.util.ArrayList;
import java.util.List;

/**
 * Something else than heat that is kept account of, such as biodegradable solids or the gas in a holder:
 * {@code d stock/dt = gain - loss x stock + sum of factor x what meters count}.
 */
public final class Stock {

    private final String name;
    private final double initial;
    private final int number;
    private final List<Inflow> inflows = new ArrayList<>();
    private Bound bound = Bound.NONE;
    private double gainPerS;
    private double lossPerS;
    private double lossPerSPerK;

    /**
     * What a meter counts changes the stock.
     *
     * @param meter the meter
     * @param factor change of the stock by one unit of the meter
     */
    public record Inflow(int meter, double factor) {}

    /**
     * A vessel that overflows.
     *
     * @param most content at which it overflows
     * @param full switch that tells that it stands there
     * @param surplus meter of what overflows
     */
    public record Bound(double most, int full, int surplus) {

        /** A stock without a limit. */
        public static final Bound NONE = new Bound(Double.POSITIVE_INFINITY, Network.NOWHERE, Network.UNMETERED);
    }

    Stock(String name, double initial, int number) {
        this.name = name;
        this.initial = initial;
        this.number = number;
    }

    /** Lets a meter change the stock. */
    public Stock fedBy(int meter, double factor) {
        inflows.add(new Inflow(meter, factor));
        return this;
    }

    /**
     * States gain and loss at the state asked about.
     *
     * @param gain in the stock's unit per second
     * @param loss 1/s
     * @param lossPerK derivative of the loss by the slurry's temperature, 1/(s K)
     */
    public void set(double gain, double loss, double lossPerK) {
        gainPerS = gain;
        lossPerS = loss;
        lossPerSPerK = lossPerK;
    }

    void bound(Bound newBound) {
        bound = newBound;
    }

    /** Its name. */
    public String name() {
        return name;
    }

    /** Content at the start. */
    public double initial() {
        return initial;
    }

    /** Its number in {@link State#stock(int)}. */
    public int number() {
        return number;
    }

    /** Meters that change it. */
    public List<Inflow> inflows() {
        return inflows;
    }

    /** Where it overflows. */
    public Bound bound() {
        return bound;
    }

    /** Gain, per second. */
    public double gainPerS() {
        return gainPerS;
    }

    /** Loss, 1/s. */
    public double lossPerS() {
        return lossPerS;
    }

    /** Derivative of the loss by the slurry's temperature, 1/(s K). */
    public double lossPerSPerK() {
        return lossPerSPerK;
    }
}
