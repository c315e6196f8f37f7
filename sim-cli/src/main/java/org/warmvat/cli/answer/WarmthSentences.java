package org.warmvat.cli.answer;

import java.util.List;
import org.warmvat.account.Period;
import org.warmvat.question.year.YearResult;
import org.warmvat.tank.Housekeeping;

/** Was it warm: hours short, lowest temperature and when. */
final class WarmthSentences {

    private WarmthSentences() {}

    static List<String> of(YearResult run, Findings findings, Span span) {
        return List.of(verdict(run, span), range(run.whole(), findings, span));
    }

    private static String verdict(YearResult run, Span span) {
        String floor = Words.celsius(run.design().control().minimumC());
        double below = run.whole().of(Housekeeping.BELOW_FLOOR_HOURS);
        double hours = run.whole().hours();
        return switch (Warmth.of(run.whole())) {
            case ALWAYS ->
                "The tank was warm " + span.throughout() + ": the slurry was never below its floor of " + floor + ".";
            case SHORT_AT_TIMES ->
                "The tank was not warm " + span.throughout()
                        + ": the slurry was below its floor of " + floor + " for " + Words.hours(below) + " of "
                        + Words.hours(hours) + " hours (" + Words.percent(below / hours) + ").";
            case NEVER ->
                "The tank was never warm: the slurry was below its floor of " + floor + " in all " + Words.hours(hours)
                        + " hours.";
        };
    }

    private static String range(Period whole, Findings findings, Span span) {
        return "The slurry averaged " + Words.celsius(whole.of(Housekeeping.MEAN_C)) + "; it was coldest on "
                + span.day(findings.coldestDay()) + " with " + Words.celsius(whole.of(Housekeeping.LEAST_C))
                + " and warmest on "
                + span.day(findings.warmestDay()) + " with " + Words.celsius(whole.of(Housekeeping.MOST_C)) + ".";
    }
}
