package org.warmvat.design;

/**
 * The other heat source.
 *
 * @param source what it uses
 * @param efficiency heat over what is bought, above 0 and up to 6 (a heat pump's coefficient of performance is above 1; equation 6.3)
 * @param ratedW heat it can give, W, 0..1000000
 * @param allowedHours when it may call for heat
 * @param through how the heat gets into the contents
 */
public record BackupCircuit(
        BackupSource source, double efficiency, double ratedW, DailySchedule allowedHours, Through through) {

    /** Refuses numbers out of range. */
    public BackupCircuit {
        Ranges.above("backup efficiency", efficiency, 0, 6);
        Ranges.within("rated backup power in W", ratedW, 0, 1_000_000);
    }

    /** How the heat gets into the contents. */
    public sealed interface Through {}

    /** An element in the contents (equation 6.4): no water, no pump, no flow limit. */
    public record Immersed() implements Through {}

    /**
     * A water circuit with its own coil (equations 6.1, 6.2).
     *
     * @param flow limit and band of the flow temperature, pump overrun
     * @param waterKg water in the circuit, kg, 0.1..10000
     * @param lossUaWPerK loss to outside air or room, W/K, 0..1000
     * @param loop pump and flow
     * @param coil the coil in the contents
     * @param cakingC coil inlet temperature above which slurry may cake on the coil, C, 20..150
     */
    public record Circuit(
            FlowTemperature flow, double waterKg, double lossUaWPerK, WaterLoop loop, Coil coil, double cakingC)
            implements Through {

        /** Refuses numbers out of range. */
        public Circuit {
            Ranges.within("water in the backup circuit in kg", waterKg, 0.1, 10_000);
            Ranges.within("loss of the backup circuit in W/K", lossUaWPerK, 0, 1000);
            Ranges.within("caking in C", cakingC, 20, 150);
        }
    }

    /**
     * How warm the circuit's water may get.
     *
     * @param limitC highest water temperature, C, 20..95
     * @param bandK band below the limit over which the power falls to nothing, K, 0.1..50
     * @param overrunDifferenceK after a call the pump runs on until the water is no more than this above the contents, K, 0..50
     */
    public record FlowTemperature(double limitC, double bandK, double overrunDifferenceK) {

        /** Refuses numbers out of range. */
        public FlowTemperature {
            Ranges.within("flow limit in C", limitC, 20, 95);
            Ranges.within("band of the flow limit in K", bandK, 0.1, 50);
            Ranges.within("overrun difference in K", overrunDifferenceK, 0, 50);
        }
    }

    /**
     * Pump and flow of the backup circuit; its fluid is water.
     *
     * @param flowKgPerS flow while the pump runs, kg/s, above 0 and up to 10
     * @param pumpW electric power of the pump, W, 0..5000
     */
    public record WaterLoop(double flowKgPerS, double pumpW) {

        /** Refuses numbers out of range. */
        public WaterLoop {
            Ranges.above("backup loop flow in kg/s", flowKgPerS, 0, 10);
            Ranges.within("backup pump in W", pumpW, 0, 5000);
        }
    }
}
