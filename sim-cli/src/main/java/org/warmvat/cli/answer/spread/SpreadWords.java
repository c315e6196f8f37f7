package org.warmvat.cli.answer.spread;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.warmvat.cli.answer.Subject;
import org.warmvat.cli.words.Numerals;
import org.warmvat.cli.words.Words;
import org.warmvat.network.Warning;
import org.warmvat.question.spread.SpreadResult;
import org.warmvat.question.spread.SpreadResult.Influence;
import org.warmvat.question.spread.Uncertain;
import org.warmvat.sampling.Quantiles;
import org.warmvat.sampling.SobolIndices;
import org.warmvat.sampling.Spread;

/** The sentences of {@code spread}. */
final class SpreadWords {

    private static final int YEAR_H = 8760;
    private static final int MOST_NAMED = 5;
    private static final double WORTH_NAMING = 0.02;
    private static final double VAGUE = 0.15;

    private final SpreadResult result;
    private final Subject asked;
    private final String net;

    SpreadWords(SpreadResult result, Subject asked) {
        this.result = result;
        this.asked = asked;
        net = result.leading().startsWith("useful") ? "useful net energy" : "net energy";
    }

    private String over() {
        double hours = result.figures().get("hours").p50();
        return hours >= YEAR_H ? " of a year" : " of the " + Words.fixed(hours, 0) + " hours";
    }

    private String draws() {
        return "the " + result.draws().size() + " draws";
    }

    String verdict() {
        Quantiles band = result.figures().get(result.leading());
        String range = "The " + net + over() + " lies between " + Words.number(band.p5()) + " and "
                + Words.kWh(band.p95()) + " in nine of ten draws, in the middle at " + Words.kWh(band.p50());
        return range
                + result.chances()
                        .positive()
                        .map(gas -> "; at middle gas it is above zero in " + SpreadAnswer.words(gas.middle()) + " of "
                                + draws() + ".")
                        .orElse("; no gas is computed.");
    }

    List<String> but(boolean proposed) {
        List<String> but = new ArrayList<>();
        result.chances()
                .positive()
                .filter(gas -> gas.low().value() < 1)
                .ifPresent(gas -> but.add("With poor feed (low gas) it is above zero in "
                        + SpreadAnswer.words(gas.low()) + " of the draws."));
        if (result.chances().neverShort().value() < 1) {
            but.add("No hour is below the minimum temperature in "
                    + SpreadAnswer.words(result.chances().neverShort()) + " of the draws.");
        }
        but.add("The spreads are "
                + (proposed ? "the program's proposal" : "those of the file, and what it does not name counts as known")
                + "; bands and chances are no better than they are.");
        if (result.years().size() == 1) {
            but.add("One year of weather stands for all: bands over several years are wider.");
        }
        return but;
    }

    List<String> bands() {
        List<String> sentences = new ArrayList<>();
        sentences.add("Of " + draws()
                + " 5 in 100 lie below the first number, half below the second, 5 in 100 above the third.");
        figure("The backup heater buys", "backup_bought_kwh", " kWh").ifPresent(sentences::add);
        figure("The gas holds", "gas_energy_kwh", " kWh").ifPresent(sentences::add);
        figure("The " + net + " is", result.leading(), " kWh").ifPresent(sentences::add);
        if (result.chances().neverShort().value() < 1) {
            figure("Below the minimum temperature are", "hours_below_floor", " hours")
                    .ifPresent(sentences::add);
        }
        figure("The lowest slurry temperature is", "slurry_least_c", " °C").ifPresent(sentences::add);
        return sentences;
    }

    private Optional<String> figure(String subject, String key, String unit) {
        return Optional.ofNullable(result.figures().get(key))
                .filter(band -> Double.isFinite(band.p50()))
                .map(band -> subject + " " + Words.number(band.p5()) + ", " + Words.number(band.p50()) + " and "
                        + Words.number(band.p95()) + unit + ".");
    }

    List<String> chances() {
        List<String> sentences = new ArrayList<>();
        result.chances()
                .positive()
                .ifPresent(gas -> sentences.add("The " + net + " is above zero in " + SpreadAnswer.words(gas.low())
                        + " of the draws at low gas, " + SpreadAnswer.words(gas.middle()) + " at middle and "
                        + SpreadAnswer.words(gas.high())
                        + " at high gas; there potential and rate of all feedstocks are low, as stated or high together, and"
                        + " everything else is drawn."));
        sentences.add("No hour is below the minimum temperature of " + asked.minimum() + " in "
                + SpreadAnswer.words(result.chances().neverShort()) + ".");
        sentences.add(
                "The number after ± is one standard error from the count of draws alone (Agresti and Coull 1998); it says"
                        + " nothing about whether the spreads are right.");
        return sentences;
    }

    List<String> influence() {
        List<String> sentences = new ArrayList<>();
        List<String> named = result.influences().stream()
                .filter(one -> one.indices().total() >= WORTH_NAMING)
                .limit(MOST_NAMED)
                .map(one -> InputNames.of(one.key()) + " ("
                        + percent(Math.min(1, one.indices().total())) + ")")
                .toList();
        sentences.add(
                named.isEmpty()
                        ? "The " + net + " hardly varies: no input stands out."
                        : "Most of the spread of the " + net + " comes from " + Words.list(named)
                                + ": the share of the variance in which the input has a hand. What you can measure of these narrows"
                                + " the band most.");
        double worst = result.influences().stream()
                .map(Influence::indices)
                .mapToDouble(SobolIndices::error)
                .max()
                .orElse(0);
        if (worst > VAGUE) {
            sentences.add("These shares are vague, by up to " + percent(worst)
                    + " (one standard error): take more draws where their order matters.");
        }
        return sentences;
    }

    /** A share of variance, of which an estimate may lie a little below nothing. */
    static String percent(double share) {
        return Words.fixed(100 * share, 0) + " %";
    }

    List<String> drawn() {
        List<String> sentences = new ArrayList<>();
        int years = result.years().size();
        sentences.add(result.inputs().size() + " inputs were drawn, "
                + (years == 1
                        ? "all in the weather of " + result.years().get(0)
                        : "in " + years + " years of weather dealt out evenly: " + Words.list(result.years()))
                + ".");
        List<Integer> worstFirst = SpreadTables.worstFirst(result);
        if (worstFirst.size() > 1) {
            sentences.add("By its middle draw the worst year is "
                    + result.years().get(worstFirst.get(0)) + ", the middle one "
                    + result.years().get(worstFirst.get(worstFirst.size() / 2)) + ".");
        }
        for (int i = 0; i < result.inputs().size(); i++) {
            if (result.held(i) > 0) {
                sentences.add(InputNames.of(result.inputs().get(i).key())
                        + " was drawn beyond what the key allows and held at the end of" + " its range in "
                        + result.held(i) + " of " + draws() + ".");
            }
        }
        sentences.addAll(method());
        return sentences;
    }

    List<String> method() {
        return List.of(
                "Draws are points of a Sobol sequence under a random digital shift.",
                "First-order influence is estimated by Saltelli et al. (2010), total influence by Jansen (1999), from "
                        + result.runs() + " runs: two sets of "
                        + (result.draws().size() + 1) / 2
                        + " draws, and for each input the first set with that input taken from the second; errors by bootstrap.");
    }

    List<Warning> warnings() {
        return result.warnings().stream()
                .map(warning -> new Warning(
                        warning.key(),
                        "In the draw that has most of it: " + warning.sentence(),
                        warning.count(),
                        warning.worst()))
                .toList();
    }

    /** What is taken for an input. */
    static String assumed(Uncertain input, boolean proposed) {
        Spread spread = input.spread();
        String ends = Numerals.exact(spread.low()) + " and " + Numerals.exact(spread.high());
        String how = spread.shape() == Spread.Shape.EVEN
                ? "evenly between " + ends
                : "normally with " + ends + " as 5 and 95 % points";
        return input.key() + " was drawn " + how + (input.times() ? " as a factor on the design's value" : "")
                + (proposed ? " (proposed)." : ".");
    }

    /** Values of the leading figure in one year. */
    static double[] ofYear(SpreadResult result, int year, String column) {
        double[] all = result.column(column);
        return Arrays.stream(indices(result, year)).mapToDouble(i -> all[i]).toArray();
    }

    private static int[] indices(SpreadResult result, int year) {
        return java.util.stream.IntStream.range(0, result.draws().size())
                .filter(i -> result.draws().get(i).year() == year)
                .toArray();
    }
}
