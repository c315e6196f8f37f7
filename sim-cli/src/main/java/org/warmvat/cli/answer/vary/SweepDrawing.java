package org.warmvat.cli.answer.vary;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.IntUnaryOperator;
import java.util.stream.IntStream;
import org.warmvat.cli.plot.CellChart;
import org.warmvat.cli.plot.Drawing;
import org.warmvat.cli.plot.LineChart;
import org.warmvat.cli.plot.Look;
import org.warmvat.cli.plot.PointChart;
import org.warmvat.cli.plot.Points;
import org.warmvat.cli.words.AxisWords;
import org.warmvat.cli.words.Numerals;
import org.warmvat.question.vary.Outputs;
import org.warmvat.question.vary.Sweep;

/** Chooses the pictures of a sweep: a line over one number, cells over two, a few sheets of cells over three. */
final class SweepDrawing {

    private static final int MOST_SHEETS = 5;
    private static final int MOST_ALONG = 60;
    private static final int MOST_POINTS = 2000;
    private static final String THINNED = "There are more than can be drawn: some are, evenly spread.";

    private SweepDrawing() {}

    static List<Drawing> of(Sweep sweep, String shown, List<Front> fronts) {
        List<Drawing> pictures = new ArrayList<>();
        if (!hasNumbers(sweep, shown)) {
            return fronts(sweep, fronts);
        }
        if (sweep.keys().size() == 1) {
            pictures.add(lines(sweep, shown));
        } else {
            pictures.addAll(sheets(sweep, shown));
        }
        pictures.addAll(fronts(sweep, fronts));
        return pictures;
    }

    /** Whether an output is a number in any of the runs. */
    static boolean hasNumbers(Sweep sweep, String output) {
        return Arrays.stream(sweep.output(output)).anyMatch(Double::isFinite);
    }

    private static List<Drawing> fronts(Sweep sweep, List<Front> fronts) {
        List<Drawing> pictures = new ArrayList<>();
        for (Front front : fronts) {
            if (front.order().length == 0) {
                continue;
            }
            int[] drawn = spread(sweep.runs(), MOST_POINTS);
            double[] xs = sweep.output(front.first());
            double[] ys = sweep.output(front.second());
            pictures.add(PointChart.of(
                            "pareto",
                            words(front.second()) + " against " + words(front.first()),
                            words(front.first()),
                            words(front.second()))
                    .caption(
                            "Each mark is one run; along the line no other does better in one figure and as well in the other.")
                    .points("all runs", Look.SIXTH, new Points(finite(chosen(xs, drawn)), finite(chosen(ys, drawn))))
                    .front(
                            "best in one without loss in the other",
                            Look.OTHER_SLURRY,
                            new Points(chosen(xs, front.order()), chosen(ys, front.order()))));
        }
        return pictures;
    }

    private static double[] chosen(double[] values, int[] indices) {
        return Arrays.stream(indices).mapToDouble(index -> values[index]).toArray();
    }

    /** Energies stand together; anything else alone. */
    private static Drawing lines(Sweep sweep, String shown) {
        List<String> names = new ArrayList<>(List.of(shown));
        if (shown.equals(Outputs.leading(sweep.names()))) {
            names.addAll(shown.equals("net_energy_kwh") ? List.of() : List.of("net_energy_kwh"));
            names.addAll(List.of("gas_energy_kwh", "backup_bought_kwh", "electricity_total_kwh"));
        }
        names.removeIf(name -> !hasNumbers(sweep, name));
        int[] drawn = spread(sweep.runs(), MOST_POINTS);
        double[] at = chosen(sweep, 0, drawn, run -> run);
        String key = sweep.keys().get(0);
        LineChart chart = LineChart.over(
                        "varied",
                        words(shown) + " over " + AxisWords.of(key),
                        AxisWords.of(key),
                        Arrays.stream(at).min().orElseThrow(),
                        Arrays.stream(at).max().orElseThrow())
                .caption("Each dot is one run over the whole weather file."
                        + (drawn.length < sweep.runs() ? " " + THINNED : ""))
                .stripWithZero(names.size() > 1 ? "kWh over the run" : words(shown), 1e-6);
        for (int i = 0; i < names.size(); i++) {
            chart.dotted(
                    words(names.get(i)),
                    Look.nth(i),
                    new Points(at, finite(chosen(sweep.output(names.get(i)), drawn))));
        }
        return chart;
    }

    /** What is infinite leaves a gap in a line. */
    private static double[] finite(double[] values) {
        return Arrays.stream(values)
                .map(value -> Double.isFinite(value) ? value : Double.NaN)
                .toArray();
    }

    private static List<Drawing> sheets(Sweep sweep, String shown) {
        int last = sweep.keys().size() - 1;
        int[] columns = spread(sweep.counts()[last], MOST_ALONG);
        int[] rows = spread(sweep.counts()[last - 1], MOST_ALONG);
        int perRow = sweep.counts()[last];
        int perSheet = sweep.counts()[last - 1] * perRow;
        String thinned = columns.length < perRow || rows.length < perSheet / perRow ? " " + THINNED : "";
        List<Drawing> sheets = new ArrayList<>();
        for (int sheet : spread(sweep.runs() / perSheet, MOST_SHEETS)) {
            int first = sheet * perSheet;
            String where = last == 2
                    ? ", " + AxisWords.of(sweep.keys().get(0)) + " = "
                            + Numerals.exact(sweep.values().get(first)[0])
                    : "";
            sheets.add(new CellChart(
                            sheets.isEmpty() ? "varied" : "varied_" + (sheets.size() + 1),
                            words(shown) + where,
                            new CellChart.Side(
                                    AxisWords.of(sweep.keys().get(last)),
                                    chosen(sweep, last, columns, column -> first + column)),
                            new CellChart.Side(
                                    AxisWords.of(sweep.keys().get(last - 1)),
                                    chosen(sweep, last - 1, rows, row -> first + row * perRow)),
                            Arrays.stream(rows)
                                    .mapToObj(row -> Arrays.stream(columns)
                                            .mapToDouble(column -> sweep.output(first + row * perRow + column, shown))
                                            .toArray())
                                    .toArray(double[][]::new))
                    .caption("Each cell is one run over the whole weather file; the darker, the more." + thinned));
        }
        return sheets;
    }

    private static double[] chosen(Sweep sweep, int key, int[] places, IntUnaryOperator run) {
        return Arrays.stream(places)
                .mapToDouble(place -> sweep.values().get(run.applyAsInt(place))[key])
                .toArray();
    }

    /** Places among so many, all of them or some, evenly spread and the ends included: more marks than there are pixels show nothing more. */
    private static int[] spread(int count, int most) {
        int drawn = Math.min(count, most);
        return IntStream.range(0, drawn)
                .map(i -> drawn == 1 ? 0 : (int) ((long) i * (count - 1) / (drawn - 1)))
                .toArray();
    }

    /** An output's name in words, its unit after a comma: net energy, kWh. */
    static String words(String output) {
        return output.replaceFirst("^hours_below_floor$", "hours below minimum")
                .replaceFirst("^slurry_least_c$", "coldest slurry, °C")
                .replaceFirst("^slurry_most_c$", "hottest slurry, °C")
                .replaceFirst("^solar_share$", "solar fraction")
                .replaceFirst("^loading_kg_vs_m3_day$", "organic loading rate, kg VS/m³ day")
                .replaceFirst("^retention_days$", "hydraulic retention time, days")
                .replaceFirst("^backup_bought_kwh$", "bought for the backup heater, kWh")
                .replaceFirst("^electricity_total_kwh$", "electricity of the machinery, kWh")
                .replaceFirst("_kwh$", ", kWh")
                .replaceFirst("_nm3$", ", Nm³")
                .replaceFirst("_c$", ", °C")
                .replaceFirst("_l$", ", litres")
                .replace('_', ' ');
    }
}
