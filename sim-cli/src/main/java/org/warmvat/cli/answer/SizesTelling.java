package org.warmvat.cli.answer;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.warmvat.cli.plot.Drawing;
import org.warmvat.cli.plot.LineChart;
import org.warmvat.cli.plot.Look;
import org.warmvat.cli.plot.Points;
import org.warmvat.design.Design;

/** Tells what one design does at several sizes. */
public final class SizesTelling {

    /** The table of all sizes. */
    public static final String CSV = "sizes.csv";
    /** Names of the pictures. */
    public static final List<String> PICTURES = List.of("net_by_size", "eaten_by_size");

    private SizesTelling() {}

    /**
     * A size that was run.
     *
     * @param litres volume of the contents
     * @param scaled the scaled numbers in the order of the rules
     * @param outputs in the order of {@link Outputs#NAMES}
     */
    public record Size(double litres, List<Double> scaled, double[] outputs) {

        double output(String name) {
            return outputs[Outputs.index(name)];
        }

        /** Net energy, kWh. */
        public double netKWh() {
            return output("net_energy_kwh");
        }

        /** Net energy of the worst month, kWh. */
        public double worstMonthKWh() {
            return output("worst_month_net_kwh");
        }

        private double share(String output) {
            return output(output) / output("gas_energy_kwh");
        }

        private double perLitre() {
            return netKWh() / litres;
        }

        private double backup() {
            double bought = output("backup_bought_kwh");
            return Double.isNaN(bought) ? 0 : bought;
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

    /** The whole answer but for the pictures. */
    public static StudyResults of(Design design, String under, List<Size> sizes, Rules rules, Thresholds thresholds) {
        ExactCsv csv = new ExactCsv();
        List<String> header = new ArrayList<>(List.of("size_l"));
        header.addAll(rules.keys());
        header.addAll(Outputs.NAMES);
        csv.header(header);
        sizes.forEach(size -> csv.row(row(size)));
        return new StudyResults(
                "sizes",
                design.title() + ": at other sizes",
                under,
                List.of(
                        new Paragraph("Which size first pays its way?", verdicts(sizes, thresholds)),
                        new Paragraph("What does each size return?", returns(sizes)),
                        new Paragraph("How was it scaled?", scaled(rules))),
                List.of(results(sizes), scaledKeys(sizes, rules)),
                figures(sizes, rules, thresholds),
                Map.of(CSV, csv.bytes()),
                List.of(),
                List.of(),
                List.of());
    }

    /** The pictures. */
    public static List<Drawing> pictures(List<Size> sizes) {
        List<Drawing> pictures = new ArrayList<>();
        pictures.add(chart(sizes, "net_by_size", "Net energy by size", "kWh a litre over the run")
                .dotted("net energy for each litre", Look.FIRST, points(sizes, Size::perLitre))
                .dotted(
                        "gas for each litre",
                        Look.SECOND,
                        points(sizes, size -> size.output("gas_energy_kwh") / size.litres()))
                .drawing());
        if (sizes.stream().allMatch(size -> size.output("gas_energy_kwh") > 0)) {
            pictures.add(chart(sizes, "eaten_by_size", "Share of the gas eaten, by size", "% of the gas's energy")
                    .dotted(
                            "by heating",
                            Look.FIRST,
                            points(sizes, size -> 100 * size.backup() / size.output("gas_energy_kwh")))
                    .dotted(
                            "by electricity",
                            Look.SECOND,
                            points(sizes, size -> 100 * size.share("electricity_total_kwh")))
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

    private static double[] row(Size size) {
        double[] row = new double[1 + size.scaled().size() + size.outputs().length];
        row[0] = size.litres();
        for (int i = 0; i < size.scaled().size(); i++) {
            row[1 + i] = size.scaled().get(i);
        }
        System.arraycopy(size.outputs(), 0, row, 1 + size.scaled().size(), size.outputs().length);
        return row;
    }

    private static List<String> verdicts(List<Size> sizes, Thresholds thresholds) {
        return List.of(
                verdict("a positive net energy over the run", sizes, Size::netKWh, thresholds.net()),
                verdict("a positive net energy in every month", sizes, Size::worstMonthKWh, thresholds.worstMonth()));
    }

    private static String verdict(
            String what, List<Size> sizes, ToDoubleFunction<Size> value, Optional<Double> threshold) {
        Optional<Size> first =
                sizes.stream().filter(size -> value.applyAsDouble(size) > 0).findFirst();
        if (first.isEmpty()) {
            return "None of these sizes has " + what + ".";
        }
        String smallest = "The smallest of these sizes with " + what + " is "
                + litres(first.get().litres());
        return threshold
                .map(found -> smallest + "; between the sizes run the change comes at about " + litres(found) + ".")
                .orElse(smallest + ", the smallest that was run.");
    }

    private static List<String> returns(List<Size> sizes) {
        List<String> sentences = new ArrayList<>();
        for (Size size : sizes) {
            String eaten = size.output("gas_energy_kwh") > 0
                    ? "heating eats " + Words.percent(size.backup() / size.output("gas_energy_kwh"))
                            + " of the gas, electricity " + Words.percent(size.share("electricity_total_kwh"))
                    : "there is no gas to eat";
            double hours = size.output("hours_below_floor");
            sentences.add(litres(size.litres()) + ": net " + Words.kWh(size.netKWh()) + ", "
                    + Words.number(size.perLitre()) + " kWh a litre; " + eaten
                    + (hours > 0 ? "; below its floor for " + Words.hours(hours) + " hours" : "") + ".");
        }
        return sentences;
    }

    private static List<String> scaled(Rules rules) {
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
                "All else stays as in the design: thickness of foam and shell, fittings with their bores, idle power,"
                        + " pumps, electronics. Another rule for a number: --scale key=power, key=need or key=fixed.");
        return sentences;
    }

    private static Table results(List<Size> sizes) {
        List<List<String>> rows = new ArrayList<>();
        for (Size size : sizes) {
            rows.add(List.of(
                    Words.number(size.litres()),
                    number(size.output("gas_energy_kwh")),
                    number(size.output("backup_bought_kwh")),
                    Words.number(size.output("electricity_total_kwh")),
                    Words.number(size.netKWh()),
                    Words.number(size.perLitre()),
                    Words.number(size.worstMonthKWh()),
                    Words.number(size.output("money_balance")),
                    Words.number(size.output("hours_below_floor"))));
        }
        return new Table(
                "Sizes",
                List.of(
                        "litres",
                        "gas kWh",
                        "backup bought kWh",
                        "electricity kWh",
                        "net kWh",
                        "net kWh/l",
                        "worst month kWh",
                        "money balance",
                        "hours short"),
                rows);
    }

    private static String number(double value) {
        return Double.isFinite(value) ? Words.number(value) : "-";
    }

    private static Table scaledKeys(List<Size> sizes, Rules rules) {
        List<String> header = new ArrayList<>(List.of("scaled key"));
        sizes.forEach(size -> header.add(litres(size.litres())));
        List<List<String>> rows = new ArrayList<>();
        for (int i = 0; i < rules.keys().size(); i++) {
            List<String> row = new ArrayList<>(List.of(rules.keys().get(i)));
            for (Size size : sizes) {
                row.add(figures(size.scaled().get(i)));
            }
            rows.add(row);
        }
        return new Table("The scaled numbers of each size", header, rows);
    }

    private static String figures(double value) {
        return Math.abs(value) >= 0.1 || value == 0 ? Words.fixed(value, value >= 100 ? 0 : 3) : Words.fixed(value, 5);
    }

    private static String litres(double litres) {
        return Words.fixed(litres, litres < 10 ? 1 : 0) + " litres";
    }

    private static Map<String, Object> figures(List<Size> sizes, Rules rules, Thresholds thresholds) {
        Map<String, Object> figures = new LinkedHashMap<>();
        figures.put("smallest_positive_net_l", first(sizes, Size::netKWh));
        figures.put("smallest_positive_worst_month_l", first(sizes, Size::worstMonthKWh));
        figures.put("net_changes_sign_at_l", thresholds.net().orElse(null));
        figures.put("worst_month_changes_sign_at_l", thresholds.worstMonth().orElse(null));
        List<Object> list = new ArrayList<>();
        for (Size size : sizes) {
            Map<String, Object> one = new LinkedHashMap<>();
            one.put("size_l", size.litres());
            for (int i = 0; i < rules.keys().size(); i++) {
                one.put(rules.keys().get(i), size.scaled().get(i));
            }
            one.put("net_kwh_per_l", size.perLitre());
            for (String output : Outputs.NAMES) {
                double value = size.output(output);
                one.put(output, Double.isFinite(value) ? value : null);
            }
            list.add(one);
        }
        figures.put("sizes", list);
        return figures;
    }

    private static Object first(List<Size> sizes, ToDoubleFunction<Size> value) {
        return sizes.stream()
                .filter(size -> value.applyAsDouble(size) > 0)
                .findFirst()
                .<Object>map(Size::litres)
                .orElse(null);
    }
}
