package org.warmvat.tank;

import org.warmvat.design.Place;
import java.util.Optional;
import java.util.OptionalInt;
import org.warmvat.design.Design;
import org.warmvat.engine.Hours;
import org.warmvat.engine.SteadyStart;
import org.warmvat.envelope.EnvelopePart;
import org.warmvat.envelope.FittingsPart;
import org.warmvat.feeding.FeedPart;
import org.warmvat.gas.GasPart;
import org.warmvat.heating.BackupPart;
import org.warmvat.heating.CollectorSun;
import org.warmvat.heating.SolarPart;
import org.warmvat.network.Network;
import org.warmvat.network.State;
import org.warmvat.network.Surroundings;
import org.warmvat.stirring.MixerPart;
import org.warmvat.weather.Weather;

/**
 * A design in its weather as a network ready to run once.
 *
 * @param network nodes, parts, meters
 * @param slurry the slurry's node
 * @param collector the solar circuit's node
 * @param backupWater the backup circuit's node
 */
public record TankNetwork(Network network, int slurry, OptionalInt collector, OptionalInt backupWater) {

    /**
     * Assembles a design.
     *
     * @param design the design
     * @param weather the hourly weather
     * @param sun the sun on the collector's plane, present with a solar circuit
     */
    public static TankNetwork of(Design design, Weather weather, Optional<CollectorSun> sun) {
        Network.Assembly assembly = new Network.Assembly(
                design.contentsHeatCapacityJPerK(), design.control().setpointC());
        Surroundings surroundings = new Surroundings(weather, GroundTemperature.of(design, weather), assembly);
        int around = design.tank().place() instanceof Place.Indoors indoors
                ? assembly.known("room", indoors.roomC())
                : surroundings.air();
        MixerPart mixer = new MixerPart(design.mixer(), surroundings, assembly);
        FeedPart feed = new FeedPart(design, surroundings, around, assembly);
        OptionalInt collector = OptionalInt.empty();
        if (design.solar().isPresent()) {
            SolarPart solar = new SolarPart(design, sun.orElseThrow(), surroundings, mixer::isRunning, assembly);
            collector = OptionalInt.of(solar.node());
        }
        OptionalInt backupWater = OptionalInt.empty();
        if (design.backup().isPresent()) {
            backupWater = new BackupPart(design, surroundings, around, mixer::isRunning, assembly).node();
        }
        new EnvelopePart(design, surroundings, around, assembly);
        FittingsPart.add(design, around, assembly);
        if (design.gas().isPresent()) {
            new GasPart(design, surroundings, feed::isOpen, assembly);
        }
        new Housekeeping(design, surroundings, assembly);
        return new TankNetwork(assembly.build(), Network.SLURRY, collector, backupWater);
    }

    /** The starting state at the start of an hour: slurry at the set-point, envelope steady, collector at the air's temperature. */
    public State start(Weather weather, int hour) {
        return start(weather, hour, network.nodes().get(slurry).initialC());
    }

    /** The same at another slurry temperature, the backup's water being as warm. */
    public State start(Weather weather, int hour, double slurryC) {
        State state = network.initialState();
        state.setNodeC(slurry, slurryC);
        backupWater.ifPresent(node -> state.setNodeC(node, slurryC));
        collector.ifPresent(node -> state.setNodeC(node, weather.airC().at(hour * Hours.HOUR_S)));
        SteadyStart.settle(network, state, hour);
        return state;
    }
}
