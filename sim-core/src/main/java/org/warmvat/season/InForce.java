package org.warmvat.season;

import org.warmvat.design.Design;
import org.warmvat.design.season.SeasonTable;
import org.warmvat.network.Interval;
import org.warmvat.network.Network;
import org.warmvat.network.Part;
import org.warmvat.network.Surroundings;

/**
 * The numbers of the calendar in force in the interval entered (equations 12.1 to 12.3). It changes at midnights and stands before the
 * parts that ask it.
 */
public final class InForce implements Part {

    private final SeasonTable table;
    private final Surroundings surroundings;
    private final boolean changes;
    private int day;

    /** Adds a design's calendar to a network. */
    public InForce(Design design, Surroundings surroundings, Network.Assembly assembly) {
        table = design.season();
        this.surroundings = surroundings;
        changes = !design.calendar().isNone();
        assembly.part(this);
    }

    @Override
    public double nextJumpS(double timeS) {
        return changes ? surroundings.nextMidnightS(timeS) : Double.POSITIVE_INFINITY;
    }

    @Override
    public void enter(Interval interval) {
        day = dayAt(interval.middleS());
    }

    private int dayAt(double timeS) {
        return changes ? SeasonTable.dayOf(surroundings.date(timeS)) : 0;
    }

    /** Whether there are any spells. */
    public boolean changes() {
        return changes;
    }

    /** What is in force. */
    public SeasonTable.Day today() {
        return table.on(day);
    }

    /** Set-point at a time, °C. */
    public double setpointC(double timeS) {
        return table.on(dayAt(timeS)).setpointC();
    }

    /** Whether hours below the minimum are told apart as warming up. */
    public boolean isGrace() {
        return table.isGrace(day);
    }

    /** Seconds that the mixer runs from the start of each hour, at a time. */
    public double mixerSecondsPerHour(double timeS) {
        return 60 * table.on(dayAt(timeS)).mixerMinutesPerHour();
    }
}
