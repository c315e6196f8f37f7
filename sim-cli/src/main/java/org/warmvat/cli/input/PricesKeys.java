package org.warmvat.cli.input;

import com.fasterxml.jackson.annotation.JsonProperty;
import org.warmvat.design.Prices;

/** The block {@code prices}. */
record PricesKeys(
        @JsonProperty("electricity_per_kwh")
        @Key(says = "Price of electricity", unit = "per kWh", least = 0, most = 1000, usual = "0.30")
        double electricityPerKwh,

        @JsonProperty("fuel_per_kwh")
        @Key(says = "Price of bought fuel", unit = "per kWh", least = 0, most = 1000, usual = "0.09")
        double fuelPerKwh,

        @JsonProperty("gas_worth_per_kwh")
        @Key(says = "Worth of the gas made", unit = "per kWh", least = 0, most = 1000, usual = "0.09")
        double gasWorthPerKwh,

        @JsonProperty("currency")
        @Key(says = "Name of the money", usual = "\"EUR\"", pattern = "\\S", form = "text that is not blank")
        String currency,

        @JsonProperty("electricity_kg_co2_per_kwh")
        @Key(says = "CO2 of electricity", unit = "kg/kWh", least = 0, most = 5, usual = "0.25")
        double electricityKgCo2PerKwh,

        @JsonProperty("fuel_kg_co2_per_kwh")
        @Key(
                says = "CO2 of bought fuel; the default is natural gas, rounded, from memory",
                unit = "kg/kWh",
                least = 0,
                most = 5,
                usual = "0.20")
        double fuelKgCo2PerKwh,

        @JsonProperty("primary_energy_factor")
        @Key(says = "Weight of electricity in the weighted net energy", least = 0, most = 10, usual = "2.5")
        double primaryEnergyFactor,

        @JsonProperty("foam_per_m3")
        @Key(
                says = "Price of insulation; the default is rigid foam board in Europe, rounded, from memory",
                unit = "per m3",
                least = 0,
                most = 1000000,
                usual = "250")
        double foamPerM3,

        @JsonProperty("collector_per_m2")
        @Key(
                says = "Price of solar collector; the default is a flat plate in Europe, rounded, from memory",
                unit = "per m2",
                least = 0,
                most = 1000000,
                usual = "300")
        double collectorPerM2,

        @JsonProperty("pays_within_years")
        @Key(
                says = "Simple payback beyond which more foam or collector is told not to pay; a convention of ours",
                unit = "years",
                least = 0,
                most = 100,
                usual = "15")
        double paysWithinYears) {

    Prices prices() {
        return new Prices(
                electricityPerKwh,
                fuelPerKwh,
                gasWorthPerKwh,
                currency,
                new Prices.Carbon(electricityKgCo2PerKwh, fuelKgCo2PerKwh),
                primaryEnergyFactor,
                new Prices.Outlay(foamPerM3, collectorPerM2, paysWithinYears));
    }
}
