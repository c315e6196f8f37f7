package org.warmvat.cli.answer.vary;

import java.util.Arrays;
import org.warmvat.question.vary.Outputs;
import org.warmvat.question.vary.Pareto;
import org.warmvat.question.vary.Sweep;

/**
 * Two outputs of which none is to be beaten in both.
 *
 * @param first name of the first
 * @param second name of the second
 * @param stands by run, whether it is not beaten
 * @param order the indices of those in order of the first
 */
@SuppressWarnings("ArrayRecordComponent") // read only, of one sweep
record Front(String first, String second, boolean[] stands, int[] order) {

    static Front of(Sweep sweep, String first, String second) {
        double[] along = lessIsBetter(sweep, first);
        boolean[] stands = Pareto.front(along, lessIsBetter(sweep, second));
        return new Front(first, second, stands, Pareto.inOrder(stands, along));
    }

    private static double[] lessIsBetter(Sweep sweep, String output) {
        double sign = Outputs.betterHigh(output) ? -1 : 1;
        return Arrays.stream(sweep.output(output)).map(value -> sign * value).toArray();
    }
}
