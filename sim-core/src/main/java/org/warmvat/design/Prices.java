package org.warmvat.design;

/**
 * Money, carbon and the weight of electricity.
 *
 * @param electricityPerKwh price of electricity per kWh, 0..1000
 * @param fuelPerKwh price of bought fuel per kWh, 0..1000
 * @param gasWorthPerKwh worth of the gas made per kWh, 0..1000
 * @param currency name of the money, such as EUR
 * @param carbon CO2 of what is bought
 * @param primaryEnergyFactor weight of electricity beside fuel in the weighted net energy, 0..10 (equation 7.5)
 * @param outlay what more foam or more collector costs to buy
 */
public record Prices(
        double electricityPerKwh,
        double fuelPerKwh,
        double gasWorthPerKwh,
        String currency,
        Carbon carbon,
        double primaryEnergyFactor,
        Outlay outlay) {

    /** Refuses numbers out of range. */
    public Prices {
        Ranges.within("price of electricity per kWh", electricityPerKwh, 0, 1000);
        Ranges.within("price of fuel per kWh", fuelPerKwh, 0, 1000);
        Ranges.within("worth of gas per kWh", gasWorthPerKwh, 0, 1000);
        Ranges.named("currency", currency);
        Ranges.within("primary-energy factor", primaryEnergyFactor, 0, 10);
    }

    /**
     * CO2 of what is bought.
     *
     * @param electricityKgPerKwh of electricity, kg/kWh, 0..5
     * @param fuelKgPerKwh of bought fuel, kg/kWh, 0..5
     */
    public record Carbon(double electricityKgPerKwh, double fuelKgPerKwh) {

        /** Refuses numbers out of range. */
        public Carbon {
            Ranges.within("CO2 of electricity in kg/kWh", electricityKgPerKwh, 0, 5);
            Ranges.within("CO2 of fuel in kg/kWh", fuelKgPerKwh, 0, 5);
        }
    }

    /**
     * What is paid once.
     *
     * @param foamPerM3 price of insulation per cubic metre, 0..1e6
     * @param collectorPerM2 price of collector per square metre, 0..1e6
     * @param paysWithinYears simple payback beyond which more of either counts as not paying, years, 0..100
     */
    public record Outlay(double foamPerM3, double collectorPerM2, double paysWithinYears) {

        /** Refuses numbers out of range. */
        public Outlay {
            Ranges.within("price of foam per m3", foamPerM3, 0, 1e6);
            Ranges.within("price of collector per m2", collectorPerM2, 0, 1e6);
            Ranges.within("years within which an outlay pays", paysWithinYears, 0, 100);
        }
    }
}
