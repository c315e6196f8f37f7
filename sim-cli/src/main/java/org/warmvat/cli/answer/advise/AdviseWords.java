package org.warmvat.cli.answer.advise;

import java.time.MonthDay;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.warmvat.cli.answer.MoneySentences;
import org.warmvat.cli.answer.Subject;
import org.warmvat.cli.words.Telling;
import org.warmvat.cli.words.Words;
import org.warmvat.design.Design;
import org.warmvat.question.advise.Kind;
import org.warmvat.question.advise.Outcome;
import org.warmvat.question.advise.Recommendation;

/** Recommendations in sentences, each with its numbers. */
final class AdviseWords {

    private static final int NO_LEAP_YEAR = 2025;

    private final Design design;
    private final Outcome asIs;
    private final boolean priced;
    private final String once;

    AdviseWords(Subject asked, Outcome asIs) {
        this.design = asked.design();
        this.asIs = asIs;
        this.priced = !asked.pricesAreExamples();
        this.once = asked.currencyOnce();
    }

    /** The whole recommendation. */
    String of(Recommendation one) {
        List<String> told = new ArrayList<>(List.of(what(one)));
        if (one.change().isPresent()) {
            told.add(after(one));
        }
        outlay(one).ifPresent(told::add);
        return String.join(" ", told);
    }

    private String what(Recommendation one) {
        return one.kind().isEnergy() ? gained(one) : one.kind().hurts() ? danger(one) : cold(one);
    }

    private String danger(Recommendation one) {
        return switch (one.kind()) {
            case SLIP -> "Look at this first, it is most likely a slip: " + one.about();
            case AIR ->
                "Dosed air rises to " + Words.percent(one.amount()) + " of the gas"
                        + one.change()
                                .map(change -> change.to() > 0
                                        ? ": dose no more than " + Words.number(change.to()) + " litres an hour (now "
                                                + Words.number(change.from().orElseThrow()) + ")."
                                        : ": dose none, since no smaller flow keeps it low in every hour.")
                                .orElse(
                                        ": stop the air pump whenever the gas stops, and have the dosing designed anew.");
            case TOO_HOT ->
                "The slurry rises to " + Words.celsius(one.amount()) + ", above what digestion bears"
                        + one.change()
                                .map(AdviseWords::cooler)
                                .orElse(": no lower limit of the solar pump nor lower set-point alone mends it.");
            case FROZEN_LOOP ->
                "The solar loop cools to " + Words.celsius(one.amount()) + " and freezes"
                        + one.change()
                                .map(change ->
                                        ": fill it with a fluid that bears " + Words.fixed(change.to(), 0) + " °C.")
                                .orElse(": drain it in winter.");
            case FROZEN_PIPE ->
                "The end of the pipe " + one.about() + " cools to " + Words.celsius(one.amount())
                        + " and may freeze"
                        + one.change()
                                .map(
                                        change -> ": give it " + Words.number(change.to()) + " mm of insulation (now "
                                                + Words.number(change.from().orElseThrow())
                                                + " mm). With it no pipe's end is below 0 °C in this weather; a colder winter asks for more.")
                                .orElse(
                                        ": no insulation alone keeps it open; shorten it, bring its end under the tank's insulation, or"
                                                + " fit a frost heater made for such pipes.");
            default -> stagnation(one);
        };
    }

    private String cold(Recommendation one) {
        return switch (one.kind()) {
            case HEATER -> heater(one);
            case BACKUP_COIL ->
                "The backup coil passes " + Words.number(one.amount())
                        + " W, too little for any heater to keep the tank warm: take a coil of " + Words.number(to(one))
                        + " m² (now " + Words.number(from(one)) + ").";
            default ->
                "When heater or power fails in the coldest month, the slurry falls by 10 K within "
                        + Words.hours(one.amount())
                        + " hours: have a spare heater at hand, and know beforehand how the pipes are drained.";
        };
    }

    private static String gained(Recommendation one) {
        return switch (one.kind()) {
            case INSULATION ->
                "Insulate thicker: " + Words.number(to(one)) + " mm on the "
                        + one.about().replace("floor", "base") + " (now " + Words.number(from(one))
                        + "), and as much more on the other sides.";
            case COLLECTOR ->
                "Take a larger collector: " + Words.square(to(one)) + " (now " + Words.square(from(one)) + ").";
            case FITTING ->
                "Of all fittings " + one.about()
                        + " loses most: halve its loss, by a thermal break, a poorer conductor or more insulation (as "
                        + key(one) + " " + Words.number(to(one)) + " in place of " + Words.number(from(one))
                        + " would).";
            case SETPOINT -> "Hold " + Words.celsius(to(one)) + " in place of " + Words.celsius(from(one)) + ".";
            default ->
                "Run the mixer " + Words.fixed(to(one), 0) + " minutes an hour in place of " + Words.fixed(from(one), 0)
                        + ", as long as nothing floats.";
        };
    }

    private static String cooler(Recommendation.Change change) {
        return change.key().startsWith("solar")
                ? ": let the solar pump stop " + Words.number(change.to()) + " K above the set-point (now "
                        + Words.number(change.from().orElseThrow()) + " K)."
                : ": hold " + Words.celsius(change.to()) + " (now "
                        + Words.celsius(change.from().orElseThrow()) + ").";
    }

    private String stagnation(Recommendation one) {
        return "The collector stands hot for " + Words.hours(asIs.hours().stagnation()) + " hours a year, up to "
                + Words.celsius(one.amount())
                + " by calculation: loop, fluid and relief valve must bear the tested stagnation temperature of its certificate"
                + (one.change().isPresent()
                        ? ", or cover it, or drain it while it is cold, from " + days(one.about())
                                + ", when the tank keeps as warm without it."
                        : ".");
    }

    /** A period such as {@code 06-01 to 08-31} in words. */
    private static String days(String period) {
        return Stream.of(period.split(" to "))
                .map(day -> MonthDay.parse("--" + day))
                .map(day -> Words.day(day.atYear(NO_LEAP_YEAR), false))
                .collect(Collectors.joining(" to "));
    }

    private String heater(Recommendation one) {
        boolean none = one.change().orElseThrow().from().isEmpty();
        return (none
                        ? "Add a backup heater of "
                        : one.about().equals("reserve")
                                ? "The heater has no reserve for a coldest week 10 K colder: take "
                                : "The heater is too small: take ")
                + Words.number(to(one)) + " W" + (none ? "" : " (now " + Words.number(from(one)) + " W)") + "; "
                + Words.number(one.amount()) + " W are needed in a coldest week 10 K colder than in these files.";
    }

    private static double to(Recommendation one) {
        return one.change().orElseThrow().to();
    }

    private static double from(Recommendation one) {
        return one.change().orElseThrow().from().orElseThrow();
    }

    private static String key(Recommendation one) {
        return one.change().orElseThrow().key();
    }

    /** What comes of it: energy, the highest temperature, gas, stagnation, cold. */
    private String after(Recommendation one) {
        Outcome after = one.after();
        return "Run so: "
                + String.join(
                        "; ",
                        new Telling()
                                .say(gain(after))
                                .say("slurry at most " + Words.celsius(after.highestC()))
                                .when(
                                        design.gas().isPresent(),
                                        () -> now(
                                                "methane "
                                                        + Words.number(
                                                                after.energy().methaneNm3()) + " Nm³",
                                                Words.number(asIs.energy().methaneNm3())))
                                .when(
                                        design.solar().isPresent() && one.kind() != Kind.STAGNATION,
                                        () -> hours("collector standing hot", after, Outcome.Hours::stagnation))
                                .say(hours("below the minimum", after, Outcome.Hours::below))
                                .done())
                + ".";
    }

    private String hours(String what, Outcome after, ToDoubleFunction<Outcome.Hours> hours) {
        return now(
                what + " " + Words.hours(hours.applyAsDouble(after.hours())) + " h",
                Words.hours(hours.applyAsDouble(asIs.hours())));
    }

    private static String now(String after, String before) {
        return after + " (now " + before + ")";
    }

    /** What a change gains in energy. */
    String gain(Outcome after) {
        double gain = after.gainKWh() - asIs.gainKWh();
        String size = Words.kWh(Math.abs(gain));
        if (Math.abs(gain) < 1) {
            return "the energy of a year stays as it is";
        }
        return design.gas().isPresent()
                ? "net energy " + (gain > 0 ? "rises" : "falls") + " by about " + size + " a year"
                : "about " + size + " a year " + (gain > 0 ? "less" : "more") + " must be bought";
    }

    private Optional<String> outlay(Recommendation one) {
        return one.outlay().isPresent() && priced
                ? Optional.of("It costs about "
                        + MoneySentences.sum(one.outlay().getAsDouble(), "once", once)
                        + " and saves about "
                        + MoneySentences.sum(
                                one.after().energy().money() - asIs.energy().money(),
                                "a year",
                                design.prices().currency())
                        + ".")
                : Optional.empty();
    }
}
