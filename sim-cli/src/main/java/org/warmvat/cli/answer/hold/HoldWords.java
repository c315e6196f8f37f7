package org.warmvat.cli.answer.hold;

import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.warmvat.cli.answer.Draft;
import org.warmvat.cli.answer.MoneySentences;
import org.warmvat.cli.answer.SeasonSentences;
import org.warmvat.cli.answer.Subject;
import org.warmvat.cli.words.Telling;
import org.warmvat.cli.words.Words;
import org.warmvat.question.hold.HoldResult;
import org.warmvat.question.hold.HoldStudy;
import org.warmvat.weather.Weather;

/** The answer to hold in sentences. */
final class HoldWords {

    private static final DateTimeFormatter HOUR = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);

    private final HoldResult result;
    private final Subject asked;

    HoldWords(HoldResult result, Subject asked) {
        this.result = result;
        this.asked = asked;
    }

    void tell(Draft draft) {
        draft.verdict(
                repair(),
                List.of(
                        "Only the temperature of the slurry is judged here: gas pressure, a frozen outlet or gas line and the safety of"
                                + " the place are not.",
                        "A mixer that stands lets straw and grass rise: within about a day a crust may form under which gas cannot"
                                + " escape, and the pressure rises (common practice, no source).",
                        "While the power is off no alarm, fan or gas detector on the same supply works."));
        for (HoldResult.Failure failure : result.failures()) {
            draft.paragraph(
                    failure.cause() == HoldResult.Cause.HEATER
                            ? "The heater fails: how long does it stay warm?"
                            : "The power fails: how long does it stay warm?",
                    failure(failure));
        }
        draft.paragraph("How fast does it cool?", List.of(constant()))
                .paragraph(
                        "How long does the warm-up take?",
                        Stream.of(
                                        result.warmUps().stream().map(this::warmUp),
                                        SeasonSentences.ofWarmUp(asked.design(), warmUpDay()).stream(),
                                        MoneySentences.coldGas(asked.design()).stream())
                                .flatMap(sentences -> sentences)
                                .toList());
    }

    private LocalDate warmUpDay() {
        return result.warmUps().get(0).from().toLocalDate();
    }

    private String moment(LocalDateTime time) {
        return HOUR.format(time) + " on " + asked.day(time.toLocalDate());
    }

    private List<String> failure(HoldResult.Failure failure) {
        String when = (failure.usual().starts() == 1 ? "At " : "At the worst moment, ") + moment(failure.from())
                + " with the slurry at " + Words.celsius(failure.startC()) + ", ";
        return new Telling()
                .say(
                        failure.cause() == HoldResult.Cause.HEATER
                                ? "The heater fails and its circuit stands still; sun, mixer and feed go on."
                                : "Pumps, mixer and feed stop, and with them the heat of sun and backup heater.")
                .say(when + cools(failure) + ".")
                .when(failure.usual().followed() > 1, () -> usual(failure.usual()))
                .when(
                        result.leftOut() > 0,
                        () -> "Left out are " + Words.hours(result.leftOut())
                                + " hours at which by the calendar no minimum holds or the tank is still warming up after a rest.")
                .done();
    }

    /** The temperatures reached with their times, and in one breath those it stands below already and those it keeps above. */
    private String cools(HoldResult.Failure failure) {
        List<String> below = new ArrayList<>();
        List<String> reached = new ArrayList<>();
        List<String> missed = new ArrayList<>();
        for (int i = 0; i < result.temperaturesC().size(); i++) {
            String goal = Words.celsius(result.temperaturesC().get(i));
            OptionalDouble hours = failure.hours().get(i);
            if (hours.isEmpty()) {
                missed.add(goal);
            } else if (hours.getAsDouble() == 0) {
                below.add(goal);
            } else {
                reached.add(goal + " in " + Words.duration(hours.getAsDouble()) + ownMoment(failure, i));
            }
        }
        return String.join(
                "; ",
                new Telling()
                        .when(!below.isEmpty(), () -> "it stands at or below " + Words.list(below) + " already")
                        .when(!reached.isEmpty(), () -> "it cools to " + Words.list(reached))
                        .when(
                                !missed.isEmpty(),
                                () -> "it does not cool to " + Words.list(missed) + " in the "
                                        + Words.duration(followedHours(failure)) + " followed")
                        .done());
    }

    /** When it fails, where the worst moment of a temperature is not that of the first. */
    private String ownMoment(HoldResult.Failure failure, int temperature) {
        LocalDateTime own = failure.worst().get(temperature).from();
        return own.equals(failure.from()) ? "" : " (failing at its own worst moment, " + moment(own) + ")";
    }

    /** How long a failure can be followed: up to the limit, or to the end of weather that is no whole year. */
    private double followedHours(HoldResult.Failure failure) {
        Weather weather = asked.weather();
        double most = HoldStudy.MOST_DAYS * 24.0;
        return weather.isWholeYear()
                ? most
                : Math.min(most, (double)
                        Duration.between(failure.from(), weather.end()).toHours());
    }

    private String usual(HoldResult.Usual usual) {
        String first = Words.celsius(result.temperaturesC().get(0));
        OptionalDouble middle = usual.middleHours();
        String among = "Over all " + usual.followed() + " hours at which it may fail"
                + (usual.followed() == usual.starts() ? "" : " and that can be followed far enough") + ", ";
        if (middle.isPresent() && middle.getAsDouble() == 0) {
            return among + "the slurry stands at or below " + first + " already in half or more.";
        }
        return among + "half leave "
                + (middle.isPresent()
                        ? Words.duration(middle.getAsDouble()) + " or more"
                        : "more than " + Words.duration(usual.limitHours()))
                + " until " + first + ".";
    }

    /** How long the highest temperature asked for keeps, from the worst moment. */
    private String repair() {
        OptionalDouble shortest = result.failures().stream()
                .flatMapToDouble(failure -> failure.hours().get(0).stream())
                .min();
        double firstC = result.temperaturesC().get(0);
        boolean minimum = firstC == asked.design().control().minimumC();
        String first =
                Words.celsius(firstC) + (minimum ? ", its minimum" : " (its minimum is " + asked.minimum() + ")");
        if (shortest.isEmpty()) {
            return "No repair, however long in the time followed, lets the slurry sink to " + first + ".";
        }
        return shortest.getAsDouble() == 0
                ? "There is no time for a repair: the slurry stands below " + first + " already when all is well."
                : "A repair may take " + Words.duration(Math.floor(shortest.getAsDouble() * 10) / 10)
                        + " from the worst moment: until then the slurry stays above " + first + ".";
    }

    private String constant() {
        return "The time constant of the tank, its heat capacity over its loss in the file's mean wind, is "
                + Words.duration(result.timeConstantH()) + ".";
    }

    private String warmUp(HoldResult.WarmUp warmUp) {
        String how = warmUp.withSun() ? "With the sun" : "Without the solar circuit";
        String from = how + ", a fill of " + Words.celsius(warmUp.fillC()) + " at " + moment(warmUp.from());
        String took = gave(warmUp, warmUp.heat());
        if (warmUp.hours().isPresent() && warmUp.hours().getAsDouble() == 0) {
            return from + " is at the set-point already.";
        }
        return warmUp.hours().isPresent()
                ? from + " is at the set-point after "
                        + Words.duration(warmUp.hours().getAsDouble()) + took + "."
                : from + " does not reach the set-point within "
                        + Words.duration(warmUp.course().hours()) + (took.isEmpty() ? "" : took + " in that time")
                        + ".";
    }

    private String gave(HoldResult.WarmUp warmUp, HoldResult.WarmUpHeat heat) {
        boolean backup = asked.design().backup().isPresent();
        List<String> gave = new Telling()
                .when(
                        backup,
                        () -> "the backup heater gives " + Words.kWh(heat.backupKWh()) + " (for that it "
                                + MoneySentences.buys(asked, heat.boughtKWh()) + ")")
                .when(warmUp.withSun(), () -> "the sun" + (backup ? " " : " gives ") + Words.kWh(heat.solarKWh()))
                .done();
        return gave.isEmpty() ? "" : "; " + Words.list(gave);
    }
}
