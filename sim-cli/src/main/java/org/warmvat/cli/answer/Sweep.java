package org.warmvat.cli.answer;

import java.util.List;

/**
 * Many runs of one design with some of its numbers varied.
 *
 * @param keys the numbers varied
 * @param counts how many values each takes
 * @param values by run: the values of the keys
 * @param outputs by run: the outputs in the order of {@link Outputs#NAMES}
 */
public record Sweep(List<String> keys, int[] counts, List<double[]> values, List<double[]> outputs) {

    /** How many runs. */
    public int runs() {
        return values.size();
    }

    /** An output of all runs. */
    public double[] output(String name) {
        int index = Outputs.index(name);
        return outputs.stream().mapToDouble(row -> row[index]).toArray();
    }

    /** An output of a run. */
    double output(int run, String name) {
        return outputs.get(run)[Outputs.index(name)];
    }

    /** A run in words: its keys with their values. */
    String named(int run) {
        StringBuilder words = new StringBuilder();
        for (int i = 0; i < keys.size(); i++) {
            words.append(i == 0 ? "" : ", ").append(keys.get(i)).append(" = ").append(shortest(values.get(run)[i]));
        }
        return words.toString();
    }

    static String shortest(double value) {
        return value == Math.rint(value) && Math.abs(value) < 1e9
                ? Long.toString((long) value)
                : Double.toString(value);
    }
}
