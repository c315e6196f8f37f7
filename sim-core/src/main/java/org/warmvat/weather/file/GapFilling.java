package org.warmvat.weather.file;

import java.time.LocalDateTime;
import java.util.BitSet;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.warmvat.sun.Observer;
import org.warmvat.sun.SunTrack;
import org.warmvat.weather.HourlyTable;
import org.warmvat.weather.Humidity;
import org.warmvat.weather.Quantity;
import org.warmvat.weather.Site;
import org.warmvat.weather.Stamp;
import org.warmvat.weather.WeatherRefused;
import org.warmvat.weather.layout.RowTime;

/**
 * Makes whole columns of placed rows: gaps of at most six hours are filled by straight lines between the neighbours (at
 * the ends of the file by the nearest value), irradiance likewise but with nothing while the sun is down. Longer ones are filled from
 * the same hours of the days before and after where that is asked for, up to a stated length, and are faults otherwise. Columns
 * without any value count as absent.
 */
final class GapFilling {
    private final RawRows rows;
    private final Calendar.Placed placed;
    private final Site site;
    private final int fillHolesH;
    private final FileFaults faults;
    private final List<String> notes;
    private final BitSet filledHours = new BitSet();

    GapFilling(RawRows rows, Calendar.Placed placed, Site site, int fillHolesH, FileFaults faults, List<String> notes) {
        this.rows = rows;
        this.placed = placed;
        this.site = site;
        this.fillHolesH = fillHolesH;
        this.faults = faults;
        this.notes = notes;
    }

    /** The placed rows as a table without holes. */
    HourlyTable table(Stamp stamp) throws WeatherRefused {
        Map<Quantity, double[]> columns = columns();
        return new HourlyTable(site, RowTime.moment(placed.startMinute()), stamp, columns, filledHours, notes);
    }

    private Map<Quantity, double[]> columns() throws WeatherRefused {
        Map<Quantity, double[]> result = new EnumMap<>(Quantity.class);
        for (Quantity quantity : rows.quantities()) {
            column(quantity).ifPresent(values -> result.put(quantity, values));
        }
        dewPointFromHumidity(result);
        for (Map.Entry<Quantity, double[]> column : result.entrySet()) {
            fill(column.getKey(), column.getValue());
        }
        requireAirAndSunlight(result.keySet());
        faults.refuseIfAny();
        return result;
    }

    private void requireAirAndSunlight(Set<Quantity> present) throws WeatherRefused {
        if (!present.contains(Quantity.AIR)) {
            faults.add("the column of air temperature holds no value");
        }
        boolean both = present.contains(Quantity.BEAM) && present.contains(Quantity.DIFFUSE);
        if (!present.contains(Quantity.GLOBAL) && !both) {
            faults.add("the columns of irradiance hold no values, expected global_w_m2 or two of global_w_m2,"
                    + " beam_w_m2 and diffuse_w_m2");
        }
    }

    private Optional<double[]> column(Quantity quantity) {
        double[] values = new double[placed.hours()];
        boolean any = false;
        int negative = 0;
        for (int hour = 0; hour < values.length; hour++) {
            int row = placed.rowOfHour()[hour];
            double value = row < 0 ? Double.NaN : rows.value(quantity, row);
            any |= !Double.isNaN(value);
            if (quantity.isSunlight() && value < 0) {
                negative++;
                value = 0;
            }
            values[hour] = value;
        }
        if (negative > 0) {
            notes.add(negative + " values of " + quantity.key() + " a few watts below 0 were set to 0.");
        }
        return any ? Optional.of(values) : Optional.empty();
    }

    /** Dew point wins over relative humidity, which fills its holes and is then no longer needed. */
    private void dewPointFromHumidity(Map<Quantity, double[]> columns) {
        double[] dew = columns.get(Quantity.DEW_POINT);
        double[] air = columns.get(Quantity.AIR);
        if (dew == null || air == null) {
            return;
        }
        double[] humidity = columns.remove(Quantity.RELATIVE_HUMIDITY);
        int used = 0;
        for (int i = 0; humidity != null && i < dew.length; i++) {
            if (Double.isNaN(dew[i]) && !Double.isNaN(humidity[i]) && !Double.isNaN(air[i])) {
                dew[i] = Humidity.dewPointC(air[i], humidity[i]);
                used++;
            }
        }
        if (used > 0) {
            notes.add(used + " missing values of dew_point_c were taken from relative_humidity.");
        }
    }

    private void fill(Quantity quantity, double[] values) throws WeatherRefused {
        Told lines = new Told();
        Told days = new Told();
        double[] given = values.clone();
        int hour = 0;
        while (hour < values.length) {
            int end = hour;
            while (end < values.length && Double.isNaN(given[end])) {
                end++;
            }
            int gap = end - hour;
            if (gap > 0 && gap <= Calendar.LONGEST_GAP_H) {
                bridge(quantity, values, hour, end);
                lines.add(gap);
            } else if (gap > 0 && gap <= fillHolesH && copyDays(given, values, hour, end)) {
                days.add(gap);
            } else if (gap > 0) {
                tooLong(quantity, hour, gap);
            }
            filledHours.set(hour, end);
            hour = end + 1;
        }
        if (lines.hours > 0) {
            notes.add(lines.hours + " missing values of " + quantity.key() + " were filled by straight lines"
                    + (quantity.isSunlight() ? " (nothing while the sun is down)" : "") + "; the longest gap was "
                    + lines.longest + " h.");
        }
        if (days.hours > 0) {
            notes.add(days.hours + " missing values of " + quantity.key()
                    + " were filled from the same hours of the days before and after (--fill-holes " + fillHolesH
                    + "); the longest hole was " + days.longest + " h.");
        }
    }

    /** What was filled in one way. */
    private static final class Told {
        private int hours;
        private int longest;

        void add(int gap) {
            hours += gap;
            longest = Math.max(longest, gap);
        }
    }

    /** Fills a hole from the nearest days on both sides, each the more the nearer it is; false where there is none. */
    private static boolean copyDays(double[] given, double[] values, int from, int end) {
        for (int hour = from; hour < end; hour++) {
            int before = hour - 24 * ((hour - from) / 24 + 1);
            int after = hour + 24 * ((end - 1 - hour) / 24 + 1);
            double left = before >= 0 ? given[before] : Double.NaN;
            double right = after < given.length ? given[after] : Double.NaN;
            double share = (hour - before) / (double) (after - before);
            values[hour] = Double.isNaN(left) ? right : Double.isNaN(right) ? left : left + share * (right - left);
            if (Double.isNaN(values[hour])) {
                return false;
            }
        }
        return true;
    }

    private void bridge(Quantity quantity, double[] values, int from, int end) {
        double left = from > 0 ? values[from - 1] : values[end];
        double right = end < values.length ? values[end] : left;
        for (int i = from; i < end; i++) {
            double share = (i - from + 1.0) / (end - from + 1.0);
            values[i] = quantity.isSunlight() && isDark(i) ? 0 : left + share * (right - left);
        }
    }

    private boolean isDark(int hour) {
        Observer observer = new Observer(
                site.latitudeDeg(), site.longitudeDeg(), site.elevationM(), site.standardPressureHPa(), 10);
        LocalDateTime start = RowTime.moment(placed.startMinute() + 60L * hour);
        return SunTrack.over(observer, start, site.utcOffsetH(), 1)[0].sunlitFraction() == 0;
    }

    private void tooLong(Quantity quantity, int hour, int gap) throws WeatherRefused {
        int first = hour;
        while (placed.rowOfHour()[first] < 0) {
            first++;
        }
        faults.add(
                rows.line(placed.rowOfHour()[first]),
                quantity.key() + " is missing for " + gap + " hours from "
                        + RowTime.text(placed.startMinute() + 60L * hour) + ", expected gaps of at most "
                        + Math.max(Calendar.LONGEST_GAP_H, fillHolesH)
                        + " hours (longer ones are filled by --fill-holes HOURS)");
    }
}
