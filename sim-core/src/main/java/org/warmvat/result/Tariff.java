package org.warmvat.result;

/**
 * Prices and carbon by which a run is counted.
 *
 * @param currency name of the money
 * @param electricityPerKWh price of electricity
 * @param fuelPerKWh price of bought fuel
 * @param gasWorthPerKWh worth of the gas made
 * @param electricityKgCo2PerKWh CO2 of electricity
 * @param fuelKgCo2PerKWh CO2 of bought fuel
 */
public record Tariff(
        String currency,
        double electricityPerKWh,
        double fuelPerKWh,
        double gasWorthPerKWh,
        double electricityKgCo2PerKWh,
        double fuelKgCo2PerKWh) {}
