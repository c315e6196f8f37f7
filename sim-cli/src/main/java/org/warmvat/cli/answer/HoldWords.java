package org.warmvat.cli.answer;

import java.time.Duration;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.warmvat.study.HoldResult;
import org.warmvat.study.HoldStudy;
import org.warmvat.weather.Weather;

/** The answer to hold in sentences. */
final class HoldWords {

    private static final DateTimeFormatter HOUR = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);
    private static final double LONG_H = 72;

    private final HoldResult result;
    private final Asked asked;

    HoldWords(HoldResult result, Asked asked) {
        this.result = result;
        this.asked = asked;
    }

    List<Paragraph> answer() {
        List<Paragraph> answer = new ArrayList<>();
        for (HoldResult.Failure failure : result.failures()) {
            answer.add(new Paragraph(
                    failure.cause() == HoldResult.Cause.HEATER
                            ? "The heater fails: how long does it stay warm?"
                            : "The power fails: how long does it stay warm?",
                    failure(failure)));
        }
        answer.add(new Paragraph("How long may a repair take?", List.of(harmless(), constant())));
        answer.add(new Paragraph(
                "How long does the warm-up take?",
                Stream.concat(
                                result.warmUps().stream().map(this::warmUp),
                                MoneySentences.coldGas(asked.design()).stream())
                        .toList()));
        return answer;
    }

    private String moment(LocalDateTime time) {
        return HOUR.format(time) + " on " + Words.day(time.toLocalDate(), asked.withYear());
    }

    private List<String> failure(HoldResult.Failure failure) {
        String what = failure.cause() == HoldResult.Cause.HEATER
                ? "The heater fails and its circuit stands still; sun, mixer and feed go on."
                : "Pumps, mixer and feed stop, and with them the heat of sun and backup.";
        String when = (failure.usual().starts() == 1 ? "At " : "At the worst moment, ") + moment(failure.from())
                + " with the slurry at " + Words.celsius(failure.startC()) + ", ";
        List<String> sentences = new ArrayList<>(List.of(what, when + cools(failure) + "."));
        usual(failure, sentences);
        return sentences;
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
                reached.add(goal + " in " + duration(hours.getAsDouble()));
            }
        }
        List<String> parts = new ArrayList<>();
        if (!below.isEmpty()) {
            parts.add("it stands at or below " + Words.list(below) + " already");
        }
        if (!reached.isEmpty()) {
            parts.add("it cools to " + Words.list(reached));
        }
        if (!missed.isEmpty()) {
            parts.add("it does not cool to " + Words.list(missed) + " in the " + duration(followedHours(failure))
                    + " followed");
        }
        return String.join("; ", parts);
    }

    /** How long a failure can be followed: up to the limit, or to the end of weather that is no whole year. */
    private double followedHours(HoldResult.Failure failure) {
        Weather weather = asked.weathers().get(0);
        double most = HoldStudy.MOST_DAYS * 24.0;
        return weather.isWholeYear()
                ? most
                : Math.min(most, (double)
                        Duration.between(failure.from(), weather.end()).toHours());
    }

    private void usual(HoldResult.Failure failure, List<String> sentences) {
        if (failure.usual().followed() > 1) {
            String first = Words.celsius(result.temperaturesC().get(0));
            OptionalDouble middle = failure.usual().middleHours();
            boolean all = failure.usual().followed() == failure.usual().starts();
            String among = "Over all " + failure.usual().followed() + " hours at which it may fail"
                    + (all ? "" : " and that can be followed far enough") + ", ";
            sentences.add(
                    middle.isPresent() && middle.getAsDouble() == 0
                            ? among + "the slurry stands at or below " + first + " already in half or more."
                            : among + "half leave "
                                    + (middle.isPresent()
                                            ? duration(middle.getAsDouble()) + " or more"
                                            : "more than "
                                                    + duration(failure.usual().limitHours()))
                                    + " until " + first + ".");
        }
    }

    /** Hours, and days too where they are many. */
    static String duration(double hours) {
        String text = hours < 9.95 ? Words.fixed(hours, 1) : Words.fixed(hours, 0);
        return text + " hours" + (hours >= LONG_H ? " (" + Words.fixed(hours / 24, 1) + " days)" : "");
    }

    private String harmless() {
        OptionalDouble shortest = result.failures().stream()
                .map(failure -> failure.hours().get(0))
                .filter(OptionalDouble::isPresent)
                .mapToDouble(OptionalDouble::getAsDouble)
                .min();
        String first = Words.celsius(result.temperaturesC().get(0));
        if (shortest.isEmpty()) {
            return "No delay followed brings the slurry down to " + first + ".";
        }
        return shortest.getAsDouble() == 0
                ? "No delay is harmless: the slurry stands below " + first + " already when all is well."
                : "A repair within " + duration(Math.floor(shortest.getAsDouble() * 10) / 10)
                        + " is harmless even at the worst of these moments: the slurry stays above " + first + ".";
    }

    private String constant() {
        return "The time constant of the tank, its heat capacity over its loss in the file's mean wind, is "
                + duration(result.timeConstantH()) + ".";
    }

    private String warmUp(HoldResult.WarmUp warmUp) {
        String how = warmUp.withSun() ? "With the sun" : "Without the solar circuit";
        String from = how + ", a fill of " + Words.celsius(warmUp.fillC()) + " at " + moment(warmUp.from());
        String took = gave(warmUp, warmUp.heat());
        if (warmUp.hours().isPresent() && warmUp.hours().getAsDouble() == 0) {
            return from + " is at the set-point already.";
        }
        return warmUp.hours().isPresent()
                ? from + " is at the set-point after " + duration(warmUp.hours().getAsDouble()) + took + "."
                : from + " does not reach the set-point within "
                        + duration(warmUp.course().hours()) + (took.isEmpty() ? "" : took + " in that time") + ".";
    }

    private String gave(HoldResult.WarmUp warmUp, HoldResult.WarmUpHeat heat) {
        List<String> gave = new ArrayList<>();
        if (asked.design().backup().isPresent()) {
            gave.add("the backup gives " + Words.kWh(heat.backupKWh()) + " (for that it "
                    + MoneySentences.buys(asked.design(), heat.boughtKWh()) + ")");
        }
        if (warmUp.withSun()) {
            gave.add("the sun" + (gave.isEmpty() ? " gives " : " ") + Words.kWh(heat.solarKWh()));
        }
        return gave.isEmpty() ? "" : "; " + Words.list(gave);
    }
}
