package org.warmvat.cli.answer;

import java.util.Comparator;
import java.util.List;
import java.util.function.ToIntFunction;
import org.warmvat.result.Counts;
import org.warmvat.result.Period;

/**
 * How often a pump or heater starts, to see that it does not short-cycle.
 *
 * @param total starts in the run
 * @param perDay mean per 24 hours
 * @param most most in one calendar day
 * @param mostOn that day, such as 2025-01-14; the first of several
 */
record Starts(int total, double perDay, int most, String mostOn) {

    static Starts of(Period run, List<Period> days, ToIntFunction<Counts> count) {
        int total = count.applyAsInt(run.counts());
        Period busiest = days.stream()
                .max(Comparator.comparingInt((Period day) -> count.applyAsInt(day.counts()))
                        .thenComparing(Comparator.comparing(Period::label).reversed()))
                .orElseThrow();
        return new Starts(total, total / (run.hours() / 24), count.applyAsInt(busiest.counts()), busiest.label());
    }
}
