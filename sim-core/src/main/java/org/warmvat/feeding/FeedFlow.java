package org.warmvat.feeding;

import java.util.Optional;
import org.warmvat.design.feeding.Feed;
import org.warmvat.design.season.DailySchedule;
import org.warmvat.network.Interval;
import org.warmvat.network.KnownRate;
import org.warmvat.network.Surroundings;

/**
 * When and how fast feed enters: the daily mass spread evenly over the open time of its schedule (equation 3.1).
 */
public final class FeedFlow {

    private final DailySchedule schedule;
    private final Surroundings surroundings;
    private final double openSecondsPerDay;
    private final double allKgPerDay;
    private Optional<KnownRate> measured = Optional.empty();
    private double measuredKgPerS;

    /** The flow of a feed. */
    public FeedFlow(Feed feed, Surroundings surroundings) {
        schedule = feed.schedule();
        this.surroundings = surroundings;
        openSecondsPerDay = schedule.openSecondsPerDay();
        allKgPerDay = feed.feedstockKgPerDay() + feed.waterKgPerDay();
    }

    /** Flows as measured from now on, all feedstocks and water together, each with its share of the day. */
    void flowAs(KnownRate kgPerS) {
        measured = Optional.of(kgPerS);
    }

    /** Whether feed enters during an interval that no edge of the schedule cuts. */
    public boolean isOpen(Interval interval) {
        if (measured.isPresent()) {
            measuredKgPerS = measured.get().at(interval.middleS());
            return measuredKgPerS > 0;
        }
        return schedule.isOpenAt(surroundings.secondOfDay(interval.middleS()));
    }

    /** How long feed enters in a day, s. */
    public double openSecondsPerDay() {
        return openSecondsPerDay;
    }

    /** Whether it is measured. */
    boolean isMeasured() {
        return measured.isPresent();
    }

    /** Flow of a daily mass in the interval last asked about, if feed enters in it, kg/s. */
    public double whileOpenKgPerS(double kgPerDay) {
        return measured.isPresent() ? measuredKgPerS * kgPerDay / allKgPerDay : kgPerDay / openSecondsPerDay;
    }

    /** The next edge of the schedule strictly after a time, s. */
    public double nextJumpS(double timeS) {
        if (measured.isPresent()) {
            return measured.get().nextJumpS(timeS);
        }
        return timeS + schedule.untilNextEdgeS(surroundings.secondOfDay(timeS));
    }
}
