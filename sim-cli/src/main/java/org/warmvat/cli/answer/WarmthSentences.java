package org.warmvat.cli.answer;

import java.util.List;
import org.warmvat.result.RunResult;
import org.warmvat.result.SlurryTemperature;

/** Was it warm: hours short, lowest temperature and when. */
final class WarmthSentences {

    private WarmthSentences() {}

    static List<String> of(RunResult run, Findings findings, Span span) {
        return List.of(verdict(run, span), range(run.year().slurry(), findings, span));
    }

    private static String verdict(RunResult run, Span span) {
        String floor = Words.celsius(run.marks().floorC());
        double below = run.year().counts().belowFloorHours();
        double hours = run.year().hours();
        return switch (Warmth.of(run.year())) {
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

    private static String range(SlurryTemperature slurry, Findings findings, Span span) {
        return "The slurry averaged " + Words.celsius(slurry.meanC()) + "; it was coldest on "
                + span.day(findings.coldestDay()) + " with " + Words.celsius(slurry.leastC()) + " and warmest on "
                + span.day(findings.warmestDay()) + " with " + Words.celsius(slurry.mostC()) + ".";
    }
}
