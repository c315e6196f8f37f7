package org.warmvat.cli.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import org.warmvat.cli.answer.Figure.Needs;
import org.warmvat.result.Circuits;
import org.warmvat.result.Counts;
import org.warmvat.result.Electricity;
import org.warmvat.result.GasFigures;
import org.warmvat.result.Heats;
import org.warmvat.result.Ledger;
import org.warmvat.result.Losses;
import org.warmvat.result.Period;
import org.warmvat.result.SlurryTemperature;
import org.warmvat.result.Stored;

/** The catalogue of a period's figures: one list from which JSON and CSV are both written, so that they cannot differ. */
final class Figures {

    /** All figures in the order in which they are written; figures of a group stand together. */
    static final List<Figure> ALL = catalogue();

    private final List<Figure> figures = new ArrayList<>();

    private Figures() {}

    private static List<Figure> catalogue() {
        Figures all = new Figures();
        all.alone("hours", Needs.NOTHING, Period::hours);
        all.heat();
        all.losses();
        all.circuits();
        all.stored();
        all.electricity();
        all.gas();
        all.slurry();
        all.counts();
        all.ledger();
        return List.copyOf(all.figures);
    }

    private void heat() {
        heat("solar_heat_kwh", Needs.SOLAR, Heats::solarKWh);
        heat("backup_heat_kwh", Needs.BACKUP, Heats::backupKWh);
        figures.add(new Figure("", "solar_share", Needs.NOTHING, Period::solarShare));
        heat("shaft_heat_kwh", Needs.NOTHING, Heats::shaftKWh);
        heat("reaction_heat_kwh", Needs.GAS, Heats::reactionKWh);
        heat("feed_heat_kwh", Needs.NOTHING, Heats::feedKWh);
        heat("gas_loss_kwh", Needs.GAS, Heats::gasKWh);
    }

    private void losses() {
        loss("wall", Losses::wallKWh);
        loss("dry_wall", Losses::dryWallKWh);
        loss("lid", Losses::lidKWh);
        loss("floor", Losses::floorKWh);
        alone("fittings_loss_kwh", Needs.NOTHING, period -> period.losses().fittingsKWh());
    }

    private void circuits() {
        circuit("collector_absorbed_kwh", Needs.SOLAR, Circuits::collectorAbsorbedKWh);
        circuit("collector_loss_kwh", Needs.SOLAR, Circuits::collectorLossKWh);
        circuit("backup_power_kwh", Needs.BACKUP, Circuits::backupPowerKWh);
        circuit("backup_circuit_loss_kwh", Needs.BACKUP, Circuits::backupLossKWh);
        circuit("backup_bought_kwh", Needs.BACKUP, Circuits::backupBoughtKWh);
    }

    private void stored() {
        stored("slurry", Needs.NOTHING, Stored::slurryKWh);
        stored("envelope", Needs.NOTHING, Stored::envelopeKWh);
        stored("collector", Needs.SOLAR, Stored::collectorKWh);
        stored("backup_circuit", Needs.BACKUP, Stored::backupCircuitKWh);
    }

    private void electricity() {
        electricity("mixer", Needs.NOTHING, Electricity::mixerKWh);
        electricity("auger", Needs.NOTHING, Electricity::augerKWh);
        electricity("shredder", Needs.NOTHING, Electricity::shredderKWh);
        electricity("solar_pump", Needs.SOLAR, Electricity::solarPumpKWh);
        electricity("backup_pump", Needs.BACKUP, Electricity::backupPumpKWh);
        electricity("air_pump", Needs.GAS, Electricity::airPumpKWh);
        electricity("electronics", Needs.NOTHING, Electricity::electronicsKWh);
        alone(
                "electricity_total_kwh",
                Needs.NOTHING,
                period -> period.electricity().totalKWh());
    }

    private void gas() {
        gas("methane_nm3", Needs.GAS, GasFigures::methaneNm3);
        gas("biogas_nm3", Needs.GAS, GasFigures::biogasNm3);
        gas("gas_energy_kwh", Needs.GAS, GasFigures::gasEnergyKWh);
        gas("net_energy_kwh", Needs.NOTHING, GasFigures::netEnergyKWh);
        gas("net_energy_weighted_kwh", Needs.NOTHING, GasFigures::netEnergyWeightedKWh);
        figures.add(new Figure(
                "", "highest_air_share", Needs.GAS, period -> period.gas().highestAirShareFraction()));
    }

    private void slurry() {
        slurry("least", SlurryTemperature::leastC);
        slurry("mean", SlurryTemperature::meanC);
        slurry("most", SlurryTemperature::mostC);
    }

    private void counts() {
        count("hours_below_floor", Needs.NOTHING, Counts::belowFloorHours);
        count("stagnation_hours", Needs.SOLAR, Counts::stagnationHours);
        count("solar_coil_caking_hours", Needs.SOLAR, Counts::solarCakingHours);
        count("backup_coil_caking_hours", Needs.BACKUP, Counts::backupCakingHours);
        count("loop_frozen_hours", Needs.SOLAR, Counts::loopFrozenHours);
        count("cold_pipe_end_hours", Needs.NOTHING, Counts::coldPipeEndHours);
        count("air_share_above_limit_hours", Needs.GAS, Counts::airShareAboveLimitHours);
        count("solar_pump_starts", Needs.SOLAR, Counts::solarPumpStarts);
        count("backup_starts", Needs.BACKUP, Counts::backupStarts);
    }

    private void ledger() {
        ledger("residual_fraction", Needs.NOTHING, Ledger::residualFraction);
        ledger("slurry_residual_kwh", Needs.NOTHING, Ledger::slurryResidualKWh);
        ledger("collector_residual_kwh", Needs.SOLAR, Ledger::collectorResidualKWh);
        ledger("backup_residual_kwh", Needs.BACKUP, Ledger::backupResidualKWh);
        ledger("passed_through_kwh", Needs.NOTHING, Ledger::passedThroughKWh);
    }

    private void alone(String key, Needs needs, ToDoubleFunction<Period> value) {
        in("", key, needs, Function.identity(), value);
    }

    private void heat(String key, Needs needs, ToDoubleFunction<Heats> value) {
        in("", key, needs, Period::heats, value);
    }

    private void loss(String part, ToDoubleFunction<Losses> value) {
        in("envelope_loss_kwh", part, Needs.NOTHING, Period::losses, value);
    }

    private void circuit(String key, Needs needs, ToDoubleFunction<Circuits> value) {
        in("", key, needs, Period::circuits, value);
    }

    private void stored(String part, Needs needs, ToDoubleFunction<Stored> value) {
        in("stored_kwh", part, needs, Period::stored, value);
    }

    private void electricity(String part, Needs needs, ToDoubleFunction<Electricity> value) {
        in("electricity_kwh", part, needs, Period::electricity, value);
    }

    private void gas(String key, Needs needs, ToDoubleFunction<GasFigures> value) {
        in("", key, needs, Period::gas, value);
    }

    private void slurry(String part, ToDoubleFunction<SlurryTemperature> value) {
        in("slurry_c", part, Needs.NOTHING, Period::slurry, value);
    }

    private void count(String key, Needs needs, ToDoubleFunction<Counts> value) {
        in("", key, needs, Period::counts, value);
    }

    private void ledger(String part, Needs needs, ToDoubleFunction<Ledger> value) {
        in("ledger", part, needs, Period::ledger, value);
    }

    private <T> void in(String group, String key, Needs needs, Function<Period, T> part, ToDoubleFunction<T> value) {
        figures.add(
                new Figure(group, key, needs, period -> OptionalDouble.of(value.applyAsDouble(part.apply(period)))));
    }
}
