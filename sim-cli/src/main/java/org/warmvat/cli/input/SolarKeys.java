package org.warmvat.cli.input;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.Optional;
import java.util.OptionalDouble;
import org.warmvat.design.Coil;
import org.warmvat.design.Collector;
import org.warmvat.design.Plane;
import org.warmvat.design.PumpControl;
import org.warmvat.design.SkyModel;
import org.warmvat.design.SolarCircuit;
import org.warmvat.design.SolarLoop;

/** The block {@code solar}. */
record SolarKeys(
        @JsonProperty("area_m2")
        @Key(
                says = "Collector area, gross or aperture as its data sheet counts it; 0 gives no heat",
                unit = "m2",
                least = 0,
                most = 1000,
                usual = "2.0")
        double areaM2,

        @JsonProperty("tilt_deg") @Key(says = "Tilt from level", unit = "deg", least = 0, most = 90, usual = "60")
        double tiltDeg,

        @JsonProperty("azimuth_deg")
        @Key(
                says = "Where the collector faces, clockwise from north",
                unit = "deg",
                least = -360,
                most = 360,
                otherwise = "towards the equator")
        Optional<Double> azimuthDeg,

        @JsonProperty("eta0") @Key(says = "Peak efficiency (ISO 9806)", least = 0, most = 1, usual = "0.78")
        double eta0,

        @JsonProperty("a1_w_m2k")
        @Key(says = "Linear loss coefficient (ISO 9806)", unit = "W/m2K", least = 0, most = 50, usual = "3.6")
        double a1WPerM2K,

        @JsonProperty("a2_w_m2k2")
        @Key(says = "Quadratic loss coefficient (ISO 9806)", unit = "W/m2K2", least = 0, most = 1, usual = "0.012")
        double a2WPerM2K2,

        @JsonProperty("c5_j_m2k")
        @Key(
                says = "Heat capacity of the collector (ISO 9806)",
                unit = "J/m2K",
                least = 0,
                most = 200000,
                usual = "7000")
        double c5JPerM2K,

        @JsonProperty("b0")
        @Key(says = "Incidence modifier of the beam, 1 - b0 (1/cos th - 1)", least = 0, most = 1, usual = "0.14")
        double b0,

        @JsonProperty("kd") @Key(says = "Incidence modifier of diffuse light", least = 0, most = 1.5, usual = "0.90")
        double kd,

        @JsonProperty("incidence_limit_deg")
        @Key(
                says = "Angle of incidence past which the beam counts nothing",
                unit = "deg",
                least = 30,
                most = 90,
                usual = "85")
        double incidenceLimitDeg,

        @JsonProperty("sky_model")
        @Key(
                says =
                        "Model of diffuse light on the collector: alike from everywhere, Hay and Davies (1980) or Perez et al. (1990)",
                usual = "\"hay_davies\"")
        SkyModel skyModel,

        @JsonProperty("loop_kg_s")
        @Key(says = "Flow while the pump runs", unit = "kg/s", above = 0, most = 10, usual = "0.04")
        double loopKgPerS,

        @JsonProperty("loop_fluid_j_kgk")
        @Key(says = "Specific heat of the loop fluid", unit = "J/kgK", least = 1000, most = 5000, usual = "3700")
        double loopFluidJPerKgK,

        @JsonProperty("loop_freezes_c")
        @Key(
                says = "Freezing point of the loop fluid; hours below it are counted",
                unit = "C",
                least = -80,
                most = 10,
                usual = "-20")
        double loopFreezesC,

        @JsonProperty("loop_capacity_j_k")
        @Key(
                says = "Heat capacity of fluid and pipes beside the collector",
                unit = "J/K",
                least = 0,
                most = 1e8,
                usual = "9000")
        double loopCapacityJPerK,

        @JsonProperty("pipe_ua_w_k")
        @Key(says = "Loss of the loop's pipes to outside air", unit = "W/K", least = 0, most = 1000, usual = "0.8")
        double pipeUaWPerK,

        @JsonProperty("pump_w")
        @Key(says = "Electric power of the pump", unit = "W", least = 0, most = 5000, usual = "12")
        double pumpW,

        @JsonProperty("start_difference_k")
        @Key(says = "Collector above contents at which the pump starts", unit = "K", least = 0, most = 100, usual = "8")
        double startDifferenceK,

        @JsonProperty("stop_difference_k")
        @Key(
                says = "Collector above contents at which the pump stops",
                unit = "K",
                least = 0,
                most = 100,
                usual = "1.5")
        double stopDifferenceK,

        @JsonProperty("tank_high_limit_c")
        @Key(
                says = "Contents at which the pump stops, instead of limit_above_setpoint_k",
                unit = "C",
                least = 0,
                most = 100)
        Optional<Double> tankHighLimitC,

        @JsonProperty("limit_above_setpoint_k")
        @Key(
                says = "How far above the set-point the sun may warm the contents",
                unit = "K",
                least = 0,
                most = 60,
                usual = "3.5",
                when = "tank_high_limit_c absent")
        Optional<Double> limitAboveSetpointK,

        @JsonProperty("restart_below_limit_k")
        @Key(
                says = "How far below that limit the pump may start again",
                unit = "K",
                least = 0.01,
                most = 50,
                usual = "1")
        double restartBelowLimitK,

        @JsonProperty("start_bar_c")
        @Key(
                says =
                        "Collector temperature above which the pump may not start, so that a stagnating collector is not dumped through the coil",
                unit = "C",
                least = 20,
                most = 300,
                usual = "95")
        double startBarC,

        @JsonProperty("stagnation_c")
        @Key(
                says = "Collector temperature above which an hour counts as stagnation",
                unit = "C",
                least = 50,
                most = 300,
                usual = "110")
        double stagnationC,

        @JsonProperty("caking_c")
        @Key(
                says = "Coil inlet water above which slurry may cake on the coil; such hours are counted",
                unit = "C",
                least = 20,
                most = 150,
                usual = "55")
        double cakingC,

        @JsonProperty("coil") @Key(says = "Coil in the contents", usual = "{}")
        SolarCoilKeys coil) {

    /** The solar coil. */
    record SolarCoilKeys(
            @JsonProperty("area_m2")
            @Key(says = "Outer area of the coil", unit = "m2", above = 0, most = 100, usual = "1.0")
            double areaM2,

            @JsonProperty("u_w_m2k")
            @Key(
                    says = "Clean heat transfer coefficient while the mixer runs",
                    unit = "W/m2K",
                    least = 1,
                    most = 5000,
                    usual = "100")
            double uWPerM2K,

            @JsonProperty("u_still_w_m2k")
            @Key(
                    says = "The same while the mixer stands still",
                    unit = "W/m2K",
                    least = 1,
                    most = 5000,
                    otherwise = "as u_w_m2k")
            Optional<Double> uStillWPerM2K,

            @JsonProperty("fouling_m2k_w")
            @Key(
                    says = "Fouling resistance on the slurry's side",
                    unit = "m2K/W",
                    least = 0,
                    most = 0.1,
                    usual = "0.0005")
            double foulingM2KPerW) {

        Coil coil() {
            return new Coil(areaM2, uWPerM2K, uStillWPerM2K.orElse(uWPerM2K), foulingM2KPerW);
        }
    }

    private double highLimitC(double setpointC) {
        return tankHighLimitC.orElseGet(() -> setpointC + limitAboveSetpointK.orElseThrow());
    }

    void check(Faults faults, double setpointC) {
        if (startDifferenceK <= stopDifferenceK) {
            faults.add(
                    "solar.start_difference_k",
                    Faults.number(startDifferenceK) + ", expected above stop_difference_k, "
                            + Faults.number(stopDifferenceK) + " K");
        }
        faults.unwanted(
                "solar.limit_above_setpoint_k",
                limitAboveSetpointK,
                tankHighLimitC.isPresent(),
                "tank_high_limit_c is given: give the one or the other");
        String expected = ", expected control.setpoint_c, " + Faults.number(setpointC) + " C, or above";
        if (tankHighLimitC.filter(limit -> limit < setpointC).isPresent()) {
            faults.add("solar.tank_high_limit_c", Faults.number(tankHighLimitC.get()) + expected, "control");
        }
        if (limitAboveSetpointK.filter(k -> setpointC + k > 100).isPresent()) {
            faults.add(
                    "solar.limit_above_setpoint_k",
                    Faults.number(limitAboveSetpointK.get()) + ", expected set-point and this together up to 100 C",
                    "control");
        }
        if (areaM2 * c5JPerM2K + loopCapacityJPerK < 1) {
            faults.add(
                    "solar.loop_capacity_j_k",
                    Faults.number(loopCapacityJPerK)
                            + ", expected area_m2 x c5_j_m2k and this together at least 1 J/K");
        }
    }

    SolarCircuit circuit(double setpointC) {
        OptionalDouble azimuth = azimuthDeg.isPresent() ? OptionalDouble.of(azimuthDeg.get()) : OptionalDouble.empty();
        return new SolarCircuit(
                new Collector(
                        areaM2,
                        new Plane(tiltDeg, azimuth, skyModel),
                        eta0,
                        a1WPerM2K,
                        a2WPerM2K2,
                        c5JPerM2K,
                        new Collector.Incidence(b0, kd, incidenceLimitDeg)),
                new SolarLoop(loopKgPerS, loopFluidJPerKgK, loopFreezesC, loopCapacityJPerK, pipeUaWPerK, pumpW),
                new PumpControl(
                        startDifferenceK, stopDifferenceK, highLimitC(setpointC), restartBelowLimitK, startBarC),
                coil.coil(),
                stagnationC,
                cakingC);
    }
}
