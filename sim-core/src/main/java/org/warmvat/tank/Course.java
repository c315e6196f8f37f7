package org.warmvat.tank;

import java.time.LocalDateTime;
import java.util.Arrays;
import java.util.List;
import org.warmvat.account.Account;
import org.warmvat.account.Hourly;
import org.warmvat.account.Period;
import org.warmvat.engine.Hours;
import org.warmvat.heating.BackupPart;
import org.warmvat.network.Warning;

/**
 * A run hour by hour. The arrays are shared, not copied: read only.
 *
 * @param start beginning of the first hour
 * @param slurryC slurry temperature at the end of each hour
 * @param leastC lowest slurry temperature of each hour
 * @param shortHours share of each hour below the floor
 * @param airC air temperature at the end of each hour
 * @param heat what warmed the slurry and what it needed
 * @param boughtKWh what the backup bought over the whole run
 * @param whole the sums of the whole run
 * @param warnings what the user must know of the whole run
 */
public record Course(
        LocalDateTime start,
        double[] slurryC,
        double[] leastC,
        double[] shortHours,
        double[] airC,
        Heat heat,
        double boughtKWh,
        Period whole,
        List<Warning> warnings) {

    /**
     * Heat hour by hour, W.
     *
     * @param solarW from the solar coil
     * @param backupW from the backup
     * @param needW what left the slurry by loss, feed and gas, less what stirring and digestion gave
     */
    public record Heat(double[] solarW, double[] backupW, double[] needW) {}

    /**
     * Runs over some hours from the present state of a run.
     *
     * @throws org.warmvat.account.LedgerOpen when a balance does not close
     */
    public static Course of(TankRun run, Hours hours) {
        double beforeC = run.slurryC();
        Account account = run.account(hours, Account.Keep.HOURS);
        Hourly hourly = account.hourly();
        double capacity = run.tank().network().capacitiesJPerK()[run.tank().slurry()];
        double[] slurry = hourly.orZero("slurry_c");
        double[] solar = hourly.orZero("solar_heat_w");
        double[] backup = hourly.orZero("backup_heat_w");
        double[] need = new double[hourly.hours()];
        for (int i = 0; i < need.length; i++) {
            double risenK = slurry[i] - (i == 0 ? beforeC : slurry[i - 1]);
            need[i] = solar[i] + backup[i] - capacity * risenK / Hours.HOUR_S;
        }
        return new Course(
                hourly.start(),
                slurry,
                hourly.leastC(),
                hourly.watchHours(KeyFigures.BELOW_FLOOR),
                hourly.orZero("air_c"),
                new Heat(solar, backup, need),
                account.whole().of(BackupPart.BOUGHT),
                account.whole(),
                account.warnings());
    }

    /** How many hours. */
    public int hours() {
        return slurryC.length;
    }

    /** End of an hour. */
    public LocalDateTime end(int hour) {
        return start.plusHours(hour + 1L);
    }

    /** Its hours from an index up to another, the latter excluded. */
    public Course part(int from, int to) {
        return new Course(
                start.plusHours(from),
                cut(slurryC, from, to),
                cut(leastC, from, to),
                cut(shortHours, from, to),
                cut(airC, from, to),
                new Heat(cut(heat.solarW, from, to), cut(heat.backupW, from, to), cut(heat.needW, from, to)),
                boughtKWh,
                whole,
                warnings);
    }

    private static double[] cut(double[] values, int from, int to) {
        return Arrays.copyOfRange(values, from, to);
    }
}
