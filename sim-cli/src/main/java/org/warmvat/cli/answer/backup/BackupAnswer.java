package org.warmvat.cli.answer.backup;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.warmvat.account.Warnings;
import org.warmvat.cli.answer.Columns;
import org.warmvat.cli.answer.Csv;
import org.warmvat.cli.answer.Document;
import org.warmvat.cli.answer.Draft;
import org.warmvat.cli.answer.SeasonSentences;
import org.warmvat.cli.answer.SteadyWords;
import org.warmvat.cli.answer.Subject;
import org.warmvat.cli.answer.YearRows;
import org.warmvat.cli.answer.hold.HoldAnswer;
import org.warmvat.cli.words.Numerals;
import org.warmvat.cli.words.Words;
import org.warmvat.question.Steadiness;
import org.warmvat.question.backup.BackupResult;
import org.warmvat.question.backup.BackupStudy;

/** The answer to {@code backup}. */
public final class BackupAnswer {

    private static final Columns<BackupResult.Point> CURVE = new Columns<BackupResult.Point>()
            .number("rated_w", "power, W", BackupResult.Point::ratedW, Words::whole)
            .number("hours_short", "hours short", BackupResult.Point::shortHours, Words::hours)
            .number(
                    "degree_hours_short_kh",
                    "kelvin-hours short, K h",
                    BackupResult.Point::shortKelvinHours,
                    Words::number)
            .number("bought_kwh", "bought, kWh", BackupResult.Point::boughtKWh, Words::number);

    private BackupAnswer() {}

    /**
     * Tells what was found.
     *
     * @param result the findings
     * @param beside what is told beside them
     * @param asked what they are about
     * @param question what was asked
     */
    public static Document of(BackupResult result, Beside beside, Subject asked, BackupStudy.Question question) {
        Draft draft = Draft.of(asked, "which heater?")
                .assume(
                        "The common sizes are common practice, no source: "
                                + Words.list(question.commonSizesW().stream()
                                        .map(Numerals::exact)
                                        .toList())
                                + " W.",
                        "During the warm-up feed, mixer and gas go on as usual, which is on the safe side.");
        new BackupWords(result, beside.reserve(), asked, question).tell(draft);
        SteadyWords.tell(draft, beside.steadiness(), asked);
        draft.warn(Warnings.worst(result.curve().chosen().stream()
                .map(BackupResult.Point::warnings)
                .toList()));
        figures(draft, result, asked, question);
        SeasonSentences.Apart.of(asked).figures(draft, asked.design());
        beside.reserve().ifPresent(more -> draft.figure("reserve", figures(more)));
        csv(draft, result);
        if (result.curve().chosen().size() > 1) {
            YearRows years = years(result, asked);
            String caption = "Year by year, with the chosen heater of "
                    + Words.whole(result.spell().chosenW()) + " W";
            draft.table(files(result, asked).table(caption, years(asked)))
                    .paragraph("Which year is the worst?", years.sentences());
            years.figures().forEach(draft::figure);
        }
        return draft.table(CURVE.table(
                        "Hours short and energy bought, by power of the heater",
                        result.curve().points()))
                .pictures(new BackupPictures(result, asked.design())::all)
                .done();
    }

    /**
     * Power with a reserve.
     *
     * @param coldSpellK by how much the air of the coldest week is lowered, K
     * @param need the power then
     */
    public record Reserve(double coldSpellK, BackupResult.Need need) {}

    /**
     * What is told beside the powers, each empty where it was not asked or means nothing.
     *
     * @param reserve the power for a colder week
     * @param steadiness what it costs to be steady
     */
    public record Beside(Optional<Reserve> reserve, Optional<Steadiness> steadiness) {}

    private static Map<String, Object> figures(Reserve reserve) {
        return Draft.row(
                "cold_spell_k", reserve.coldSpellK(),
                "smallest_w", reserve.need().smallestW(),
                "smallest_for_floor_w", reserve.need().forFloorW(),
                "smallest_for_warm_up_w", reserve.need().forWarmUpW(),
                "common_size_w", reserve.need().commonW());
    }

    /** Each year with the chosen heater. */
    private static YearRows years(BackupResult result, Subject asked) {
        return new YearRows(IntStream.range(0, asked.years().size())
                .mapToObj(i -> {
                    BackupResult.Point chosen = result.curve().chosen().get(i);
                    return new YearRows.Row(
                            asked.yearName(i), OptionalDouble.empty(), chosen.boughtKWh(), chosen.shortHours());
                })
                .toList());
    }

    /** What the chosen heater and a smaller one do in each year. */
    private static Columns<Integer> files(BackupResult result, Subject asked) {
        BackupResult.Spell spell = result.spell();
        List<BackupResult.Point> chosen = result.curve().chosen();
        return new Columns<Integer>()
                .text("name", "", asked::yearName)
                .value("rated_w", file -> chosen.get(file).ratedW())
                .number("hours_short", "hours short", file -> chosen.get(file).shortHours(), Words::hours)
                .value("degree_hours_short_kh", file -> chosen.get(file).shortKelvinHours())
                .value("bought_kwh", file -> chosen.get(file).boughtKWh())
                .value("smaller_w", file -> spell.smallerW())
                .number(
                        "smaller_hours_short",
                        "with " + Words.whole(spell.smallerW()) + " W",
                        spell.smallerShortHours()::get,
                        Words::hours)
                .cell(
                        "warm-up, hours",
                        file -> Words.whole(result.warmUps().get(file).hours().orElse(Double.NaN)))
                .cell("bought, kWh", file -> Words.number(chosen.get(file).boughtKWh()));
    }

    private static List<Integer> years(Subject asked) {
        return IntStream.range(0, asked.years().size()).boxed().toList();
    }

    private static void figures(Draft draft, BackupResult result, Subject asked, BackupStudy.Question question) {
        draft.figure("allowed_short_hours", question.shortHours())
                .figure("warm_up_days", question.warmUp().days())
                .figure("fill_c", question.warmUp().fillC())
                .figure("sun_ignored", question.ignoreSun())
                .figure("cold_spell_k", question.coldSpellK())
                .figure("element_assumed", result.elementAssumed())
                .figure("smallest_w", result.need().smallestW())
                .figure("smallest_for_floor_w", result.need().forFloorW())
                .figure("smallest_for_warm_up_w", result.need().forWarmUpW())
                .figure("common_size_w", result.need().commonW())
                .figure("coil_passes_w", result.coil().passesW())
                .figure("coil_is_limit", result.coil().isLimit())
                .figure("coil_m2", result.coil().areaM2())
                .figure("coil_needed_m2", result.coil().neededM2())
                .figure("monotone", result.curve().monotone())
                .figure("curve", CURVE.rows(result.curve().points()))
                .figure("files", files(result, asked).rows(years(asked)))
                .figure("warm_ups", warmUps(result))
                .figure("hardest_moment", result.spell().worst())
                .figure("handbook", handbook(result.handbook()));
    }

    private static Map<String, Object> handbook(BackupResult.Handbook handbook) {
        return Draft.row(
                "cold_air_c", handbook.coldC(),
                "loss_w", handbook.lossW(),
                "feed_w", handbook.feedW(),
                "total_w", handbook.totalW());
    }

    private static List<Map<String, Object>> warmUps(BackupResult result) {
        return result.warmUps().stream().map(HoldAnswer::warmUp).toList();
    }

    private static void csv(Draft draft, BackupResult result) {
        BackupResult.Spell spell = result.spell();
        Map<String, double[]> hours = new LinkedHashMap<>();
        hours.put("slurry_chosen_c", spell.chosen().slurryC());
        hours.put("slurry_smaller_c", spell.smaller().slurryC());
        hours.put("air_c", spell.chosen().airC());
        hours.put("backup_heat_chosen_w", spell.chosen().heat().backupW());
        hours.put("solar_heat_chosen_w", spell.chosen().heat().solarW());
        draft.csv("curve.csv", CURVE.csv(result.curve().points()))
                .csv("spell.csv", Csv.hourly(spell.chosen().start(), hours))
                .csv("warm_ups.csv", Csv.ofRows(warmUps(result)));
    }
}
