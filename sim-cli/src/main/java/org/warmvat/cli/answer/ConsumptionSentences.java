package org.warmvat.cli.answer;

import java.util.ArrayList;
import java.util.List;
import org.warmvat.account.Period;
import org.warmvat.feeding.FeedPart;
import org.warmvat.gas.GasPart;
import org.warmvat.network.Line;
import org.warmvat.network.Meter;
import org.warmvat.question.year.YearResult;
import org.warmvat.stirring.MixerPart;
import org.warmvat.tank.Lines;

/** What mixer, auger and the rest ate, and where the heat went. */
final class ConsumptionSentences {

    private ConsumptionSentences() {}

    static List<String> of(YearResult run) {
        return List.of(electricity(run.whole()), heat(run));
    }

    private static String electricity(Period whole) {
        List<String> rest = new ArrayList<>();
        for (Line line : whole.books().lines()) {
            if (Meter.isConsumer(line) && !line.equals(Lines.MIXER) && !line.equals(Lines.AUGER)) {
                add(rest, line.name(), whole.of(line));
            }
        }
        double total = whole.of(Meter.ELECTRICITY);
        double restKWh = total - whole.of(Lines.MIXER) - whole.of(Lines.AUGER);
        return "The mixer took " + Words.kWh(whole.of(Lines.MIXER)) + " of electricity, the feed auger "
                + Words.kWh(whole.of(Lines.AUGER)) + " and the rest "
                + Words.kWh(rest.isEmpty() ? 0 : restKWh)
                + (rest.isEmpty() ? "" : " (" + Words.list(rest) + ")") + ": "
                + Words.kWh(total) + " together.";
    }

    private static void add(List<String> rest, String consumer, double kWh) {
        if (kWh > 0) {
            rest.add(consumer + " " + Words.kWh(kWh));
        }
    }

    private static String heat(YearResult run) {
        Period whole = run.whole();
        String byGas =
                run.design().gas().isPresent() ? ", " + Words.kWh(whole.of(GasPart.GAS_LOSS)) + " with the gas" : "";
        return "Heat went out through envelope and fittings ("
                + Words.kWh(Lines.lossKWh(whole))
                + ") and into warming the feed (" + Words.kWh(whole.of(FeedPart.FEED)) + ")" + byGas
                + "; the mixer's shaft gave back " + Words.kWh(whole.of(MixerPart.SHAFT)) + " as heat.";
    }
}
