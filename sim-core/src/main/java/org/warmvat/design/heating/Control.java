package org.warmvat.design.heating;

import org.warmvat.design.keys.Key;
import org.warmvat.design.keys.Ranges;
import org.warmvat.design.keys.Shown;
import org.warmvat.design.season.Minimum;

/**
 * What the contents are held at.
 *
 * @param setpointC set-point, C
 * @param bandK whole width of the thermostat's band, K (equation 6.2)
 * @param minimum temperature below which an hour is short
 * @param electronicsW electric power of the controls, always on, W
 * @param dailyChange changes within 24 h that are reported
 * @param graceDays days after a rise of the set-point or a restart on which hours below the minimum are told apart
 */
public record Control(
        @Key(name = "setpoint_c", says = "Temperature the contents are held at", range = "5 to 75 C")
        double setpointC,

        @Key(
                name = "band_k",
                says = "Whole width of the thermostat's band: on half of it below the set-point, off half of it above",
                range = "0.05 to 20 K",
                usual = "1.0")
        double bandK,

        @Key Minimum minimum,

        @Key(
                name = "electronics_w",
                says = "Electric power of controls and sensors, always on",
                range = "0 to 1000 W",
                usual = "3")
        double electronicsW,

        @Key DailyChange dailyChange,

        @Key(
                name = "grace_days",
                says =
                        "Days after a rise of the set-point by more than 1 K, or after a circuit was off, on which hours below the minimum count as warming up",
                range = "0 to 90 days",
                usual = "10")
        int graceDays) {

    /** Refuses numbers out of range and a minimum temperature above the set-point. */
    public Control {
        Ranges.check(Control.class, setpointC, bandK, minimum, electronicsW, dailyChange, graceDays);
        if (minimum instanceof Minimum.At at) {
            Ranges.stated(
                    at.celsius() <= setpointC,
                    "floor_c",
                    Shown.number(at.celsius()) + ", expected up to setpoint_c, " + Shown.number(setpointC) + " C");
        }
        if (minimum instanceof Minimum.BelowSetpoint below) {
            Ranges.stated(
                    setpointC - below.kelvin() >= -10,
                    "floor_below_setpoint_k",
                    Shown.number(below.kelvin()) + ", expected a minimum temperature of -10 C or above");
        }
        Ranges.stated(
                !(minimum instanceof Minimum.None),
                "minimum",
                "none, expected a temperature: none is for the calendar");
    }

    /** Temperature below which an hour is short, C. */
    public double minimumC() {
        return minimum.celsius(setpointC);
    }

    /**
     * Changes of the contents within 24 h that are reported (equation 7.6).
     *
     * @param noticeK the smaller one, K
     * @param warningK the larger one, K
     */
    public record DailyChange(
            @Key(
                    name = "daily_change_notice_k",
                    says =
                            "Days on which the contents stand further than this from 24 h before are counted (common practice, no source)",
                    range = "0.01 to 20 K",
                    usual = "1")
            double noticeK,

            @Key(
                    name = "daily_change_warning_k",
                    says = "The same, the larger change (common practice, no source)",
                    range = "0.01 to 20 K",
                    usual = "2")
            double warningK) {

        /** Refuses numbers out of range. */
        public DailyChange {
            Ranges.check(DailyChange.class, noticeK, warningK);
            Ranges.stated(
                    warningK >= noticeK,
                    "daily_change_warning_k",
                    Shown.number(warningK) + ", expected daily_change_notice_k, " + Shown.number(noticeK)
                            + " K, or above");
        }
    }
}
