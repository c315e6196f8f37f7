package org.warmvat.network;

/**
 * A stretch of time inside one weather hour in which no schedule jumps.
 *
 * @param startS start, seconds since the start of the weather file
 * @param endS end, seconds since the start of the weather file
 * @param hour index of the weather hour
 */
public record Interval(double startS, double endS, int hour) {

    /** The middle, an instant that lies clearly on one side of every schedule edge. */
    public double middleS() {
        return 0.5 * (startS + endS);
    }
}
