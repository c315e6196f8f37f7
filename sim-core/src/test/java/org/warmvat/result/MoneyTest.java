package org.warmvat.result;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class MoneyTest {

    private static final Tariff TARIFF = new Tariff("EUR", 0.30, 0.10, 0.08, 0.25, 0.20);

    /** 100 kWh bought for heat, 40 kWh of machinery, 500 kWh of gas. */
    private static Money money(Optional<BoughtEnergy> backup) {
        Period period = new Period(
                "year",
                8760,
                new Heats(0, 100, 0, 0, 0, 0),
                new Losses(0, 0, 0, 0, 0),
                new Circuits(0, 0, 100, 0, backup.isPresent() ? 100 : 0),
                new Stored(0, 0, 0, 0),
                new Electricity(40, 0, 0, 0, 0, 0, 0),
                new GasFigures(50, 90, 500, 0, 0, OptionalDouble.empty()),
                new SlurryTemperature(35, 36, 37),
                new Counts(0, 0, 0, 0, 0, 0, 0, 0, 0));
        return Money.of(period, backup, TARIFF);
    }

    private static void assertMoney(Money money, double backup, double gasWorth, double co2Kg) {
        assertEquals(backup, money.backupCost(), 1e-12);
        assertEquals(12, money.electricityCost(), 1e-12);
        assertEquals(gasWorth, money.gasWorth(), 1e-12);
        assertEquals(gasWorth - backup - 12, money.balance(), 1e-12);
        assertEquals(backup + 12, money.cost(), 1e-12);
        assertEquals(co2Kg, money.co2Kg(), 1e-12);
    }

    @Test
    void electricHeatIsPricedAsElectricity() {
        assertMoney(money(Optional.of(BoughtEnergy.ELECTRICITY)), 30, 40, 35);
    }

    @Test
    void fuelHasItsOwnPriceAndCarbon() {
        assertMoney(money(Optional.of(BoughtEnergy.FUEL)), 10, 40, 30);
    }

    @Test
    void ownGasIsMissingFromTheGasAndCostsNothingElse() {
        assertMoney(money(Optional.of(BoughtEnergy.OWN_GAS)), 0, 32, 10);
    }

    @Test
    void withoutBackupOnlyTheMachineryCosts() {
        assertMoney(money(Optional.empty()), 0, 40, 10);
    }
}
