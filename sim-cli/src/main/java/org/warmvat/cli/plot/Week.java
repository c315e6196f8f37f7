package org.warmvat.cli.plot;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.warmvat.result.Period;

/**
 * Seven calendar days in a row; the last week of a run takes up to three odd days more, or is itself short.
 *
 * @param days the days
 */
record Week(List<Period> days) {

    private static final int DAYS = 7;
    private static final int FEWEST_DAYS = 4;

    static List<Week> split(List<Period> days) {
        List<Week> weeks = new ArrayList<>();
        int first = 0;
        while (first < days.size()) {
            int left = days.size() - first;
            int length = left < DAYS + FEWEST_DAYS ? left : DAYS;
            weeks.add(new Week(days.subList(first, first + length)));
            first += length;
        }
        return weeks;
    }

    LocalDateTime start() {
        return LocalDate.parse(days.get(0).label()).atStartOfDay();
    }

    /** Mean per 24 hours. */
    double perDay(ToDoubleFunction<Period> kWh) {
        double hours = days.stream().mapToDouble(Period::hours).sum();
        return days.stream().mapToDouble(kWh).sum() / hours * 24;
    }
}
