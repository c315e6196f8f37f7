package org.warmvat.weather.file;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.warmvat.weather.Quantity;
import org.warmvat.weather.WeatherRefused;
import org.warmvat.weather.layout.RowTime;

/** Joins the rows of several files by the hour, over the time that all of them cover. */
final class JoinedRows {
    private JoinedRows() {}

    /**
     * Joins.
     *
     * @param parts each with hours of the same stamp
     * @param faults takes what does not fit together
     * @param notes takes the time left out
     */
    static RawRows of(List<RawRows> parts, FileFaults faults, List<String> notes) throws WeatherRefused {
        Set<Quantity> quantities = EnumSet.noneOf(Quantity.class);
        long first = Long.MIN_VALUE;
        long last = Long.MAX_VALUE;
        for (RawRows part : parts) {
            for (Quantity quantity : part.quantities()) {
                if (!quantities.add(quantity)) {
                    faults.add(quantity.key() + " is taken from two files, expected one");
                }
            }
            first = Math.max(first, part.stampMinute(0));
            last = Math.min(last, part.stampMinute(part.size() - 1));
        }
        if (first > last) {
            faults.add("the files that are to be joined have no hour in common");
        }
        faults.refuseIfAny();
        tell(parts, first, last, notes);
        return merged(parts, quantities, first, last);
    }

    /** Refuses a file whose rows do not follow each other in time. */
    static void requireOrder(RawRows part, FileFaults faults) throws WeatherRefused {
        if (part.size() == 0) {
            faults.add("has no rows of weather");
            faults.refuseIfAny();
        }
        for (int row = 1; row < part.size(); row++) {
            if (part.stampMinute(row) <= part.stampMinute(row - 1)) {
                faults.add(
                        part.line(row),
                        "time " + RowTime.text(part.stampMinute(row)) + " does not follow the row before");
                faults.refuseIfAny();
            }
        }
    }

    private static void tell(List<RawRows> parts, long first, long last, List<String> notes) {
        long left = 0;
        for (RawRows part : parts) {
            left += (first - part.stampMinute(0) + part.stampMinute(part.size() - 1) - last) / 60;
        }
        if (left > 0) {
            notes.add(String.format(
                    Locale.ROOT,
                    "The files were joined over the time that all of them cover, %s to %s; %d hours of one file or the other"
                            + " were left out.",
                    RowTime.text(first),
                    RowTime.text(last),
                    left));
        }
    }

    private static RawRows merged(List<RawRows> parts, Set<Quantity> quantities, long first, long last) {
        RawRows joined = new RawRows(new ArrayList<>(quantities));
        int[] at = new int[parts.size()];
        for (long minute = first; minute <= last; minute += 60) {
            boolean begun = false;
            for (int i = 0; i < at.length; i++) {
                RawRows part = parts.get(i);
                while (at[i] < part.size() && part.stampMinute(at[i]) < minute) {
                    at[i]++;
                }
                if (at[i] < part.size() && part.stampMinute(at[i]) == minute) {
                    if (!begun) {
                        joined.begin(
                                parts.get(0).line(Math.min(at[0], parts.get(0).size() - 1)), minute);
                        begun = true;
                    }
                    for (Quantity quantity : part.quantities()) {
                        joined.set(quantity, part.value(quantity, at[i]));
                    }
                }
            }
        }
        return joined;
    }
}
