package org.warmvat.cli.answer;

import java.util.List;
import org.warmvat.result.GasFigures;
import org.warmvat.result.Period;
import org.warmvat.result.RunResult;

/** Net energy and its sign in words, plain and with electricity weighted. */
final class NetEnergySentences {

    private NetEnergySentences() {}

    static List<String> of(RunResult run) {
        return List.of(plain(run), weighted(run));
    }

    private static String plain(RunResult run) {
        GasFigures gas = run.year().gas();
        String made = run.marks().hasGas()
                ? "The gas, " + Words.number(gas.methaneNm3()) + " Nm³ of methane, holds "
                        + Words.kWh(gas.gasEnergyKWh())
                : "No gas is computed for this design, which leaves 0.00 kWh of gas";
        return made + "; " + eaten(run) + ", the net energy is " + signed(gas.netEnergyKWh()) + ": "
                + verdict(gas.netEnergyKWh()) + ".";
    }

    private static String eaten(RunResult run) {
        Period year = run.year();
        String electricity = Words.kWh(year.electricity().totalKWh()) + " of electricity";
        return run.marks().hasBackup()
                ? "less " + Words.kWh(year.circuits().backupBoughtKWh()) + " for the backup and " + electricity
                : "less " + electricity;
    }

    private static String verdict(double netKWh) {
        if (netKWh > 0) {
            return "the tank returns more than it eats";
        }
        return netKWh < 0 ? "the tank eats more than it returns" : "the tank returns just what it eats";
    }

    private static String weighted(RunResult run) {
        double net = run.year().gas().netEnergyWeightedKWh();
        return "With all electricity weighted by a primary-energy factor of "
                + Words.number(run.marks().primaryEnergyFactor()) + " the net energy is " + signed(net) + ".";
    }

    private static String signed(double kWh) {
        String sign = kWh > 0 ? "positive" : kWh < 0 ? "negative" : "nil";
        return sign + " at " + Words.kWh(kWh);
    }
}
