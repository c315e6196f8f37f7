package org.warmvat.cli.answer.year;

import java.util.Comparator;
import java.util.List;
import org.warmvat.account.Period;
import org.warmvat.network.meter.Line;

/**
 * How often a pump or heater starts, to see that it does not short-cycle.
 *
 * @param total starts in the run
 * @param perDay mean per 24 hours
 * @param most most in one calendar day
 * @param mostOn that day, such as 2025-01-14; the first of several
 */
record Starts(int total, double perDay, int most, String mostOn) {

    static Starts of(Period run, List<Period> days, Line starts) {
        int total = (int) run.of(starts);
        Period busiest = days.stream()
                .max(Comparator.comparingDouble((Period day) -> day.of(starts))
                        .thenComparing(Comparator.comparing(Period::label).reversed()))
                .orElseThrow();
        return new Starts(total, total / (run.hours() / 24), (int) busiest.of(starts), busiest.label());
    }
}
