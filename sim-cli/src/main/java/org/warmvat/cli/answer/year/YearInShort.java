package org.warmvat.cli.answer.year;

import org.warmvat.account.Period;
import org.warmvat.cli.answer.Draft;
import org.warmvat.cli.answer.GasWords;
import org.warmvat.cli.words.Words;
import org.warmvat.design.Design;
import org.warmvat.question.year.YearResult;
import org.warmvat.tank.KeyFigures;

/** The verdict on a year and the figures beside it. */
final class YearInShort {

    private final YearResult run;
    private final Period year;
    private final Design design;
    private final Span span;

    YearInShort(YearResult run) {
        this.run = run;
        this.year = run.whole();
        this.design = run.design();
        this.span = Span.of(run);
    }

    void tell(Draft draft) {
        LifeWords life = new LifeWords(design, year);
        draft.verdict(warmth() + " " + life.verdict().orElseGet(this::net), life.but());
        draft.card(year, run.gas());
    }

    private String warmth() {
        if (Double.isInfinite(design.control().minimumC())) {
            return "No minimum temperature is stated, so that no hour is short.";
        }
        if (!design.spells().isEmpty()) {
            return new LifeWords(design, year).warmth();
        }
        String minimum = Words.celsius(design.control().minimumC());
        double below = year.of(KeyFigures.BELOW_FLOOR_HOURS);
        double hours = year.hours();
        return switch (Warmth.of(year)) {
            case ALWAYS ->
                "The tank was warm " + span.throughout() + ": the slurry was never below its minimum of " + minimum
                        + ".";
            case SHORT_AT_TIMES ->
                "The tank was not warm " + span.throughout() + ": the slurry was below its minimum of " + minimum
                        + " for "
                        + Words.hours(below) + " of " + Words.hours(hours) + " hours (" + Words.percent(below / hours)
                        + ").";
            case NEVER ->
                "The tank was never warm: the slurry was below its minimum of " + minimum + " in all "
                        + Words.hours(hours) + " hours.";
        };
    }

    /** No gas, no verdict on net energy. */
    private String net() {
        return run.gas()
                .map(range -> GasWords.verdict(
                        range.whole().low().netKWh(),
                        year.of(KeyFigures.NET),
                        range.whole().high().netKWh()))
                .orElse("No gas is computed for this design, so that its net energy cannot be judged.");
    }
}
