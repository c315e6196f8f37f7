package org.warmvat.sample;

import java.util.Arrays;
import org.warmvat.design.Design;
import org.warmvat.engine.Engine;
import org.warmvat.engine.Hours;
import org.warmvat.engine.ReferenceEngine;
import org.warmvat.network.Network;
import org.warmvat.network.Part;
import org.warmvat.network.Scheduled;
import org.warmvat.network.SlowPart;
import org.warmvat.network.State;
import org.warmvat.network.Surroundings;
import org.warmvat.weather.Weather;

/** A slurry with a single part of a tank, run by itself: what its meters count over hours. */
public final class OnePart {

    /** Puts the part under test together. */
    @FunctionalInterface
    public interface Maker {
        /** The part, its nodes and meters added. */
        Scheduled make(Surroundings surroundings, Network.Assembly assembly, int slurry);
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
        return run(design.contentsHeatCapacityJPerK(), weather, slurryC, maker, new ReferenceEngine());
    }

    /** Runs the part on a slurry of any capacity, with any engine, over all hours of the weather. */
    public static OnePart run(double capacityJPerK, Weather weather, double slurryC, Maker maker, Engine engine) {
        Network.Assembly assembly = new Network.Assembly();
        int slurry = assembly.node(new Network.Node("slurry", capacityJPerK, -1, slurryC, false));
        Scheduled made = maker.make(new Surroundings(weather, timeS -> 8), assembly, slurry);
        if (made instanceof SlowPart slow) {
            assembly.slowPart(slow);
        } else {
            assembly.part((Part) made);
        }
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

    /** Temperature of the last node at the end. */
    public double lastNodeC() {
        return state.nodeC(network.nodes().size() - 1);
    }

    /** Content of the only stock at the end. */
    public double stock() {
        return state.stock(0);
    }

    /** How often the switch of a name went on. */
    public int starts(String name) {
        return starts[
                network.switches().stream()
                        .map(Network.NamedSwitch::name)
                        .toList()
                        .indexOf(name)];
    }

    /** How long the watch of a name held, s. */
    public double heldS(String name) {
        return watchS[
                network.watches().stream()
                        .map(Network.NamedWatch::name)
                        .toList()
                        .indexOf(name)];
    }
}
