package org.warmvat.cli.input;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.warmvat.design.BackupCircuit;
import org.warmvat.design.BackupSource;
import org.warmvat.design.Coil;
import org.warmvat.design.DailySchedule;

/** The block {@code backup}. */
record BackupKeys(
        @JsonProperty("source")
        @Key(says = "What it uses: electricity, the digester's own gas, or bought fuel", usual = "\"electric\"")
        BackupSource source,

        @JsonProperty("through")
        @Key(says = "How its heat gets in: a water circuit with a coil, or an immersed element", usual = "\"circuit\"")
        Way through,

        @JsonProperty("rated_w") @Key(says = "Heat it can give", unit = "W", least = 0, most = 1000000, usual = "500")
        double ratedW,

        @JsonProperty("efficiency")
        @Key(
                says =
                        "Heat over what is bought: 1 for an element, lower for burners, the coefficient of performance for a heat pump",
                above = 0,
                most = 6,
                usual = "1.0")
        double efficiency,

        @JsonProperty("flow_limit_c")
        @Key(
                says = "Highest temperature of the circuit's water",
                unit = "C",
                least = 20,
                most = 95,
                usual = "50",
                when = "through is circuit")
        Optional<Double> flowLimitC,

        @JsonProperty("flow_band_k")
        @Key(
                says = "Band below that limit over which the power falls to nothing",
                unit = "K",
                least = 0.1,
                most = 50,
                usual = "5",
                when = "through is circuit")
        Optional<Double> flowBandK,

        @JsonProperty("overrun_difference_k")
        @Key(
                says = "After a call the pump runs on until the water is no more than this above the contents",
                unit = "K",
                least = 0,
                most = 50,
                usual = "2",
                when = "through is circuit")
        Optional<Double> overrunDifferenceK,

        @JsonProperty("water_kg")
        @Key(
                says = "Water in the circuit",
                unit = "kg",
                least = 0.1,
                most = 10000,
                usual = "8",
                when = "through is circuit")
        Optional<Double> waterKg,

        @JsonProperty("loss_ua_w_k")
        @Key(
                says = "Loss of the circuit to outside air or room",
                unit = "W/K",
                least = 0,
                most = 1000,
                usual = "0.3",
                when = "through is circuit")
        Optional<Double> lossUaWPerK,

        @JsonProperty("loop_kg_s")
        @Key(
                says = "Flow while its pump runs",
                unit = "kg/s",
                above = 0,
                most = 10,
                usual = "0.05",
                when = "through is circuit")
        Optional<Double> loopKgPerS,

        @JsonProperty("pump_w")
        @Key(
                says = "Electric power of its pump",
                unit = "W",
                least = 0,
                most = 5000,
                usual = "15",
                when = "through is circuit")
        Optional<Double> pumpW,

        @JsonProperty("caking_c")
        @Key(
                says = "Coil inlet water above which slurry may cake on the coil; such hours are counted",
                unit = "C",
                least = 20,
                most = 150,
                usual = "55",
                when = "through is circuit")
        Optional<Double> cakingC,

        @JsonProperty("coil") @Key(says = "Coil in the contents", usual = "{}", when = "through is circuit")
        Optional<BackupCoilKeys> coil,

        @JsonProperty("allowed_hours")
        @Key(
                says = "When it may call for heat, as stretches that may cross midnight",
                entries = 1,
                usual = "[\"00:00-24:00\"]",
                pattern = Clock.STRETCH,
                form = "a stretch such as \"22:00-06:00\"")
        List<String> allowedHours) {

    /** Ways of the heat into the contents. */
    enum Way {
        CIRCUIT,
        IMMERSED
    }

    /** The backup coil. */
    record BackupCoilKeys(
            @JsonProperty("area_m2")
            @Key(says = "Outer area of the coil", unit = "m2", above = 0, most = 100, usual = "0.8")
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

    void check(Faults faults, boolean gasIsComputed) {
        if (source == BackupSource.OWN_GAS && !gasIsComputed) {
            faults.add(
                    "backup.source",
                    "own_gas, but no gas is computed, expected a gas block, or electric or fuel",
                    "gas");
        }
        for (int i = 0; i < allowedHours.size(); i++) {
            if (Clock.isEmpty(allowedHours.get(i))) {
                faults.add(
                        "backup.allowed_hours[" + i + "]",
                        "\"" + allowedHours.get(i) + "\" has no length, expected an end other than the start");
            }
        }
    }

    /** What stands in the file but has no effect. */
    List<String> idle() {
        boolean anyOfTheCircuit = Stream.of(
                        flowLimitC,
                        flowBandK,
                        overrunDifferenceK,
                        waterKg,
                        lossUaWPerK,
                        loopKgPerS,
                        pumpW,
                        cakingC,
                        coil)
                .anyMatch(Optional::isPresent);
        return through == Way.IMMERSED && anyOfTheCircuit
                ? List.of(
                        "backup: an immersed element has no water, pump or coil of its own; those keys have no effect")
                : List.of();
    }

    BackupCircuit circuit() {
        return new BackupCircuit(
                source,
                efficiency,
                ratedW,
                DailySchedule.of(allowedHours.stream().map(Clock::window).toList()),
                through == Way.IMMERSED ? new BackupCircuit.Immersed() : water());
    }

    private BackupCircuit.Circuit water() {
        return new BackupCircuit.Circuit(
                new BackupCircuit.FlowTemperature(
                        flowLimitC.orElseThrow(), flowBandK.orElseThrow(), overrunDifferenceK.orElseThrow()),
                waterKg.orElseThrow(),
                lossUaWPerK.orElseThrow(),
                new BackupCircuit.WaterLoop(loopKgPerS.orElseThrow(), pumpW.orElseThrow()),
                coil.orElseThrow().coil(),
                cakingC.orElseThrow());
    }
}
