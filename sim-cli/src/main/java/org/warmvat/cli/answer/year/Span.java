package org.warmvat.cli.answer.year;

import java.time.LocalDate;
import org.warmvat.cli.words.Words;
import org.warmvat.question.year.YearResult;

/**
 * How the length of a run is named.
 *
 * @param hours its length
 */
record Span(double hours) {

    private static final double LEAP_YEAR_HOURS = 8784;
    private static final double YEAR_HOURS = 8760;

    static Span of(YearResult run) {
        return new Span(run.whole().hours());
    }

    /** {@code all year}, or how many days the file has. */
    String throughout() {
        return isYear() ? "all year" : "through the " + days() + " days of the weather file";
    }

    /** {@code over the year}, or how many days the file has. */
    String over() {
        return isYear() ? "over the year" : "over the " + days() + " days of the weather file";
    }

    /** A day of the run; with the year where days of the year come more than once. */
    String day(LocalDate date) {
        return Words.day(date, hours > LEAP_YEAR_HOURS);
    }

    private boolean isYear() {
        return hours >= YEAR_HOURS && hours <= LEAP_YEAR_HOURS;
    }

    private String days() {
        return Words.fixed(hours / 24, hours % 24 == 0 ? 0 : 1);
    }
}
