package org.warmvat.cli.answer;

import java.util.ArrayList;
import java.util.List;
import org.warmvat.result.Electricity;
import org.warmvat.result.Heats;
import org.warmvat.result.RunResult;

/** What mixer, auger and the rest ate, and where the heat went. */
final class ConsumptionSentences {

    private ConsumptionSentences() {}

    static List<String> of(RunResult run) {
        return List.of(electricity(run.year().electricity()), heat(run));
    }

    private static String electricity(Electricity electricity) {
        List<String> rest = new ArrayList<>();
        add(rest, "shredder", electricity.shredderKWh());
        add(rest, "solar pump", electricity.solarPumpKWh());
        add(rest, "backup pump", electricity.backupPumpKWh());
        add(rest, "air pump", electricity.airPumpKWh());
        add(rest, "controls", electricity.electronicsKWh());
        double restKWh = electricity.totalKWh() - electricity.mixerKWh() - electricity.augerKWh();
        return "The mixer took " + Words.kWh(electricity.mixerKWh()) + " of electricity, the feed auger "
                + Words.kWh(electricity.augerKWh()) + " and the rest "
                + Words.kWh(rest.isEmpty() ? 0 : restKWh)
                + (rest.isEmpty() ? "" : " (" + Words.list(rest) + ")") + ": "
                + Words.kWh(electricity.totalKWh()) + " together.";
    }

    private static void add(List<String> rest, String consumer, double kWh) {
        if (kWh > 0) {
            rest.add(consumer + " " + Words.kWh(kWh));
        }
    }

    private static String heat(RunResult run) {
        Heats heats = run.year().heats();
        String byGas = run.marks().hasGas() ? ", " + Words.kWh(heats.gasKWh()) + " with the gas" : "";
        return "Heat went out through envelope and fittings ("
                + Words.kWh(run.year().losses().totalKWh())
                + ") and into warming the feed (" + Words.kWh(heats.feedKWh()) + ")" + byGas
                + "; the mixer's shaft gave back " + Words.kWh(heats.shaftKWh()) + " as heat.";
    }
}
