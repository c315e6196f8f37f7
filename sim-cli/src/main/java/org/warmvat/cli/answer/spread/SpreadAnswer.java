package org.warmvat.cli.answer.spread;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.warmvat.cli.answer.Csv;
import org.warmvat.cli.answer.Document;
import org.warmvat.cli.answer.Draft;
import org.warmvat.cli.answer.Subject;
import org.warmvat.cli.words.Words;
import org.warmvat.question.spread.SpreadResult;
import org.warmvat.question.spread.SpreadResult.Draw;
import org.warmvat.question.spread.Uncertain;
import org.warmvat.sampling.Quantiles;
import org.warmvat.sampling.Share;

/** The answer to {@code spread}. */
public final class SpreadAnswer {

    private SpreadAnswer() {}

    /**
     * Tells what was found.
     *
     * @param result all of it
     * @param asked command and inputs
     * @param proposed whether the spreads are the program's proposal
     */
    public static Document of(SpreadResult result, Subject asked, boolean proposed) {
        SpreadWords words = new SpreadWords(result, asked);
        Draft draft = Draft.of(asked, "how far may it lie?")
                .verdict(words.verdict(), words.but(proposed))
                .paragraph("How far may it lie?", words.bands())
                .paragraph("What are the chances?", words.chances())
                .paragraph("Where does the spread come from?", words.influence())
                .paragraph("What was drawn?", words.drawn())
                .table(SpreadTables.figures(result))
                .table(SpreadTables.influences(result))
                .table(SpreadTables.inputs(result))
                .pictures(() -> SpreadPictures.of(result, asked))
                .warn(words.warnings());
        SpreadTables.years(result).ifPresent(draft::table);
        figures(result, words, draft);
        draft.csv("draws.csv", draws(result))
                .csv("influence.csv", SpreadTables.INFLUENCES.csv(result.influences()))
                .csv("temperature.csv", days(result));
        for (Uncertain input : result.inputs()) {
            draft.assume(SpreadWords.assumed(input, proposed));
        }
        return draft.done();
    }

    private static void figures(SpreadResult result, SpreadWords words, Draft draft) {
        Map<String, Object> bands = new LinkedHashMap<>();
        result.figures().forEach((key, band) -> bands.put(key, band(band)));
        Map<String, Object> spread = Draft.row(
                "draws", result.draws().size(),
                "years", result.years(),
                "figures", bands,
                "chances", chances(result),
                "influence", SpreadTables.INFLUENCES.rows(result.influences()),
                "method", String.join(" ", words.method()),
                "runs", result.runs(),
                "influence_on", result.leading(),
                "held_at_range", held(result));
        List<Integer> worstFirst = SpreadTables.worstFirst(result);
        if (worstFirst.size() > 1) {
            spread.put("worst_year", result.years().get(worstFirst.get(0)));
            spread.put("middle_year", result.years().get(worstFirst.get(worstFirst.size() / 2)));
        }
        draft.figure("spread", spread);
    }

    private static Map<String, Object> chances(SpreadResult result) {
        SpreadResult.Chances chances = result.chances();
        return Draft.row(
                "net_positive",
                        chances.positive()
                                .map(gas -> Draft.row(
                                        "low_gas", share(gas.low()),
                                        "middle_gas", share(gas.middle()),
                                        "high_gas", share(gas.high()))),
                "never_short", share(chances.neverShort()));
    }

    private static Map<String, Object> band(Quantiles band) {
        return Draft.row("p5", band.p5(), "p50", band.p50(), "p95", band.p95());
    }

    private static Map<String, Object> share(Share share) {
        return Draft.row("value", share.value(), "error", share.error());
    }

    private static Map<String, Object> held(SpreadResult result) {
        Map<String, Object> held = new LinkedHashMap<>();
        for (int i = 0; i < result.inputs().size(); i++) {
            if (result.held(i) > 0) {
                held.put(result.inputs().get(i).key(), result.held(i));
            }
        }
        return held;
    }

    /** A row for each draw: its year by its place among the years, what was drawn, the figures. */
    private static Csv draws(SpreadResult result) {
        List<String> head = new ArrayList<>(List.of("draw", "year"));
        result.inputs().forEach(input -> head.add(input.key() + (input.times() ? " factor" : "")));
        head.addAll(result.figures().keySet());
        head.addAll(List.of("net_low_gas_kwh", "net_middle_gas_kwh", "net_high_gas_kwh"));
        Csv csv = Csv.of(head);
        for (int i = 0; i < result.draws().size(); i++) {
            csv.numbers(row(i + 1.0, result.draws().get(i)));
        }
        return csv;
    }

    private static double[] row(double number, Draw draw) {
        double[] first = {number, draw.year() + 1.0};
        double[] net = {draw.lowGas(), draw.middleGas(), draw.highGas()};
        return Stream.of(first, draw.values(), draw.figures(), net)
                .flatMapToDouble(Arrays::stream)
                .toArray();
    }

    private static Csv days(SpreadResult result) {
        Csv csv = Csv.of(List.of("day", "p5_c", "p50_c", "p95_c"));
        IntStream.range(0, result.daysC().size()).forEach(day -> {
            Quantiles band = result.daysC().get(day);
            csv.numbers(day + 1.0, band.p5(), band.p50(), band.p95());
        });
        return csv;
    }

    /** A share with its error: {@code 83 % ± 3 %}. */
    static String words(Share share) {
        return Words.percent(share.value()) + " (± " + Words.percent(share.error()) + ")";
    }
}
