package org.warmvat.sample;

import java.util.Arrays;
import java.util.OptionalDouble;
import org.warmvat.design.Design;
import org.warmvat.design.surroundings.Place;
import org.warmvat.engine.Engine;
import org.warmvat.engine.Hours;
import org.warmvat.engine.reference.ReferenceEngine;
import org.warmvat.network.Network;
import org.warmvat.network.Node;
import org.warmvat.network.State;
import org.warmvat.network.Surroundings;
import org.warmvat.network.Switch;
import org.warmvat.network.Watch;
import org.warmvat.weather.Weather;

/** A slurry with a single part of a tank, run by itself: what its meters count over hours. */
public final class OnePart {

    /** Puts the part under test together. */
    @FunctionalInterface
    public interface Maker {
        /** Adds the part; around is the node of what is around the tank. */
        void make(Surroundings surroundings, int around, Network.Assembly assembly);
    }

    private final Network network;
    private final State state;
    private final double[][] meters;
    private final int[] starts;
    private final double[] watchS;

    private OnePart(Network network, State state, int hours) {
        this.network = network;
        this.state = state;
        meters = new double[network.meters().size()][hours];
        starts = new int[network.switches().size()];
        watchS = new double[network.watches().size()];
    }

    /** Runs the part on a slurry of the design's capacity that starts at a temperature. */
    public static OnePart run(Design design, Weather weather, double slurryC, Maker maker) {
        return run(design, design.contentsHeatCapacityJPerK(), weather, slurryC, maker, new ReferenceEngine());
    }

    /** Runs the part on a slurry of any capacity, with any engine, over all hours of the weather. */
    public static OnePart run(double capacityJPerK, Weather weather, double slurryC, Maker maker, Engine engine) {
        return run(capacityJPerK, weather, slurryC, OptionalDouble.empty(), maker, engine);
    }

    /** Runs the part of a tank that stands where its design says. */
    public static OnePart run(
            Design design, double capacityJPerK, Weather weather, double slurryC, Maker maker, Engine engine) {
        OptionalDouble roomC = design.tank().place() instanceof Place.Indoors indoors
                ? OptionalDouble.of(indoors.roomC())
                : OptionalDouble.empty();
        return run(capacityJPerK, weather, slurryC, roomC, maker, engine);
    }

    private static OnePart run(
            double capacityJPerK, Weather weather, double slurryC, OptionalDouble roomC, Maker maker, Engine engine) {
        Network.Assembly assembly = new Network.Assembly(capacityJPerK, slurryC);
        Surroundings surroundings = new Surroundings(weather, timeS -> 8, assembly);
        int around = roomC.isPresent() ? assembly.known("room", roomC.getAsDouble()) : surroundings.air();
        maker.make(surroundings, around, assembly);
        Network network = assembly.build();
        OnePart run = new OnePart(network, network.initialState(), weather.hours());
        engine.run(network, run.state, new Hours(0, weather.hours()), hour -> {
            for (int i = 0; i < run.meters.length; i++) {
                run.meters[i][hour.hour()] = hour.meter(i);
            }
            for (int i = 0; i < run.starts.length; i++) {
                run.starts[i] += hour.starts(i);
            }
            for (int i = 0; i < run.watchS.length; i++) {
                run.watchS[i] += hour.watchS(i);
            }
            return true;
        });
        return run;
    }

    /** Integral of a meter over the whole run. */
    public double total(String meter) {
        return Arrays.stream(byHour(meter)).sum();
    }

    /** Integral of a meter hour by hour. */
    public double[] byHour(String meter) {
        return meters[network.meters().indexOf(meter)];
    }

    /** Temperature of the slurry at the end. */
    public double slurryC() {
        return state.nodeC(0);
    }

    /** Temperature of the only circuit at the end. */
    public double circuitC() {
        return state.nodeC(network.nodes(Node.Kind.CIRCUIT)[0]);
    }

    /** Content of the only stock at the end. */
    public double stock() {
        return state.stock(0);
    }

    /** How often the switch of a name went on. */
    public int starts(String name) {
        return starts[network.switches().stream().map(Switch::name).toList().indexOf(name)];
    }

    /** How long the watch of a name held, s. */
    public double heldS(String name) {
        return watchS[network.watches().stream().map(Watch::name).toList().indexOf(name)];
    }
}
