package org.warmvat.cli.option;

import java.io.PrintWriter;
import org.warmvat.engine.HourRecord;
import org.warmvat.engine.HourSink;

/** Tells on a terminal how far a run is, in place; elsewhere it keeps silent. */
public final class Progress implements HourSink {

    private static final int STEP_PERCENT = 5;

    private final PrintWriter err;
    private final boolean shown;
    private final int hours;
    private int done;
    private int told = -1;

    Progress(PrintWriter err, boolean shown, int hours) {
        this.err = err;
        this.shown = shown;
        this.hours = hours;
    }

    @Override
    public boolean accept(HourRecord hour) {
        done++;
        int percent = (int) (100L * done / hours) / STEP_PERCENT * STEP_PERCENT;
        if (shown && percent != told) {
            told = percent;
            err.print("\r" + percent + " % of the hours");
            err.print(done == hours ? "\r                    \r" : "");
            err.flush();
        }
        return true;
    }
}
