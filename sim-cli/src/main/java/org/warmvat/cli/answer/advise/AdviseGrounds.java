package org.warmvat.cli.answer.advise;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.warmvat.cli.answer.Subject;
import org.warmvat.cli.words.Telling;
import org.warmvat.cli.words.Words;
import org.warmvat.question.advise.AdviseResult;
import org.warmvat.question.advise.Outcome;
import org.warmvat.question.carry.CarryResult;
import org.warmvat.question.hold.HoldResult;

/** What the advice stands on: the tank as drawn, the heater, a failure in the coldest month, the sun in spring. */
record AdviseGrounds(AdviseResult result, Subject asked) {

    List<String> told() {
        return new Telling()
                .say(asDrawn(result.asIs()))
                .say(result.grounds()
                        .backup()
                        .map(backup -> "The smallest heater that holds the minimum has "
                                + watts(backup.need().forFloorW()) + ", with a coldest week 10 K colder "
                                + watts(result.grounds()
                                        .reserve()
                                        .orElseThrow()
                                        .need()
                                        .forFloorW())
                                + "; to warm a cold fill up within a week takes "
                                + watts(backup.need().forWarmUpW()) + "."))
                .say(result.grounds().hold().stream()
                        .flatMap(AdviseGrounds::failures)
                        .toList())
                .say(result.grounds().carry().map(this::carried))
                .done();
    }

    private static String asDrawn(Outcome asIs) {
        return "As drawn it buys about " + Words.kWh(asIs.energy().bought())
                + " a year for the backup heater and takes "
                + Words.kWh(asIs.energy().electricity()) + " of electricity"
                + (asIs.energy().net().isPresent()
                        ? "; its net energy is about "
                                + Words.kWh(asIs.energy().net().getAsDouble())
                        : "")
                + "; it is below its minimum for " + Words.hours(asIs.hours().below()) + " hours.";
    }

    private static Stream<String> failures(HoldResult hold) {
        return hold.failures().stream()
                .map(failure -> "When the " + (failure.cause() == HoldResult.Cause.HEATER ? "heater" : "power")
                        + " fails at the worst moment of the coldest month, the slurry falls to "
                        + Words.celsius(hold.temperaturesC().get(0)) + " "
                        + failure.hours().get(0).stream()
                                .mapToObj(hours -> "within " + Words.duration(hours))
                                .findFirst()
                                .orElse("at no time that was followed")
                        + ".");
    }

    private String carried(CarryResult carry) {
        return carry.carriesFrom()
                .map(day -> "The sun alone carries the tank to the end of spring from " + asked.day(day) + ".")
                .orElse("The sun alone carries the tank through no part of spring to its end.");
    }

    private static String watts(OptionalDouble watts) {
        return watts.isPresent() ? Words.number(watts.getAsDouble()) + " W" : "no power that would do";
    }
}
