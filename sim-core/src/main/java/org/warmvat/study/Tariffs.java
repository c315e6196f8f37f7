package org.warmvat.study;

import java.util.Optional;
import org.warmvat.design.BackupCircuit;
import org.warmvat.design.Design;
import org.warmvat.design.Prices;
import org.warmvat.result.BoughtEnergy;
import org.warmvat.result.Money;
import org.warmvat.result.Period;
import org.warmvat.result.Tariff;

/** A design's prices as results use them. */
public final class Tariffs {

    private Tariffs() {}

    /** The prices of a design. */
    public static Tariff of(Design design) {
        Prices prices = design.prices();
        return new Tariff(
                prices.currency(),
                prices.electricityPerKwh(),
                prices.fuelPerKwh(),
                prices.gasWorthPerKwh(),
                prices.carbon().electricityKgPerKwh(),
                prices.carbon().fuelKgPerKwh());
    }

    /** What the backup is fed with; empty without one. */
    public static Optional<BoughtEnergy> bought(Design design) {
        return design.backup().map(BackupCircuit::source).map(source -> switch (source) {
            case ELECTRIC -> BoughtEnergy.ELECTRICITY;
            case OWN_GAS -> BoughtEnergy.OWN_GAS;
            case FUEL -> BoughtEnergy.FUEL;
        });
    }

    /** Cost and carbon of energy bought for heat at a design's prices. */
    public static Money heat(Design design, double boughtKWh) {
        return Money.ofHeat(boughtKWh, bought(design), of(design));
    }

    /** Cost, worth and carbon of a period at a design's prices. */
    public static Money money(Design design, Period period) {
        return Money.of(period, bought(design), of(design));
    }
}
