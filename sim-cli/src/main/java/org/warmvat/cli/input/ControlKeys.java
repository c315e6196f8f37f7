package org.warmvat.cli.input;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.Optional;
import org.warmvat.design.Control;

/** The block {@code control}. */
record ControlKeys(
        @JsonProperty("setpoint_c")
        @Key(says = "Temperature the contents are held at", unit = "C", least = 5, most = 75)
        double setpointC,

        @JsonProperty("band_k")
        @Key(
                says = "Whole width of the thermostat's band: on half of it below the set-point, off half of it above",
                unit = "K",
                least = 0.05,
                most = 20,
                usual = "1.0")
        double bandK,

        @JsonProperty("floor_c")
        @Key(
                says = "Temperature below which an hour is short, instead of floor_below_setpoint_k",
                unit = "C",
                least = -10,
                most = 75)
        Optional<Double> floorC,

        @JsonProperty("floor_below_setpoint_k")
        @Key(
                says = "How far below the set-point an hour is short",
                unit = "K",
                least = 0,
                most = 60,
                usual = "2.0",
                when = "floor_c absent")
        Optional<Double> floorBelowSetpointK,

        @JsonProperty("electronics_w")
        @Key(
                says = "Electric power of controls and sensors, always on",
                unit = "W",
                least = 0,
                most = 1000,
                usual = "3")
        double electronicsW,

        @JsonProperty("daily_change_notice_k")
        @Key(
                says =
                        "Days on which the contents stand further than this from 24 h before are counted (common practice, no source)",
                unit = "K",
                least = 0.01,
                most = 20,
                usual = "1")
        double dailyChangeNoticeK,

        @JsonProperty("daily_change_warning_k")
        @Key(
                says = "The same, the larger change (common practice, no source)",
                unit = "K",
                least = 0.01,
                most = 20,
                usual = "2")
        double dailyChangeWarningK) {

    void check(Faults faults) {
        faults.unwanted(
                "control.floor_below_setpoint_k",
                floorBelowSetpointK,
                floorC.isPresent(),
                "floor_c is given: give the one or the other");
        if (floorC.filter(floor -> floor > setpointC).isPresent()) {
            faults.add(
                    "control.floor_c",
                    Faults.number(floorC.get()) + ", expected up to setpoint_c, " + Faults.number(setpointC) + " C");
        }
        if (floorBelowSetpointK.filter(k -> setpointC - k < -10).isPresent()) {
            faults.add(
                    "control.floor_below_setpoint_k",
                    Faults.number(floorBelowSetpointK.get()) + ", expected a floor of -10 C or above");
        }
        if (dailyChangeWarningK < dailyChangeNoticeK) {
            faults.add(
                    "control.daily_change_warning_k",
                    Faults.number(dailyChangeWarningK) + ", expected daily_change_notice_k, "
                            + Faults.number(dailyChangeNoticeK) + " K, or above");
        }
    }

    Control control() {
        return new Control(
                setpointC,
                bandK,
                floorC.orElseGet(() -> setpointC - floorBelowSetpointK.orElseThrow()),
                electronicsW,
                new Control.DailyChange(dailyChangeNoticeK, dailyChangeWarningK));
    }
}
