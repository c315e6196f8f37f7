package org.warmvat.question.payback;

import java.util.List;
import java.util.Optional;

/**
 * Simple payback of more and more of one thing, such as foam or collector: what each step costs against what it saves. Labour,
 * interest and upkeep are left out: no advice to invest.
 *
 * @param steps steps that follow one another, from less to more
 */
public record Payback(List<Step> steps) {

    /** Keeps its own list. */
    public Payback {
        steps = List.copyOf(steps);
    }

    /**
     * One step.
     *
     * @param from amount before
     * @param to amount after, more than before
     * @param costs how much more must be bought once, in the design's money
     * @param savesAYear by how much the money balance of a year is better afterwards, negative where it is worse
     */
    public record Step(double from, double to, double costs, double savesAYear) {

        /** Years in which the saving is as large as the outlay; infinite when nothing is saved. */
        public double years() {
            return savesAYear > 0 ? costs / savesAYear : Double.POSITIVE_INFINITY;
        }
    }

    /** The first step that takes longer than some years to pay for itself; empty when all are sooner. */
    public Optional<Step> firstBeyond(double years) {
        return steps.stream().filter(step -> step.years() > years).findFirst();
    }
}
