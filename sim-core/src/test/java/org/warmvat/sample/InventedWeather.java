package org.warmvat.sample;

import java.time.LocalDateTime;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;
import java.util.function.IntToDoubleFunction;
import java.util.function.UnaryOperator;
import org.warmvat.physics.PhysicalConstants;
import org.warmvat.weather.HourlyTable;
import org.warmvat.weather.Quantity;
import org.warmvat.weather.Site;
import org.warmvat.weather.Stamp;
import org.warmvat.weather.Weather;
import org.warmvat.weather.file.WeatherFiles;

/** Weather for tests: closed in itself, without files. */
public final class InventedWeather {

    /** First hour of most invented weather: a Monday in a common year. */
    public static final LocalDateTime START = LocalDateTime.of(2025, 3, 3, 0, 0);

    private static final Site SITE = new Site("Thornacre (invented)", 53.1, -2.4, 120, 0);

    private InventedWeather() {}

    /** The same air every hour, no wind, no sun, a sky as warm as the air. */
    public static Weather steady(double airC, int hours) {
        return varying(hours, hour -> airC);
    }

    /** Air at the hour ends, straight between them; no wind, no sun, a sky that follows the air hour by hour. */
    public static Weather varying(int hours, IntToDoubleFunction airC) {
        return new Weather(new HourlyTable(SITE, START, Stamp.HOUR_END, columns(hours, airC)));
    }

    /** Steady air from another moment on. */
    public static Weather steadyFrom(LocalDateTime start, double airC, int hours) {
        return new Weather(new HourlyTable(SITE, start, Stamp.HOUR_END, columns(hours, hour -> airC)));
    }

    /** Columns of dry, windless, sunless hours, to be altered. */
    public static Map<Quantity, double[]> columns(int hours, IntToDoubleFunction airC) {
        double[] air = new double[hours];
        Arrays.setAll(air, airC);
        Map<Quantity, double[]> columns = new EnumMap<>(Quantity.class);
        columns.put(Quantity.AIR, air);
        columns.put(Quantity.RELATIVE_HUMIDITY, filled(hours, 0.75));
        columns.put(Quantity.WIND, filled(hours, 0));
        columns.put(Quantity.PRESSURE, filled(hours, 1000));
        columns.put(Quantity.GLOBAL, filled(hours, 0));
        columns.put(
                Quantity.LONGWAVE,
                Arrays.stream(air).map(InventedWeather::blackSkyWPerM2).toArray());
        return columns;
    }

    /** Weather of some columns at the usual place. */
    public static Weather of(Map<Quantity, double[]> columns) {
        return new Weather(new HourlyTable(SITE, START, Stamp.HOUR_END, columns));
    }

    /** Long-wave irradiance of a sky of a temperature. */
    public static double blackSkyWPerM2(double celsius) {
        return PhysicalConstants.STEFAN_BOLTZMANN_W_PER_M2_K4 * Math.pow(PhysicalConstants.kelvin(celsius), 4);
    }

    /** The same value every hour. */
    public static double[] filled(int hours, double value) {
        double[] values = new double[hours];
        Arrays.fill(values, value);
        return values;
    }

    /** Consecutive days of the demonstration year, counted from 0. */
    public static Weather days(int firstDay, int days) {
        return new Weather(days(WeatherFiles.demonstration().table(), firstDay, days));
    }

    /** Consecutive days of a table, counted from 0. */
    public static HourlyTable days(HourlyTable table, int firstDay, int days) {
        return new HourlyTable(
                table.site(),
                table.start().plusDays(firstDay),
                table.stamp(),
                altered(table, column -> Arrays.copyOfRange(column, 24 * firstDay, 24 * (firstDay + days))));
    }

    /** A table whose air (and dew point) is warmer by some kelvin and swings wider about its mean by a factor. */
    public static HourlyTable warmer(HourlyTable table, double byK, double swing) {
        Map<Quantity, double[]> columns = new EnumMap<>(table.columns());
        double[] air = table.columns().get(Quantity.AIR);
        double mean = Arrays.stream(air).average().orElseThrow();
        columns.put(
                Quantity.AIR,
                Arrays.stream(air).map(c -> mean + swing * (c - mean) + byK).toArray());
        if (columns.containsKey(Quantity.DEW_POINT)) {
            double[] dew = table.columns().get(Quantity.DEW_POINT);
            double[] moved = new double[dew.length];
            double[] now = columns.get(Quantity.AIR);
            Arrays.setAll(moved, i -> Math.min(now[i], dew[i] + now[i] - air[i]));
            columns.put(Quantity.DEW_POINT, moved);
        }
        return new HourlyTable(table.site(), table.start(), table.stamp(), columns);
    }

    /** A table as if it had been measured elsewhere or at another time, its columns unchanged. */
    public static HourlyTable moved(HourlyTable table, Site site, LocalDateTime start) {
        return new HourlyTable(site, start, table.stamp(), table.columns());
    }

    /** A leap year of 8784 hours: the demonstration's with its last day twice. */
    public static HourlyTable leapYear() {
        HourlyTable year = WeatherFiles.demonstration().table();
        UnaryOperator<double[]> longer = column -> {
            double[] all = Arrays.copyOf(column, column.length + 24);
            System.arraycopy(column, column.length - 24, all, column.length, 24);
            return all;
        };
        return new HourlyTable(year.site(), LocalDateTime.of(2024, 1, 1, 0, 0), year.stamp(), altered(year, longer));
    }

    private static Map<Quantity, double[]> altered(HourlyTable table, UnaryOperator<double[]> change) {
        Map<Quantity, double[]> columns = new EnumMap<>(Quantity.class);
        table.columns().forEach((quantity, values) -> columns.put(quantity, change.apply(values)));
        return columns;
    }
}
