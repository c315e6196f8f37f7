package org.warmvat.result;

import java.util.Optional;

/**
 * What a period cost and what its gas was worth, at the prices of the design. Buildings, labour, interest, upkeep and the worth
 * of the digestate are left out: this is no advice to invest.
 *
 * @param backupCost energy bought for the backup; the tank's own gas costs nothing but is missing from the gas
 * @param electricityCost electricity of the machinery, once
 * @param gasWorth worth of the gas left: that made, less own gas burnt for heat
 * @param balance worth less cost
 * @param co2Kg CO2 of electricity and fuel bought, kg; own gas counts as none
 */
public record Money(double backupCost, double electricityCost, double gasWorth, double balance, double co2Kg) {

    /** Counts a period. */
    public static Money of(Period period, Optional<BoughtEnergy> backup, Tariff tariff) {
        return of(
                period.circuits().backupBoughtKWh(),
                period.electricity().totalKWh(),
                period.gas().gasEnergyKWh(),
                backup,
                tariff);
    }

    /**
     * Counts energy bought for heat alone, so that what it costs, or the worth of own gas burnt, is the balance with a minus.
     *
     * @param boughtKWh energy bought or own gas burnt
     * @param backup what it is; electricity where the design has no backup and an element stands in
     */
    public static Money ofHeat(double boughtKWh, Optional<BoughtEnergy> backup, Tariff tariff) {
        return of(boughtKWh, 0, 0, backup, tariff);
    }

    private static Money of(
            double bought, double machinery, double gasEnergyKWh, Optional<BoughtEnergy> backup, Tariff tariff) {
        boolean ownGas = backup.filter(BoughtEnergy.OWN_GAS::equals).isPresent();
        boolean fuel = backup.filter(BoughtEnergy.FUEL::equals).isPresent();
        double fuelKWh = fuel ? bought : 0;
        double heatingElectricityKWh = ownGas || fuel ? 0 : bought;
        double backupCost = fuelKWh * tariff.fuelPerKWh() + heatingElectricityKWh * tariff.electricityPerKWh();
        double electricityCost = machinery * tariff.electricityPerKWh();
        double gasLeftKWh = gasEnergyKWh - (ownGas ? bought : 0);
        double gasWorth = gasLeftKWh * tariff.gasWorthPerKWh();
        return new Money(
                backupCost,
                electricityCost,
                gasWorth,
                gasWorth - backupCost - electricityCost,
                fuelKWh * tariff.fuelKgCo2PerKWh()
                        + (heatingElectricityKWh + machinery) * tariff.electricityKgCo2PerKWh());
    }

    /** Backup and machinery together. */
    public double cost() {
        return backupCost + electricityCost;
    }
}
