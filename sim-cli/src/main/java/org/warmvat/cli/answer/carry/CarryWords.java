package org.warmvat.cli.answer.carry;

import java.util.Comparator;
import java.util.List;
import org.warmvat.cli.answer.Draft;
import org.warmvat.cli.answer.MoneySentences;
import org.warmvat.cli.answer.SeasonSentences;
import org.warmvat.cli.answer.Subject;
import org.warmvat.cli.words.Telling;
import org.warmvat.cli.words.Words;
import org.warmvat.question.carry.CarryResult;
import org.warmvat.question.carry.CarryStudy;

/** The answer to {@code carry} in sentences. */
final class CarryWords {

    private static final double NEARLY_KWH = 0.05;

    private final CarryResult result;
    private final Subject asked;
    private final double allowedHours;

    CarryWords(CarryResult result, Subject asked, double allowedHours) {
        this.result = result;
        this.asked = asked;
        this.allowedHours = allowedHours;
    }

    void tell(Draft draft) {
        CarryResult.Warmth warmth = result.alone().warmth();
        draft.verdict(verdict(), List.of())
                .key("Hours short", Words.hours(warmth.shortHours()))
                .key("Lowest slurry", Words.celsius(warmth.leastC()))
                .key("Missing heat", Words.kWh(result.withBackup().shortfallKWh()))
                .paragraph("Can the sun carry the tank alone?", howWarm())
                .paragraph("From when on?", List.of(from()))
                .paragraph("What is missing?", missing())
                .paragraph("What would make it carry?", List.of(area(), limit()));
    }

    private String window() {
        return "from " + asked.day(result.firstDay()) + " to " + asked.day(result.lastDay());
    }

    private String verdict() {
        CarryResult.Warmth warmth = result.alone().warmth();
        String kept = window() + " the solar coil alone kept the slurry at or above its minimum of " + asked.minimum();
        String days = warmth.warmDays() + " of " + CarryAnswer.days(result) + " days.";
        return switch (warmth.verdict()) {
            case YES ->
                "Yes: " + kept
                        + (warmth.shortHours() == 0
                                ? " all the time."
                                : " but for " + Words.hours(warmth.shortHours()) + " of the "
                                        + Words.hours(allowedHours) + " hours allowed.");
            case MOST_DAYS -> "On most days: " + kept + " on " + days;
            case NO -> "No: " + kept + " on only " + days;
        };
    }

    private List<String> howWarm() {
        CarryResult.Warmth warmth = result.alone().warmth();
        double hours = result.alone().course().hours();
        String below = result.alone()
                .firstDayBelow()
                .map(day -> "; the first day below it was " + asked.day(day))
                .orElse("");
        return new Telling()
                .say("It was warm enough in " + Words.hours(hours - warmth.shortHours()) + " of " + Words.hours(hours)
                        + " hours" + below + "; the lowest was " + Words.celsius(warmth.leastC()) + " on "
                        + asked.day(result.alone().leastDay()) + ".")
                .say(SeasonSentences.Apart.of(asked.design(), result.firstDay(), result.lastDay())
                        .sentence())
                .done();
    }

    private String from() {
        int least = CarryStudy.LEAST_DAYS_LEFT;
        if (CarryAnswer.days(result) < least) {
            return "The window is shorter than " + least
                    + " days: a tank coasts for days, so that no date can be told.";
        }
        String last = asked.day(result.lastDay());
        String tried = "each day with at least " + least + " days left was tried as a start at the set-point";
        return result.carriesFrom()
                .map(date ->
                        "From " + asked.day(date) + " on the sun carries the tank to " + last + " (" + tried + ").")
                .orElse("From no day does the sun carry the tank to " + last + " (" + tried + ").");
    }

    private List<String> missing() {
        CarryResult.WithBackup with = result.withBackup();
        boolean nothing = with.shortfallKWh() < NEARLY_KWH;
        return new Telling()
                .say(
                        nothing
                                ? "The backup heater has nothing to give in the window."
                                : "With the backup heater on, it gives the " + Words.kWh(with.shortfallKWh())
                                        + " that the sun falls short of" + worstHalf(with.halves()) + ".")
                .when(!nothing, () -> "For that it " + MoneySentences.buys(asked, with.boughtKWh()) + ".")
                .when(
                        with.stoodIn(),
                        "The design has no backup heater: an electric element in the slurry, large enough, stood in for it.")
                .done();
    }

    private String worstHalf(List<CarryResult.Half> halves) {
        CarryResult.Half worst = halves.stream()
                .max(Comparator.comparingDouble(CarryResult.Half::shortfallKWh))
                .orElseThrow();
        return halves.size() == 1
                ? ""
                : ", most of all, " + Words.kWh(worst.shortfallKWh()) + ", from " + asked.day(worst.firstDay()) + " to "
                        + asked.day(worst.lastDay());
    }

    private String area() {
        CarryResult.Area area = result.area();
        String has = "the design has " + Words.square(area.presentM2());
        String doubt = area.monotone()
                ? ""
                : " More area was not always better among the areas tried: a collector that stands too hot is not let in.";
        if (area.smallestM2().isEmpty()) {
            return "No collector of up to " + Words.square(area.boundM2()) + ", the largest tried, carries the window; "
                    + has + "." + doubt;
        }
        CarryResult.Price price = area.price().orElseThrow();
        if (price.killsDigestion(asIs().price())) {
            return "A collector of " + Words.square(area.smallestM2().getAsDouble())
                    + " would keep the tank above its minimum, but kills digestion (" + price(price) + "): no remedy; "
                    + has
                    + "." + doubt;
        }
        String needed = "A collector of " + Words.square(area.smallestM2().getAsDouble()) + " (" + price(price) + ")";
        return (result.alone().warmth().verdict() == CarryResult.Verdict.YES
                        ? needed + " would be just enough; " + has + "."
                        : needed + " would carry the window; " + has + " (areas up to " + Words.square(area.boundM2())
                                + " were tried).")
                + doubt;
    }

    private String limit() {
        if (result.alone().warmth().verdict() == CarryResult.Verdict.YES) {
            return "Nothing binds: the window is carried as it is.";
        }
        List<CarryResult.Relaxed> safe = result.limits().stream()
                .filter(one ->
                        one.what() == CarryResult.Limit.NONE || !one.price().killsDigestion(asIs().price()))
                .toList();
        List<String> enough = safe.stream()
                .filter(one -> one.warmth().verdict() == CarryResult.Verdict.YES)
                .map(this::priced)
                .toList();
        if (!enough.isEmpty()) {
            return "One change by itself is enough: " + String.join(", or ", enough) + "." + refused();
        }
        CarryResult.Relaxed best = safe.stream()
                .min(Comparator.comparingDouble(one -> one.warmth().shortHours()))
                .orElseThrow();
        return (best.what() == CarryResult.Limit.NONE
                        ? "No single change of collector, coil, high limit or insulation helps."
                        : "No single change of collector, coil, high limit or insulation is enough; most helps "
                                + priced(best) + ", which leaves "
                                + Words.hours(best.warmth().shortHours())
                                + " hours short.")
                + refused();
    }

    /** What would warm the tank but kill its digestion, so that nobody tries it unwarned. */
    private String refused() {
        List<String> kill = result.limits().stream()
                .filter(one ->
                        one.what() != CarryResult.Limit.NONE && one.price().killsDigestion(asIs().price()))
                .map(this::priced)
                .toList();
        return kill.isEmpty() ? "" : " No remedy, since it kills digestion: " + String.join("; ", kill) + ".";
    }

    private CarryResult.Relaxed asIs() {
        return result.limits().get(0);
    }

    private String priced(CarryResult.Relaxed one) {
        return name(one.what()) + " (" + price(one.price()) + ")";
    }

    /** What a change brings beside warmth. */
    private String price(CarryResult.Price price) {
        String gas = price.methaneNm3().isPresent()
                ? "methane " + Words.number(price.methaneNm3().getAsDouble()) + " Nm³, as it is "
                        + Words.number(asIs().price().methaneNm3().orElse(0)) + " Nm³"
                : "gas not computed";
        String hot = price.tooHotHours() > 0
                ? ", " + Words.hours(price.tooHotHours()) + " h above the maximum of digestion"
                : "";
        return "slurry up to " + Words.celsius(price.mostC()) + hot + "; " + gas + "; stagnation "
                + Words.hours(price.stagnationHours()) + " h, as it is "
                + Words.hours(asIs().price().stagnationHours()) + " h";
    }

    /** A limit as it stands in sentences and in the table. */
    static String name(CarryResult.Limit limit) {
        return switch (limit) {
            case NONE -> "the design as it is";
            case COLLECTOR -> "the largest collector tried";
            case COIL -> "ten times the solar coil";
            case HIGH_LIMIT -> "a high limit 20 K higher";
            case FOAM -> "twice the insulation";
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
