package org.warmvat.study;

import java.time.LocalDateTime;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.warmvat.design.Design;
import org.warmvat.result.Period;

/** Sums the hours of a log into days, months and the whole run. */
final class Periods {

    private final Design design;
    private final HourLog log;
    private final LocalDateTime start;
    private final double[] airShare;

    Periods(Design design, HourLog log, LocalDateTime start) {
        this.design = design;
        this.log = log;
        this.start = start;
        airShare = AirShare.byHour(design, log);
    }

    /** The whole run. */
    Period whole() {
        return period("year", 0, log.hours());
    }

    /** Calendar months in order, those cut by the run's ends in part. */
    List<Period> months() {
        return cut(YearMonth::from);
    }

    /** Calendar days in order. */
    List<Period> days() {
        return cut(LocalDateTime::toLocalDate);
    }

    /** An hour belongs to the day and month in which it starts; both print as ISO 8601 has it. */
    private List<Period> cut(Function<LocalDateTime, Object> label) {
        List<Period> periods = new ArrayList<>();
        Object open = label.apply(start);
        int from = 0;
        for (int hour = 1; hour <= log.hours(); hour++) {
            Object next = label.apply(start.plusHours(hour));
            if (hour == log.hours() || !open.equals(next)) {
                periods.add(period(open.toString(), from, hour));
                open = next;
                from = hour;
            }
        }
        return periods;
    }

    private Period period(String label, int from, int to) {
        return PeriodFigures.of(label, design, new HourSpan(design, log, airShare, from, to));
    }
}
