package org.warmvat.tank;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.warmvat.account.Period;
import org.warmvat.design.Design;
import org.warmvat.network.meter.Energy;
import org.warmvat.sample.StatedSums;
import org.warmvat.sample.StudyTank;

/** Prices 0.30 for electricity and 0.09 for fuel and gas; 0.25 and 0.20 kg of CO2 a kWh. */
class MoneyTest {

    /** 100 kWh bought for heat, 40 kWh of machinery, 500 kWh of gas. */
    private static Money money(Map<Energy, Double> bought) {
        Map<Energy, Double> all = new EnumMap<>(Map.of(Energy.MACHINERY, 40.0, Energy.GAS_MADE, 500.0));
        all.putAll(bought);
        Design design = StudyTank.design(Optional.empty(), Optional.empty());
        return Money.of(design, new Period("year", null, StatedSums.of(all)));
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
        assertMoney(money(Map.of(Energy.HEATING_ELECTRICITY, 100.0)), 30, 45, 35);
    }

    @Test
    void fuelHasItsOwnPriceAndCarbon() {
        assertMoney(money(Map.of(Energy.FUEL, 100.0)), 9, 45, 30);
    }

    @Test
    void ownGasIsMissingFromTheGasAndCostsNothingElse() {
        assertMoney(money(Map.of(Energy.OWN_GAS, 100.0)), 0, 36, 10);
    }

    @Test
    void withoutBackupOnlyTheMachineryCosts() {
        assertMoney(money(Map.of()), 0, 45, 10);
    }
}
