package org.warmvat.account;

import java.util.Optional;
import org.warmvat.engine.HourRecord;
import org.warmvat.engine.HourSink;

/** Keeps one hour of a run, to be told line by line as a day or a month is. */
public final class ChosenHour implements HourSink {

    private final int hour;
    private Optional<HourRecord> kept = Optional.empty();

    /**
     * Listens for an hour.
     *
     * @param hour its index in the weather file; a negative one keeps none
     */
    public ChosenHour(int hour) {
        this.hour = hour;
    }

    @Override
    public boolean accept(HourRecord record) {
        if (record.hour() == hour) {
            kept = Optional.of(record.copy());
        }
        return true;
    }

    /**
     * What flowed in it; what it stored is not known, as the state at its beginning is not kept, and told as nothing.
     *
     * @param books those of the run that was listened to
     * @return empty when the run had no such hour
     */
    public Optional<Period> flows(Books books) {
        return kept.map(record -> {
            Totals totals = new Totals(books, record.state());
            totals.add(record);
            return new Period("hour " + hour, books, totals);
        });
    }
}
