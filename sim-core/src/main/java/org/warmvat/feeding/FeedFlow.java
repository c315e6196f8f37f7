package org.warmvat.feeding;

import org.warmvat.design.DailySchedule;
import org.warmvat.design.Feed;
import org.warmvat.network.Interval;
import org.warmvat.network.Surroundings;

/**
 * When and how fast feed enters: the daily mass spread evenly over the open time of its schedule (equation 3.1).
 */
public final class FeedFlow {

    private final DailySchedule schedule;
    private final Surroundings surroundings;
    private final double openSecondsPerDay;

    /** The flow of a feed. */
    public FeedFlow(Feed feed, Surroundings surroundings) {
        schedule = feed.schedule();
        this.surroundings = surroundings;
        openSecondsPerDay = schedule.openSecondsPerDay();
    }

    /** Whether feed enters during an interval that no edge of the schedule cuts. */
    public boolean isOpen(Interval interval) {
        return schedule.isOpenAt(surroundings.secondOfDay(interval.middleS()));
    }

    /** How long feed enters in a day, s. */
    public double openSecondsPerDay() {
        return openSecondsPerDay;
    }

    /** Flow of a daily mass while feed enters, kg/s. */
    public double whileOpenKgPerS(double kgPerDay) {
        return kgPerDay / openSecondsPerDay;
    }

    /** The next edge of the schedule strictly after a time, s. */
    public double nextJumpS(double timeS) {
        return timeS + schedule.untilNextEdgeS(surroundings.secondOfDay(timeS));
    }
}
