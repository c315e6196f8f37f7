package org.warmvat.account;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.warmvat.network.meter.Sums;
import org.warmvat.network.meter.Unit;

/**
 * A meter times a factor.
 *
 * @param meter index of the meter
 * @param factor the factor
 */
record Term(int meter, double factor) {

    /** The sum of terms in a unit; 0, not -0, where nothing flows. */
    static ToDoubleFunction<Sums> sum(List<Term> terms, Unit unit) {
        Term[] all = terms.toArray(Term[]::new);
        return sums -> {
            double sum = 0;
            for (Term term : all) {
                sum += unit.of(term.factor * sums.meter(term.meter));
            }
            return sum + 0.0;
        };
    }
}
