package org.warmvat.cli.answer;

import java.util.List;
import org.warmvat.account.Period;
import org.warmvat.gas.GasPart;
import org.warmvat.heating.BackupPart;
import org.warmvat.network.Meter;
import org.warmvat.question.year.YearResult;
import org.warmvat.tank.Housekeeping;

/** Net energy and its sign in words, plain and with electricity weighted. */
final class NetEnergySentences {

    private NetEnergySentences() {}

    static List<String> of(YearResult run) {
        return List.of(plain(run), weighted(run));
    }

    private static String plain(YearResult run) {
        Period whole = run.whole();
        String made = run.design().gas().isPresent()
                ? "The gas, " + Words.number(whole.of(GasPart.METHANE_MADE)) + " Nm³ of methane, holds "
                        + Words.kWh(whole.of(GasPart.GAS_ENERGY))
                : "No gas is computed for this design, which leaves 0.00 kWh of gas";
        return made + "; " + eaten(run) + ", the net energy is " + signed(whole.of(Housekeeping.NET)) + ": "
                + verdict(whole.of(Housekeeping.NET)) + ".";
    }

    private static String eaten(YearResult run) {
        Period year = run.whole();
        String electricity = Words.kWh(year.of(Meter.ELECTRICITY)) + " of electricity";
        return run.design().backup().isPresent()
                ? "less " + Words.kWh(year.of(BackupPart.BOUGHT)) + " for the backup and " + electricity
                : "less " + electricity;
    }

    private static String verdict(double netKWh) {
        if (netKWh > 0) {
            return "the tank returns more than it eats";
        }
        return netKWh < 0 ? "the tank eats more than it returns" : "the tank returns just what it eats";
    }

    private static String weighted(YearResult run) {
        double net = run.whole().of(Housekeeping.NET_WEIGHTED);
        return "With all electricity weighted by a primary-energy factor of "
                + Words.number(run.design().prices().primaryEnergyFactor()) + " the net energy is " + signed(net) + ".";
    }

    private static String signed(double kWh) {
        String sign = kWh > 0 ? "positive" : kWh < 0 ? "negative" : "nil";
        return sign + " at " + Words.kWh(kWh);
    }
}
