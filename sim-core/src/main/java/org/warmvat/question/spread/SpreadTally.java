package org.warmvat.question.spread;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.warmvat.account.Warnings;
import org.warmvat.design.season.SeasonTable;
import org.warmvat.network.meter.Line;
import org.warmvat.question.Figures;
import org.warmvat.question.spread.SpreadResult.Draw;
import org.warmvat.question.spread.SpreadResult.Influence;
import org.warmvat.sampling.Quantiles;
import org.warmvat.sampling.SaltelliSample;
import org.warmvat.sampling.Share;
import org.warmvat.sampling.SobolIndices;
import org.warmvat.tank.KeyFigures;
import org.warmvat.weather.WeatherYear;

/** Makes the result from the numbers of all runs. */
final class SpreadTally {

    private final UncertainTank tank;
    private final List<WeatherYear> years;
    private final SaltelliSample sample;
    private final Columns columns;

    /**
     * What stands at the beginning of a draw's numbers.
     *
     * @param lines its figures
     * @param leading the one that the answer turns on
     */
    record Columns(List<Line> lines, Line leading) {}

    SpreadTally(UncertainTank tank, List<WeatherYear> years, SaltelliSample sample, Columns columns) {
        this.tank = tank;
        this.years = years;
        this.sample = sample;
        this.columns = columns;
    }

    SpreadResult result(List<Figures> runs, int draws, int[] yearOf, long seed) {
        int[] drawn = IntStream.range(0, runs.size())
                .filter(sample::isDraw)
                .limit(draws)
                .toArray();
        List<Draw> told = Arrays.stream(drawn)
                .mapToObj(run -> draw(run, runs.get(run).numbers(), yearOf[run]))
                .toList();
        Map<String, Quantiles> figures = new LinkedHashMap<>();
        for (int i = 0; i < columns.lines().size(); i++) {
            int column = i;
            figures.put(columns.lines().get(i).column(), band(told, draw -> draw.figures()[column]));
        }
        List<Quantiles> days = IntStream.range(0, SeasonTable.DAYS)
                .mapToObj(day -> Quantiles.of(Arrays.stream(drawn)
                        .mapToDouble(run -> runs.get(run).numbers()[firstDay() + day])
                        .filter(Double::isFinite)
                        .toArray()))
                .toList();
        return new SpreadResult(
                tank.inputs(),
                years.stream().map(WeatherYear::name).toList(),
                columns.leading().column(),
                told,
                figures,
                chances(told),
                influences(runs, seed),
                days,
                runs.size(),
                Warnings.worst(Arrays.stream(drawn)
                        .mapToObj(run -> runs.get(run).warnings())
                        .toList()));
    }

    private int firstDay() {
        return columns.lines().size() + SpreadStudy.ESTIMATES.size();
    }

    private Draw draw(int run, double[] numbers, int year) {
        UncertainTank.Drawn drawn = tank.drawn(sample.point(run));
        int gas = columns.lines().size();
        return new Draw(
                year,
                drawn.values(),
                drawn.held(),
                Arrays.copyOf(numbers, gas),
                numbers[gas],
                numbers[gas + 1],
                numbers[gas + 2]);
    }

    private static Quantiles band(List<Draw> draws, ToDoubleFunction<Draw> figure) {
        return Quantiles.of(draws.stream().mapToDouble(figure).toArray());
    }

    private SpreadResult.Chances chances(List<Draw> draws) {
        int below = columns.lines().indexOf(KeyFigures.BELOW_FLOOR_HOURS);
        Share neverShort = share(draws, draw -> draw.figures()[below] > 0 ? 0 : 1);
        if (tank.base().gas().isEmpty()) {
            return new SpreadResult.Chances(Optional.empty(), neverShort);
        }
        SpreadResult.ByGas positive = new SpreadResult.ByGas(
                share(draws, Draw::lowGas), share(draws, Draw::middleGas), share(draws, Draw::highGas));
        return new SpreadResult.Chances(Optional.of(positive), neverShort);
    }

    private static Share share(List<Draw> draws, ToDoubleFunction<Draw> positive) {
        int held = (int)
                draws.stream().filter(draw -> positive.applyAsDouble(draw) > 0).count();
        return Share.of(held, draws.size());
    }

    private List<Influence> influences(List<Figures> runs, long seed) {
        int leading = columns.lines().indexOf(columns.leading());
        double[] answers = IntStream.range(0, runs.size())
                .mapToDouble(run -> runs.get(run).numbers()[sample.isDraw(run) ? leading : 0])
                .toArray();
        List<SobolIndices> indices = sample.indices(answers, seed);
        List<Influence> influences = new ArrayList<>();
        for (int i = 0; i < indices.size(); i++) {
            boolean year = i == tank.inputs().size();
            influences.add(new Influence(
                    year ? SpreadResult.YEAR : tank.inputs().get(i).key(), indices.get(i)));
        }
        influences.sort(Comparator.comparingDouble(
                (Influence influence) -> -influence.indices().total()));
        return List.copyOf(influences);
    }
}
