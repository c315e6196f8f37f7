package org.warmvat.study;

import java.time.LocalDateTime;
import java.util.Arrays;
import java.util.Optional;
import org.warmvat.design.Design;
import org.warmvat.envelope.EnvelopePart;
import org.warmvat.envelope.FittingsPart;
import org.warmvat.feeding.FeedPart;
import org.warmvat.gas.GasPart;
import org.warmvat.heating.BackupPart;
import org.warmvat.heating.SolarPart;
import org.warmvat.result.Hourly;
import org.warmvat.stirring.MixerPart;
import org.warmvat.tank.Housekeeping;
import org.warmvat.weather.Weather;

/** Turns a log into the hourly columns of a result: temperatures at hour ends, powers as means. */
final class HourlySeries {

    private static final double HOUR_S = 3600;

    private final HourLog log;

    private HourlySeries(HourLog log) {
        this.log = log;
    }

    static Hourly of(Design design, Weather weather, HourLog log) {
        HourlySeries series = new HourlySeries(log);
        boolean solar = design.solar().isPresent();
        boolean backup = design.backup().isPresent();
        boolean water = log.capacityOfBackupJPerK() > 0;
        LocalDateTime start = weather.start();
        return new Hourly(
                start,
                ends(log.slurryC()),
                Optional.of(log.collectorC()).filter(c -> solar).map(HourlySeries::ends),
                Optional.of(log.backupC()).filter(c -> water).map(HourlySeries::ends),
                series.air(weather),
                series.ifPresent(solar, 1, SolarPart.SOLAR_HEAT),
                series.ifPresent(backup, 1, BackupPart.BACKUP_HEAT),
                series.mean(
                        -1,
                        EnvelopePart.WALL,
                        EnvelopePart.DRY_WALL,
                        EnvelopePart.LID,
                        EnvelopePart.FLOOR,
                        EnvelopePart.EDGES,
                        FittingsPart.FITTINGS,
                        GasPart.GAS_HEAT),
                series.mean(-1, FeedPart.FEED_HEAT),
                series.mean(1, MixerPart.MIXER_ELECTRICITY),
                series.mean(1, FeedPart.AUGER_ELECTRICITY),
                series.mean(
                        1,
                        FeedPart.SHREDDER_ELECTRICITY,
                        SolarPart.SOLAR_PUMP_ELECTRICITY,
                        BackupPart.BACKUP_PUMP_ELECTRICITY,
                        GasPart.AIR_PUMP_ELECTRICITY,
                        Housekeeping.ELECTRONICS_ELECTRICITY),
                series.mean(HOUR_S, GasPart.METHANE),
                series.ifPresent(solar, 1, SolarPart.PLANE_IRRADIATION));
    }

    private static double[] ends(double[] edges) {
        return Arrays.copyOfRange(edges, 1, edges.length);
    }

    private double[] air(Weather weather) {
        double[] air = new double[log.hours()];
        for (int hour = 0; hour < air.length; hour++) {
            air[hour] = weather.airC().at((hour + 1) * HOUR_S);
        }
        return air;
    }

    private Optional<double[]> ifPresent(boolean present, double scale, String meter) {
        return present ? Optional.of(mean(scale, meter)) : Optional.empty();
    }

    /** Sum of meters as a mean rate over the hour, scaled; 0, not -0, where nothing flows. */
    private double[] mean(double scale, String... meters) {
        double[] mean = new double[log.hours()];
        for (String meter : meters) {
            double[] integral = log.meter(meter);
            for (int hour = 0; hour < mean.length; hour++) {
                mean[hour] += scale * integral[hour] / HOUR_S + 0.0;
            }
        }
        return mean;
    }
}
