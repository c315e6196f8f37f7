package org.warmvat.account;

import java.time.LocalDateTime;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.warmvat.engine.HourRecord;
import org.warmvat.engine.HourSink;
import org.warmvat.engine.Hours;
import org.warmvat.network.State;
import org.warmvat.network.Warning;
import org.warmvat.network.meter.Line;

/**
 * Listens to a run and adds it up: hours to days, days to months, months to the whole. An hour belongs to the day and month in which it
 * starts. Every run is watched and its balances are closed alike; how much is kept beyond sums is chosen at the beginning.
 */
public final class Account implements HourSink {

    /** What is kept. */
    public enum Keep {
        /** The whole run. */
        SUMS,
        /** The whole run and its months. */
        MONTHS,
        /** The whole run, months, days and every hour. */
        HOURS
    }

    private static final int HOURS_PER_DAY = 24;

    private final Books books;
    private final Keep keep;
    private final LocalDateTime start;
    private final int firstHour;
    private final Totals whole;
    private final Optional<Hourly> hourly;
    private final List<Period> months = new ArrayList<>();
    private final List<Period> days = new ArrayList<>();
    private final HourSink listener;
    private Totals month;
    private Totals day;
    private LocalDateTime dayStart;
    private int nextDayHour;
    private Optional<LedgerOpen> open = Optional.empty();
    private boolean closed;
    /** The engine's own: as it was at the end of the last hour. */
    private State now;

    /**
     * An account of hours to come.
     *
     * @param books the books of the network that runs
     * @param begin state before the first hour
     * @param fileStart beginning of the weather file
     * @param hours the hours that will run at most
     * @param keep what is kept
     * @param listener told of each hour after it was added; false ends the run
     */
    public Account(Books books, State begin, LocalDateTime fileStart, Hours hours, Keep keep, HourSink listener) {
        this.books = books;
        this.keep = keep;
        this.listener = listener;
        firstHour = hours.first();
        start = fileStart.plusHours(firstHour);
        whole = new Totals(books, begin);
        month = new Totals(books, begin);
        hourly = keep == Keep.HOURS
                ? Optional.of(new Hourly(books, start, firstHour, hours.end() - hours.first()))
                : Optional.empty();
        day = new Totals(books, begin);
        tellDay(firstHour);
    }

    private void tellDay(int hour) {
        dayStart = start.plusHours(hour - firstHour);
        // a file may start at half past; the hour that starts in a day belongs to it whole
        nextDayHour = hour + HOURS_PER_DAY - dayStart.getHour();
    }

    @Override
    public boolean accept(HourRecord hour) {
        if (hour.hour() == nextDayHour) {
            endDay(hour.hour());
        }
        day.add(hour);
        now = hour.stateWithoutLayers();
        if (hour.hour() + 1 == nextDayHour) {
            day.endAt(hour.state());
        }
        hourly.ifPresent(kept -> kept.add(hour));
        return listener.accept(hour);
    }

    private void endDay(int nextHour) {
        day.endDay();
        month.add(day);
        YearMonth ended = YearMonth.from(dayStart);
        State state = day.end();
        if (keep == Keep.HOURS) {
            days.add(new Period(dayStart.toLocalDate().toString(), books, day));
            day = new Totals(books, state);
        } else {
            day.beginAgain();
        }
        tellDay(nextHour);
        if (!YearMonth.from(dayStart).equals(ended)) {
            endMonth(ended, state);
        }
    }

    private void endMonth(YearMonth ended, State state) {
        close(month, ended.toString());
        whole.add(month);
        if (keep != Keep.SUMS) {
            months.add(new Period(ended.toString(), books, month));
        }
        month = new Totals(books, state);
    }

    private void close(Totals totals, String when) {
        for (Ledger ledger : books.ledgers()) {
            double fraction = Ledger.fraction(ledger, books.ledgers(), totals);
            if (!(fraction <= LedgerOpen.MOST_FRACTION) && open.isEmpty()) {
                open = Optional.of(new LedgerOpen(ledger, when, ledger.residual(totals), fraction));
            }
        }
    }

    /** Ends the account after its last hour; asked again it changes nothing. */
    private void end() {
        if (closed) {
            return;
        }
        closed = true;
        if (day.hours() > 0) {
            day.endAt(now);
            YearMonth last = YearMonth.from(dayStart);
            endDay(nextDayHour);
            if (month.hours() > 0) {
                endMonth(last, day.end());
            }
        }
        close(whole, "the whole run");
    }

    /**
     * The whole run.
     *
     * @throws LedgerOpen when a balance of the run or of one of its months does not close
     */
    public Period whole() {
        end();
        open.ifPresent(fault -> {
            throw fault;
        });
        return new Period("year", books, whole);
    }

    /** Calendar months in order, those cut by the run's ends in part. */
    public List<Period> months() {
        end();
        return months;
    }

    /** Calendar days in order. */
    public List<Period> days() {
        end();
        return days;
    }

    /** Hour by hour. */
    public Hourly hourly() {
        return hourly.orElseThrow();
    }

    /** A line over the hours so far. */
    public double soFar(Line line) {
        return books.value(line, whole) + books.value(line, month) + books.value(line, day);
    }

    /** Index of the weather hour with the lowest slurry temperature. */
    public int leastHour() {
        end();
        return whole.leastHour();
    }

    /** Lines, balances and columns of the tank that runs. */
    public Books books() {
        return books;
    }

    /** What the user must know of the run. */
    public List<Warning> warnings() {
        end();
        return Warnings.of(books, whole);
    }
}
