package org.warmvat.result;

import java.util.List;
import java.util.stream.Stream;

/**
 * Everything a run over a weather file found.
 *
 * @param title title of the design
 * @param location where the weather belongs
 * @param engine which engine ran: {@code reference} or {@code fast}
 * @param runInDays days run before the first hour
 * @param marks marks of the design
 * @param year the whole run
 * @param months calendar months in order
 * @param days calendar days in order
 * @param hourly hourly series
 * @param warnings what the user must know
 * @param assumed every default and assumption that was used, one sentence each
 */
public record RunResult(
        String title,
        Location location,
        String engine,
        int runInDays,
        Marks marks,
        Period year,
        List<Period> months,
        List<Period> days,
        Hourly hourly,
        List<Warning> warnings,
        List<String> assumed) {

    /** The same run with the assumptions of its design file before its own, and with more to know. */
    public RunResult with(List<String> assumedBefore, List<Warning> moreWarnings) {
        return new RunResult(
                title,
                location,
                engine,
                runInDays,
                marks,
                year,
                months,
                days,
                hourly,
                joined(warnings, moreWarnings),
                joined(assumedBefore, assumed));
    }

    private static <T> List<T> joined(List<T> first, List<T> second) {
        return Stream.concat(first.stream(), second.stream()).toList();
    }
}
