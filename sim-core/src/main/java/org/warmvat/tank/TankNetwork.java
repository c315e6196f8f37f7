package org.warmvat.tank;

import java.util.Optional;
import java.util.OptionalInt;
import org.warmvat.design.Design;
import org.warmvat.design.feeding.Hygienisation;
import org.warmvat.design.gas.Gas;
import org.warmvat.design.heating.BackupCircuit;
import org.warmvat.design.heating.BackupSource;
import org.warmvat.design.surroundings.Place;
import org.warmvat.engine.Hours;
import org.warmvat.engine.SteadyStart;
import org.warmvat.envelope.EnvelopePart;
import org.warmvat.envelope.FittingsPart;
import org.warmvat.envelope.TankSun;
import org.warmvat.feeding.FeedPart;
import org.warmvat.gas.CondensatePart;
import org.warmvat.gas.GasHolderPart;
import org.warmvat.gas.GasPart;
import org.warmvat.gas.GasUsePart;
import org.warmvat.heating.BackupPart;
import org.warmvat.heating.CollectorSun;
import org.warmvat.heating.MeasuredHeat;
import org.warmvat.heating.SolarPart;
import org.warmvat.network.Network;
import org.warmvat.network.State;
import org.warmvat.network.Supply;
import org.warmvat.network.Surroundings;
import org.warmvat.network.meter.Around;
import org.warmvat.network.meter.Line;
import org.warmvat.season.InForce;
import org.warmvat.shelter.ShelterPart;
import org.warmvat.stirring.MixerPart;
import org.warmvat.weather.Weather;

/**
 * A design in its weather as a network ready to run once.
 *
 * @param network nodes, parts, meters
 * @param slurry the slurry's node
 * @param collector the solar circuit's node
 * @param backupWater the backup circuit's node
 * @param shelter the node of a shelter's air
 */
public record TankNetwork(
        Network network, int slurry, OptionalInt collector, OptionalInt backupWater, OptionalInt shelter) {

    /**
     * Assembles a design of which some is known.
     *
     * @param design the design
     * @param weather the hourly weather
     * @param sun the sun on the collector's plane, present with a solar circuit
     * @param tankSun the sun on the tank's faces
     * @param supplied what is known to have gone in
     * @param guest adds parts that no design describes
     */
    static TankNetwork of(
            Design design,
            Weather weather,
            Optional<CollectorSun> sun,
            TankSun tankSun,
            Supplied supplied,
            Guest guest) {
        Network.Assembly assembly = new Network.Assembly(
                design.contentsHeatCapacityJPerK(), design.control().setpointC());
        Surroundings surroundings = new Surroundings(weather, GroundTemperature.of(design, weather), assembly);
        InForce season = new InForce(design, surroundings, assembly);
        Around around = supplied.airIsRoom()
                ? Around.uncounted(surroundings.air())
                : around(design, tankSun, surroundings, assembly);
        OptionalInt shelter = design.tank().place().isSheltered() ? OptionalInt.of(around.node()) : OptionalInt.empty();
        Optional<GasHolderPart> holder = design.gas()
                .filter(gas -> gas.holder().isPresent())
                .map(gas -> new GasHolderPart(gas, reserveShare(gas, design), assembly));
        MixerPart mixer = new MixerPart(design.mixer(), surroundings, season, assembly);
        FeedPart feed = new FeedPart(
                design,
                surroundings,
                season,
                around,
                supply(design.feed().hygienisation().map(Hygienisation::source), holder, GasHolderPart.HYGIENISATION),
                assembly);
        supplied.mixerShare().ifPresent(mixer::turnAs);
        supplied.feedKgPerS().ifPresent(feed::feedAs);
        OptionalInt collector = solar(design, sun, surroundings, season, supplied, mixer, assembly);
        OptionalInt backupWater = backup(design, surroundings, around, season, supplied, holder, mixer, assembly);
        new EnvelopePart(design, tankSun, surroundings, around, assembly);
        FittingsPart.add(design, around, assembly);
        gas(design, surroundings, season, holder, feed, assembly);
        guest.join(assembly, surroundings);
        new KeyFigures(design, surroundings, season, assembly);
        SpellAccount.declare(design, surroundings, assembly);
        return new TankNetwork(assembly.build(), Network.SLURRY, collector, backupWater, shelter);
    }

    private static OptionalInt solar(
            Design design,
            Optional<CollectorSun> sun,
            Surroundings surroundings,
            InForce season,
            Supplied supplied,
            MixerPart mixer,
            Network.Assembly assembly) {
        if (supplied.solarHeatW().isPresent()) {
            new MeasuredHeat(supplied.solarHeatW().get(), assembly);
        } else if (design.solar().isPresent()) {
            SolarPart solar =
                    new SolarPart(design, sun.orElseThrow(), surroundings, season, mixer::isRunning, assembly);
            return OptionalInt.of(solar.node());
        }
        return OptionalInt.empty();
    }

    private static OptionalInt backup(
            Design design,
            Surroundings surroundings,
            Around around,
            InForce season,
            Supplied supplied,
            Optional<GasHolderPart> holder,
            MixerPart mixer,
            Network.Assembly assembly) {
        if (supplied.backupHeatW().isPresent()) {
            new MeasuredHeat(supplied.backupHeatW().get(), assembly);
        } else if (design.backup().isPresent()) {
            Supply supply = supply(design.backup().map(BackupCircuit::source), holder, GasHolderPart.OWN_GAS);
            BackupPart backup =
                    new BackupPart(design, surroundings, around, season, supply, mixer::isRunning, assembly);
            supplied.backupPowerW().ifPresent(watts -> backup.heatAs(watts, assembly));
            return backup.node();
        }
        return OptionalInt.empty();
    }

    private static void gas(
            Design design,
            Surroundings surroundings,
            InForce season,
            Optional<GasHolderPart> holder,
            FeedPart feed,
            Network.Assembly assembly) {
        if (design.gas().isPresent()) {
            GasPart gas = new GasPart(design, surroundings, season, feed::isOpen, assembly);
            holder.ifPresent(filled -> {
                filled.filledBy(gas, assembly);
                design.gas().get().uses().forEach(use -> new GasUsePart(use, filled, surroundings, assembly));
            });
            if (design.gas().get().condensate().isPresent()) {
                new CondensatePart(design.gas().get(), gas, surroundings, assembly);
            }
        }
    }

    private static Around around(Design design, TankSun sun, Surroundings surroundings, Network.Assembly assembly) {
        if (design.tank().place() instanceof Place.Indoors indoors) {
            return Around.uncounted(assembly.known("room", indoors.roomC()));
        }
        return design.shelter()
                .map(shelter -> new ShelterPart(design, shelter, sun::lidWPerM2, surroundings, assembly).around())
                .orElseGet(() -> Around.uncounted(surroundings.air()));
    }

    /** Share of the holder kept for the tank's own heat: nothing where nothing of the design draws own gas. */
    private static double reserveShare(Gas gas, Design design) {
        return design.burnsOwnGas() ? gas.holder().orElseThrow().reserveShare() : 0;
    }

    /** What a heater burns: its own gas is the holder's where there is one. */
    private static Supply supply(Optional<BackupSource> source, Optional<GasHolderPart> holder, Line told) {
        return source.filter(BackupSource.OWN_GAS::equals)
                .flatMap(ownGas -> holder)
                .map(filled -> filled.forOwnHeat(told))
                .orElse(Supply.BOUGHT);
    }

    /** The starting state at the start of an hour: envelope steady, collector and shelter at the air's temperature, backup water as warm as the slurry. */
    public State start(Weather weather, int hour, double slurryC) {
        State state = network.initialState();
        state.setNodeC(slurry, slurryC);
        backupWater.ifPresent(node -> state.setNodeC(node, slurryC));
        collector.ifPresent(node -> state.setNodeC(node, weather.airC().at(hour * Hours.HOUR_S)));
        shelter.ifPresent(node -> state.setNodeC(node, weather.airC().at(hour * Hours.HOUR_S)));
        SteadyStart.settle(network, state, hour);
        return state;
    }
}
