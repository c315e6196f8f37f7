package org.warmvat.cli.answer.year;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.warmvat.account.Period;
import org.warmvat.heating.BackupPart;
import org.warmvat.heating.SolarPart;
import org.warmvat.question.year.YearResult;
import org.warmvat.tank.KeyFigures;

/**
 * The worst seven calendar days in a row.
 *
 * @param mark what made it the worst
 * @param days the seven days
 */
record WorstWeek(Mark mark, List<Period> days) {

    private static final int DAYS = 7;

    /** What the weeks are ranked by; of equal weeks the coldest counts. */
    enum Mark {
        /** Most hours below the floor: for a tank that was short at times. */
        HOURS_BELOW_FLOOR("the most hours below the minimum"),
        /** Most backup heat: for a tank that was never short. */
        BACKUP_HEAT("the most backup heat"),
        /** Coldest slurry on average: for a tank that was never warm, or one that no backup keeps warm. */
        COLDEST("the coldest slurry");

        private final String words;

        Mark(String words) {
            this.words = words;
        }

        String words() {
            return words;
        }
    }

    /** The worst week of a run; empty for a run of fewer than seven days. */
    static Optional<WorstWeek> of(YearResult run) {
        Mark mark = mark(run);
        List<Period> days = run.days();
        return IntStream.rangeClosed(0, days.size() - DAYS)
                .mapToObj(first -> new WorstWeek(mark, days.subList(first, first + DAYS)))
                .max(Comparator.comparingLong(WorstWeek::badness).thenComparing(week -> -week.meanC()));
    }

    private static Mark mark(YearResult run) {
        Warmth warmth = Warmth.of(run.whole());
        if (warmth == Warmth.SHORT_AT_TIMES) {
            return Mark.HOURS_BELOW_FLOOR;
        }
        return warmth == Warmth.ALWAYS && run.whole().of(BackupPart.HEAT) > 0 ? Mark.BACKUP_HEAT : Mark.COLDEST;
    }

    /** Whole seconds below the floor or watt-hours of backup, so that rounding does not part equal weeks. */
    private long badness() {
        return switch (mark) {
            case HOURS_BELOW_FLOOR -> Math.round(belowFloorHours() * 3600);
            case BACKUP_HEAT -> Math.round(backupKWh() * 1000);
            case COLDEST -> 0;
        };
    }

    LocalDate firstDay() {
        return LocalDate.parse(days.get(0).label());
    }

    LocalDate lastDay() {
        return LocalDate.parse(days.get(DAYS - 1).label());
    }

    double belowFloorHours() {
        return sum(day -> day.of(KeyFigures.BELOW_FLOOR_HOURS));
    }

    double solarKWh() {
        return sum(day -> day.of(SolarPart.HEAT));
    }

    double backupKWh() {
        return sum(day -> day.of(BackupPart.HEAT));
    }

    double meanC() {
        return sum(day -> day.of(KeyFigures.MEAN_C) * day.hours()) / sum(Period::hours);
    }

    double leastC() {
        return days.stream()
                .mapToDouble(day -> day.of(KeyFigures.LEAST_C))
                .min()
                .orElseThrow();
    }

    private double sum(ToDoubleFunction<Period> figure) {
        return days.stream().mapToDouble(figure).sum();
    }
}
