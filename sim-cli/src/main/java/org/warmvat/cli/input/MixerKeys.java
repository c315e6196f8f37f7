package org.warmvat.cli.input;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.Optional;
import org.warmvat.design.Mixer;

/** The block {@code mixer}. */
record MixerKeys(
        @JsonProperty("shaft_w")
        @Key(
                says = "Power at the shaft, instead of speed and torque; it becomes heat of the contents",
                unit = "W",
                least = 0,
                most = 100000)
        Optional<Double> shaftW,

        @JsonProperty("revolutions_per_hour")
        @Key(
                says = "Speed of the paddle while it runs",
                unit = "1/h",
                least = 0,
                most = 100000,
                usual = "4",
                when = "shaft_w absent")
        Optional<Double> revolutionsPerHour,

        @JsonProperty("torque_nm")
        @Key(
                says = "Torque at the shaft",
                unit = "N m",
                least = 0,
                most = 100000,
                usual = "60",
                when = "shaft_w absent")
        Optional<Double> torqueNm,

        @JsonProperty("drive_efficiency")
        @Key(says = "Shaft power over electric power of motor and gear", above = 0, most = 1, usual = "0.2")
        double driveEfficiency,

        @JsonProperty("idle_w")
        @Key(
                says = "Electric power drawn beside it while the mixer runs",
                unit = "W",
                least = 0,
                most = 10000,
                usual = "6")
        double idleW,

        @JsonProperty("minutes_per_hour")
        @Key(says = "Minutes it runs from the start of each hour", unit = "min/h", least = 0, most = 60, usual = "60")
        double minutesPerHour) {

    void check(Faults faults) {
        String reason = "shaft_w is given: give the one or the other";
        faults.unwanted("mixer.revolutions_per_hour", revolutionsPerHour, shaftW.isPresent(), reason);
        faults.unwanted("mixer.torque_nm", torqueNm, shaftW.isPresent(), reason);
    }

    Mixer mixer() {
        Mixer.Shaft shaft = shaftW.isPresent()
                ? new Mixer.Given(shaftW.get())
                : new Mixer.Turning(revolutionsPerHour.orElseThrow(), torqueNm.orElseThrow());
        return new Mixer(shaft, driveEfficiency, idleW, minutesPerHour);
    }
}
