package org.warmvat.cli.report;

import java.util.ArrayList;
import java.util.List;
import org.warmvat.design.Prices;

/** Simple payback of what costs more to buy along one axis: each step's outlay against its saving. */
final class PaybackSentences {

    private static final String OUTLAY = "outlay";
    private static final String BALANCE = "money_balance";

    private final Sweep sweep;
    private final Prices prices;

    PaybackSentences(Sweep sweep, Prices prices) {
        this.sweep = sweep;
        this.prices = prices;
    }

    /** Whether there is one axis along which the outlay rises. */
    boolean apply() {
        if (sweep.keys().size() != 1 || sweep.runs() < 2) {
            return false;
        }
        double[] outlay = sweep.output(OUTLAY);
        for (int run = 1; run < outlay.length; run++) {
            if (!(outlay[run] > outlay[run - 1])) {
                return false;
            }
        }
        return true;
    }

    List<String> sentences() {
        double years = prices.outlay().paysWithinYears();
        double[] at = sweep.values().stream().mapToDouble(v -> v[0]).toArray();
        String within = " within " + Words.number(years) + " years";
        List<String> sentences = new ArrayList<>();
        int stop = 1;
        while (stop < at.length && paybackYears(stop) <= years) {
            stop++;
        }
        String key = sweep.keys().get(0);
        if (stop == at.length) {
            sentences.add("Each step of " + key + " up to " + Sweep.shortest(at[stop - 1]) + " pays for itself" + within
                    + " at these prices.");
        } else {
            sentences.add("From " + key + " = " + Sweep.shortest(at[stop - 1]) + " on the next step, to "
                    + Sweep.shortest(at[stop]) + ", no longer pays for itself" + within + ": it costs "
                    + Words.fixed(extra(stop), 2) + " " + prices.currency() + " more and "
                    + saving(stop) + ".");
        }
        sentences.add("Only the price of foam and collector is counted, at "
                + Words.number(prices.outlay().foamPerM3())
                + " per m³ and " + Words.number(prices.outlay().collectorPerM2()) + " per m² in " + prices.currency()
                + ", against energy bought and gas at the design's prices: no labour, interest or upkeep, and no advice"
                + " to invest.");
        return sentences;
    }

    private String saving(int run) {
        double saved = saved(run);
        return saved > 0
                ? "saves " + Words.fixed(saved, 2) + " " + prices.currency() + " a year, "
                        + Words.number(paybackYears(run)) + " years' worth"
                : "saves nothing";
    }

    private double extra(int run) {
        return sweep.output(run, OUTLAY) - sweep.output(run - 1, OUTLAY);
    }

    /** Saving of a step, a year of 8760 hours. */
    private double saved(int run) {
        return (sweep.output(run, BALANCE) - sweep.output(run - 1, BALANCE)) * 8760 / sweep.output(run, "hours");
    }

    private double paybackYears(int run) {
        return saved(run) > 0 ? extra(run) / saved(run) : Double.POSITIVE_INFINITY;
    }

    Table table() {
        List<List<String>> rows = new ArrayList<>();
        for (int run = 1; run < sweep.runs(); run++) {
            double years = paybackYears(run);
            rows.add(List.of(
                    Sweep.shortest(sweep.values().get(run - 1)[0]) + " to "
                            + Sweep.shortest(sweep.values().get(run)[0]),
                    Words.fixed(extra(run), 2),
                    Words.fixed(saved(run), 2),
                    Double.isInfinite(years) ? "never" : Words.number(years)));
        }
        String money = prices.currency();
        return new Table(
                "Simple payback, step by step",
                List.of(sweep.keys().get(0), "costs more, " + money, "saves a year, " + money, "payback, years"),
                rows);
    }
}
