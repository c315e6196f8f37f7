package org.warmvat.study;

import java.time.LocalDateTime;
import java.util.Arrays;
import org.warmvat.engine.HourSink;
import org.warmvat.engine.Hours;
import org.warmvat.heating.BackupPart;
import org.warmvat.heating.SolarPart;
import org.warmvat.weather.Weather;

/**
 * A run hour by hour. The arrays are shared, not copied: read only.
 *
 * @param start beginning of the first hour
 * @param slurryC slurry temperature at the end of each hour
 * @param leastC lowest slurry temperature of each hour
 * @param shortHours share of each hour below the floor
 * @param airC air temperature at the end of each hour
 * @param heat what warmed the slurry and what it needed
 */
public record Course(
        LocalDateTime start, double[] slurryC, double[] leastC, double[] shortHours, double[] airC, Heat heat) {

    /**
     * Heat hour by hour, W.
     *
     * @param solarW from the solar coil
     * @param backupW from the backup
     * @param needW what left the slurry by loss, feed and gas, less what stirring and digestion gave
     */
    public record Heat(double[] solarW, double[] backupW, double[] needW) {}

    /** Runs over some hours from the present state of a run. */
    static Course of(TankRun run, Weather weather, Hours hours) {
        int count = hours.end() - hours.first();
        HourLog log = new HourLog(run.tank(), run.state(), hours.first(), count, HourSink.IGNORE);
        run.over(hours, log);
        double capacity = run.tank().network().capacitiesJPerK()[run.tank().slurry()];
        double[] solar = log.meter(SolarPart.SOLAR_HEAT);
        double[] backup = log.meter(BackupPart.BACKUP_HEAT);
        double[] edges = log.slurryC();
        double[] slurry = new double[count];
        double[] air = new double[count];
        double[] need = new double[count];
        for (int i = 0; i < count; i++) {
            slurry[i] = edges[i + 1];
            air[i] = weather.airC().at((hours.first() + i + 1) * Hours.HOUR_S);
            need[i] = (solar[i] + backup[i] - capacity * (edges[i + 1] - edges[i])) / Hours.HOUR_S;
        }
        return new Course(
                weather.start().plusHours(hours.first()),
                slurry,
                log.leastC(),
                perHour(log.watchS(Housekeeping.BELOW_FLOOR)),
                air,
                new Heat(perHour(solar), perHour(backup), need));
    }

    private static double[] perHour(double[] integral) {
        double[] mean = new double[integral.length];
        for (int i = 0; i < mean.length; i++) {
            mean[i] = integral[i] / Hours.HOUR_S;
        }
        return mean;
    }

    /** How many hours. */
    public int hours() {
        return slurryC.length;
    }

    /** End of an hour. */
    public LocalDateTime end(int hour) {
        return start.plusHours(hour + 1L);
    }

    /** Some of its hours. */
    Course part(int from, int to) {
        return new Course(
                start.plusHours(from),
                cut(slurryC, from, to),
                cut(leastC, from, to),
                cut(shortHours, from, to),
                cut(airC, from, to),
                new Heat(cut(heat.solarW, from, to), cut(heat.backupW, from, to), cut(heat.needW, from, to)));
    }

    private static double[] cut(double[] values, int from, int to) {
        return Arrays.copyOfRange(values, from, to);
    }
}
