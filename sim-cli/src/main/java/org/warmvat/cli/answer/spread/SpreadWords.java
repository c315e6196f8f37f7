package org.warmvat.cli.answer.spread;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.warmvat.cli.answer.Grounds;
import org.warmvat.cli.answer.Subject;
import org.warmvat.cli.words.Numerals;
import org.warmvat.cli.words.Telling;
import org.warmvat.cli.words.Words;
import org.warmvat.network.Warning;
import org.warmvat.question.spread.SpreadResult;
import org.warmvat.question.spread.Uncertain;
import org.warmvat.sampling.Quantiles;
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
        return new Telling()
                .say(result.chances()
                        .positive()
                        .filter(gas -> gas.low().value() < 1)
                        .map(gas -> "With poor feed (low gas) it is above zero in " + SpreadAnswer.words(gas.low())
                                + " of the draws."))
                .when(
                        result.chances().neverShort().value() < 1,
                        () -> "No hour is below the minimum temperature in "
                                + SpreadAnswer.words(result.chances().neverShort()) + " of the draws.")
                .say("The spreads are "
                        + (proposed
                                ? "the program's proposal"
                                : "those of the file, and what it does not name counts as known")
                        + "; bands and chances are no better than they are.")
                .when(
                        result.years().size() == 1,
                        "One year of weather stands for all: bands over several years are wider.")
                .done();
    }

    List<String> bands() {
        return new Telling()
                .say("Of " + draws()
                        + " 5 in 100 lie below the first number, half below the second, 5 in 100 above the third.")
                .say(figure("The backup heater buys", "backup_bought_kwh", " kWh"))
                .say(figure("The gas holds", "gas_energy_kwh", " kWh"))
                .say(figure("The " + net + " is", result.leading(), " kWh"))
                .say(figure("Below the minimum temperature are", "hours_below_floor", " hours")
                        .filter(hours -> result.chances().neverShort().value() < 1))
                .say(figure("The lowest slurry temperature is", "slurry_least_c", " °C"))
                .done();
    }

    private Optional<String> figure(String subject, String key, String unit) {
        return Optional.ofNullable(result.figures().get(key))
                .filter(band -> Double.isFinite(band.p50()))
                .map(band -> subject + " " + Words.number(band.p5()) + ", " + Words.number(band.p50()) + " and "
                        + Words.number(band.p95()) + unit + ".");
    }

    List<String> chances() {
        return new Telling()
                .say(result.chances()
                        .positive()
                        .map(gas -> "The " + net + " is above zero in " + SpreadAnswer.words(gas.low())
                                + " of the draws at low gas, " + SpreadAnswer.words(gas.middle()) + " at middle and "
                                + SpreadAnswer.words(gas.high())
                                + " at high gas; there potential and rate of all feedstocks are low, as stated or high together, and"
                                + " everything else is drawn."))
                .say("No hour is below the minimum temperature of " + asked.minimum() + " in "
                        + SpreadAnswer.words(result.chances().neverShort()) + ".")
                .say(
                        "The number after ± is one standard error from the count of draws alone (Agresti and Coull 1998); it says"
                                + " nothing about whether the spreads are right.")
                .done();
    }

    List<String> influence() {
        List<String> named = result.influences().stream()
                .filter(one -> one.indices().total() >= WORTH_NAMING)
                .limit(MOST_NAMED)
                .map(one -> InputNames.of(one.key()) + " ("
                        + percent(Math.min(1, one.indices().total())) + ")")
                .toList();
        double worst = result.influences().stream()
                .mapToDouble(one -> one.indices().error())
                .max()
                .orElse(0);
        return new Telling()
                .say(
                        named.isEmpty()
                                ? "The " + net + " hardly varies: no input stands out."
                                : "Most of the spread of the " + net + " comes from " + Words.list(named)
                                        + ": the share of the variance in which the input has a hand. What you can measure of these narrows"
                                        + " the band most.")
                .when(
                        worst > VAGUE,
                        () -> "These shares are vague, by up to " + percent(worst)
                                + " (one standard error): take more draws where their order matters.")
                .done();
    }

    /** A share of variance, of which an estimate may lie a little below nothing. */
    static String percent(double share) {
        return Words.fixed(100 * share, 0) + " %";
    }

    List<String> drawn() {
        int years = result.years().size();
        List<String> worstFirst = SpreadTables.worstFirst(result).stream()
                .map(result.years()::get)
                .toList();
        return new Telling()
                .say(result.inputs().size() + " inputs were drawn, "
                        + (years == 1
                                ? "all in the weather of " + result.years().get(0)
                                : "in " + years + " years of weather dealt out evenly: " + Words.list(result.years()))
                        + ".")
                .when(
                        worstFirst.size() > 1,
                        () -> "By its middle draw the worst year is " + worstFirst.get(0) + ", the middle one "
                                + worstFirst.get(worstFirst.size() / 2) + ".")
                .say(held())
                .say(method())
                .done();
    }

    private List<String> held() {
        return IntStream.range(0, result.inputs().size())
                .filter(i -> result.held(i) > 0)
                .mapToObj(i -> InputNames.of(result.inputs().get(i).key())
                        + " was drawn beyond what the key allows and held at the end of its range in "
                        + result.held(i) + " of " + draws() + ".")
                .toList();
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
                .map(warning -> Grounds.saying(warning, "In the draw that has most of it: " + warning.sentence()))
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
