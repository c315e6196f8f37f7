package org.warmvat.cli.answer;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.warmvat.cli.words.Words;

/**
 * What each of several years says of one design, for a question that looks at all of them at once: by name, the worst and the middle one
 * told. Worst is the year with the least net energy, without gas that in which most is bought and most hours are short.
 */
public final class YearRows {

    private static final Columns<Row> COLUMNS = new Columns<Row>()
            .text("name", "year", Row::name)
            .number("net_energy_kwh", "net energy, kWh", Row::netKWh, Words::number)
            .number("backup_bought_kwh", "bought for heat, kWh", Row::boughtKWh, Words::number)
            .number("hours_below_floor", "hours below minimum", Row::shortHours, Words::hours);

    private final List<Row> rows;

    /**
     * One year.
     *
     * @param name by which it is told from others
     * @param netKWh net energy, empty or not a number where no gas is computed
     * @param boughtKWh bought for heat
     * @param shortHours hours below the minimum temperature
     */
    public record Row(String name, OptionalDouble netKWh, double boughtKWh, double shortHours) {

        private double goodKWh() {
            double net = netKWh.orElse(Double.NaN);
            return Double.isNaN(net) ? -boughtKWh : net;
        }

        private String words() {
            String net = netKWh.isPresent() && !Double.isNaN(netKWh.getAsDouble())
                    ? "net energy " + Words.kWh(netKWh.getAsDouble()) + ", "
                    : "";
            return name + " (" + net + Words.kWh(boughtKWh) + " bought for heat, " + Words.hours(shortHours)
                    + " hours below the minimum temperature)";
        }
    }

    /** Of some years, in the order in which they are told. */
    public YearRows(List<Row> rows) {
        this.rows = List.copyOf(rows);
    }

    private boolean several() {
        return rows.size() > 1;
    }

    private List<Row> worstFirst() {
        return rows.stream()
                .sorted(Comparator.comparingDouble(Row::goodKWh).thenComparingDouble(row -> -row.shortHours()))
                .toList();
    }

    private Row worst() {
        return worstFirst().get(0);
    }

    private Row middle() {
        return worstFirst().get(rows.size() / 2);
    }

    /** The worst and the middle year in a sentence each; none where there is but one year. */
    public List<String> sentences() {
        return several()
                ? List.of(
                        "The worst of " + rows.size() + " years is " + worst().words() + ".",
                        "The middle year is " + middle().words() + ".")
                : List.of();
    }

    /** All years; none where there is but one. */
    public List<Table> tables() {
        return several() ? List.of(COLUMNS.table("Year by year", rows)) : List.of();
    }

    /** The years with their figures under {@code years}, {@code worst_year}, {@code middle_year}; none where there is but one. */
    public Map<String, Object> figures() {
        Map<String, Object> figures = new LinkedHashMap<>();
        if (several()) {
            figures.put("worst_year", worst().name());
            figures.put("middle_year", middle().name());
            figures.put("years", COLUMNS.rows(rows));
        }
        return figures;
    }
}
