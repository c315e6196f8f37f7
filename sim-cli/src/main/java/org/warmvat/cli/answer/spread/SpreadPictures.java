package org.warmvat.cli.answer.spread;

import java.time.LocalDateTime;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.warmvat.cli.answer.Subject;
import org.warmvat.cli.plot.Band;
import org.warmvat.cli.plot.Drawing;
import org.warmvat.cli.plot.Histogram;
import org.warmvat.cli.plot.LineChart;
import org.warmvat.cli.plot.Look;
import org.warmvat.cli.plot.RankedBars;
import org.warmvat.cli.words.Words;
import org.warmvat.question.spread.SpreadResult;
import org.warmvat.question.spread.SpreadResult.Influence;
import org.warmvat.sampling.Quantiles;

/** The pictures of {@code spread}: the band through the year, the distribution of net energy, the ranked influences. */
final class SpreadPictures {

    private static final LocalDateTime ANY_YEAR = LocalDateTime.of(2025, 1, 1, 0, 0);
    private static final int DAY_H = 24;
    private static final int MOST_BARS = 12;

    private SpreadPictures() {}

    static List<Drawing> of(SpreadResult result, Subject asked) {
        return List.of(temperature(result, asked), distribution(result), influence(result));
    }

    private static Drawing temperature(SpreadResult result, Subject asked) {
        int[] days = IntStream.range(0, result.daysC().size())
                .filter(day -> Double.isFinite(result.daysC().get(day).p50()))
                .toArray();
        LineChart chart = LineChart.overTime(
                        "temperature", "Slurry temperature through the year", ANY_YEAR, ANY_YEAR.plusYears(1))
                .caption("Mean of each day: the middle of the draws, and the band that nine of ten lie in.")
                .strip("slurry, °C", 4)
                .band(
                        "middle",
                        "nine of ten draws",
                        Look.SLURRY,
                        new Band(
                                IntStream.of(days)
                                        .mapToDouble(day -> (day + 0.5) * DAY_H)
                                        .toArray(),
                                edge(result, days, Quantiles::p5),
                                edge(result, days, Quantiles::p50),
                                edge(result, days, Quantiles::p95)));
        if (Double.isFinite(asked.design().control().minimumC())) {
            chart.level("minimum", Look.MINIMUM, asked.design().control().minimumC());
        }
        return chart;
    }

    private static double[] edge(SpreadResult result, int[] days, ToDoubleFunction<Quantiles> edge) {
        return IntStream.of(days)
                .mapToDouble(day -> edge.applyAsDouble(result.daysC().get(day)))
                .toArray();
    }

    private static Drawing distribution(SpreadResult result) {
        double[] net = result.column(result.leading());
        Quantiles band = result.figures().get(result.leading());
        boolean useful = result.leading().startsWith("useful");
        String title = useful ? "Useful net energy of a year" : "Net energy of a year";
        String quantity = useful ? "useful net energy, kWh" : "net energy, kWh";
        Histogram chart = Histogram.of("net_energy", title, quantity, net)
                .caption("How many draws fell into each range; the lines mark 5, 50 and 95 %"
                        + (crossesZero(net) ? ", and zero." : "."))
                .upright("5 %", band.p5())
                .upright("50 %", band.p50())
                .upright("95 %", band.p95());
        return crossesZero(net) ? chart.upright("0", 0) : chart;
    }

    private static boolean crossesZero(double... values) {
        Quantiles ends = Quantiles.of(values);
        return ends.p5() < 0 && ends.p95() > 0;
    }

    private static Drawing influence(SpreadResult result) {
        RankedBars chart = RankedBars.of("influence", "Where the spread of net energy comes from")
                .caption(
                        "Share of the variance in which each input has a hand, alone and together with others; ± is one standard"
                                + " error."
                                + (result.influences().size() > MOST_BARS ? " The " + MOST_BARS + " largest." : ""));
        result.influences().stream().limit(MOST_BARS).forEach(one -> bar(chart, one));
        return chart;
    }

    private static void bar(RankedBars chart, Influence one) {
        String kind = one.key().replaceFirst("\\..*", "");
        chart.bar(
                InputNames.of(one.key()),
                switch (kind) {
                    case "weather" -> Look.SUN;
                    case "feed" -> Look.FEED;
                    default -> Look.SLURRY;
                },
                Math.max(0, one.indices().total()),
                Words.fixed(100 * one.indices().total(), 0) + " ± "
                        + Words.fixed(100 * one.indices().error(), 0) + " %");
    }
}
