package org.warmvat.engine;

import java.util.Arrays;
import org.warmvat.network.Network;
import org.warmvat.network.State;
import org.warmvat.network.meter.Hour;

/** What happened in an hour: the state at its end, meters integrated, starts of switches, durations of watched conditions. */
public final class HourRecord implements Hour {

    private final State state;
    private final double[] meters;
    private final int[] starts;
    private final double[] watchS;
    private final double[] watchWorst;
    private Runnable completion = () -> {};
    private int hour;
    private double slurryLeastC;
    private double slurryMostC;

    /** A record for the engine that runs a network on a state. */
    public HourRecord(Network network, State state) {
        this(
                state,
                new double[network.declarations().meters().size()],
                new int[network.switches().size()],
                new double[network.watches().size()],
                new double[network.watches().size()]);
    }

    private HourRecord(State state, double[] meters, int[] starts, double[] watchS, double[] watchWorst) {
        this.state = state;
        this.meters = meters;
        this.starts = starts;
        this.watchS = watchS;
        this.watchWorst = watchWorst;
    }

    /** An independent copy, to be kept. */
    public HourRecord copy() {
        HourRecord copy =
                new HourRecord(state().copy(), meters.clone(), starts.clone(), watchS.clone(), watchWorst.clone());
        copy.hour = hour;
        copy.slurryLeastC = slurryLeastC;
        copy.slurryMostC = slurryMostC;
        return copy;
    }

    /** Begins an hour; for the engine. */
    public void begin(int index) {
        hour = index;
        Arrays.fill(meters, 0);
        Arrays.fill(starts, 0);
        Arrays.fill(watchS, 0);
        Arrays.fill(watchWorst, Double.NEGATIVE_INFINITY);
        slurryLeastC = state.nodeC(0);
        slurryMostC = state.nodeC(0);
    }

    /** The meters, to be counted up; for the engine. */
    public double[] meters() {
        return meters;
    }

    /** Counts a start; for the engine. */
    public void addStart(int index) {
        starts[index]++;
    }

    /** Counts time of a watch; for the engine. */
    public void addWatch(int index, double seconds) {
        watchS[index] += seconds;
    }

    /** Sees a watch's margin; for the engine. */
    public void seeWatch(int index, double margin) {
        watchWorst[index] = Math.max(watchWorst[index], margin);
    }

    /** Sees the slurry; for the engine. */
    public void seeSlurry(double celsius) {
        slurryLeastC = Math.min(slurryLeastC, celsius);
        slurryMostC = Math.max(slurryMostC, celsius);
    }

    /** Takes over what another record of the same network counted; for the engine. */
    public void set(HourRecord other) {
        System.arraycopy(other.meters, 0, meters, 0, meters.length);
        System.arraycopy(other.starts, 0, starts, 0, starts.length);
        System.arraycopy(other.watchS, 0, watchS, 0, watchS.length);
        System.arraycopy(other.watchWorst, 0, watchWorst, 0, watchWorst.length);
        hour = other.hour;
        slurryLeastC = other.slurryLeastC;
        slurryMostC = other.slurryMostC;
    }

    @Override
    public int hour() {
        return hour;
    }

    /** State at the end of the hour; the engine's own, read only. */
    public State state() {
        completion.run();
        return state;
    }

    /** The same where nobody reads its layers, which an engine may leave behind until they are asked for. */
    public State stateWithoutLayers() {
        return state;
    }

    /** Brings the layers up to date when the state is asked for; for the engine. */
    public void completeBy(Runnable task) {
        completion = task;
    }

    @Override
    public double meter(int meter) {
        return meters[meter];
    }

    @Override
    public double endC(int node) {
        return state.nodeC(node);
    }

    @Override
    public int starts(int index) {
        return starts[index];
    }

    /** How long a watched condition held, s. */
    public double watchS(int watch) {
        return watchS[watch];
    }

    /** Largest margin of a watched condition, negative when it never held. */
    public double watchWorst(int watch) {
        return watchWorst[watch];
    }

    /** Lowest slurry temperature of the hour, °C. */
    public double slurryLeastC() {
        return slurryLeastC;
    }

    /** Highest slurry temperature of the hour, °C. */
    public double slurryMostC() {
        return slurryMostC;
    }
}
