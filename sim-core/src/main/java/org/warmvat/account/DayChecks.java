package org.warmvat.account;

import java.util.List;
import java.util.Optional;
import org.warmvat.network.Warning;
import org.warmvat.network.meter.Declarations;
import org.warmvat.network.meter.Sums;

/** What is judged day by day, over the days so far. */
final class DayChecks {

    private final List<Declarations.DayCheck> checks;
    private final int[][] above;
    private final double[] worst;

    DayChecks(List<Declarations.DayCheck> checks) {
        this.checks = checks;
        above = new int[checks.size()][];
        for (int i = 0; i < above.length; i++) {
            above[i] = new int[checks.get(i).marks().size()];
        }
        worst = new double[checks.size()];
    }

    void add(Sums day) {
        for (int i = 0; i < above.length; i++) {
            double value = checks.get(i).value().applyAsDouble(day);
            worst[i] = Math.max(worst[i], value);
            for (int mark = 0; mark < above[i].length; mark++) {
                above[i][mark] += value > checks.get(i).marks().get(mark) ? 1 : 0;
            }
        }
    }

    int count() {
        return above.length;
    }

    /** The warning of a check whose first mark was passed on any day. */
    Optional<Warning> warning(int index) {
        if (above[index][0] == 0) {
            return Optional.empty();
        }
        Declarations.DayCheck check = checks.get(index);
        String sentence = check.sentence().of(above[index], worst[index]);
        return Optional.of(new Warning(check.key(), sentence, above[index][0], worst[index]));
    }
}
