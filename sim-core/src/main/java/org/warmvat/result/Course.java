package org.warmvat.result;

import java.time.LocalDateTime;
import java.util.Arrays;

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
                new Heat(cut(heat.solarW, from, to), cut(heat.backupW, from, to), cut(heat.needW, from, to)));
    }

    private static double[] cut(double[] values, int from, int to) {
        return Arrays.copyOfRange(values, from, to);
    }
}
