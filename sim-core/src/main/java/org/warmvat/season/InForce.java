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

    /** Set-point, °C. */
    public double setpointC() {
        return table.setpointC(day);
    }

    /** Set-point at a time, °C. */
    public double setpointC(double timeS) {
        return table.setpointC(dayAt(timeS));
    }

    /** Band of the thermostat, K. */
    public double bandK() {
        return table.bandK(day);
    }

    /** Temperature below which an hour is short, °C; negative infinity where none is. */
    public double minimumC() {
        return table.minimumC(day);
    }

    /** Whether hours below the minimum are told apart as warming up. */
    public boolean isGrace() {
        return table.isGrace(day);
    }

    /** Factor on the dilution water. */
    public double waterFactor() {
        return table.waterFactor(day);
    }

    /** Factor on a feedstock, by its place in the design. */
    public double feedstockFactor(int feedstock) {
        return table.feedstockFactor(day, feedstock);
    }

    /** Seconds that the mixer runs from the start of each hour, at a time. */
    public double mixerSecondsPerHour(double timeS) {
        return 60 * table.mixerMinutesPerHour(dayAt(timeS));
    }

    /** Whether the solar pump may run. */
    public boolean isSolarOn() {
        return table.isSolarOn(day);
    }

    /** Whether the backup heater may run. */
    public boolean isBackupOn() {
        return table.isBackupOn(day);
    }

    /** Whether the effluent exchanger works. */
    public boolean isExchangerOn() {
        return table.isExchangerOn(day);
    }
}
