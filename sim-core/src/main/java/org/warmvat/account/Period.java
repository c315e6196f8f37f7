package org.warmvat.account;

import org.warmvat.network.Energy;
import org.warmvat.network.Line;

/** All lines of a day, a month or a whole run. */
public final class Period {

    private final String label;
    private final Books books;
    private final Totals totals;

    Period(String label, Books books, Totals totals) {
        this.label = label;
        this.books = books;
        this.totals = totals;
    }

    /** 2025-01-31, 2025-01, or "year" for the whole run. */
    public String label() {
        return label;
    }

    /** Length, h. */
    public double hours() {
        return totals.hours();
    }

    /** A line in its unit; 0 where the tank has no part for it, a share of nothing is not a number. */
    public double of(Line line) {
        return books.value(line, totals);
    }

    /** Whether a part of the tank tells a line. */
    public boolean has(Line line) {
        return books.has(line);
    }

    /** A side of the account of net energy, kWh. */
    public double kWh(Energy side) {
        return books.kWh(side, totals);
    }

    /** What a meter counted, J, K s or Nm3; 0 when the tank has none of this key. */
    public double counted(String meter) {
        int index = books.network().meters().indexOf(meter);
        return index < 0 ? 0 : totals.meter(index);
    }

    /** How long a watched condition held, h; 0 when nothing watches it. */
    public double watchHours(String watch) {
        for (int i = 0; i < books.network().watches().size(); i++) {
            if (books.network().watches().get(i).name().equals(watch)) {
                return totals.watchS(i) / 3600;
            }
        }
        return 0;
    }

    /** Index of the weather hour with the lowest slurry temperature. */
    public int leastHour() {
        return totals.leastHour();
    }

    /** Lines, balances and columns of the tank. */
    public Books books() {
        return books;
    }
}
