package org.warmvat.gas;

import org.warmvat.physics.PhysicalConstants;

/**
 * Heat carried off by gas leaving saturated at the slurry's temperature (equation 3.4; saturation pressure by Magnus, WMO
 * No. 8). Valid from -45 to 60 °C; up to 100 °C it stays within a few per cent.
 */
public final class GasVapour {

    private static final double VAPOUR_KG_PER_NM3 = 0.8036;
    private static final double VAPOUR_GAS_CONSTANT_J_PER_KG_K = 461.5;

    private GasVapour() {}

    /** Saturation pressure over water {@code 611.2 exp(17.62 T/(243.12 + T))}, Pa. */
    public static double saturationPa(double celsius) {
        return 611.2 * Math.exp(17.62 * celsius / (243.12 + celsius));
    }

    /** Vapour in saturated gas {@code e_s/(461.5 T)}, kg/m3. */
    public static double densityKgPerM3(double celsius) {
        return densityKgPerM3(celsius, saturationPa(celsius));
    }

    private static double densityKgPerM3(double celsius, double saturationPa) {
        return saturationPa / (VAPOUR_GAS_CONSTANT_J_PER_KG_K * (celsius + PhysicalConstants.ZERO_CELSIUS_K));
    }

    /** Latent heat {@code 2.501e6 - 2361 T}, J/kg. */
    public static double latentHeatJPerKg(double celsius) {
        return 2.501e6 - 2361 * celsius;
    }

    /**
     * Wet gas made of a normal cubic metre of dry gas: {@code (T + 273.15)/273.15 x 101325/(P - e_s)}.
     *
     * @param celsius slurry
     * @param pressurePa of the air
     */
    public static double wetM3PerNm3(double celsius, double pressurePa) {
        return wetM3PerNm3(celsius, pressurePa, saturationPa(celsius));
    }

    private static double wetM3PerNm3(double celsius, double pressurePa, double saturationPa) {
        return (celsius + PhysicalConstants.ZERO_CELSIUS_K)
                / PhysicalConstants.ZERO_CELSIUS_K
                * PhysicalConstants.STANDARD_PRESSURE_PA
                / (pressurePa - saturationPa);
    }

    /**
     * Water in saturated gas, {@code 0.8036 e/(P - e)} kg per Nm3 of dry gas (equation 14.3): what a pipe lets fall is the difference
     * between two temperatures.
     *
     * @param celsius of the gas; below 0 too the pressure over water counts
     * @param pressurePa of the air
     */
    public static double waterKgPerNm3(double celsius, double pressurePa) {
        double saturationPa = saturationPa(celsius);
        return VAPOUR_KG_PER_NM3 * saturationPa / (pressurePa - saturationPa);
    }

    /** Derivative of {@link #waterKgPerNm3} by the temperature, kg/(Nm3 K). */
    public static double waterSlopeKgPerNm3K(double celsius, double pressurePa) {
        double saturationPa = saturationPa(celsius);
        double share = 17.62 * 243.12 / ((243.12 + celsius) * (243.12 + celsius));
        double dry = pressurePa - saturationPa;
        return VAPOUR_KG_PER_NM3 * saturationPa * share * pressurePa / (dry * dry);
    }

    /**
     * Heat that leaves with a normal cubic metre of dry gas, J/Nm3: latent heat of its vapour and sensible heat.
     *
     * @param celsius slurry
     * @param airC air, to which the sensible heat counts
     * @param pressurePa of the air
     * @param heatCapacityJPerM3K of the wet gas
     */
    public static double heatJPerNm3(double celsius, double airC, double pressurePa, double heatCapacityJPerM3K) {
        return heatJPerNm3(celsius, airC, pressurePa, heatCapacityJPerM3K, saturationPa(celsius));
    }

    static double heatJPerNm3(
            double celsius, double airC, double pressurePa, double heatCapacityJPerM3K, double saturationPa) {
        double vapour = densityKgPerM3(celsius, saturationPa) * latentHeatJPerKg(celsius);
        return wetM3PerNm3(celsius, pressurePa, saturationPa) * (vapour + heatCapacityJPerM3K * (celsius - airC));
    }

    /** Derivative of {@link #heatJPerNm3} by the slurry's temperature, J/(Nm3 K). */
    static double heatSlopeJPerNm3K(
            double celsius, double airC, double pressurePa, double heatCapacityJPerM3K, double saturationPa) {
        double kelvin = celsius + PhysicalConstants.ZERO_CELSIUS_K;
        double saturationShare = 17.62 * 243.12 / ((243.12 + celsius) * (243.12 + celsius));
        double density = densityKgPerM3(celsius, saturationPa);
        double vapour = density * latentHeatJPerKg(celsius);
        double wetShare = 1 / kelvin + saturationPa * saturationShare / (pressurePa - saturationPa);
        double perM3 = vapour + heatCapacityJPerM3K * (celsius - airC);
        double perM3PerK = vapour * (saturationShare - 1 / kelvin) - 2361 * density + heatCapacityJPerM3K;
        return wetM3PerNm3(celsius, pressurePa, saturationPa) * (perM3 * wetShare + perM3PerK);
    }
}
