package org.warmvat.result;

import java.util.OptionalDouble;

/**
 * Gas and net energy over a period.
 *
 * @param methaneNm3 methane made, Nm3 (0 °C, 101.325 kPa)
 * @param biogasNm3 dry biogas made, Nm3
 * @param gasEnergyKWh its net heating value
 * @param netEnergyKWh gas energy less backup energy bought less electricity, each counted once
 * @param netEnergyWeightedKWh the same with all electricity (an electric backup's too) weighted by the primary-energy
 *     factor
 * @param highestAirShareFraction highest hourly share of dosed air, air over dry biogas; empty when no air is dosed; infinite
 *     when air is dosed into no gas
 */
public record GasFigures(
        double methaneNm3,
        double biogasNm3,
        double gasEnergyKWh,
        double netEnergyKWh,
        double netEnergyWeightedKWh,
        OptionalDouble highestAirShareFraction) {}
