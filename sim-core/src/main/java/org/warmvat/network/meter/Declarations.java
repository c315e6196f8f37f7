package org.warmvat.network.meter;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.DoubleUnaryOperator;
import java.util.function.IntPredicate;
import java.util.function.IntToDoubleFunction;
import java.util.function.ToDoubleFunction;

/**
 * What the parts of a network say about themselves, for the account: which lines, balances, columns and warnings there are and
 * from what each follows. Gathered while the network is assembled, read only afterwards.
 */
public final class Declarations {

    private final List<Meter> meters = new ArrayList<>();
    private final List<Store> stores = new ArrayList<>();
    private final List<Figure> figures = new ArrayList<>();
    private final List<Judgement> judgements = new ArrayList<>();
    private final List<Temperature> temperatures = new ArrayList<>();
    private final List<Watched> watched = new ArrayList<>();
    private final List<DayCheck> dayChecks = new ArrayList<>();
    private final List<Chosen> chosen = new ArrayList<>();
    private final List<Integer> endsOfHours = new ArrayList<>();
    private final List<ToDoubleFunction<Sums>> days = new ArrayList<>();
    private final List<Content> contents = new ArrayList<>();

    /**
     * What is held by a node or a stock.
     *
     * @param isNode whether it is a node
     * @param index the node, J/K, or the stock
     * @param factor times its rise: the heat capacity of a node, J/K
     * @param line where it is told
     * @param balance whose content it is
     */
    public record Store(boolean isNode, int index, double factor, Line line, Balance balance) {}

    /**
     * A line that follows from others.
     *
     * @param line the line
     * @param value its value in its unit
     */
    public record Figure(Line line, ToDoubleFunction<Sums> value) {}

    /**
     * Something judged hour by hour from what the meters counted.
     *
     * @param key name of its warning
     * @param value the value of an hour, given the integral of each meter
     * @param limit above which an hour counts
     * @param sentence what is said when any hour counted, given the hours and the highest value
     */
    public record Judgement(String key, ToDoubleFunction<IntToDoubleFunction> value, double limit, Sentence sentence) {}

    /**
     * A column of temperatures at the ends of hours.
     *
     * @param column its name
     * @param node the node, or -1
     * @param known the temperature as a function of time, where there is no node
     */
    public record Temperature(String column, int node, Optional<DoubleUnaryOperator> known) {}

    /**
     * Something judged day by day.
     *
     * @param key name of its warning
     * @param value what is judged of a day
     * @param marks marks above which a day counts, the least first
     * @param sentence what is said when any day was above the first mark
     */
    public record DayCheck(String key, ToDoubleFunction<Sums> value, List<Double> marks, Sentence sentence) {}

    /**
     * Something added up over chosen hours only.
     *
     * @param hour whether an hour counts, by its index in the weather file
     * @param value what is added, given the integral of each meter over the hour
     */
    public record Chosen(IntPredicate hour, ToDoubleFunction<IntToDoubleFunction> value) {}

    /**
     * A column of what a stock holds at the ends of hours, or of the seconds for which a watch held in each.
     *
     * @param column its name
     * @param stock the stock, if it is one
     * @param watch the watch, if it is one
     */
    public record Content(String column, OptionalInt stock, OptionalInt watch) {}

    /** Words for what was above marks. */
    @FunctionalInterface
    public interface Sentence {
        /** The sentence, given how many hours or days were above each mark and the worst value. */
        String of(int[] above, double worst);
    }

    /** Nothing declared yet. */
    public Declarations() {}

    /** The meter of a key, added at its first use. */
    public int meter(Meter meter) {
        for (int i = 0; i < meters.size(); i++) {
            if (meters.get(i).key().equals(meter.key())) {
                return i;
            }
        }
        meters.add(meter);
        return meters.size() - 1;
    }

    /** Adds what a watch tells. */
    public void watched(Watched watch) {
        watched.add(watch);
    }

    /** Heat held by a node. */
    public void store(int node, double capacityJPerK, Line line, Balance balance) {
        stores.add(new Store(true, node, capacityJPerK, line, balance));
    }

    /** What a stock holds, times a factor. */
    public void storeOf(int stock, double factor, Line line, Balance balance) {
        stores.add(new Store(false, stock, factor, line, balance));
    }

    /** A line that follows from others. */
    public void figure(Line line, ToDoubleFunction<Sums> value) {
        figures.add(new Figure(line, value));
    }

    /** Lines that are 0 in this tank, though it has the part they belong to. */
    public void none(Line... lines) {
        for (Line line : lines) {
            figure(line, sums -> 0);
        }
    }

    /** Starts of a switch. */
    public void starts(int index, Line line) {
        figure(line, sums -> sums.starts(index));
    }

    /** Judges each hour; the lines tell the highest value and the hours above the limit. */
    public void judgeHours(Judgement judgement, Line highest, Line hoursAbove) {
        int index = judgements.size();
        judgements.add(judgement);
        figure(highest, sums -> sums.highest(index));
        figure(hoursAbove, sums -> sums.hoursAbove(index));
    }

    /** Judges each day. */
    public void judgeDays(String key, ToDoubleFunction<Sums> value, List<Double> marks, Sentence sentence) {
        dayChecks.add(new DayCheck(key, value, List.copyOf(marks), sentence));
    }

    /** A line added up over chosen hours only, such as those of a spell. */
    public void during(Line line, IntPredicate hour, ToDoubleFunction<IntToDoubleFunction> value) {
        int index = chosen.size();
        chosen.add(new Chosen(hour, value));
        figure(line, sums -> sums.chosen(index));
    }

    /** Lowest, mean and highest of a node's temperatures at the ends of hours. */
    public void endsOfHours(int node, Line least, Line mean, Line most) {
        int index = endsOfHours.size();
        endsOfHours.add(node);
        figure(least, sums -> sums.leastEndC(index));
        figure(mean, sums -> sums.meanEndC(index));
        figure(most, sums -> sums.mostEndC(index));
    }

    /** The largest of a day's value. */
    public void greatestDay(Line line, ToDoubleFunction<Sums> day) {
        int index = days.size();
        days.add(day);
        figure(line, sums -> sums.greatestDay(index));
    }

    /** What a stock holds at the ends of hours in a column of the hourly table. */
    public void hourlyStock(int stock, String column) {
        contents.add(new Content(column, OptionalInt.of(stock), OptionalInt.empty()));
    }

    /** The seconds of each hour for which a watch held in a column of the hourly table. */
    public void hourlyWatch(int watch, String column) {
        contents.add(new Content(column, OptionalInt.empty(), OptionalInt.of(watch)));
    }

    /** A node's temperature in a column of the hourly table. */
    public void hourlyC(int node, String column) {
        temperatures.add(new Temperature(column, node, Optional.empty()));
    }

    /** A known temperature in a column of the hourly table, given seconds since the start of the weather file. */
    public void hourlyC(String column, DoubleUnaryOperator known) {
        temperatures.add(new Temperature(column, -1, Optional.of(known)));
    }

    /** The meters in the order of their indices. */
    public List<Meter> meters() {
        return meters;
    }

    /** What is stored where. */
    public List<Store> stores() {
        return stores;
    }

    /** Lines that follow from others. */
    public List<Figure> figures() {
        return figures;
    }

    /** What is judged hour by hour. */
    public List<Judgement> judgements() {
        return judgements;
    }

    /** What is judged day by day. */
    public List<DayCheck> dayChecks() {
        return dayChecks;
    }

    /** What is added up over chosen hours. */
    public List<Chosen> chosen() {
        return chosen;
    }

    /** Nodes looked at at the ends of hours. */
    public List<Integer> endsOfHours() {
        return endsOfHours;
    }

    /** What is compared day by day. */
    public List<ToDoubleFunction<Sums>> days() {
        return days;
    }

    /** Columns of stocks and watches. */
    public List<Content> contents() {
        return contents;
    }

    /** Columns of temperatures. */
    public List<Temperature> temperatures() {
        return temperatures;
    }

    /** What is watched, in the order of the watches. */
    public List<Watched> watched() {
        return watched;
    }
}
