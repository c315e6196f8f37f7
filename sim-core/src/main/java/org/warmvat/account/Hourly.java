package org.warmvat.account;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.warmvat.engine.HourRecord;
import org.warmvat.network.meter.Declarations;
import org.warmvat.network.meter.Meter;

/**
 * A run hour by hour: temperatures at the ends of the hours in °C, rates as means over the hour. The arrays are shared, not copied: read
 * only.
 */
public final class Hourly {

    private static final double HOUR_S = 3600;

    private final LocalDateTime start;
    private final int firstHour;
    private final List<String> names;
    private final Map<String, double[]> columns = new LinkedHashMap<>();
    private final List<Rate> rates = new ArrayList<>();
    private final List<Declarations.Temperature> temperatures;
    private final List<Declarations.Content> contents;
    private final List<String> watches;
    private final double[] leastC;
    private final double[][] watchS;
    private int kept;

    /** A meter added to a column. */
    private record Rate(int meter, double factor, double[] column) {}

    Hourly(Books books, LocalDateTime start, int firstHour, int hours) {
        this.start = start;
        this.firstHour = firstHour;
        Declarations declared = books.network().declarations();
        temperatures = declared.temperatures();
        temperatures.forEach(one -> columns.put(one.column(), new double[hours]));
        for (int i = 0; i < declared.meters().size(); i++) {
            for (Meter.Column column : declared.meters().get(i).hourly()) {
                rates.add(new Rate(
                        i, column.factor(), columns.computeIfAbsent(column.name(), name -> new double[hours])));
            }
        }
        contents = declared.contents();
        contents.forEach(one -> columns.put(one.column(), new double[hours]));
        names = new ArrayList<>(books.order().columns());
        columns.keySet().stream().filter(name -> !names.contains(name)).forEach(names::add);
        watches = books.network().watches().stream().map(watch -> watch.name()).toList();
        leastC = new double[hours];
        watchS = new double[watches.size()][hours];
    }

    void add(HourRecord hour) {
        int index = kept++;
        double endS = (hour.hour() + 1) * HOUR_S;
        for (Declarations.Temperature one : temperatures) {
            columns.get(one.column())[index] = one.known().isPresent()
                    ? one.known().get().applyAsDouble(endS)
                    : hour.stateWithoutLayers().nodeC(one.node());
        }
        for (Rate rate : rates) {
            rate.column()[index] += rate.factor() * hour.meter(rate.meter()) / HOUR_S + 0.0;
        }
        for (Declarations.Content one : contents) {
            columns.get(one.column())[index] = one.stock().isPresent()
                    ? hour.stateWithoutLayers().stock(one.stock().getAsInt())
                    : hour.watchS(one.watch().orElseThrow());
        }
        leastC[index] = hour.slurryLeastC();
        for (int i = 0; i < watchS.length; i++) {
            watchS[i][index] = hour.watchS(i);
        }
    }

    /** Beginning of the first hour, local standard time. */
    public LocalDateTime start() {
        return start;
    }

    /** Index of the first hour in the weather file. */
    public int firstHour() {
        return firstHour;
    }

    /** How many hours ran. */
    public int hours() {
        return kept;
    }

    /** End of an hour; the row ending at 00:00 on the 1st belongs to the month before. */
    public LocalDateTime end(int hour) {
        return start.plusHours(hour + 1L);
    }

    /** Names of the columns in order, those without a part in this tank too. */
    public List<String> names() {
        return names;
    }

    /** A column; empty when the tank has no part for it. */
    public Optional<double[]> column(String name) {
        return Optional.ofNullable(columns.get(name)).map(this::cut);
    }

    /** A column; zeros when the tank has no part for it. */
    public double[] orZero(String name) {
        return column(name).orElseGet(() -> new double[kept]);
    }

    /** Lowest slurry temperature of each hour, °C. */
    public double[] leastC() {
        return cut(leastC);
    }

    /** Share of each hour for which a watched condition held; zeros when nothing watches it. */
    public double[] watchHours(String watch) {
        int index = watches.indexOf(watch);
        double[] share = new double[kept];
        for (int hour = 0; index >= 0 && hour < kept; hour++) {
            share[hour] = watchS[index][hour] / HOUR_S;
        }
        return share;
    }

    private double[] cut(double[] values) {
        return values.length == kept ? values : Arrays.copyOf(values, kept);
    }
}
