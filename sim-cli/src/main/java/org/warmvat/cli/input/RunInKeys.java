package org.warmvat.cli.input;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.Optional;
import java.util.OptionalInt;
import org.warmvat.design.RunIn;

/** The block {@code run_in}. */
record RunInKeys(
        @JsonProperty("days")
        @Key(
                says = "Days of run-in before the year",
                unit = "days",
                least = 0,
                most = 3660,
                otherwise = "time_constants x the tank's time constant, from least_days to most_days")
        Optional<Integer> days,

        @JsonProperty("least_days")
        @Key(says = "Least run-in", unit = "days", least = 0, most = 3660, usual = "10", when = "days absent")
        Optional<Integer> leastDays,

        @JsonProperty("time_constants")
        @Key(says = "Thermal time constants to run in", least = 0, most = 20, usual = "3", when = "days absent")
        Optional<Double> timeConstants,

        @JsonProperty("most_days")
        @Key(says = "Most run-in", unit = "days", least = 0, most = 3660, usual = "90", when = "days absent")
        Optional<Integer> mostDays) {

    void check(Faults faults) {
        String reason = "days is given: give the one or the other";
        faults.unwanted("run_in.least_days", leastDays, days.isPresent(), reason);
        faults.unwanted("run_in.time_constants", timeConstants, days.isPresent(), reason);
        faults.unwanted("run_in.most_days", mostDays, days.isPresent(), reason);
        if (leastDays.isPresent() && mostDays.isPresent() && mostDays.get() < leastDays.get()) {
            faults.add(
                    "run_in.most_days",
                    mostDays.get() + ", expected least_days, " + leastDays.get() + " days, or above");
        }
    }

    RunIn runIn() {
        return days.isPresent()
                ? new RunIn(OptionalInt.of(days.get()), days.get(), 0, days.get())
                : new RunIn(
                        OptionalInt.empty(),
                        leastDays.orElseThrow(),
                        timeConstants.orElseThrow(),
                        mostDays.orElseThrow());
    }
}
