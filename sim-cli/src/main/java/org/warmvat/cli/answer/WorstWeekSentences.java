package org.warmvat.cli.answer;

import java.util.ArrayList;
import java.util.List;
import org.warmvat.design.Design;
import org.warmvat.question.year.YearResult;

/** The worst week: when, by what mark, and how bad. */
final class WorstWeekSentences {

    private WorstWeekSentences() {}

    static List<String> of(YearResult run, Findings findings, Span span) {
        return findings.worstWeek()
                .map(week -> List.of(when(week, span), howBad(week, run.design())))
                .orElse(List.of("The weather file is shorter than a week."));
    }

    private static String when(WorstWeek week, Span span) {
        return "The seven days in a row with " + week.mark().words() + " were " + span.day(week.firstDay()) + " to "
                + span.day(week.lastDay()) + ".";
    }

    private static String howBad(WorstWeek week, Design design) {
        List<String> facts = new ArrayList<>();
        if (design.backup().isPresent()) {
            facts.add("the backup gave " + Words.kWh(week.backupKWh()));
        }
        if (design.solar().isPresent()) {
            facts.add("the sun gave " + Words.kWh(week.solarKWh()));
        }
        facts.add("the slurry averaged " + Words.celsius(week.meanC()) + " with a lowest of "
                + Words.celsius(week.leastC()));
        facts.add("was below its floor for " + Words.hours(week.belowFloorHours()) + " hours");
        return "In them " + Words.list(facts) + ".";
    }
}
