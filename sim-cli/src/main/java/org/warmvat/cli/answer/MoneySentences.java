package org.warmvat.cli.answer;

import java.util.List;
import java.util.Optional;
import org.warmvat.cli.words.Telling;
import org.warmvat.cli.words.Words;
import org.warmvat.design.Design;
import org.warmvat.design.heating.BackupCircuit;
import org.warmvat.design.heating.BackupSource;
import org.warmvat.gas.GasEnergy;
import org.warmvat.gas.GasHolderPart;
import org.warmvat.network.meter.Unit;
import org.warmvat.question.year.YearResult;
import org.warmvat.tank.Money;

/** Cost, worth and carbon of a run in words. */
public final class MoneySentences {

    static final String AT_EXAMPLES = "at example prices";

    private MoneySentences() {}

    /** A sum with a word behind it: {@code 12.0 EUR more}, {@code 12.0 more at example prices}. */
    public static String sum(double value, String then, String currency) {
        return Words.number(value) + " "
                + (currency.equals(AT_EXAMPLES) ? then + " " + currency : currency + " " + then);
    }

    /** Cost, worth and carbon of a run. */
    public static List<String> of(YearResult run, Subject asked) {
        String currency = asked.currency();
        Money money = Money.of(run.design(), run.whole());
        boolean gas = run.design().gas().isPresent();
        return new Telling()
                .say(costs(run, money, currency))
                .when(gas, () -> worth(run, money, currency))
                .say(gas ? flared(run, currency) : Optional.empty())
                .say("Making the energy bought sets free " + Words.number(money.co2Kg()) + " kg of CO2.")
                .say(whose(asked))
                .say("Building, labour and upkeep are left out, and this is no advice to invest.")
                .done();
    }

    /** Whose prices sums of money stand on. */
    public static String whose(Subject asked) {
        return asked.pricesAreExamples()
                ? "The design gives no prices of its own: these are examples, in no country's money."
                : "The prices are those of the design.";
    }

    /** What is left in words: {@code a gain of about 12.0 EUR}. */
    static String left(double balance, String currency) {
        String sign = balance > 0 ? "a gain of about " : balance < 0 ? "a loss of about " : "";
        return sign + sum(Math.abs(balance), currency);
    }

    private static String costs(YearResult run, Money money, String currency) {
        boolean backup = run.design().backup().isPresent();
        List<String> heat = new Telling()
                .when(backup, () -> "Energy for the backup heater costs " + sum(money.backupCost(), currency))
                .when(
                        run.design().feed().hygienisation().isPresent(),
                        () -> (backup ? "hygienisation " : "Hygienisation costs ")
                                + sum(money.hygienisationCost(), currency))
                .done();
        String electricity = sum(money.electricityCost(), currency);
        return heat.isEmpty()
                ? "The electricity of the machinery costs " + electricity + "."
                : String.join(", ", heat) + ", electricity of the machinery " + electricity + ": together "
                        + sum(money.cost(), currency) + ".";
    }

    private static String worth(YearResult run, Money money, String currency) {
        return "The gas" + (burnsOwnGas(run.design()) ? " left after heating the tank" : "") + " is worth about "
                + sum(money.gasWorth(), currency) + ", which leaves " + left(money.balance(), currency) + ".";
    }

    /** What is counted as worth and has none. */
    private static Optional<String> flared(YearResult run, String currency) {
        double kWh = run.whole().has(GasHolderPart.SURPLUS)
                ? run.whole().of(GasHolderPart.SURPLUS)
                        * run.design().gas().orElseThrow().methaneFraction()
                        * Unit.KWH.of(GasEnergy.METHANE_J_PER_NM3)
                : 0;
        return kWh > 0
                ? Optional.of(
                        "But all gas left is counted in that; what finds no room in the holder is flared and brings nothing: take off "
                                + sum(kWh * run.design().prices().gasWorthPerKwh(), currency) + ".")
                : Optional.empty();
    }

    /** What the backup buys, with its cost and CO2: {@code buys 41.0 kWh, which costs 12.3 EUR and sets free 10.2 kg of CO2 where it is made}. */
    public static String buys(Subject asked, double boughtKWh) {
        Design design = asked.design();
        Money money = Money.ofHeat(design, boughtKWh);
        String price = sum(-money.balance(), asked.currency());
        boolean ownGas = burnsOwnGas(design);
        return ownGas
                ? "burns " + Words.kWh(boughtKWh) + " of the tank's own gas, worth " + price
                : "buys " + Words.kWh(boughtKWh) + ", which costs " + price + " and sets free "
                        + Words.number(money.co2Kg()) + " kg of CO2 where it is made";
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
