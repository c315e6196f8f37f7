package org.warmvat.cli.answer.year;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.warmvat.cli.answer.Table;
import org.warmvat.cli.answer.payback.PaybackWords;
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
        List<String> sentences = new ArrayList<>();
        PaybackWords.tooShort(hours).ifPresent(sentences::add);
        result.ifPresent(unused -> {
            sentences.add(foam().map(PaybackWords::limit)
                    .orElse("Nothing in the envelope insulates that could be thicker or thinner."));
            sentences.add(collector().map(PaybackWords::limit).orElse("The design has no collector."));
            sentences.add(
                    "In each step of insulation wall, lid and base grow alike; in each of collector its coil stays.");
            foam().or(this::collector).map(PaybackWords::counted).ifPresent(sentences::add);
            if (years > 1) {
                sentences.add("What a step saves is the mean of " + years + " years.");
            }
        });
        return sentences;
    }

    /** The steps. */
    List<Table> tables() {
        List<Table> tables = new ArrayList<>();
        foam().ifPresent(words -> tables.add(words.table()));
        collector().ifPresent(words -> tables.add(words.table()));
        return tables;
    }

    /** The steps as figures under {@code foam_mm} and {@code collector_m2}, null for what the design does not have. */
    Map<String, Object> figures() {
        Map<String, Object> figures = new LinkedHashMap<>();
        figures.put("pays_within_years", prices().outlay().paysWithinYears());
        figures.put("foam_mm", foam().map(PaybackWords::figures).orElse(null));
        figures.put("collector_m2", collector().map(PaybackWords::figures).orElse(null));
        return figures;
    }
}
