package org.warmvat.cli.answer.backup;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.warmvat.cli.answer.Draft;
import org.warmvat.cli.answer.MoneySentences;
import org.warmvat.cli.answer.SeasonSentences;
import org.warmvat.cli.answer.Subject;
import org.warmvat.cli.words.Telling;
import org.warmvat.cli.words.Words;
import org.warmvat.design.surroundings.Place;
import org.warmvat.question.backup.BackupResult;
import org.warmvat.question.backup.BackupStudy;
import org.warmvat.question.hold.HoldResult;

/** The answer to backup in sentences. */
final class BackupWords {

    private final BackupResult result;
    private final Optional<BackupAnswer.Reserve> reserve;
    private final Subject asked;
    private final BackupStudy.Question question;

    BackupWords(
            BackupResult result, Optional<BackupAnswer.Reserve> reserve, Subject asked, BackupStudy.Question question) {
        this.result = result;
        this.reserve = reserve;
        this.asked = asked;
        this.question = question;
    }

    void tell(Draft draft) {
        draft.verdict(verdict(), but())
                .key("Smallest heater", watts(result.need().smallestW()))
                .key("Next common size", watts(result.need().commonW()));
        reserve.filter(more -> roomC().isEmpty())
                .ifPresent(more -> draft.key("With reserve", watts(more.need().smallestW()))
                        .key("Common size for it", watts(more.need().commonW())));
        draft.key("Coil passes", watts(result.coil().passesW()))
                .paragraph("What asks for this power?", heater())
                .paragraph("What does it buy?", bought())
                .paragraph("Is the coil large enough?", CoilWords.of(result))
                .paragraph("How long does it warm up?", warmUp())
                .paragraph("What decides it?", decides())
                .paragraph("Why does a handbook's sum differ?", handbook());
    }

    private String verdict() {
        BackupResult.Need need = result.need();
        return need.smallestW().isEmpty()
                ? "No heater, however large, is enough: " + failing() + "."
                : "A heater of " + watts(need.smallestW().getAsDouble()) + " is the smallest that is enough; "
                        + common() + "." + withReserve();
    }

    /** The same for a coldest week that is colder than any in the files. */
    private String withReserve() {
        return reserve.filter(more -> roomC().isEmpty())
                .map(more -> " For a coldest week " + Words.number(more.coldSpellK()) + " K colder "
                        + (more.need().smallestW().isPresent()
                                ? "take " + watts(more.need().smallestW())
                                        + (more.need().commonW().isPresent()
                                                ? "; the next common size is "
                                                        + watts(more.need().commonW())
                                                : "")
                                        + "."
                                : "no heater is enough."))
                .orElse("");
    }

    /** The room of a tank indoors, which no weather touches. */
    private OptionalDouble roomC() {
        return asked.design().tank().place() instanceof Place.Indoors indoors
                ? OptionalDouble.of(indoors.roomC())
                : OptionalDouble.empty();
    }

    private List<String> but() {
        return new Telling()
                .each(
                        roomC().stream().boxed().toList(),
                        roomC -> "The room is taken at " + Words.celsius(roomC)
                                + " whatever the weather: where it grows colder, more is needed.")
                .when(
                        roomC().isEmpty() && question.coldSpellK() == 0,
                        "The smallest is without reserve: typical years smooth the extremes, and a real winter can be colder than any in"
                                + " such a file.")
                .say(result.slowestWarmUp().map(this::waits).orElse(List.of()))
                .when(
                        !result.curve().monotone(),
                        "Among the powers tried more was not always better: look at the curve.")
                .done();
    }

    private List<String> waits(HoldResult.WarmUp warmUp) {
        return SeasonSentences.ofWarmUp(asked.design(), warmUp.from().toLocalDate());
    }

    private List<String> heater() {
        return new Telling()
                .when(result.need().smallestW().isPresent(), this::needed)
                .say(SeasonSentences.Apart.of(asked).sentence())
                .when(question.ignoreSun(), "The solar circuit was left out of account.")
                .when(
                        result.elementAssumed(),
                        "The design has no backup heater: an electric element in the slurry was taken.")
                .done();
    }

    private String needed() {
        return "To keep the slurry at or above its minimum of " + asked.minimum() + allowance() + " takes "
                + watts(result.need().forFloorW()) + "; to bring a cold fill of "
                + Words.celsius(question.warmUp().fillC()) + " to the set-point within "
                + question.warmUp().days() + " days, begun in the coldest week, takes "
                + watts(result.need().forWarmUpW()) + ".";
    }

    private List<String> bought() {
        List<BackupResult.Point> files = result.curve().chosen();
        Telling told = new Telling();
        for (int i = 0; i < files.size(); i++) {
            told.say((files.size() == 1 ? "A" : "In " + asked.yearName(i) + " a") + " heater of "
                    + watts(result.spell().chosenW()) + " "
                    + MoneySentences.buys(asked, files.get(i).boughtKWh()) + ", over the weather file"
                    + (files.size() == 1 ? "" : "; hours short " + shortOf(i)) + ".");
        }
        return told.say(MoneySentences.whose(asked) + " This is no advice to invest.")
                .done();
    }

    private String shortOf(int file) {
        BackupResult.Spell spell = result.spell();
        return Words.hours(result.curve().chosen().get(file).shortHours()) + ", with " + watts(spell.smallerW()) + " "
                + Words.hours(spell.smallerShortHours().get(file));
    }

    private String failing() {
        return Words.list(new Telling()
                .when(
                        result.need().forFloorW().isEmpty(),
                        () -> "the slurry still falls below its minimum of " + asked.minimum()
                                + " for longer than allowed")
                .when(
                        result.need().forWarmUpW().isEmpty(),
                        () -> "the warm-up from "
                                + Words.celsius(question.warmUp().fillC()) + " still takes longer than "
                                + question.warmUp().days() + " days")
                .done());
    }

    private String common() {
        return result.need().commonW().isPresent()
                ? "the next common size is " + watts(result.need().commonW().getAsDouble())
                : "none of the common sizes is as large";
    }

    private String allowance() {
        String most = question.shortHours() == 0
                ? " in every hour"
                : " but for " + Words.hours(question.shortHours()) + " hours";
        return most + (asked.weathers().size() == 1 ? " of the weather file" : " of each weather file");
    }

    private static String watts(double watts) {
        return Math.round(watts) < 10_000 ? Math.round(watts) + " W" : Words.number(watts / 1000) + " kW";
    }

    static String watts(OptionalDouble watts) {
        return watts.isPresent() ? watts(watts.getAsDouble()) : "–";
    }

    private List<String> warmUp() {
        HoldResult.WarmUp slowest = result.slowestWarmUp().orElseThrow();
        if (slowest.hours().isPresent() && slowest.hours().getAsDouble() == 0) {
            return List.of("A fill of " + Words.celsius(slowest.fillC()) + " is at the set-point already.");
        }
        OptionalDouble chosenW = result.need().chosenW();
        String fill = (chosenW.isPresent() ? "With " + watts(chosenW) : "Even with a heater without limit")
                + ", a cold fill of " + Words.celsius(slowest.fillC()) + " on "
                + asked.day(slowest.from().toLocalDate());
        return new Telling()
                .say(
                        slowest.hours().isPresent()
                                ? fill + " is at the set-point after "
                                        + Words.duration(slowest.hours().getAsDouble()) + "; the backup heater gives "
                                        + Words.kWh(slowest.heat().backupKWh()) + " for it."
                                : fill + " is not at the set-point after "
                                        + Words.duration(slowest.course().hours()) + ".")
                .say(MoneySentences.coldGas(asked.design()))
                .done();
    }

    private List<String> decides() {
        BackupResult.Need need = result.need();
        return new Telling()
                .when(
                        need.smallestW().isPresent()
                                && need.forWarmUpW().getAsDouble()
                                        > need.forFloorW().getAsDouble(),
                        "The warm-up decides the power.")
                .say(hardest(result.spell()))
                .when(
                        roomC().isEmpty(),
                        () -> question.coldSpellK() == 0
                                ? "Typical years smooth the extremes: a real winter can be colder than any in such a file; --cold-spell"
                                        + " lowers the coldest week by some kelvins."
                                : "The air of the coldest week was lowered by " + Words.number(question.coldSpellK())
                                        + " K, since typical years smooth the extremes.")
                .done();
    }

    private String hardest(BackupResult.Spell spell) {
        return "The hardest spell is around " + asked.day(spell.worst().toLocalDate())
                + (asked.weathers().size() == 1 ? "" : ", in " + asked.yearName(spell.file())) + ": with only "
                + watts(spell.smallerW()) + " the slurry would sink to "
                + Words.celsius(least(spell.smaller().leastC()))
                + ", with " + watts(spell.chosenW()) + " it sinks to "
                + Words.celsius(least(spell.chosen().leastC()))
                + ".";
    }

    private static double least(double[] values) {
        return Arrays.stream(values).min().orElse(Double.POSITIVE_INFINITY);
    }

    private List<String> handbook() {
        BackupResult.Handbook handbook = result.handbook();
        return List.of(
                "A handbook adds the steady loss "
                        + (roomC().isPresent()
                                ? "in the room, " + Words.celsius(roomC().getAsDouble())
                                : "in the air of the coldest day, " + Words.celsius(handbook.coldC()))
                        + ", "
                        + watts(handbook.lossW()) + ", to the heat of the feed, " + watts(handbook.feedW()) + ": "
                        + watts(handbook.totalW()) + ".",
                "The run through the hours differs because the tank coasts on its own heat and may sink to its minimum, because"
                        + " sun and stirring help, because wind and clear sky take more in some hours, because feed comes in"
                        + " batches, and because a warm-up needs what a steady tank does not.");
    }
}
