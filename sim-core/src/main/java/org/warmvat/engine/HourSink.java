package org.warmvat.engine;

/** Receives the hours of a run as they are finished. */
@FunctionalInterface
public interface HourSink {

    /** Takes no notice and runs to the end, as during a run-in. */
    HourSink IGNORE = hour -> true;

    /**
     * Takes an hour.
     *
     * @param hour the finished hour; reused by the engine, so copy what is kept
     * @return whether to go on
     */
    boolean accept(HourRecord hour);
}
