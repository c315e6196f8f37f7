package org.warmvat.study;

import java.util.OptionalDouble;
import org.warmvat.design.Design;

/** A span of a log's hours, added up when asked. */
final class HourSpan implements SpanSums {

    private final Design design;
    private final HourLog log;
    private final double[] airShare;
    private final int from;
    private final int to;

    HourSpan(Design design, HourLog log, double[] airShare, int from, int to) {
        this.design = design;
        this.log = log;
        this.airShare = airShare;
        this.from = from;
        this.to = to;
    }

    @Override
    public double hours() {
        return to - from;
    }

    @Override
    public double meter(String name) {
        return sum(log.meter(name));
    }

    @Override
    public double watchS(String name) {
        return sum(log.watchS(name));
    }

    @Override
    public int starts(String name) {
        int[] starts = log.starts(name);
        int count = 0;
        for (int hour = from; hour < to; hour++) {
            count += starts[hour];
        }
        return count;
    }

    @Override
    public boolean hasSwitch(String name) {
        return log.hasSwitch(name);
    }

    @Override
    public double slurryRiseK() {
        return rise(log.slurryC());
    }

    @Override
    public double envelopeStoredJ() {
        return rise(log.envelopeJ());
    }

    @Override
    public double collectorStoredJ() {
        return log.capacityOfCollectorJPerK() * rise(log.collectorC());
    }

    @Override
    public double backupStoredJ() {
        return log.capacityOfBackupJPerK() * rise(log.backupC());
    }

    @Override
    public double slurryLeastC() {
        double least = Double.POSITIVE_INFINITY;
        for (int hour = from; hour < to; hour++) {
            least = Math.min(least, log.leastC()[hour]);
        }
        return least;
    }

    @Override
    public double slurryMostC() {
        double most = Double.NEGATIVE_INFINITY;
        for (int hour = from; hour < to; hour++) {
            most = Math.max(most, log.mostC()[hour]);
        }
        return most;
    }

    @Override
    public OptionalDouble highestAirShare() {
        double highest = 0;
        for (int hour = from; hour < to && hour < airShare.length; hour++) {
            highest = Math.max(highest, airShare[hour]);
        }
        return airShare.length == 0 ? OptionalDouble.empty() : OptionalDouble.of(highest);
    }

    @Override
    public int hoursAboveAirLimit() {
        return AirShare.hoursAboveLimit(design, airShare, from, to);
    }

    private double rise(double[] edges) {
        return edges[to] - edges[from];
    }

    private double sum(double[] values) {
        double sum = 0;
        for (int hour = from; hour < to; hour++) {
            sum += values[hour];
        }
        return sum;
    }
}
