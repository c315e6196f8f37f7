package org.warmvat.design;

/**
 * When the solar pump runs (equation 5.3).
 *
 * @param startDifferenceK collector above contents to start, K, above the stop difference and up to 100
 * @param stopDifferenceK collector above contents to stop, K, 0..100
 * @param tankHighLimitC contents at which it stops, C, 0..100
 * @param restartBelowLimitK how far below the limit it may start again, K, 0.01..50
 * @param startBarC collector temperature above which it may not start, C, 20..300
 * @param limitFollowsSetpoint whether the high limit moves with the set-point of a calendar
 */
public record PumpControl(
        double startDifferenceK,
        double stopDifferenceK,
        double tankHighLimitC,
        double restartBelowLimitK,
        double startBarC,
        boolean limitFollowsSetpoint) {

    /** Refuses numbers out of range and a start difference that is not above the stop difference. */
    public PumpControl {
        Ranges.within("start difference in K", startDifferenceK, 0, 100);
        Ranges.within("stop difference in K", stopDifferenceK, 0, 100);
        Ranges.stated(
                "start difference " + Ranges.text(startDifferenceK) + " K",
                startDifferenceK > stopDifferenceK,
                "above the stop difference " + Ranges.text(stopDifferenceK) + " K");
        Ranges.within("high limit of the tank in C", tankHighLimitC, 0, 100);
        Ranges.within("restart below the high limit in K", restartBelowLimitK, 0.01, 50);
        Ranges.within("start bar in C", startBarC, 20, 300);
    }

    /** A control whose high limit stays where it is. */
    public PumpControl(
            double startDifferenceK,
            double stopDifferenceK,
            double tankHighLimitC,
            double restartBelowLimitK,
            double startBarC) {
        this(startDifferenceK, stopDifferenceK, tankHighLimitC, restartBelowLimitK, startBarC, false);
    }
}
