package org.warmvat.tank;

import org.warmvat.account.Period;
import org.warmvat.design.Design;
import org.warmvat.design.Prices;
import org.warmvat.design.heating.BackupCircuit;
import org.warmvat.design.heating.BackupSource;
import org.warmvat.feeding.FeedPart;
import org.warmvat.network.meter.Energy;

/**
 * What a period cost and what its gas was worth, at the prices of the design. Buildings, labour, interest, upkeep and the worth
 * of the digestate are left out: this is no advice to invest.
 *
 * @param backupCost energy bought for the backup; the tank's own gas costs nothing but is missing from the gas
 * @param hygienisationCost energy bought for hygienisation, the same of own gas
 * @param electricityCost electricity of the machinery, once
 * @param gasWorth worth of the gas left: that made, less own gas burnt for heat
 * @param balance worth less cost
 * @param co2Kg CO2 of electricity and fuel bought, kg; own gas counts as none
 */
public record Money(
        double backupCost,
        double hygienisationCost,
        double electricityCost,
        double gasWorth,
        double balance,
        double co2Kg) {

    /** Counts a period. */
    public static Money of(Design design, Period period) {
        return of(
                        design.prices(),
                        period.kWh(Energy.FUEL),
                        period.kWh(Energy.HEATING_ELECTRICITY),
                        period.kWh(Energy.MACHINERY),
                        period.kWh(Energy.GAS_MADE) - period.kWh(Energy.OWN_GAS))
                .apart(hygienisationCost(design, period));
    }

    private static double hygienisationCost(Design design, Period period) {
        Prices prices = design.prices();
        return design.feed()
                .hygienisation()
                .map(hygienisation -> switch (hygienisation.source()) {
                    case FUEL -> prices.fuelPerKwh();
                    case ELECTRIC -> prices.electricityPerKwh();
                    case OWN_GAS -> 0.0;
                })
                .map(price -> price * period.of(FeedPart.HYGIENISATION_BOUGHT))
                .orElse(0.0);
    }

    private Money apart(double ofHygienisation) {
        return new Money(backupCost - ofHygienisation, ofHygienisation, electricityCost, gasWorth, balance, co2Kg);
    }

    /**
     * Counts energy bought for heat alone, so that what it costs, or the worth of own gas burnt, is the balance with a minus.
     *
     * @param design the design; without a backup an electric element stands in
     * @param boughtKWh energy bought or own gas burnt
     */
    public static Money ofHeat(Design design, double boughtKWh) {
        BackupSource source = design.backup().map(BackupCircuit::source).orElse(BackupSource.ELECTRIC);
        return switch (source) {
            case FUEL -> of(design.prices(), boughtKWh, 0, 0, 0);
            case ELECTRIC -> of(design.prices(), 0, boughtKWh, 0, 0);
            case OWN_GAS -> of(design.prices(), 0, 0, 0, -boughtKWh);
        };
    }

    private static Money of(
            Prices prices, double fuelKWh, double heatingElectricityKWh, double machineryKWh, double gasLeftKWh) {
        double backupCost = fuelKWh * prices.fuelPerKwh() + heatingElectricityKWh * prices.electricityPerKwh();
        double electricityCost = machineryKWh * prices.electricityPerKwh();
        double gasWorth = gasLeftKWh * prices.gasWorthPerKwh();
        return new Money(
                backupCost,
                0,
                electricityCost,
                gasWorth,
                gasWorth - backupCost - electricityCost,
                fuelKWh * prices.carbon().fuelKgPerKwh()
                        + (heatingElectricityKWh + machineryKWh)
                                * prices.carbon().electricityKgPerKwh());
    }

    /** Backup, hygienisation and machinery together. */
    public double cost() {
        return backupCost + hygienisationCost + electricityCost;
    }
}
