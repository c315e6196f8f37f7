package org.warmvat.cli.answer.advise;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.IntStream;
import org.warmvat.cli.answer.Columns;
import org.warmvat.cli.answer.Document;
import org.warmvat.cli.answer.Draft;
import org.warmvat.cli.answer.Subject;
import org.warmvat.cli.answer.Table;
import org.warmvat.cli.answer.YearRows;
import org.warmvat.cli.plot.Drawing;
import org.warmvat.cli.plot.Look;
import org.warmvat.cli.plot.RankedBars;
import org.warmvat.cli.words.Telling;
import org.warmvat.cli.words.Words;
import org.warmvat.question.advise.AdviseResult;
import org.warmvat.question.advise.AdviseStudy;
import org.warmvat.question.advise.Kind;
import org.warmvat.question.advise.Outcome;
import org.warmvat.question.advise.Recommendation;

/** The answer to {@code advise}. */
public final class AdviseAnswer {

    private final AdviseResult result;
    private final Subject asked;
    private final AdviseWords words;
    private final Commands commands;

    private AdviseAnswer(AdviseResult result, Subject asked) {
        this.result = result;
        this.asked = asked;
        this.words = new AdviseWords(asked, result.asIs());
        this.commands = new Commands(asked);
    }

    /** Tells what was found. */
    public static Document of(AdviseResult result, Subject asked) {
        return new AdviseAnswer(result, asked).told().done();
    }

    private Draft told() {
        YearRows years = years();
        Map<String, Object> advised = Draft.row("recommendations", columns(true).rows(result.recommendations()));
        advised.putAll(years.figures());
        Draft draft = Draft.of(asked, "what to do?")
                .verdict(verdict(), but())
                .items("What to do, the first first", numbered())
                .paragraph("All of it together", together())
                .paragraph("What was run", new AdviseGrounds(result, asked).told())
                .paragraph("What does each year say?", years.sentences())
                .tables(years.tables())
                .figure("advise", advised)
                .warn(result.asIs().warnings());
        if (!result.recommendations().isEmpty()) {
            draft.table(shown()).csv("recommendations.csv", columns(false).csv(result.recommendations()));
        }
        if (result.recommendations().stream().anyMatch(one -> one.change().isPresent())) {
            draft.pictures(() -> List.of(picture()));
        }
        if (asked.pricesAreExamples()) {
            draft.assume(
                    "Money is left out: the design gives no prices of its own. How much insulation and collector pays was"
                            + " judged by example prices.");
        }
        return draft.assume(
                "Each recommendation was run by itself in all weather files, and is named only where nothing that can hurt or cool"
                        + " the tank grows worse by it. Energies and hours are those of a year.",
                "Of several years payback is the mean, failure and spring are told of the worst; the heater's reserve is a coldest week "
                        + Words.number(AdviseStudy.RESERVE_K) + " K colder than in the files.");
    }

    private YearRows years() {
        return new YearRows(IntStream.range(0, result.byYear().size())
                .mapToObj(i -> row(asked.yearName(i), result.byYear().get(i)))
                .toList());
    }

    private static YearRows.Row row(String name, Outcome year) {
        return new YearRows.Row(
                name, year.energy().net(), year.energy().bought(), year.hours().below());
    }

    private String verdict() {
        List<Recommendation> all = result.recommendations();
        if (all.isEmpty()) {
            return "Nothing was found that should be changed.";
        }
        return all.get(0).kind() == Kind.SLIP
                ? "Before any advice " + count(all.size(), "number of the design has", "numbers of the design have")
                        + " to be looked at."
                : count(all.size(), "recommendation", "recommendations") + ": " + Words.list(sorts(all)) + ".";
    }

    private static List<String> sorts(List<Recommendation> all) {
        long hurts = all.stream().filter(one -> one.kind().hurts()).count();
        long energy = all.stream().filter(one -> one.kind().isEnergy()).count();
        long cold = all.size() - hurts - energy;
        return new Telling()
                .when(hurts > 0, hurts + " against what can hurt or break")
                .when(cold > 0, cold + " against a cold tank")
                .when(energy > 0, energy + " for more net energy")
                .done();
    }

    private static String count(int many, String one, String more) {
        return many + " " + (many == 1 ? one : more);
    }

    private List<String> but() {
        return new Telling()
                .when(
                        result.recommendations().stream()
                                .anyMatch(one -> one.change().isPresent()),
                        "Each was run by itself; gas, electricity, pressure and heat are for licensed trades, and local codes come first.")
                .done();
    }

    private List<String> numbered() {
        return result.recommendations().stream()
                .map(one -> rank(one) + ". " + words.of(one))
                .toList();
    }

    private List<String> together() {
        return result.together()
                .map(
                        all -> List.of(
                                "With all these changes " + words.gain(all) + ", the slurry rises to "
                                        + Words.celsius(all.highestC()) + " and is below its minimum for "
                                        + Words.hours(all.hours().below()) + " hours"
                                        + (all.isHarmless(result.asIs())
                                                ? "."
                                                : "; together they make something worse than each alone: make one after the other and ask again.")))
                .orElse(List.of());
    }

    private Table shown() {
        return new Columns<Recommendation>()
                .cell("recommendation", this::named)
                .cell("command", commands::of)
                .table("The command that shows it", result.recommendations());
    }

    /** The recommendations as figures; texts of the user, names and files, only where they may stand. */
    private Columns<Recommendation> columns(boolean withTexts) {
        Columns<Recommendation> columns = new Columns<Recommendation>().value("rank", this::rank);
        if (withTexts) {
            columns.value("sentence", words::of);
        }
        columns.value("key", one -> one.change().map(Recommendation.Change::key))
                .value("from", one -> one.change().map(Recommendation.Change::from))
                .value("to", one -> one.change().map(Recommendation.Change::to))
                .value("effect_kwh", one -> one.change().map(change -> gainKWh(one)))
                .value(
                        "effect_money",
                        one -> one.change()
                                .filter(change -> !asked.pricesAreExamples())
                                .map(change -> one.after().energy().money()
                                        - result.asIs().energy().money()));
        return withTexts ? columns.value("command", commands::of) : columns;
    }

    private int rank(Recommendation one) {
        return result.recommendations().indexOf(one) + 1;
    }

    private double gainKWh(Recommendation one) {
        return one.after().gainKWh() - result.asIs().gainKWh();
    }

    private Drawing picture() {
        RankedBars chart = RankedBars.of("gains", "What each recommendation gains, kWh a year")
                .caption(
                        "Net energy gained a year by each alone, without gas what need not be bought; those that cost energy, or"
                                + " change none, protect instead.");
        result.recommendations().stream()
                .filter(one -> one.change().isPresent())
                .forEach(one -> bar(chart, one, gainKWh(one)));
        return chart;
    }

    private void bar(RankedBars chart, Recommendation one, double gain) {
        chart.bar(
                named(one),
                one.kind().isEnergy() ? Look.GAS : Look.BACKUP,
                Math.max(0, gain),
                Math.abs(gain) < 1 ? "0 kWh" : (gain < 0 ? "−" : "") + Words.kWh(Math.abs(gain)));
    }

    /** Its number and its kind. */
    private String named(Recommendation one) {
        return rank(one) + ". " + one.kind().name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
