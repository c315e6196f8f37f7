package org.warmvat.question.vary;

import java.util.List;
import org.warmvat.network.Warning;

/**
 * Many runs of one design with some of its numbers varied.
 *
 * @param keys the numbers varied
 * @param counts how many values each takes
 * @param values by run: the values of the keys
 * @param names names of the outputs
 * @param outputs by run: the outputs in the order of their names
 * @param warnings of each kind the one of the run that had most of it
 */
public record Sweep(
        List<String> keys,
        int[] counts,
        List<double[]> values,
        List<String> names,
        List<double[]> outputs,
        List<Warning> warnings) {

    /** How many runs. */
    public int runs() {
        return values.size();
    }

    /** An output of all runs. */
    public double[] output(String name) {
        int index = names.indexOf(name);
        return outputs.stream().mapToDouble(row -> row[index]).toArray();
    }

    /** An output of a run. */
    public double output(int run, String name) {
        return outputs.get(run)[names.indexOf(name)];
    }

    /** A run in words: its keys with their values. */
    public String named(int run) {
        return Axis.named(keys, values.get(run));
    }
}
