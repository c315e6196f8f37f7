package org.warmvat.cli.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.warmvat.question.year.YearResult;

/** The answer of a run in plain sentences; every number in them also stands in {@code summary.json}. */
public final class Answer {

    private Answer() {}

    /** The paragraphs in the order in which a builder asks. */
    public static List<Paragraph> of(YearResult run, Optional<YearPayback> payback) {
        return of(run, Findings.of(run).with(payback));
    }

    static List<Paragraph> of(YearResult run, Findings findings) {
        Span span = Span.of(run);
        List<Paragraph> paragraphs = new ArrayList<>(List.of(
                new Paragraph("Was the tank warm?", WarmthSentences.of(run, findings, span)),
                new Paragraph("What did the sun give, what the backup?", HeatSentences.of(run, findings, span)),
                new Paragraph("What did it eat?", ConsumptionSentences.of(run)),
                new Paragraph("Does it return more than it eats?", NetEnergySentences.of(run)),
                new Paragraph("What did it cost, and what is the gas worth?", MoneySentences.of(run))));
        findings.payback().ifPresent(payback -> paragraphs.add(payback.paragraph()));
        paragraphs.add(new Paragraph("The worst week", WorstWeekSentences.of(run, findings, span)));
        return paragraphs;
    }
}
