package org.warmvat.design;

import org.warmvat.design.keys.Key;
import org.warmvat.design.keys.Ranges;

/**
 * Money, carbon and the weight of electricity.
 *
 * @param electricityPerKwh price of electricity per kWh
 * @param fuelPerKwh price of bought fuel per kWh
 * @param gasWorthPerKwh worth of the gas made per kWh
 * @param currency name of the money, such as EUR
 * @param carbon CO2 of what is bought
 * @param primaryEnergyFactor weight of electricity beside fuel in the weighted net energy (equation 7.5)
 * @param outlay what more insulation or more collector costs to buy
 */
public record Prices(
        @Key(name = "electricity_per_kwh", says = "Price of electricity", range = "0 to 1000 per kWh", usual = "0.30")
        double electricityPerKwh,

        @Key(name = "fuel_per_kwh", says = "Price of bought fuel", range = "0 to 1000 per kWh", usual = "0.09")
        double fuelPerKwh,

        @Key(name = "gas_worth_per_kwh", says = "Worth of the gas made", range = "0 to 1000 per kWh", usual = "0.09")
        double gasWorthPerKwh,

        @Key(
                name = "currency",
                says = "Name of the money",
                usual = "EUR",
                pattern = "\\S",
                form = "text that is not blank")
        String currency,

        @Key Carbon carbon,

        @Key(
                name = "primary_energy_factor",
                says = "Weight of electricity in the weighted net energy",
                range = "0 to 10",
                usual = "2.5")
        double primaryEnergyFactor,

        @Key Outlay outlay) {

    /** Refuses numbers out of range. */
    public Prices {
        Ranges.check(
                Prices.class,
                electricityPerKwh,
                fuelPerKwh,
                gasWorthPerKwh,
                currency,
                carbon,
                primaryEnergyFactor,
                outlay);
    }

    /**
     * CO2 of what is bought.
     *
     * @param electricityKgPerKwh of electricity, kg/kWh
     * @param fuelKgPerKwh of bought fuel, kg/kWh
     */
    public record Carbon(
            @Key(
                    name = "electricity_kg_co2_per_kwh",
                    says = "CO2 of electricity",
                    range = "0 to 5 kg/kWh",
                    usual = "0.25")
            double electricityKgPerKwh,

            @Key(
                    name = "fuel_kg_co2_per_kwh",
                    says = "CO2 of bought fuel; the default is natural gas, rounded, from memory",
                    range = "0 to 5 kg/kWh",
                    usual = "0.20")
            double fuelKgPerKwh) {

        /** Refuses numbers out of range. */
        public Carbon {
            Ranges.check(Carbon.class, electricityKgPerKwh, fuelKgPerKwh);
        }
    }

    /**
     * What is paid once.
     *
     * @param foamPerM3 price of insulation per cubic metre
     * @param collectorPerM2 price of collector per square metre
     * @param parts what coils, heater and tank cost
     * @param paysWithinYears simple payback beyond which more of either counts as not paying, years
     */
    public record Outlay(
            @Key(
                    name = "foam_per_m3",
                    says = "Price of insulation; the default is rigid foam board in Europe, rounded, from memory",
                    range = "0 to 1000000 per m3",
                    usual = "250")
            double foamPerM3,

            @Key(
                    name = "collector_per_m2",
                    says = "Price of solar collector; the default is a flat plate in Europe, rounded, from memory",
                    range = "0 to 1000000 per m2",
                    usual = "300")
            double collectorPerM2,

            @Key OutlayParts parts,

            @Key(
                    name = "pays_within_years",
                    says =
                            "Simple payback beyond which more insulation or collector is told not to pay; a convention of ours",
                    range = "0 to 100 years",
                    usual = "15")
            double paysWithinYears) {

        /** Refuses numbers out of range. */
        public Outlay {
            Ranges.check(Outlay.class, foamPerM3, collectorPerM2, parts, paysWithinYears);
        }
    }

    /**
     * Prices of coils, heater and tank.
     *
     * @param coilPerM2 price of a coil per square metre
     * @param heaterPerKw price of a heater per kW
     * @param tankPerM3 price of a bare tank per cubic metre of slurry
     */
    public record OutlayParts(
            @Key(
                    name = "coil_per_m2",
                    says = "Price of coil, solar and backup alike; the default is rounded, from memory",
                    range = "0 to 1000000 per m2",
                    usual = "120")
            double coilPerM2,

            @Key(
                    name = "heater_per_kw",
                    says = "Price of the backup heater; the default is a small electric one, rounded, from memory",
                    range = "0 to 1000000 per kW",
                    usual = "80")
            double heaterPerKw,

            @Key(
                    name = "tank_per_m3",
                    says = "Price of the bare tank; the default is rounded, from memory",
                    range = "0 to 1000000 per m3",
                    usual = "1000")
            double tankPerM3) {

        /** Refuses numbers out of range. */
        public OutlayParts {
            Ranges.check(OutlayParts.class, coilPerM2, heaterPerKw, tankPerM3);
        }
    }
}
