package org.warmvat.network.meter;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.DoubleUnaryOperator;
import java.util.function.IntPredicate;
import java.util.function.ToDoubleFunction;

/**
 * What the parts of a network say about themselves, for the account: which lines, balances, columns and warnings there are and
 * from what each follows. Gathered while the network is assembled, read only afterwards.
 */
public final class Declarations {

    private final List<Meter> meters = new ArrayList<>();
    private final List<Store> stores = new ArrayList<>();
    private final List<Figure> figures = new ArrayList<>();
    private final List<Followed<Hour>> hourly = new ArrayList<>();
    private final List<Followed<Sums>> daily = new ArrayList<>();
    private final List<Check> checks = new ArrayList<>();
    private final List<Temperature> temperatures = new ArrayList<>();
    private final List<Watched> watched = new ArrayList<>();
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
     * A warning of hours or days above a mark.
     *
     * @param key its name
     * @param worst the highest value of a run
     * @param above how many hours or days of it were above each mark, the least mark first
     * @param sentence what is said when any was above the first
     */
    public record Check(
            String key, ToDoubleFunction<Sums> worst, List<ToDoubleFunction<Sums>> above, Sentence sentence) {}

    /**
     * A column of temperatures at the ends of hours.
     *
     * @param column its name
     * @param node the node, or -1
     * @param known the temperature as a function of time, where there is no node
     */
    public record Temperature(String column, int node, Optional<DoubleUnaryOperator> known) {}

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

    /** Follows something from hour to hour. */
    private ToDoubleFunction<Sums> ofHours(Followed.Over over, ToDoubleFunction<Hour> value) {
        int index = hourly.size();
        hourly.add(new Followed<>(over, value));
        return sums -> sums.ofHours(index);
    }

    /** Follows something from day to day. */
    private ToDoubleFunction<Sums> ofDays(Followed.Over over, ToDoubleFunction<Sums> value) {
        int index = daily.size();
        daily.add(new Followed<>(over, value));
        return sums -> sums.ofDays(index);
    }

    /** Starts of a switch. */
    public void starts(int index, Line line) {
        figure(line, ofHours(Followed.Over.SUM, hour -> hour.starts(index)));
    }

    /** A value of each hour, of which two lines tell the highest and the hours above a limit, and a warning of these. */
    public void judgeHours(
            String key, ToDoubleFunction<Hour> value, double limit, Sentence sentence, Line highest, Line hoursAbove) {
        ToDoubleFunction<Sums> worst = ofHours(Followed.Over.PEAK, value);
        ToDoubleFunction<Sums> above = ofHours(Followed.Over.SUM, hour -> value.applyAsDouble(hour) > limit ? 1 : 0);
        figure(highest, worst);
        figure(hoursAbove, above);
        checks.add(new Check(key, worst, List.of(above), sentence));
    }

    /** A value of each day, with a warning of those above marks, the least mark first. */
    public void judgeDays(String key, ToDoubleFunction<Sums> value, List<Double> marks, Sentence sentence) {
        ToDoubleFunction<Sums> worst = ofDays(Followed.Over.PEAK, value);
        List<ToDoubleFunction<Sums>> above = marks.stream()
                .map(mark -> ofDays(Followed.Over.SUM, day -> value.applyAsDouble(day) > mark ? 1 : 0))
                .toList();
        checks.add(new Check(key, worst, above, sentence));
    }

    /** A line added up over chosen hours only, such as those of a spell. */
    public void during(Line line, IntPredicate chosen, ToDoubleFunction<Hour> value) {
        figure(line, ofHours(Followed.Over.SUM, hour -> chosen.test(hour.hour()) ? value.applyAsDouble(hour) : 0));
    }

    /** Lowest, mean and highest of a node's temperatures at the ends of hours. */
    public void endsOfHours(int node, Line least, Line mean, Line most) {
        figure(least, ofHours(Followed.Over.LEAST, hour -> hour.endC(node)));
        ToDoubleFunction<Sums> sum = ofHours(Followed.Over.SUM, hour -> hour.endC(node));
        figure(mean, sums -> sum.applyAsDouble(sums) / sums.hours());
        figure(most, ofHours(Followed.Over.MOST, hour -> hour.endC(node)));
    }

    /** The largest of a day's value. */
    public void greatestDay(Line line, ToDoubleFunction<Sums> day) {
        figure(line, ofDays(Followed.Over.PEAK, day));
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

    /** What is followed from hour to hour. */
    public List<Followed<Hour>> hourly() {
        return hourly;
    }

    /** What is followed from day to day. */
    public List<Followed<Sums>> daily() {
        return daily;
    }

    /** What is warned of by hours or days above marks. */
    public List<Check> checks() {
        return checks;
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
