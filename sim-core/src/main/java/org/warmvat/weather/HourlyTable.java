package org.warmvat.weather;

import java.time.LocalDateTime;
import java.util.Arrays;
import java.util.BitSet;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * Complete hourly columns as a reader or a generator hands them over: every hour is there and every column is whole.
 *
 * @param site where
 * @param start beginning of the first hour, local standard time
 * @param stamp which moment of its hour a value at the stamp belongs to
 * @param columns the quantities that are known, each with one finite value an hour
 * @param filledHours the hours in which at least one value was missing and filled
 * @param notes what was changed on the way in, one sentence each
 * @param slopeDeg slope of the plane on which the file says that its global irradiance is; 0 is the horizontal, which is wanted
 */
public record HourlyTable(
        Site site,
        LocalDateTime start,
        Stamp stamp,
        Map<Quantity, double[]> columns,
        BitSet filledHours,
        List<String> notes,
        double slopeDeg) {
    /** The year without a leap day onto which typical years are laid and into which made ones fall. */
    public static final int TYPICAL_YEAR = 2025;

    /** Checks the columns; the arrays are taken over, not copied. */
    public HourlyTable {
        columns = new EnumMap<>(columns);
        filledHours = (BitSet) filledHours.clone();
        notes = List.copyOf(notes);
        double[] air = columns.get(Quantity.AIR);
        if (air == null || air.length == 0) {
            throw new IllegalArgumentException("no air temperature");
        }
        columns.forEach((quantity, values) -> check(quantity, values, air.length));
        if (!hasSunlight(columns)) {
            throw new IllegalArgumentException("neither global irradiance nor both beam and diffuse");
        }
    }

    /** With irradiance on the horizontal. */
    public HourlyTable(
            Site site,
            LocalDateTime start,
            Stamp stamp,
            Map<Quantity, double[]> columns,
            BitSet filledHours,
            List<String> notes) {
        this(site, start, stamp, columns, filledHours, notes, 0);
    }

    /** With nothing filled or changed. */
    public HourlyTable(Site site, LocalDateTime start, Stamp stamp, Map<Quantity, double[]> columns) {
        this(site, start, stamp, columns, new BitSet(), List.of());
    }

    /** Some of the hours in a row. */
    public HourlyTable part(int from, int to) {
        Map<Quantity, double[]> parts = new EnumMap<>(Quantity.class);
        columns.forEach((quantity, values) -> parts.put(quantity, Arrays.copyOfRange(values, from, to)));
        return new HourlyTable(site, start.plusHours(from), stamp, parts, filledHours.get(from, to), notes, slopeDeg);
    }

    /** The same rows with air and dew point warmer and all irradiances times a factor, within the limits of their columns. */
    HourlyTable changed(double warmerK, double sunFactor) {
        Map<Quantity, double[]> changed = new EnumMap<>(columns);
        changed.replaceAll((quantity, values) -> switch (quantity) {
            case AIR, DEW_POINT -> within(quantity, values, 1, warmerK);
            case GLOBAL, BEAM, DIFFUSE -> within(quantity, values, sunFactor, 0);
            default -> values;
        });
        return new HourlyTable(site, start, stamp, changed, filledHours, notes, slopeDeg);
    }

    private static double[] within(Quantity quantity, double[] values, double factor, double plus) {
        double[] within = new double[values.length];
        Arrays.setAll(within, i -> Math.max(quantity.least(), Math.min(quantity.most(), factor * values[i] + plus)));
        return within;
    }

    /** The same rows with times that name another moment of their hours. */
    public HourlyTable stamped(Stamp right) {
        LocalDateTime moved = start.plusMinutes(stamp.minutesIntoHour() - right.minutesIntoHour());
        return new HourlyTable(site, moved, right, columns, filledHours, notes, slopeDeg);
    }

    /** The same rows with times of another clock. */
    public HourlyTable onClock(double utcOffsetH) {
        Site right = new Site(site.name(), site.latitudeDeg(), site.longitudeDeg(), site.elevationM(), utcOffsetH);
        return new HourlyTable(right, start, stamp, columns, filledHours, notes, slopeDeg);
    }

    /** The same rows of a file that says that its global irradiance is that on a plane of another slope. */
    public HourlyTable onPlane(double statedSlopeDeg) {
        return new HourlyTable(site, start, stamp, columns, filledHours, notes, statedSlopeDeg);
    }

    /** How many hours. */
    public int hours() {
        return columns.get(Quantity.AIR).length;
    }

    private static boolean hasSunlight(Map<Quantity, double[]> columns) {
        return columns.containsKey(Quantity.GLOBAL)
                || (columns.containsKey(Quantity.BEAM) && columns.containsKey(Quantity.DIFFUSE));
    }

    private static void check(Quantity quantity, double[] values, int hours) {
        if (values.length != hours) {
            throw new IllegalArgumentException(quantity.key() + " has " + values.length + " values, not " + hours);
        }
        for (double value : values) {
            if (!(value >= quantity.least() && value <= quantity.most())) {
                throw new IllegalArgumentException(quantity.key() + " out of range: " + value);
            }
        }
    }
}
