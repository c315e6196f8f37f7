package org.warmvat.design.heating;

import org.warmvat.design.keys.Key;
import org.warmvat.design.keys.Ranges;
import org.warmvat.design.keys.Shown;

/**
 * When the solar pump runs (equation 5.3).
 *
 * @param startDifferenceK collector above contents to start, K
 * @param stopDifferenceK collector above contents to stop, K
 * @param highLimit contents at which it stops
 * @param restartBelowLimitK how far below the limit it may start again, K
 * @param startBarC collector temperature above which it may not start, C
 */
public record PumpControl(
        @Key(
                name = "start_difference_k",
                says = "Collector above contents at which the pump starts",
                range = "0 to 100 K",
                usual = "8")
        double startDifferenceK,

        @Key(
                name = "stop_difference_k",
                says = "Collector above contents at which the pump stops",
                range = "0 to 100 K",
                usual = "1.5")
        double stopDifferenceK,

        @Key HighLimit highLimit,

        @Key(
                name = "restart_below_limit_k",
                says = "How far below that limit the pump may start again",
                range = "0.01 to 50 K",
                usual = "1")
        double restartBelowLimitK,

        @Key(
                name = "start_bar_c",
                says =
                        "Collector temperature above which the pump may not start, so that a stagnating collector is not dumped through the coil",
                range = "20 to 300 C",
                usual = "95")
        double startBarC) {

    /** Refuses numbers out of range and a start difference that is not above the stop difference. */
    public PumpControl {
        Ranges.check(PumpControl.class, startDifferenceK, stopDifferenceK, highLimit, restartBelowLimitK, startBarC);
        Ranges.stated(
                startDifferenceK > stopDifferenceK,
                "start_difference_k",
                Shown.number(startDifferenceK) + ", expected above stop_difference_k, " + Shown.number(stopDifferenceK)
                        + " K");
    }
}
