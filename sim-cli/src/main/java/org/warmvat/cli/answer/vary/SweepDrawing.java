package org.warmvat.cli.answer.vary;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.warmvat.cli.answer.Numerals;
import org.warmvat.cli.plot.CellChart;
import org.warmvat.cli.plot.Drawing;
import org.warmvat.cli.plot.LineChart;
import org.warmvat.cli.plot.Look;
import org.warmvat.cli.plot.PointChart;
import org.warmvat.cli.plot.Points;
import org.warmvat.question.vary.Sweep;

/** Chooses the pictures of a sweep: a line over one number, cells over two, a few sheets of cells over three. */
final class SweepDrawing {

    private static final int MOST_SHEETS = 5;

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
            double[] xs = sweep.output(front.first());
            double[] ys = sweep.output(front.second());
            pictures.add(PointChart.of(
                            "pareto",
                            words(front.second()) + " against " + words(front.first()),
                            words(front.first()),
                            words(front.second()))
                    .caption("Each mark is one run; along the line none is beaten by another in both figures at once.")
                    .points("all runs", Look.SIXTH, new Points(finite(xs), finite(ys)))
                    .front(
                            "best in one without loss in the other",
                            Look.OTHER_SLURRY,
                            new Points(chosen(xs, front.order()), chosen(ys, front.order())))
                    .drawing());
        }
        return pictures;
    }

    private static double[] chosen(double[] values, int[] indices) {
        return Arrays.stream(indices).mapToDouble(index -> values[index]).toArray();
    }

    /** Energies stand together; anything else alone. */
    private static Drawing lines(Sweep sweep, String shown) {
        List<String> names = new ArrayList<>(List.of(shown));
        if (shown.equals("net_energy_kwh")) {
            names.addAll(List.of("gas_energy_kwh", "backup_bought_kwh", "electricity_total_kwh"));
        }
        names.removeIf(name -> !hasNumbers(sweep, name));
        double[] at = sweep.values().stream().mapToDouble(v -> v[0]).toArray();
        String key = sweep.keys().get(0);
        LineChart chart = LineChart.over(
                        "varied",
                        words(shown) + " over " + key,
                        key,
                        Arrays.stream(at).min().orElseThrow(),
                        Arrays.stream(at).max().orElseThrow())
                .caption("Each dot is one run over the whole weather file.")
                .stripWithZero(names.size() > 1 ? "kWh over the run" : words(shown), 1e-6);
        for (int i = 0; i < names.size(); i++) {
            chart.dotted(words(names.get(i)), Look.nth(i), new Points(at, finite(sweep.output(names.get(i)))));
        }
        return chart.drawing();
    }

    /** What is infinite leaves a gap in a line. */
    private static double[] finite(double[] values) {
        return Arrays.stream(values)
                .map(value -> Double.isFinite(value) ? value : Double.NaN)
                .toArray();
    }

    private static List<Drawing> sheets(Sweep sweep, String shown) {
        int columns = sweep.counts()[sweep.counts().length - 1];
        int rows = sweep.counts()[sweep.counts().length - 2];
        int last = sweep.keys().size() - 1;
        int all = sweep.runs() / (rows * columns);
        int drawn = Math.min(all, MOST_SHEETS);
        List<Drawing> sheets = new ArrayList<>();
        for (int i = 0; i < drawn; i++) {
            // evenly spread where there are more than can be drawn, the ends included
            int first = (drawn == 1 ? 0 : i * (all - 1) / (drawn - 1)) * rows * columns;
            String where = last == 2
                    ? ", " + sweep.keys().get(0) + " = "
                            + Numerals.exact(sweep.values().get(first)[0])
                    : "";
            sheets.add(new CellChart(
                            i == 0 ? "varied" : "varied_" + (i + 1),
                            words(shown) + where,
                            "Each cell is one run over the whole weather file; the darker, the more.",
                            new CellChart.Side(sweep.keys().get(last), axis(sweep, last, first, 1, columns)),
                            new CellChart.Side(sweep.keys().get(last - 1), axis(sweep, last - 1, first, columns, rows)),
                            cells(sweep.output(shown), first, rows, columns))
                    .drawing());
        }
        return sheets;
    }

    private static double[] axis(Sweep sweep, int key, int first, int stride, int count) {
        double[] values = new double[count];
        for (int i = 0; i < count; i++) {
            values[i] = sweep.values().get(first + i * stride)[key];
        }
        return values;
    }

    private static double[][] cells(double[] output, int first, int rows, int columns) {
        double[][] cells = new double[rows][];
        for (int row = 0; row < rows; row++) {
            cells[row] = Arrays.copyOfRange(output, first + row * columns, first + (row + 1) * columns);
        }
        return cells;
    }

    /** An output's name in words, its unit after a comma: net energy, kWh. */
    static String words(String output) {
        return output.replaceFirst("_kwh$", ", kWh")
                .replaceFirst("_nm3$", ", Nm³")
                .replaceFirst("_c$", ", °C")
                .replaceFirst("_l$", ", litres")
                .replace('_', ' ');
    }
}
