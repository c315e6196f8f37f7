package org.warmvat.cli.answer.spread;

import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.warmvat.cli.answer.Columns;
import org.warmvat.cli.answer.Table;
import org.warmvat.cli.words.Numerals;
import org.warmvat.cli.words.Words;
import org.warmvat.question.spread.SpreadResult;
import org.warmvat.question.spread.SpreadResult.Influence;
import org.warmvat.question.spread.Uncertain;
import org.warmvat.sampling.Quantiles;
import org.warmvat.sampling.Spread;

/** The tables of {@code spread}. */
final class SpreadTables {

    private static final Map<String, String> SHOWN = shown(
            "useful_net_energy_kwh", "useful net energy, kWh",
            "net_energy_kwh", "net energy, kWh",
            "net_energy_weighted_kwh", "net energy, electricity weighted, kWh",
            "gas_energy_kwh", "gas energy, kWh",
            "solar_heat_kwh", "heat from the solar coil, kWh",
            "backup_bought_kwh", "bought for the backup heater, kWh",
            "electricity_total_kwh", "electricity of the machinery, kWh",
            "hours_below_floor", "hours below the minimum temperature",
            "hours_near_freezing", "hours near freezing",
            "slurry_least_c", "lowest slurry temperature, °C",
            "slurry_mean_c", "mean slurry temperature, °C",
            "slurry_most_c", "highest slurry temperature, °C",
            "stagnation_hours", "hours of stagnation");

    /** What each input has to do with the spread. */
    static final Columns<Influence> INFLUENCES = new Columns<Influence>()
            .value("key", Influence::key)
            .cell("input", one -> InputNames.of(one.key()))
            .number("first_order", "alone", one -> one.indices().firstOrder(), SpreadWords::percent)
            .number("total", "with others", one -> one.indices().total(), SpreadWords::percent)
            .number("error", "error", one -> one.indices().error(), SpreadWords::percent);

    private SpreadTables() {}

    private static Map<String, String> shown(String... keysAndNames) {
        Map<String, String> shown = new LinkedHashMap<>();
        for (int i = 0; i < keysAndNames.length; i += 2) {
            shown.put(keysAndNames[i], keysAndNames[i + 1]);
        }
        return shown;
    }

    static Table figures(SpreadResult result) {
        return new Table(
                        "Figures of the year",
                        List.of("figure", "5 %", "middle", "95 %"),
                        SHOWN.entrySet().stream()
                                .filter(shown -> result.figures().containsKey(shown.getKey()))
                                .map(shown -> figure(
                                        shown.getValue(), result.figures().get(shown.getKey())))
                                .toList())
                .noted(
                        "5 in 100 draws lie below the first number, half below the second, 5 in 100 above the third. summary.json has all"
                                + " figures.");
    }

    private static List<String> figure(String name, Quantiles band) {
        return List.of(name, Words.number(band.p5()), Words.number(band.p50()), Words.number(band.p95()));
    }

    static Table influences(SpreadResult result) {
        return INFLUENCES
                .table("Influence on the net energy", result.influences())
                .noted(
                        "Shares of the variance: what the input explains alone, and what it explains with all it acts together with (Sobol'"
                                + " indices); the error is one standard error. An estimate may lie a little below zero or above 100 %.");
    }

    static Table inputs(SpreadResult result) {
        return new Table(
                "What was drawn",
                List.of("input", "low", "high", "shape", "held"),
                IntStream.range(0, result.inputs().size())
                        .mapToObj(i -> input(result.inputs().get(i), result.held(i)))
                        .toList(),
                "Low and high are 5 and 95 % points, of an even shape its ends; with × they are factors on the design's value. Held:"
                        + " draws beyond what the key allows, which were held at the end of its range.",
                new Table.Setting(false, true));
    }

    private static List<String> input(Uncertain input, int held) {
        String times = input.times() ? "× " : "";
        return List.of(
                InputNames.of(input.key()) + (InputNames.of(input.key()).equals(input.key()) ? "" : ", " + input.key()),
                times + Numerals.exact(input.spread().low()),
                times + Numerals.exact(input.spread().high()),
                input.spread().shape() == Spread.Shape.EVEN ? "even" : "normal",
                Integer.toString(held));
    }

    /** Year by year, where there are several; the worst first. */
    static Optional<Table> years(SpreadResult result) {
        List<Integer> order = worstFirst(result);
        Columns<Integer> columns = new Columns<Integer>()
                .cell("year", year -> result.years().get(year))
                .cell("draws", year -> Integer.toString(shortHours(result, year).length))
                .cell("net, middle, kWh", year -> Words.number(middle(result, year, result.leading())))
                .cell("bought, middle, kWh", year -> Words.number(middle(result, year, "backup_bought_kwh")))
                .cell(
                        "hours short, most",
                        year -> Words.hours(
                                Arrays.stream(shortHours(result, year)).max().orElse(0)));
        return order.size() == 1
                ? Optional.empty()
                : Optional.of(columns.table("Year by year, the one with the least net energy first", order));
    }

    private static double[] shortHours(SpreadResult result, int year) {
        return SpreadWords.ofYear(result, year, "hours_below_floor");
    }

    /** The years that were drawn by their places, the one with the least net energy first. */
    static List<Integer> worstFirst(SpreadResult result) {
        return IntStream.range(0, result.years().size())
                .filter(year -> SpreadWords.ofYear(result, year, result.leading()).length > 0)
                .boxed()
                .sorted(Comparator.comparingDouble(year -> middle(result, year, result.leading())))
                .toList();
    }

    private static double middle(SpreadResult result, int year, String figure) {
        return Quantiles.of(SpreadWords.ofYear(result, year, figure)).p50();
    }
}
