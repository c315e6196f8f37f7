package org.warmvat.cli.answer;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.warmvat.study.CarryResult;
import org.warmvat.study.CarryStudy;

/** The answer to carry in sentences. */
final class CarryWords {

    private static final double NEARLY_KWH = 0.05;

    private final CarryResult result;
    private final Asked asked;
    private final double allowedHours;

    CarryWords(CarryResult result, Asked asked, double allowedHours) {
        this.result = result;
        this.asked = asked;
        this.allowedHours = allowedHours;
    }

    List<Paragraph> answer() {
        return List.of(
                new Paragraph("Can the sun carry the tank alone?", List.of(verdict(), howWarm())),
                new Paragraph("From when on?", List.of(from())),
                new Paragraph("What is missing?", missing()),
                new Paragraph("What would make it carry?", List.of(area(), limit())));
    }

    private String day(LocalDate date) {
        return Words.day(date, asked.withYear());
    }

    private String window() {
        return "from " + day(result.firstDay()) + " to " + day(result.lastDay());
    }

    private String verdict() {
        CarryResult.Warmth warmth = result.alone().warmth();
        String floor = "at or above its floor of " + asked.floor();
        return switch (warmth.verdict()) {
            case YES ->
                "Yes: " + window() + " the solar coil alone kept the slurry " + floor
                        + (warmth.shortHours() == 0
                                ? " all the time."
                                : " but for " + Words.hours(warmth.shortHours()) + " of the "
                                        + Words.hours(allowedHours) + " hours allowed.");
            case MOST_DAYS ->
                "On most days: " + window() + " the solar coil alone kept the slurry " + floor + " on "
                        + warmth.warmDays() + " of " + days() + " days.";
            case NO ->
                "No: " + window() + " the solar coil alone kept the slurry " + floor + " on only " + warmth.warmDays()
                        + " of " + days() + " days.";
        };
    }

    private long days() {
        return result.firstDay().datesUntil(result.lastDay().plusDays(1)).count();
    }

    private String howWarm() {
        CarryResult.Warmth warmth = result.alone().warmth();
        double hours = result.alone().course().hours();
        String below = result.alone()
                .firstDayBelow()
                .map(day -> "; the first day below it was " + day(day))
                .orElse("");
        return "It was warm enough in " + Words.hours(hours - warmth.shortHours()) + " of " + Words.hours(hours)
                + " hours" + below + "; the lowest was " + Words.celsius(warmth.leastC()) + " on "
                + day(result.alone().leastDay()) + ".";
    }

    private String from() {
        if (days() < CarryStudy.LEAST_DAYS_LEFT) {
            return "The window is shorter than " + CarryStudy.LEAST_DAYS_LEFT
                    + " days: a tank coasts for days, so that no date can be told.";
        }
        return result.carriesFrom()
                .map(date -> "Started afresh at the set-point on each day in turn, the sun carries the tank to "
                        + day(result.lastDay()) + " from " + day(date) + " on; dates with fewer than "
                        + CarryStudy.LEAST_DAYS_LEFT + " days left do not count.")
                .orElse("Started afresh at the set-point on each day in turn, on no day with "
                        + CarryStudy.LEAST_DAYS_LEFT + " days or more left does the sun carry the tank to "
                        + day(result.lastDay()) + ".");
    }

    private List<String> missing() {
        CarryResult.WithBackup with = result.withBackup();
        List<String> sentences = new ArrayList<>();
        sentences.add(
                with.shortfallKWh() < NEARLY_KWH
                        ? "With the backup on, it has nothing to give in the window."
                        : "With the backup on, it gives the " + Words.kWh(with.shortfallKWh())
                                + " that the sun falls short of" + worstHalf(with.halves()) + ".");
        if (with.shortfallKWh() >= NEARLY_KWH) {
            sentences.add("For that it " + MoneySentences.buys(asked.design(), with.boughtKWh()) + ".");
        }
        if (with.stoodIn()) {
            sentences.add(
                    "The design has no backup: an electric element in the slurry, large enough, stood in for it.");
        }
        return sentences;
    }

    private String worstHalf(List<CarryResult.Half> halves) {
        CarryResult.Half worst = halves.stream()
                .max(Comparator.comparingDouble(CarryResult.Half::shortfallKWh))
                .orElseThrow();
        return halves.size() == 1
                ? ""
                : ", the most, " + Words.kWh(worst.shortfallKWh()) + ", from " + day(worst.firstDay()) + " to "
                        + day(worst.lastDay());
    }

    private String area() {
        CarryResult.Area area = result.area();
        double present = area.presentM2();
        String doubt = area.monotone()
                ? ""
                : " More area was not always better among the areas tried: a collector that stands too hot is not let in.";
        if (area.smallestM2().isEmpty()) {
            return "No collector of up to " + square(area.boundM2())
                    + ", the largest tried, carries the window; the design" + " has " + square(present) + "." + doubt;
        }
        String needed = square(area.smallestM2().getAsDouble());
        return (result.alone().warmth().verdict() == CarryResult.Verdict.YES
                        ? "A collector of " + needed + " would be just enough where the design has " + square(present)
                                + "."
                        : "A collector of " + needed + " would carry the window where the design has " + square(present)
                                + " (areas up to " + square(area.boundM2()) + " were tried).")
                + doubt;
    }

    private static String square(double m2) {
        return String.format(Locale.ROOT, "%.2f m²", m2);
    }

    private String limit() {
        if (result.alone().warmth().verdict() == CarryResult.Verdict.YES) {
            return "Nothing binds: the window is carried as it is.";
        }
        List<String> enough = result.limits().stream()
                .filter(one -> one.warmth().verdict() == CarryResult.Verdict.YES)
                .map(one -> name(one.what()))
                .toList();
        CarryResult.Relaxed best = result.limits().stream()
                .min(Comparator.comparingDouble(one -> one.warmth().shortHours()))
                .orElseThrow();
        if (!enough.isEmpty()) {
            return "Relaxed alone, " + Words.list(enough) + " would do: there lies the limit.";
        }
        return best.what() == CarryResult.Limit.NONE
                ? "Relaxed alone, none of collector, coil, high limit and foam helps."
                : "Relaxed alone, none of collector, coil, high limit and foam is enough; " + name(best.what())
                        + " helps most, leaving " + Words.hours(best.warmth().shortHours()) + " hours short.";
    }

    /** A limit as it stands in sentences and in the table. */
    static String name(CarryResult.Limit limit) {
        return switch (limit) {
            case NONE -> "the design as it is";
            case COLLECTOR -> "the collector at the largest area tried";
            case COIL -> "ten times the solar coil";
            case HIGH_LIMIT -> "a high limit 20 K higher";
            case FOAM -> "twice the foam";
        };
    }

    /** The verdict in a word or three. */
    static String word(CarryResult.Verdict verdict) {
        return switch (verdict) {
            case YES -> "yes";
            case MOST_DAYS -> "on most days";
            case NO -> "no";
        };
    }
}
