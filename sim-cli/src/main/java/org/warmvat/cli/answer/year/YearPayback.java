package org.warmvat.cli.answer.year;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.warmvat.cli.answer.Draft;
import org.warmvat.cli.answer.Table;
import org.warmvat.cli.answer.payback.PaybackWords;
import org.warmvat.cli.words.Telling;
import org.warmvat.design.Design;
import org.warmvat.design.Prices;
import org.warmvat.question.payback.PaybackStudy;

/**
 * What more insulation or more collector would save, told beside a run of the design.
 *
 * @param design the design
 * @param currency name of the money, or a word that the prices are but examples
 * @param hours length of the run
 * @param years over how many years a saving is the mean
 * @param result the steps; empty where the run is too short to tell
 */
public record YearPayback(
        Design design, String currency, double hours, int years, Optional<PaybackStudy.Result> result) {

    private Prices prices() {
        return design.prices();
    }

    private Optional<PaybackWords> foam() {
        return result.flatMap(PaybackStudy.Result::foam).map(steps -> {
            String part = PaybackStudy.foamOf(design).orElseThrow();
            return new PaybackWords(
                    steps,
                    new PaybackWords.Amounts(
                            "insulation in the " + part + ", mm", "", " mm of insulation in the " + part, " mm"),
                    prices(),
                    currency);
        });
    }

    private Optional<PaybackWords> collector() {
        return result.flatMap(PaybackStudy.Result::collector)
                .map(steps -> new PaybackWords(
                        steps,
                        new PaybackWords.Amounts("collector, m²", "", " m² of collector", " m²"),
                        prices(),
                        currency));
    }

    /** The answer. */
    List<String> sentences() {
        Telling told = new Telling().say(PaybackWords.tooShort(hours));
        if (result.isPresent()) {
            told.say(foam().map(PaybackWords::limit)
                            .orElse("Nothing in the envelope insulates that could be thicker or thinner."))
                    .say(collector().map(PaybackWords::limit).orElse("The design has no collector."))
                    .say(
                            "In each step of insulation wall, lid and base grow alike; in each of collector its coil stays.")
                    .say(foam().or(this::collector).map(PaybackWords::counted))
                    .when(years > 1, "What a step saves is the mean of " + years + " years.");
        }
        return told.done();
    }

    /** The steps. */
    List<Table> tables() {
        return Stream.of(foam(), collector())
                .flatMap(Optional::stream)
                .map(PaybackWords::table)
                .toList();
    }

    /** The steps as figures under {@code foam_mm} and {@code collector_m2}, null for what the design does not have. */
    Map<String, Object> figures() {
        return Draft.row(
                "pays_within_years", prices().outlay().paysWithinYears(),
                "foam_mm", foam().map(PaybackWords::figures),
                "collector_m2", collector().map(PaybackWords::figures));
    }
}
