package org.warmvat.cli.answer;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.warmvat.design.Prices;
import org.warmvat.study.Payback;
import org.warmvat.study.PaybackStudy;

/** Simple payback of more of one thing, step by step, in words, as a table and as figures. */
final class PaybackWords {

    private final Payback payback;
    private final Amounts amounts;
    private final Prices prices;

    /**
     * How amounts are told.
     *
     * @param of the thing, heading of its column: {@code solar.area_m2}
     * @param before what stands before a first amount: {@code solar.area_m2 = }
     * @param after what stands behind it: {@code  mm of foam in the wall}
     * @param unit what stands behind a further amount: {@code  mm}
     */
    record Amounts(String of, String before, String after, String unit) {

        String first(double amount) {
            return before + Sweep.shortest(amount) + after;
        }

        String further(double amount) {
            return Sweep.shortest(amount) + unit;
        }
    }

    PaybackWords(Payback payback, Amounts amounts, Prices prices) {
        this.payback = payback;
        this.amounts = amounts;
        this.prices = prices;
    }

    /** Why no payback is told in weather shorter than a year; empty where it is. */
    static Optional<String> tooShort(double hours) {
        return hours < PaybackStudy.YEAR_H
                ? Optional.of("The weather file covers " + Words.hours(hours)
                        + " hours, less than a year, so that no payback is told.")
                : Optional.empty();
    }

    /** From where on more no longer pays. */
    String limit() {
        double years = prices.outlay().paysWithinYears();
        String within = " for itself within " + Sweep.shortest(years) + " years";
        List<Payback.Step> steps = payback.steps();
        Optional<Payback.Step> beyond = payback.firstBeyond(years);
        if (beyond.isEmpty()) {
            return "Each step from " + amounts.first(steps.get(0).from()) + " to "
                    + amounts.further(steps.get(steps.size() - 1).to()) + " pays" + within + " at these prices.";
        }
        Payback.Step step = beyond.get();
        return (step.equals(steps.get(0))
                        ? "Already the step from " + amounts.first(step.from()) + " to " + amounts.further(step.to())
                                + " does not pay"
                        : "From " + amounts.first(step.from()) + " on the next step, to " + amounts.further(step.to())
                                + ", no longer pays")
                + within + ": it costs " + Words.fixed(step.costs(), 2) + " " + prices.currency() + " more and "
                + saving(step) + ".";
    }

    private String saving(Payback.Step step) {
        return step.savesAYear() > 0
                ? "saves " + Words.fixed(step.savesAYear(), 2) + " " + prices.currency() + " a year, so that it takes "
                        + Words.number(step.years()) + " years"
                : "saves nothing";
    }

    /** What is counted and what is not. */
    static String counted(Prices prices) {
        return "Only the price of foam and collector is counted, at "
                + Words.number(prices.outlay().foamPerM3()) + " per m³ and "
                + Words.number(prices.outlay().collectorPerM2()) + " per m² in " + prices.currency()
                + ", against energy bought and gas at the design's prices: no labour, interest or upkeep, and no advice"
                + " to invest.";
    }

    Table table() {
        List<List<String>> rows = new ArrayList<>();
        for (Payback.Step step : payback.steps()) {
            rows.add(List.of(
                    Sweep.shortest(step.from()) + " to " + Sweep.shortest(step.to()),
                    Words.fixed(step.costs(), 2),
                    Words.fixed(step.savesAYear(), 2),
                    Double.isInfinite(step.years()) ? "never" : Words.number(step.years())));
        }
        String money = prices.currency();
        return new Table(
                "Simple payback, step by step",
                List.of(amounts.of(), "costs more, " + money, "saves a year, " + money, "payback, years"),
                rows);
    }

    /** The steps as figures; a payback that never comes is null. */
    List<Map<String, Object>> figures() {
        List<Map<String, Object>> figures = new ArrayList<>();
        for (Payback.Step step : payback.steps()) {
            Map<String, Object> figure = new LinkedHashMap<>();
            figure.put("from", step.from());
            figure.put("to", step.to());
            figure.put("costs_more", step.costs());
            figure.put("saves_a_year", step.savesAYear());
            figure.put("payback_years", Double.isInfinite(step.years()) ? null : step.years());
            figures.add(figure);
        }
        return figures;
    }
}
