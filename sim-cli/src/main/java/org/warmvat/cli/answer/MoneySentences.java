package org.warmvat.cli.answer;

import java.util.List;
import org.warmvat.design.BackupCircuit;
import org.warmvat.design.BackupSource;
import org.warmvat.design.Design;
import org.warmvat.question.year.YearResult;
import org.warmvat.tank.Money;

/** Cost, worth and carbon of a run in words. */
public final class MoneySentences {

    private MoneySentences() {}

    static List<String> of(YearResult run) {
        String currency = run.design().prices().currency();
        Money money = Money.of(run.design(), run.whole());
        return List.of(
                costs(run, money, currency),
                worth(run, money, currency),
                "What was bought stands for " + Words.number(money.co2Kg()) + " kg of CO2.",
                "The prices are those of the design; building, labour and upkeep are left out, and this is no advice to"
                        + " invest.");
    }

    private static String costs(YearResult run, Money money, String currency) {
        String machinery = "electricity of the machinery " + sum(money.electricityCost(), currency);
        return run.design().backup().isPresent()
                ? "Energy for the backup costs " + sum(money.backupCost(), currency) + ", " + machinery + ": together "
                        + sum(money.cost(), currency) + "."
                : "The " + machinery.replace("machinery ", "machinery costs ") + ".";
    }

    private static String worth(YearResult run, Money money, String currency) {
        boolean ownGas = burnsOwnGas(run.design());
        String gas = run.design().gas().isPresent()
                ? "The gas" + (ownGas ? " left after heating the tank" : "") + " is worth "
                        + sum(money.gasWorth(), currency)
                : "No gas is computed";
        double balance = money.balance();
        String sign = balance > 0 ? "a gain of " : balance < 0 ? "a loss of " : "";
        return gas + ", which leaves " + sign + sum(Math.abs(balance), currency) + ".";
    }

    /** What the backup buys, with its cost and CO2: {@code buys 41.0 kWh, which costs 12.30 EUR and stands for 10.2 kg of CO2}. */
    public static String buys(Design design, double boughtKWh) {
        Money money = Money.ofHeat(design, boughtKWh);
        String price = sum(-money.balance(), design.prices().currency());
        boolean ownGas = burnsOwnGas(design);
        return ownGas
                ? "burns " + Words.kWh(boughtKWh) + " of the tank's own gas, worth " + price
                : "buys " + Words.kWh(boughtKWh) + ", which costs " + price + " and stands for "
                        + Words.number(money.co2Kg()) + " kg of CO2";
    }

    /** A word about a warm-up by the tank's own gas; none where the backup is fed otherwise. */
    public static List<String> coldGas(Design design) {
        return burnsOwnGas(design)
                ? List.of("A cold tank makes no gas yet: whatever burns for its warm-up must come from elsewhere.")
                : List.of();
    }

    private static boolean burnsOwnGas(Design design) {
        return design.backup()
                .map(BackupCircuit::source)
                .filter(BackupSource.OWN_GAS::equals)
                .isPresent();
    }

    private static String sum(double value, String currency) {
        return Words.number(value) + " " + currency;
    }
}
