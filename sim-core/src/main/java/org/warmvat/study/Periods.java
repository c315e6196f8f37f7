package org.warmvat.study;

import java.time.LocalDateTime;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;
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

/** Sums the hours of a log into days, months and the whole run. */
final class Periods {

    private static final double J_PER_KWH = 3.6e6;
    private static final double S_PER_HOUR = 3600;

    private final Design design;
    private final HourLog log;
    private final LocalDateTime start;
    private final double[] airShare;

    Periods(Design design, HourLog log, LocalDateTime start) {
        this.design = design;
        this.log = log;
        this.start = start;
        airShare = AirShare.byHour(design, log);
    }

    /** The whole run. */
    Period whole() {
        return period("year", 0, log.hours());
    }

    /** Calendar months in order, those cut by the run's ends in part. */
    List<Period> months() {
        return cut(YearMonth::from);
    }

    /** Calendar days in order. */
    List<Period> days() {
        return cut(LocalDateTime::toLocalDate);
    }

    /** An hour belongs to the day and month in which it starts; both print as ISO 8601 has it. */
    private List<Period> cut(Function<LocalDateTime, Object> label) {
        List<Period> periods = new ArrayList<>();
        Object open = label.apply(start);
        int from = 0;
        for (int hour = 1; hour <= log.hours(); hour++) {
            Object next = label.apply(start.plusHours(hour));
            if (hour == log.hours() || !open.equals(next)) {
                periods.add(period(open.toString(), from, hour));
                open = next;
                from = hour;
            }
        }
        return periods;
    }

    private Period period(String label, int from, int to) {
        Heats heats = heats(from, to);
        Circuits circuits = circuits(from, to);
        Electricity electricity = electricity(from, to);
        return new Period(
                label,
                to - from,
                heats,
                losses(from, to),
                circuits,
                stored(from, to),
                electricity,
                gas(from, to, circuits, electricity),
                slurry(from, to),
                counts(from, to));
    }

    private Heats heats(int from, int to) {
        return new Heats(
                kWh(SolarPart.SOLAR_HEAT, from, to),
                kWh(BackupPart.BACKUP_HEAT, from, to),
                kWh(MixerPart.SHAFT_HEAT, from, to),
                kWh(GasPart.REACTION_HEAT, from, to),
                lossKWh(FeedPart.FEED_HEAT, from, to),
                lossKWh(GasPart.GAS_HEAT, from, to));
    }

    private Losses losses(int from, int to) {
        return new Losses(
                lossKWh(EnvelopePart.WALL, from, to) + lossKWh(EnvelopePart.EDGES, from, to),
                lossKWh(EnvelopePart.DRY_WALL, from, to),
                lossKWh(EnvelopePart.LID, from, to),
                lossKWh(EnvelopePart.FLOOR, from, to),
                lossKWh(FittingsPart.FITTINGS, from, to));
    }

    private Circuits circuits(int from, int to) {
        double powerKWh = kWh(BackupPart.BACKUP_POWER, from, to);
        double efficiency = design.backup().map(backup -> backup.efficiency()).orElse(1.0);
        return new Circuits(
                kWh(SolarPart.ABSORBED, from, to),
                lossKWh(SolarPart.COLLECTOR_AIR, from, to),
                powerKWh,
                lossKWh(BackupPart.BACKUP_AROUND, from, to),
                powerKWh / efficiency);
    }

    private Stored stored(int from, int to) {
        double slurryJ = design.contentsHeatCapacityJPerK() * (log.slurryC()[to] - log.slurryC()[from]);
        double envelopeJ = log.envelopeJ()[to] - log.envelopeJ()[from];
        double collectorJ = log.capacityOfCollectorJPerK() * (log.collectorC()[to] - log.collectorC()[from]);
        double backupJ = log.capacityOfBackupJPerK() * (log.backupC()[to] - log.backupC()[from]);
        return new Stored(slurryJ / J_PER_KWH, envelopeJ / J_PER_KWH, collectorJ / J_PER_KWH, backupJ / J_PER_KWH);
    }

    private Electricity electricity(int from, int to) {
        return new Electricity(
                kWh(MixerPart.MIXER_ELECTRICITY, from, to),
                kWh(FeedPart.AUGER_ELECTRICITY, from, to),
                kWh(FeedPart.SHREDDER_ELECTRICITY, from, to),
                kWh(SolarPart.SOLAR_PUMP_ELECTRICITY, from, to),
                kWh(BackupPart.BACKUP_PUMP_ELECTRICITY, from, to),
                kWh(GasPart.AIR_PUMP_ELECTRICITY, from, to),
                kWh(Housekeeping.ELECTRONICS_ELECTRICITY, from, to));
    }

    private GasFigures gas(int from, int to, Circuits circuits, Electricity electricity) {
        double methane = sum(log.meter(GasPart.METHANE), from, to);
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
                highestAirShare(from, to));
    }

    private OptionalDouble highestAirShare(int from, int to) {
        double highest = 0;
        for (int hour = from; hour < to && hour < airShare.length; hour++) {
            highest = Math.max(highest, airShare[hour]);
        }
        return airShare.length == 0 ? OptionalDouble.empty() : OptionalDouble.of(highest);
    }

    private SlurryTemperature slurry(int from, int to) {
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        for (int hour = from; hour < to; hour++) {
            least = Math.min(least, log.leastC()[hour]);
            most = Math.max(most, log.mostC()[hour]);
        }
        double mean = sum(log.meter(Housekeeping.SLURRY_TEMPERATURE), from, to) / ((to - from) * S_PER_HOUR);
        return new SlurryTemperature(least, mean, most);
    }

    private Counts counts(int from, int to) {
        String backupStart = log.hasSwitch(BackupPart.BACKUP_PUMP) ? BackupPart.BACKUP_PUMP : BackupPart.DEMAND;
        return new Counts(
                hoursOf(Housekeeping.BELOW_FLOOR, from, to),
                hoursOf(SolarPart.STAGNATION, from, to),
                hoursOf(SolarPart.SOLAR_CAKING, from, to),
                hoursOf(BackupPart.BACKUP_CAKING, from, to),
                hoursOf(SolarPart.LOOP_FROZEN, from, to),
                hoursOf(FittingsPart.COLD_PIPE_END, from, to),
                startsOf(SolarPart.SOLAR_PUMP, from, to),
                startsOf(backupStart, from, to),
                AirShare.hoursAboveLimit(design, airShare, from, to));
    }

    private double kWh(String meter, int from, int to) {
        return sum(log.meter(meter), from, to) / J_PER_KWH;
    }

    /** A loss is a negative receipt; no loss is 0, not -0. */
    private double lossKWh(String meter, int from, int to) {
        return 0.0 - kWh(meter, from, to);
    }

    private double hoursOf(String watch, int from, int to) {
        return sum(log.watchS(watch), from, to) / S_PER_HOUR;
    }

    private int startsOf(String name, int from, int to) {
        int[] starts = log.starts(name);
        int count = 0;
        for (int hour = from; hour < to; hour++) {
            count += starts[hour];
        }
        return count;
    }

    private static double sum(double[] values, int from, int to) {
        double sum = 0;
        for (int hour = from; hour < to; hour++) {
            sum += values[hour];
        }
        return sum;
    }
}
