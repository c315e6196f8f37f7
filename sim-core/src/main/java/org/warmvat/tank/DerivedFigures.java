package org.warmvat.tank;

import java.util.Optional;
import org.warmvat.design.Design;
import org.warmvat.design.feeding.Feedstock;
import org.warmvat.design.heating.BackupCircuit;
import org.warmvat.design.heating.Coil;
import org.warmvat.design.tank.Contents;
import org.warmvat.heating.CoilFlow;

/**
 * What can be said of a design without running it.
 *
 * @param conductances steady conductances by part
 * @param timeConstantH thermal time constant {@code C_s/UA}, h
 * @param retentionDays hydraulic retention time, days; infinite without feed
 * @param coldC cold air for which loss and feed are told, °C
 * @param coldLossW steady loss at set-point in that air, W, without sun and clear sky
 * @param coldFeedW mean heat taken by the feed at that temperature, W
 * @param methaneNm3PerDay methane at steady state and set-point
 * @param loadingKgVsPerM3Day volatile solids fed per volume, kg VS/(m3 day)
 */
public record DerivedFigures(
        Conductances conductances,
        double timeConstantH,
        double retentionDays,
        double coldC,
        double coldLossW,
        double coldFeedW,
        double methaneNm3PerDay,
        double loadingKgVsPerM3Day) {

    private static final double S_PER_HOUR = 3600;

    /**
     * Derives the figures.
     *
     * @param design the design
     * @param windMPerS mean wind at 10 m
     * @param meanAirC mean air temperature, for the radiative film
     * @param coldC cold design temperature of the air
     */
    public static DerivedFigures of(Design design, double windMPerS, double meanAirC, double coldC) {
        Conductances conductances = Conductances.of(design, windMPerS, meanAirC);
        double ua = conductances.totalWPerK();
        return new DerivedFigures(
                conductances,
                design.contentsHeatCapacityJPerK() / ua / S_PER_HOUR,
                design.retentionDays(),
                coldC,
                SteadyHeat.lossW(design, conductances, coldC),
                SteadyHeat.feedW(design, coldC),
                methaneNm3PerDay(design),
                design.feed().feedstocks().stream()
                                .mapToDouble(Feedstock::volatileSolidsKgPerDay)
                                .sum()
                        / design.tank().liquidVolumeM3());
    }

    /** Methane at steady state: potential x fed solids x the digested share (equation 7.2). */
    private static double methaneNm3PerDay(Design design) {
        return design.feed().feedstocks().stream()
                .mapToDouble(stock -> stock.methaneNm3PerKgVs()
                        * stock.volatileSolidsKgPerDay()
                        * design.steadyDigestedFraction(stock))
                .sum();
    }

    /**
     * What the solar coil passes while the mixer turns, W per kelvin between circuit and slurry; absent without a solar
     * circuit.
     */
    public static Optional<Double> solarCoilWPerK(Design design) {
        return design.solar()
                .map(solar -> pass(
                        solar.coil(), design.adjust().solarCoil(), solar.loop().capacityRateWPerK()));
    }

    /** The most heat the backup coil passes at set-point: flow limit at the water's mean temperature, W; absent without coil. */
    public static Optional<Double> backupCoilMostW(Design design) {
        return design.backup()
                .flatMap(BackupCircuit::circuit)
                .map(circuit -> pass(
                                circuit.coil(),
                                design.adjust().backupCoil(),
                                circuit.loop().flowKgPerS() * Contents.WATER_J_PER_KG_K)
                        * Math.max(0, circuit.flow().limitC() - design.control().setpointC()));
    }

    private static double pass(Coil coil, double adjust, double capacityRateWPerK) {
        return new CoilFlow(coil, adjust, capacityRateWPerK).conductanceWPerK(true);
    }
}
