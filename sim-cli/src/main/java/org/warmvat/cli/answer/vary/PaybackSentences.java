package org.warmvat.cli.answer.vary;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.warmvat.cli.answer.payback.PaybackWords;
import org.warmvat.cli.words.AxisWords;
import org.warmvat.design.Prices;
import org.warmvat.question.payback.Payback;
import org.warmvat.question.payback.PaybackStudy;
import org.warmvat.question.vary.Sweep;

/** Whether more of what is varied along one axis pays: told of insulation and collector, which have prices. */
final class PaybackSentences {

    private static final String OUTLAY = "outlay";
    private static final String BALANCE = "money_balance";

    private final Sweep sweep;
    private final Prices prices;
    private final String currency;
    private final List<Integer> runs;

    PaybackSentences(Sweep sweep, Prices prices, String currency) {
        this.sweep = sweep;
        this.prices = prices;
        this.currency = currency;
        runs = new ArrayList<>(IntStream.range(0, sweep.runs()).boxed().toList());
        if (runs.size() > 1 && value(0) > value(1)) {
            Collections.reverse(runs);
        }
    }

    private double value(int run) {
        return sweep.values().get(run)[0];
    }

    /** Whether there is one axis of insulation or collector along which the outlay rises. */
    boolean apply() {
        return sweep.keys().size() == 1
                && sweep.runs() > 1
                && sweep.keys()
                        .get(0)
                        .matches(
                                "(envelope|materials)\\..*|solar\\.area_m2|(solar|backup)\\.coil\\.area_m2|backup\\.rated_w")
                && IntStream.range(1, runs.size())
                        .allMatch(i -> outlay(i) > outlay(i - 1) && value(runs.get(i)) > value(runs.get(i - 1)));
    }

    private double outlay(int i) {
        return sweep.output(runs.get(i), OUTLAY);
    }

    private Optional<String> tooShort() {
        return PaybackWords.tooShort(sweep.output(0, "hours"));
    }

    private PaybackWords words() {
        List<Payback.Step> steps = new ArrayList<>();
        for (int i = 1; i < runs.size(); i++) {
            steps.add(new Payback.Step(
                    value(runs.get(i - 1)),
                    value(runs.get(i)),
                    outlay(i) - outlay(i - 1),
                    balance(i) - balance(i - 1)));
        }
        String key = sweep.keys().get(0);
        return new PaybackWords(
                new Payback(steps), new PaybackWords.Amounts(AxisWords.of(key), key + " = ", "", ""), prices, currency);
    }

    /** Money balance of a year. */
    private double balance(int i) {
        int run = runs.get(i);
        return sweep.output(run, BALANCE) * PaybackStudy.YEAR_H / sweep.output(run, "hours");
    }

    List<String> sentences() {
        return tooShort().map(List::of).orElseGet(() -> List.of(words().limit(), words().counted()));
    }

    /** The steps; none in weather shorter than a year. */
    Optional<PaybackWords> steps() {
        return tooShort().isPresent() ? Optional.empty() : Optional.of(words());
    }
}
