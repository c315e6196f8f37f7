package org.warmvat.network.meter;

import java.util.ArrayList;
import java.util.List;

/**
 * A flow that is counted over a run, declared by the part that makes it: in which lines of the results it is told, in which
 * balances it is posted, in which column of the hourly table its rate stands. Heat and electricity are counted in J, gas in Nm3.
 *
 * @param key name among the meters of a network
 * @param told lines in which it is added up, each times a factor
 * @param hourly columns of the hourly table to which it is added, each times a factor
 * @param posted balances it goes into, each times a factor
 * @param energy sides of the account of net energy to which it is added, each times a factor
 */
public record Meter(String key, List<Told> told, List<Column> hourly, List<Posting> posted, List<Share> energy) {

    /** Sum of all electricity of the machinery. */
    public static final Line ELECTRICITY = new Line("electricity_total_kwh", "electricity", Unit.KWH);

    /** Column of the electricity that has no column of its own. */
    public static final String OTHER_ELECTRIC_W = "other_electric_w";

    private static final String ELECTRICITY_GROUP = "electricity_kwh";

    /**
     * Told in a line.
     *
     * @param line the line
     * @param factor times what was counted; negative where what a node receives is told as a loss
     */
    public record Told(Line line, double factor) {}

    /**
     * Stands in a column of the hourly table as a mean rate per second.
     *
     * @param name the column
     * @param factor times the rate
     */
    public record Column(String name, double factor) {}

    /**
     * Posted in a balance.
     *
     * @param balance the balance
     * @param factor times what was counted; positive into the balance
     * @param side whether it counts among what passes through the tank, against which the residual is judged (model section 8)
     */
    public record Posting(Balance balance, double factor, Side side) {}

    /** Where a posting comes from or goes to. */
    public enum Side {
        /** Another balance, or a source that is not judged against. */
        WITHIN,
        /** Into the balance from outside. */
        ENTERING,
        /** From the balance to the outside. */
        LEAVING
    }

    /**
     * Added to a side of the account of net energy.
     *
     * @param side the side
     * @param factor J per what is counted
     */
    public record Share(Energy side, double factor) {}

    /** Takes lists as they are. */
    public Meter {
        told = List.copyOf(told);
        hourly = List.copyOf(hourly);
        posted = List.copyOf(posted);
        energy = List.copyOf(energy);
    }

    /** A meter that is told nowhere yet. */
    public static Meter of(String key) {
        return new Meter(key, List.of(), List.of(), List.of(), List.of());
    }

    /** Electricity of a consumer: its own line, the sum of all, the net energy, and the hourly column of the others. */
    public static Meter electricity(String consumer, String name) {
        return electricity(consumer, name, OTHER_ELECTRIC_W);
    }

    /** Electricity of a consumer that has its own hourly column. */
    public static Meter electricity(String consumer, String name, String column) {
        return of(consumer + "_electricity")
                .told(new Line(ELECTRICITY_GROUP + "/" + consumer, name, Unit.KWH))
                .told(ELECTRICITY)
                .hourly(column)
                .counted(Energy.MACHINERY, 1);
    }

    /** Whether a line is that of a consumer of electricity. */
    public static boolean isConsumer(Line line) {
        return line.group().equals(ELECTRICITY_GROUP);
    }

    /** Told in a line as it was counted. */
    public Meter told(Line line) {
        return told(1, line);
    }

    /** Told in a line times a factor. */
    public Meter told(double factor, Line line) {
        return new Meter(key, with(told, new Told(line, factor)), hourly, posted, energy);
    }

    /** Its mean rate in a column of the hourly table. */
    public Meter hourly(String column) {
        return hourly(1, column);
    }

    /** Its mean rate per second times a factor in a column of the hourly table. */
    public Meter hourly(double factor, String column) {
        return new Meter(key, told, with(hourly, new Column(column, factor)), posted, energy);
    }

    /** Received by a balance from another, or given to it where the factor is negative. */
    public Meter posted(Balance balance, double factor) {
        return posted(balance, factor, Side.WITHIN);
    }

    /** Received by a balance from outside: what it counts goes into the balance, times a factor. */
    public Meter entering(Balance balance, double factor) {
        return posted(balance, factor, Side.ENTERING);
    }

    /** Given by a balance to the outside: what it counts goes into the balance, times a factor, and is mostly negative. */
    public Meter leaving(Balance balance, double factor) {
        return posted(balance, factor, Side.LEAVING);
    }

    private Meter posted(Balance balance, double factor, Side side) {
        return new Meter(key, told, hourly, with(posted, new Posting(balance, factor, side)), energy);
    }

    /** Added to a side of the account of net energy. */
    public Meter counted(Energy side, double factor) {
        return new Meter(key, told, hourly, posted, with(energy, new Share(side, factor)));
    }

    private static <T> List<T> with(List<T> list, T more) {
        List<T> longer = new ArrayList<>(list);
        longer.add(more);
        return longer;
    }
}
