package org.warmvat.design.heating;

import java.util.Optional;
import org.warmvat.design.keys.Key;
import org.warmvat.design.keys.Ranges;
import org.warmvat.design.keys.Word;
import org.warmvat.design.season.DailySchedule;

/**
 * The backup heater.
 *
 * @param source what it uses
 * @param through how the heat gets into the contents
 * @param ratedW heat it can give, W
 * @param efficiency heat over what is bought (a heat pump's coefficient of performance is above 1; equation 6.3)
 * @param allowedHours when it may call for heat
 */
public record BackupCircuit(
        @Key(
                name = "source",
                says = "What it uses: electricity, the digester's own gas, or bought fuel",
                usual = "electric")
        BackupSource source,

        @Key(
                name = "efficiency",
                says =
                        "Heat over what is bought: 1 for an element, lower for burners, the coefficient of performance for a heat pump",
                range = "0.01 to 6",
                usual = "1.0")
        double efficiency,

        @Key(name = "rated_w", says = "Heat it can give", range = "0 to 1000000 W", usual = "500")
        double ratedW,

        @Key(
                name = "allowed_hours",
                says = "When it may call for heat, as stretches that may cross midnight",
                entries = 1,
                usual = "[00:00-24:00]",
                pattern = DailySchedule.STRETCH,
                form = "a stretch such as \"22:00-06:00\"")
        DailySchedule allowedHours,

        @Key(
                name = "through",
                says = "How its heat gets in: a water circuit with a coil, or an immersed element",
                usual = "circuit",
                idle = true)
        Through through) {

    /** Refuses numbers out of range. */
    public BackupCircuit {
        Ranges.check(BackupCircuit.class, source, efficiency, ratedW, allowedHours, through);
    }

    /** The water circuit, where the heat gets in through one. */
    public Optional<Circuit> circuit() {
        return through instanceof Circuit circuit ? Optional.of(circuit) : Optional.empty();
    }

    /** How the heat gets into the contents. */
    public sealed interface Through {}

    /**
     * A water circuit with its own coil (equations 6.1, 6.2).
     *
     * @param flow limit and band of the flow temperature, pump overrun
     * @param waterKg water in the circuit, kg
     * @param lossUaWPerK loss to outside air or room, W/K
     * @param loop pump and flow; its fluid is water
     * @param cakingC coil inlet temperature above which slurry may cake on the coil, C
     * @param coil the coil in the contents
     */
    @Word("circuit")
    public record Circuit(
            @Key FlowTemperature flow,

            @Key(name = "water_kg", says = "Water in the circuit", range = "0.1 to 10000 kg", usual = "8")
            double waterKg,

            @Key(
                    name = "loss_ua_w_k",
                    says = "Loss of the circuit to outside air or room",
                    range = "0 to 1000 W/K",
                    usual = "0.3")
            double lossUaWPerK,

            @Key(usual = "{loop_kg_s: 0.05, pump_w: 15}") PumpedLoop loop,

            @Key(name = "coil", says = "Coil in the contents", usual = "{area_m2: 0.8}")
            Coil coil,

            @Key(
                    name = "caking_c",
                    says = "Coil inlet water above which slurry may bake on the coil; such hours are counted",
                    range = "20 to 150 C",
                    usual = "55")
            double cakingC)
            implements Through {

        /** Refuses numbers out of range. */
        public Circuit {
            Ranges.check(Circuit.class, flow, waterKg, lossUaWPerK, loop, coil, cakingC);
        }
    }

    /** An element in the contents (equation 6.4): no water, no pump, no flow limit. */
    @Word("immersed")
    public record Immersed() implements Through {}

    /**
     * How warm the circuit's water may get.
     *
     * @param limitC highest water temperature, C
     * @param bandK band below the limit over which the power falls to nothing, K
     * @param overrunDifferenceK after a call the pump runs on until the water is no more than this above the contents, K
     */
    public record FlowTemperature(
            @Key(
                    name = "flow_limit_c",
                    says = "Highest temperature of the circuit's water",
                    range = "20 to 95 C",
                    usual = "50")
            double limitC,

            @Key(
                    name = "flow_band_k",
                    says = "Band below that limit over which the power falls to nothing",
                    range = "0.1 to 50 K",
                    usual = "5")
            double bandK,

            @Key(
                    name = "overrun_difference_k",
                    says = "After a call the pump runs on until the water is no more than this above the contents",
                    range = "0 to 50 K",
                    usual = "2")
            double overrunDifferenceK) {

        /** Refuses numbers out of range. */
        public FlowTemperature {
            Ranges.check(FlowTemperature.class, limitC, bandK, overrunDifferenceK);
        }
    }
}
