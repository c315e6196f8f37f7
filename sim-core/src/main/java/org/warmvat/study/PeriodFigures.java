package org.warmvat.study;

import org.warmvat.design.BackupSource;
import org.warmvat.design.Design;
import org.warmvat.envelope.EnvelopePart;
import org.warmvat.envelope.FittingsPart;
import org.warmvat.feeding.FeedPart;
import org.warmvat.gas.GasEnergy;
import org.warmvat.gas.GasPart;
import org.warmvat.heating.BackupPart;
import org.warmvat.heating.SolarPart;
import org.warmvat.result.Circuits;
import org.warmvat.result.Counts;
import org.warmvat.result.Electricity;
import org.warmvat.result.GasFigures;
import org.warmvat.result.Heats;
import org.warmvat.result.Losses;
import org.warmvat.result.Period;
import org.warmvat.result.SlurryTemperature;
import org.warmvat.result.Stored;
import org.warmvat.stirring.MixerPart;
import org.warmvat.tank.Housekeeping;

/** Turns what a span of hours added up to into the figures of a period. */
final class PeriodFigures {

    private static final double J_PER_KWH = 3.6e6;
    private static final double S_PER_HOUR = 3600;

    private final Design design;
    private final SpanSums tally;

    private PeriodFigures(Design design, SpanSums tally) {
        this.design = design;
        this.tally = tally;
    }

    /** The figures of a span. */
    static Period of(String label, Design design, SpanSums tally) {
        return new PeriodFigures(design, tally).period(label);
    }

    private Period period(String label) {
        Heats heats = heats();
        Circuits circuits = circuits();
        Electricity electricity = electricity();
        return new Period(
                label,
                tally.hours(),
                heats,
                losses(),
                circuits,
                stored(),
                electricity,
                gas(circuits, electricity),
                slurry(),
                counts());
    }

    private Heats heats() {
        return new Heats(
                kWh(SolarPart.SOLAR_HEAT),
                kWh(BackupPart.BACKUP_HEAT),
                kWh(MixerPart.SHAFT_HEAT),
                kWh(GasPart.REACTION_HEAT),
                lossKWh(FeedPart.FEED_HEAT),
                lossKWh(GasPart.GAS_HEAT));
    }

    private Losses losses() {
        return new Losses(
                lossKWh(EnvelopePart.WALL) + lossKWh(EnvelopePart.EDGES),
                lossKWh(EnvelopePart.DRY_WALL),
                lossKWh(EnvelopePart.LID),
                lossKWh(EnvelopePart.FLOOR),
                lossKWh(FittingsPart.FITTINGS));
    }

    private Circuits circuits() {
        double powerKWh = kWh(BackupPart.BACKUP_POWER);
        double efficiency = design.backup().map(backup -> backup.efficiency()).orElse(1.0);
        return new Circuits(
                kWh(SolarPart.ABSORBED),
                lossKWh(SolarPart.COLLECTOR_AIR),
                powerKWh,
                lossKWh(BackupPart.BACKUP_AROUND),
                powerKWh / efficiency);
    }

    private Stored stored() {
        double slurryJ = design.contentsHeatCapacityJPerK() * tally.slurryRiseK();
        return new Stored(
                slurryJ / J_PER_KWH,
                tally.envelopeStoredJ() / J_PER_KWH,
                tally.collectorStoredJ() / J_PER_KWH,
                tally.backupStoredJ() / J_PER_KWH);
    }

    private Electricity electricity() {
        return new Electricity(
                kWh(MixerPart.MIXER_ELECTRICITY),
                kWh(FeedPart.AUGER_ELECTRICITY),
                kWh(FeedPart.SHREDDER_ELECTRICITY),
                kWh(SolarPart.SOLAR_PUMP_ELECTRICITY),
                kWh(BackupPart.BACKUP_PUMP_ELECTRICITY),
                kWh(GasPart.AIR_PUMP_ELECTRICITY),
                kWh(Housekeeping.ELECTRONICS_ELECTRICITY));
    }

    private GasFigures gas(Circuits circuits, Electricity electricity) {
        double methane = tally.meter(GasPart.METHANE);
        double biogas = design.gas().map(gas -> methane / gas.methaneFraction()).orElse(0.0);
        double energyKWh = methane * GasEnergy.METHANE_J_PER_NM3 / J_PER_KWH;
        double bought = circuits.backupBoughtKWh();
        double factor = design.prices().primaryEnergyFactor();
        boolean electric = design.backup()
                .filter(backup -> backup.source() == BackupSource.ELECTRIC)
                .isPresent();
        return new GasFigures(
                methane,
                biogas,
                energyKWh,
                energyKWh - bought - electricity.totalKWh(),
                energyKWh - bought * (electric ? factor : 1) - factor * electricity.totalKWh(),
                tally.highestAirShare());
    }

    private SlurryTemperature slurry() {
        double mean = tally.meter(Housekeeping.SLURRY_TEMPERATURE) / (tally.hours() * S_PER_HOUR);
        return new SlurryTemperature(tally.slurryLeastC(), mean, tally.slurryMostC());
    }

    private Counts counts() {
        String backupStart = tally.hasSwitch(BackupPart.BACKUP_PUMP) ? BackupPart.BACKUP_PUMP : BackupPart.DEMAND;
        return new Counts(
                hoursOf(Housekeeping.BELOW_FLOOR),
                hoursOf(SolarPart.STAGNATION),
                hoursOf(SolarPart.SOLAR_CAKING),
                hoursOf(BackupPart.BACKUP_CAKING),
                hoursOf(SolarPart.LOOP_FROZEN),
                hoursOf(FittingsPart.COLD_PIPE_END),
                tally.starts(SolarPart.SOLAR_PUMP),
                tally.starts(backupStart),
                tally.hoursAboveAirLimit());
    }

    private double kWh(String meter) {
        return tally.meter(meter) / J_PER_KWH;
    }

    /** A loss is a negative receipt; no loss is 0, not -0. */
    private double lossKWh(String meter) {
        return 0.0 - kWh(meter);
    }

    private double hoursOf(String watch) {
        return tally.watchS(watch) / S_PER_HOUR;
    }
}
