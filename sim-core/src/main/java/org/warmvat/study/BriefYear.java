package org.warmvat.study;

import java.time.Duration;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.warmvat.design.Design;
import org.warmvat.engine.HourRecord;
import org.warmvat.engine.HourSink;
import org.warmvat.engine.Hours;
import org.warmvat.network.State;
import org.warmvat.result.Period;
import org.warmvat.tank.Housekeeping;
import org.warmvat.tank.Runner;
import org.warmvat.tank.StudyRefused;
import org.warmvat.tank.TankRun;

/**
 * Runs many designs through one weather file and keeps only the sums of each: the same run-in and the same hours as {@link
 * YearStudy}, in memory that does not grow with the number of runs.
 */
public final class BriefYear {

    private static final double S_PER_HOUR = 3600;

    private BriefYear() {}

    /**
     * The sums of a run.
     *
     * @param year the whole weather file
     * @param months its calendar months in order
     * @param degreeHoursShort integral of the shortfall below the floor temperature, K h
     */
    public record Sums(Period year, List<Period> months, double degreeHoursShort) {

        /** Net energy of the worst month, kWh. */
        public double worstMonthNetKWh() {
            return months.stream()
                    .mapToDouble(month -> month.gas().netEnergyKWh())
                    .min()
                    .orElseThrow();
        }
    }

    /**
     * Runs a design.
     *
     * @param design the design
     * @param runner starts it in its weather
     * @throws StudyRefused when design and weather do not go together
     * @throws org.warmvat.engine.EngineFailure when the run cannot be completed
     * @throws java.util.concurrent.CancellationException when the thread is interrupted
     */
    public static Sums run(Design design, Runner runner) throws StudyRefused {
        StudyRefused.check(design, runner.file());
        return sums(design, runner);
    }

    /** The same for a design that is known to go with the weather. */
    static Sums sums(Design design, Runner runner) {
        TankRun tank = runner.runIn(design);
        Months months = new Months(design, tank, runner.file().start());
        tank.over(new Hours(0, runner.file().hours()), months);
        return months.sums();
    }

    /** Adds hours up by calendar month and in all. */
    private static final class Months implements HourSink {

        private static final DateTimeFormatter LABEL = DateTimeFormatter.ofPattern("uuuu-MM", Locale.ROOT);

        private final Design design;
        private final TankRun tank;
        private final LocalDateTime start;
        /** The state at the end of the hour before, since an hour arrives when the tank has left its beginning behind. */
        private final State state;

        private final RunningSums whole;
        private final List<Period> months = new ArrayList<>();
        private RunningSums month;
        private int nextMonthHour;
        private String label;

        Months(Design design, TankRun tank, LocalDateTime start) {
            this.design = design;
            this.tank = tank;
            this.start = start;
            state = tank.state().copy();
            whole = new RunningSums(design, tank.tank(), state);
            open(0);
        }

        private void open(int hour) {
            LocalDateTime from = start.plusHours(hour);
            LocalDateTime next =
                    from.toLocalDate().withDayOfMonth(1).plusMonths(1).atStartOfDay();
            // a file may start at half past; the hour that starts in a month belongs to it whole
            nextMonthHour = (int) ((Duration.between(start, next).toMinutes() + 59) / 60);
            label = LABEL.format(from);
            month = new RunningSums(design, tank.tank(), state);
        }

        @Override
        public boolean accept(HourRecord hour) {
            if (hour.hour() == nextMonthHour) {
                close();
                open(hour.hour());
            }
            whole.add(hour);
            month.add(hour);
            state.set(hour.state());
            return true;
        }

        private void close() {
            month.end(state);
            months.add(PeriodFigures.of(label, design, month));
        }

        Sums sums() {
            close();
            whole.end(state);
            return new Sums(
                    PeriodFigures.of("year", design, whole),
                    List.copyOf(months),
                    whole.meter(Housekeeping.SHORTFALL) / S_PER_HOUR);
        }
    }
}
