package org.warmvat.cli.answer.sizes;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.warmvat.account.Warnings;
import org.warmvat.cli.answer.Asked;
import org.warmvat.cli.answer.Csv;
import org.warmvat.cli.answer.Document;
import org.warmvat.cli.answer.Draft;
import org.warmvat.cli.answer.Table;
import org.warmvat.cli.answer.Words;
import org.warmvat.cli.plot.Drawing;
import org.warmvat.cli.plot.LineChart;
import org.warmvat.cli.plot.Look;
import org.warmvat.cli.plot.Points;
import org.warmvat.network.Warning;

/** The answer to {@code sizes}. */
public final class SizesAnswer {

    private final List<Size> sizes;
    private final Rules rules;

    private SizesAnswer(List<Size> sizes, Rules rules) {
        this.sizes = sizes;
        this.rules = rules;
    }

    /**
     * A size that was run.
     *
     * @param litres volume of the contents
     * @param scaled the scaled numbers in the order of the rules
     * @param names names of the outputs
     * @param outputs in the order of their names
     * @param warnings what its run warns of
     */
    @SuppressWarnings("ArrayRecordComponent") // read only
    public record Size(
            double litres, List<Double> scaled, List<String> names, double[] outputs, List<Warning> warnings) {

        double output(String name) {
            return outputs[names.indexOf(name)];
        }

        /** Net energy, kWh. */
        public double netKWh() {
            return output("net_energy_kwh");
        }

        /** Net energy of the worst month, kWh. */
        public double worstMonthKWh() {
            return output("worst_month_net_kwh");
        }

        private double perLitre() {
            return netKWh() / litres;
        }

        private double gasKWh() {
            return output("gas_energy_kwh");
        }

        private double boughtKWh() {
            double bought = output("backup_bought_kwh");
            return Double.isNaN(bought) ? 0 : bought;
        }

        private String named() {
            return SizesAnswer.litres(litres);
        }
    }

    /**
     * How the numbers scale.
     *
     * @param keys the scaled numbers
     * @param words the rule of each
     */
    public record Rules(List<String> keys, List<String> words) {}

    /**
     * The volumes from which something holds, sought between the sizes of the list.
     *
     * @param net net energy of the year above nothing
     * @param worstMonth net energy of every month above nothing
     */
    public record Thresholds(Optional<Double> net, Optional<Double> worstMonth) {}

    /**
     * Tells what was found.
     *
     * @param sizes the sizes asked for
     * @param drawn these and those at which net energy turns positive
     * @param rules how the numbers scale
     * @param thresholds from where on net energy is positive
     * @param asked what they are about
     */
    public static Document of(List<Size> sizes, List<Size> drawn, Rules rules, Thresholds thresholds, Asked asked) {
        SizesAnswer answer = new SizesAnswer(sizes, rules);
        boolean gas = sizes.stream().allMatch(size -> size.gasKWh() > 0);
        String verdict = gas
                ? verdict("a positive net energy over the run", sizes, Size::netKWh, thresholds.net())
                : "No gas is computed for this design, so that no size can be said to pay its way.";
        return Draft.of(asked, "at other sizes")
                .verdict(verdict, List.of())
                .paragraph(
                        "Which size pays its way in every month?",
                        gas
                                ? List.of(verdict(
                                        "a positive net energy in every month",
                                        sizes,
                                        Size::worstMonthKWh,
                                        thresholds.worstMonth()))
                                : List.of())
                .paragraph("What does each size return?", answer.returns())
                .paragraph("How was it scaled?", answer.scaled())
                .table(answer.results())
                .table(answer.scaledKeys())
                .figure("smallest_positive_net_l", first(sizes, Size::netKWh))
                .figure("smallest_positive_worst_month_l", first(sizes, Size::worstMonthKWh))
                .figure("net_changes_sign_at_l", thresholds.net())
                .figure("worst_month_changes_sign_at_l", thresholds.worstMonth())
                .figure("sizes", answer.rows(true))
                .csv("sizes.csv", Csv.ofRows(answer.rows(false)))
                .pictures(() -> pictures(drawn, gas))
                .warn(Warnings.worst(sizes.stream().map(Size::warnings).toList()))
                .done();
    }

    private static List<Drawing> pictures(List<Size> sizes, boolean gas) {
        List<Drawing> pictures = new ArrayList<>();
        pictures.add(chart(sizes, "net_by_size", "Net energy by size", "kWh a litre over the run")
                .dotted("net energy for each litre", Look.FIRST, points(sizes, Size::perLitre))
                .dotted("gas for each litre", Look.SECOND, points(sizes, size -> size.gasKWh() / size.litres()))
                .drawing());
        if (gas) {
            pictures.add(chart(sizes, "eaten_by_size", "Share of the gas eaten, by size", "% of the gas's energy")
                    .dotted("by heating", Look.FIRST, points(sizes, size -> 100 * size.boughtKWh() / size.gasKWh()))
                    .dotted(
                            "by electricity",
                            Look.SECOND,
                            points(sizes, size -> 100 * size.output("electricity_total_kwh") / size.gasKWh()))
                    .drawing());
        }
        return pictures;
    }

    private static LineChart chart(List<Size> sizes, String name, String title, String up) {
        double[] litres = each(sizes, Size::litres);
        return LineChart.over(name, title, "litres of slurry", litres[0], litres[litres.length - 1])
                .caption("Each dot is one run over the whole weather file.")
                .stripWithZero(up, 1e-3)
                .level("zero", Look.MARK, 0);
    }

    private static Points points(List<Size> sizes, ToDoubleFunction<Size> value) {
        return new Points(each(sizes, Size::litres), each(sizes, value));
    }

    private static double[] each(List<Size> sizes, ToDoubleFunction<Size> value) {
        return sizes.stream().mapToDouble(value).toArray();
    }

    private static String verdict(
            String what, List<Size> sizes, ToDoubleFunction<Size> value, Optional<Double> threshold) {
        Optional<Double> first = first(sizes, value);
        if (first.isEmpty()) {
            return "None of these sizes has " + what + ".";
        }
        String smallest = "The smallest of these sizes with " + what + " is " + litres(first.get());
        return threshold
                .map(found -> smallest + "; between the sizes run the change comes at about " + litres(found) + ".")
                .orElse(smallest + ", the smallest that was run.");
    }

    private static Optional<Double> first(List<Size> sizes, ToDoubleFunction<Size> value) {
        return sizes.stream()
                .filter(size -> value.applyAsDouble(size) > 0)
                .findFirst()
                .map(Size::litres);
    }

    private List<String> returns() {
        return sizes.stream().map(SizesAnswer::returned).toList();
    }

    private static String returned(Size size) {
        String eaten = size.gasKWh() > 0
                ? "net " + Words.kWh(size.netKWh()) + ", " + Words.number(size.perLitre())
                        + " kWh a litre; heating takes "
                        + Words.percent(size.boughtKWh() / size.gasKWh()) + " of the gas, electricity "
                        + Words.percent(size.output("electricity_total_kwh") / size.gasKWh())
                : "heater and machinery take " + Words.kWh(-size.netKWh());
        double hours = size.output("hours_below_floor");
        return size.named() + ": " + eaten
                + (hours > 0 ? "; below its minimum for " + Words.hours(hours) + " hours" : "") + ".";
    }

    private List<String> scaled() {
        Map<String, List<String>> byRule = new LinkedHashMap<>();
        for (int i = 0; i < rules.keys().size(); i++) {
            byRule.computeIfAbsent(rules.words().get(i), unused -> new ArrayList<>())
                    .add(rules.keys().get(i));
        }
        List<String> sentences = new ArrayList<>();
        byRule.forEach((words, keys) -> sentences.add("Scaled " + words + ": " + Words.list(keys) + "."));
        if (byRule.containsKey("with the need of heat")) {
            sentences.add("The need of heat is the steady loss and the feed at the mean air of the coldest 24 hours.");
        }
        sentences.add(
                "All else stays as in the design: thickness of insulation and shell, fittings with their bores, idle power,"
                        + " pumps, electronics. Another rule for a number: --scale key=power, key=need or key=fixed.");
        return sentences;
    }

    private Table results() {
        return new Table(
                "Sizes",
                List.of(
                        "litres",
                        "gas, kWh",
                        "backup bought, kWh",
                        "electricity, kWh",
                        "net, kWh",
                        "net, kWh/l",
                        "worst month, kWh",
                        "money balance",
                        "hours short"),
                sizes.stream()
                        .map(size -> List.of(
                                Words.number(size.litres()),
                                Words.number(size.gasKWh()),
                                Words.number(size.output("backup_bought_kwh")),
                                Words.number(size.output("electricity_total_kwh")),
                                Words.number(size.netKWh()),
                                Words.number(size.perLitre()),
                                Words.number(size.worstMonthKWh()),
                                Words.number(size.output("money_balance")),
                                Words.hours(size.output("hours_below_floor"))))
                        .toList());
    }

    private Table scaledKeys() {
        List<String> header = new ArrayList<>(List.of("scaled key"));
        sizes.forEach(size -> header.add(size.named()));
        List<List<String>> rows = new ArrayList<>();
        for (int i = 0; i < rules.keys().size(); i++) {
            List<String> row = new ArrayList<>(List.of(rules.keys().get(i)));
            for (Size size : sizes) {
                row.add(Words.number(size.scaled().get(i)));
            }
            rows.add(row);
        }
        return new Table("The scaled numbers of each size", header, rows);
    }

    static String litres(double litres) {
        return Words.number(litres) + " litres";
    }

    /** The sizes as figures, with the quotient that the CSV leaves to its reader or without. */
    private List<Map<String, Object>> rows(boolean perLitre) {
        List<Map<String, Object>> rows = new ArrayList<>();
        for (Size size : sizes) {
            Map<String, Object> row = Draft.row("size_l", size.litres());
            for (int i = 0; i < rules.keys().size(); i++) {
                row.put(rules.keys().get(i), size.scaled().get(i));
            }
            if (perLitre) {
                row.put("net_kwh_per_l", size.perLitre());
            }
            size.names().forEach(output -> row.putAll(Draft.row(output, size.output(output))));
            rows.add(row);
        }
        return rows;
    }
}
