package org.warmvat.cli.answer.payback;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.warmvat.cli.answer.Columns;
import org.warmvat.cli.answer.MoneySentences;
import org.warmvat.cli.answer.Table;
import org.warmvat.cli.words.Numerals;
import org.warmvat.cli.words.Words;
import org.warmvat.design.Prices;
import org.warmvat.question.payback.Payback;
import org.warmvat.question.payback.PaybackStudy;

/** Simple payback of more of one thing, step by step, in words, as a table and as figures. */
public final class PaybackWords {

    private final Payback payback;
    private final Amounts amounts;
    private final Prices prices;
    private final String currency;

    /**
     * How amounts are told.
     *
     * @param of the thing, heading of its column: {@code solar.area_m2}
     * @param before what stands before a first amount: {@code solar.area_m2 = }
     * @param after what stands behind it: {@code  mm of insulation in the wall}
     * @param unit what stands behind a further amount: {@code  mm}
     */
    public record Amounts(String of, String before, String after, String unit) {

        String first(double amount) {
            return before + Numerals.exact(amount) + after;
        }

        String further(double amount) {
            return Numerals.exact(amount) + unit;
        }
    }

    /**
     * Words about steps.
     *
     * @param currency name of the money, or a word that the prices are but examples
     */
    public PaybackWords(Payback payback, Amounts amounts, Prices prices, String currency) {
        this.payback = payback;
        this.amounts = amounts;
        this.prices = prices;
        this.currency = currency;
    }

    /** Why no payback is told in weather shorter than a year; empty where it is. */
    public static Optional<String> tooShort(double hours) {
        return hours < PaybackStudy.YEAR_H
                ? Optional.of("The weather file covers " + Words.hours(hours)
                        + " hours, less than a year, so that no payback is told.")
                : Optional.empty();
    }

    /** From where on more no longer pays. */
    public String limit() {
        double years = prices.outlay().paysWithinYears();
        String within = " for itself within " + Numerals.exact(years) + " years";
        return payback.firstBeyond(years).map(step -> beyond(step, within)).orElseGet(() -> all(within));
    }

    private String all(String within) {
        List<Payback.Step> steps = payback.steps();
        return "Each step from " + amounts.first(steps.get(0).from()) + " to "
                + amounts.further(steps.get(steps.size() - 1).to()) + " pays" + within + " at these prices.";
    }

    private String beyond(Payback.Step step, String within) {
        String from = amounts.first(step.from());
        String to = amounts.further(step.to());
        return (step.equals(payback.steps().get(0))
                        ? "Already the step from " + from + " to " + to + " does not pay"
                        : "Beyond " + from + " the next step, to " + to + ", no longer pays")
                + within + ": it costs " + MoneySentences.sum(step.costs(), "more", currency) + " and "
                + saving(step) + ".";
    }

    private String saving(Payback.Step step) {
        return step.savesAYear() > 0
                ? "saves " + MoneySentences.sum(step.savesAYear(), "a year", currency) + ", so that it takes "
                        + Words.number(step.years()) + " years"
                : "saves nothing";
    }

    /** What is counted and what is not. */
    public String counted() {
        Prices.Outlay outlay = prices.outlay();
        return "Only what is bought once is counted, " + in(currency) + ": insulation at "
                + Words.number(outlay.foamPerM3()) + " per m³, collector at "
                + Words.number(outlay.collectorPerM2()) + " and coils at "
                + Words.number(outlay.parts().coilPerM2())
                + " per m², the heater at " + Words.number(outlay.parts().heaterPerKw()) + " per kW, the tank at "
                + Words.number(outlay.parts().tankPerM3()) + " per m³"
                + ", against energy bought and gas at the design's prices: no labour, interest or upkeep, and no advice"
                + " to invest.";
    }

    private static String in(String currency) {
        return currency.startsWith("at ") ? currency : "in " + currency;
    }

    /** The steps as a table. */
    public Table table() {
        return columns()
                .table("Simple payback, step by step", payback.steps())
                .noted(
                        "Steps that save little scatter: pumps and heater switch at other moments, and the limit is good to a step or two.");
    }

    private Columns<Payback.Step> columns() {
        return new Columns<Payback.Step>()
                .value("from", Payback.Step::from)
                .value("to", Payback.Step::to)
                .cell(amounts.of(), step -> Numerals.exact(step.from()) + " to " + Numerals.exact(step.to()))
                .number("costs_more", "costs more, " + currency, Payback.Step::costs, Words::number)
                .number("saves_a_year", "saves a year, " + currency, Payback.Step::savesAYear, Words::number)
                .value("payback_years", Payback.Step::years)
                .cell("payback, years", step -> Double.isInfinite(step.years()) ? "never" : Words.number(step.years()));
    }

    /** The steps as figures; a payback that never comes is null. */
    public List<Map<String, Object>> figures() {
        return columns().rows(payback.steps());
    }
}
